import { SheetHead } from '../../shell/sheet-head.tsx'

export function PiecePage() {
  return (
    <section className="column">
      <SheetHead />
    </section>
  )
}
