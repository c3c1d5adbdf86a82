/** The embedded database: jobs and every saved version. */
export { dataFolder } from './data-folder.ts'
export {
  type Conflict,
  type JobLine,
  type JobStore,
  type Sample,
  type Saved,
  type StoredJob,
  type VersionLine,
  type Written,
  openStore,
} from './job-store.ts'
