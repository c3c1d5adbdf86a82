import { useWords } from '#desk'
import { SheetHead } from '../../shell/sheet-head.tsx'

export function HeatsPage() {
  const words = useWords()
  return (
    <section className="column wide">
      <SheetHead />
      <p className="empty">{words.heatsSheet.waits}</p>
    </section>
  )
}
