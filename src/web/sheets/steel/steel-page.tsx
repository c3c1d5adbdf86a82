import { useWords } from '#desk'
import { SheetHead } from '../../shell/sheet-head.tsx'

export function SteelPage() {
  const words = useWords()
  return (
    <section className="column wide">
      <SheetHead />
      <p className="empty">{words.steelSheet.soon}</p>
    </section>
  )
}
