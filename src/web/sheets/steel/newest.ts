/** One piece of work at a time; of what is asked for meanwhile only the last is begun. */
export class Newest {
  private busy = false
  private next?: () => Promise<void>

  run(work: () => Promise<void>): void {
    if (this.busy) {
      this.next = work
      return
    }
    this.busy = true
    void work().finally(() => {
      const { next } = this
      this.busy = false
      this.next = undefined
      if (next) this.run(next)
    })
  }
}
