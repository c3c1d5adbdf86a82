/** The state of hot metal as a flow-stress law sees it. */
export interface State {
  /** K. */
  readonly temperature: number
  /** True strain already given, counted positive in compression. */
  readonly strain: number
  /** True strain per second. */
  readonly rate: number
}
