/** A column of a linear programme: what it costs and what it gives to each row. */
export interface Column {
  readonly cost: number
  readonly gives: Float64Array
}

/** Rows at least (wanted) or at most (available) so much. */
export interface Row {
  readonly least: boolean
  readonly amount: number
}

export interface Optimum {
  /** How much of each column. */
  readonly amounts: Float64Array
  /** What one more of each row's amount costs. */
  readonly prices: Float64Array
  readonly cost: number
}

const NOTHING = 1e-9
/** Price of leaving a row unmet: beyond any column's cost. */
const UNMET = 1e7
/** Every so many steps the inverse is made anew, so that rounding does not gather. */
const REFRESH = 60

/**
 * The revised simplex method with the inverse kept whole: for the few dozen rows of a cutting plan.
 * Columns may be added between runs; the basis found last is where the next run starts.
 */
export class LinearProgramme {
  readonly columns: Column[] = []
  private readonly rows: readonly Row[]
  /** Index of the column in each place of the basis; negative: −1 − row is the row's own unit. */
  private basis: number[]
  private inverse: Float64Array[]

  constructor(rows: readonly Row[]) {
    this.rows = rows
    this.basis = rows.map((_, i) => -1 - i)
    this.inverse = rows.map((_, i) => Float64Array.from(rows, (_, j) => (i === j ? 1 : 0)))
  }

  solve(): Optimum {
    const { rows } = this
    for (let step = 0; step < 5000; step++) {
      if (step % REFRESH === REFRESH - 1) this.refresh()
      const prices = this.prices()
      const entering = this.entering(prices)
      if (!entering) return this.optimum(prices)
      const along = this.times(entering.gives)
      const amounts = this.amounts()
      let leaving = -1
      let least = Infinity
      for (let i = 0; i < rows.length; i++) {
        if (along[i] <= NOTHING) continue
        const ratio = Math.max(0, amounts[i]) / along[i]
        // Of equal ratios the lowest index leaves (Bland): the walk cannot go round in circles.
        if (
          ratio < least - 1e-12 ||
          (ratio < least + 1e-12 && this.basis[i] < this.basis[leaving])
        ) {
          least = Math.min(ratio, least)
          leaving = i
        }
      }
      if (leaving < 0) return this.optimum(prices)
      this.pivot(leaving, along)
      this.basis[leaving] = entering.index
    }
    return this.optimum(this.prices())
  }

  private costOf(place: number): number {
    const index = this.basis[place]
    if (index >= 0) return this.columns[index].cost
    return index < -this.rows.length ? 0 : this.rows[-1 - index].least ? UNMET : 0
  }

  private prices(): Float64Array {
    const prices = new Float64Array(this.rows.length)
    for (let i = 0; i < this.rows.length; i++) {
      const cost = this.costOf(i)
      if (cost === 0) continue
      const row = this.inverse[i]
      for (let j = 0; j < prices.length; j++) prices[j] += cost * row[j]
    }
    return prices
  }

  /** The column that lowers the cost fastest; a wanted row may also be given more than it wants. */
  private entering(prices: Float64Array): { index: number; gives: Float64Array } | undefined {
    let best = -1e-7
    let index: number | undefined
    for (let c = 0; c < this.columns.length; c++) {
      const { cost, gives } = this.columns[c]
      let reduced = cost
      for (let j = 0; j < prices.length; j++) reduced -= prices[j] * gives[j]
      if (reduced < best * Math.max(1, Math.abs(cost))) {
        best = reduced / Math.max(1, Math.abs(cost))
        index = c
      }
    }
    if (index !== undefined) return { index, gives: this.columns[index].gives }
    for (let i = 0; i < this.rows.length; i++) {
      const { least } = this.rows[i]
      // Surplus of a wanted row, or the unused part of an available one.
      if (least ? prices[i] < -1e-7 : prices[i] > 1e-7) {
        const gives = new Float64Array(this.rows.length)
        gives[i] = least ? -1 : 1
        return { index: least ? -1 - this.rows.length - i : -1 - i, gives }
      }
    }
    return undefined
  }

  private times(column: Float64Array): Float64Array {
    return Float64Array.from(this.inverse, (row) => {
      let sum = 0
      for (let j = 0; j < row.length; j++) sum += row[j] * column[j]
      return sum
    })
  }

  private amounts(): Float64Array {
    return this.times(Float64Array.from(this.rows, (row) => row.amount))
  }

  private pivot(leaving: number, along: Float64Array): void {
    const row = this.inverse[leaving]
    const by = 1 / along[leaving]
    for (let j = 0; j < row.length; j++) row[j] *= by
    for (let i = 0; i < this.inverse.length; i++) {
      if (i === leaving || along[i] === 0) continue
      const other = this.inverse[i]
      for (let j = 0; j < row.length; j++) other[j] -= along[i] * row[j]
    }
  }

  /** The inverse worked out again from the basis columns (Gauss and Jordan, greatest pivot). */
  private refresh(): void {
    const n = this.rows.length
    const columns = this.basis.map((index) => this.unitOrColumn(index))
    const work = this.rows.map((_, i) =>
      Float64Array.from({ length: 2 * n }, (_, j) => (j < n ? columns[j][i] : j - n === i ? 1 : 0)),
    )
    for (let k = 0; k < n; k++) {
      let pivot = k
      for (let i = k + 1; i < n; i++) if (Math.abs(work[i][k]) > Math.abs(work[pivot][k])) pivot = i
      // A basis that has gone flat by rounding keeps the inverse it has.
      if (Math.abs(work[pivot][k]) < 1e-11) return
      ;[work[k], work[pivot]] = [work[pivot], work[k]]
      const by = 1 / work[k][k]
      for (let j = 0; j < 2 * n; j++) work[k][j] *= by
      for (let i = 0; i < n; i++) {
        const f = work[i][k]
        if (i !== k && f !== 0) for (let j = 0; j < 2 * n; j++) work[i][j] -= f * work[k][j]
      }
    }
    this.inverse = work.map((row) => row.slice(n))
  }

  private unitOrColumn(index: number): Float64Array {
    if (index >= 0) return this.columns[index].gives
    const gives = new Float64Array(this.rows.length)
    if (index < -this.rows.length) gives[-1 - this.rows.length - index] = -1
    else gives[-1 - index] = 1
    return gives
  }

  private optimum(prices: Float64Array): Optimum {
    const amounts = new Float64Array(this.columns.length)
    let cost = 0
    this.amounts().forEach((amount, i) => {
      const index = this.basis[i]
      if (index >= 0) amounts[index] = Math.max(0, amount)
      cost += amount * this.costOf(i)
    })
    return { amounts, prices, cost }
  }
}
