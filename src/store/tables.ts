/**
 * What is kept. Ids are text, moments are ISO 8601 in UTC, flags are 0 or 1, documents are text: any
 * relational database holds these. The shop log, the rack and sharing will be tables of their own
 * that point at `jobs.id`.
 */
export interface Tables {
  readonly jobs: {
    readonly id: string
    readonly name: string
    /** Name of the sample it was made from, else null. */
    readonly sample: string | null
    /** Number of the version that stands. */
    readonly version: number
    readonly created_at: string
    readonly changed_at: string
    /** When it was put away; null while it is on the list. */
    readonly removed_at: string | null
  }
  readonly versions: {
    readonly job_id: string
    readonly number: number
    /** The version its writer had before them; null for the first. */
    readonly based_on: number | null
    /** 1 where another version stood already when it came: kept, not standing. */
    readonly aside: number
    readonly body: string
    readonly saved_at: string
  }
}
