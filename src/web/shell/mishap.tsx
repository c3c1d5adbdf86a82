import { Component, type ReactNode } from 'react'
import { WrongMark } from '../form/faults.tsx'

interface MishapProps {
  readonly words: string
  readonly again: string
  readonly children: ReactNode
}

/** Stands in for a sheet that broke down: says so, and that nothing is lost, instead of an empty page. */
export class Mishap extends Component<MishapProps, { readonly fault?: Error }> {
  override state: { readonly fault?: Error } = {}

  static getDerivedStateFromError(fault: Error) {
    return { fault }
  }

  override render() {
    const { fault } = this.state
    if (!fault) return this.props.children
    return (
      <section className="empty" role="alert">
        <p>
          <WrongMark /> <b>{this.props.words}</b> <span lang="en">{fault.message}</span>
        </p>
        <button type="button" className="press" onClick={() => location.reload()}>
          {this.props.again}
        </button>
      </section>
    )
  }
}
