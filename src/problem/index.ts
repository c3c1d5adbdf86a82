/** What cannot be, where, why, and what to try: problems as data. */
export { nearest } from './nearest.ts'
export { type Problem, type Result, all, failed, ok, within } from './problem.ts'
