const waiting = new Map<object, () => void>()

/**
 * Draws once the frame that shows the figures is out: figures are read first, and a card of fifty
 * drawings would hold them up. Of several asked for in one place the last is drawn. Returns what
 * takes it back.
 */
export function drawSoon(place: object, draw: () => void): () => void {
  if (waiting.size === 0) requestAnimationFrame(() => setTimeout(drawAll))
  waiting.set(place, draw)
  return () => {
    if (waiting.get(place) === draw) waiting.delete(place)
  }
}

function drawAll(): void {
  const now = [...waiting.values()]
  waiting.clear()
  for (const draw of now) draw()
}
