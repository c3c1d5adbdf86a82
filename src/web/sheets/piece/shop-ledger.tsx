import { useState } from 'react'
import { useDesk, useWords } from '#desk'
import { Fields } from '../../form/fields.tsx'

/** The shop, where it differs from common practice: folded away until wanted. */
export function ShopLedger() {
  const words = useWords()
  const [open, setOpen] = useState(false)
  const shop = useDesk((desk) => desk.declared?.shop)
  const problems = useDesk((desk) => desk.worked?.problems)
  const own = (problems ?? []).filter(({ at }) => at.startsWith('shop'))
  const shown = open || own.length > 0
  return (
    <section>
      <h3>
        <button type="button" className="fold" aria-expanded={shown} onClick={() => setOpen(!open)}>
          {words.piece.shop}
        </button>
      </h3>
      <p className="note soft">{words.piece.shopNote}</p>
      {shown && shop && (
        <div className="ledger">
          <Fields parameters={shop} path={['shop']} problems={own} />
        </div>
      )}
    </section>
  )
}
