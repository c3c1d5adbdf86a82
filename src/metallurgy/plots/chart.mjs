// A small chart as SVG text: curves, published points, labels at the right. Plain, for print.
const inks = ['#171716', '#8a3b12', '#1f5673', '#5b5b58', '#8a6d12', '#3b6b3b']
const frame = { left: 64, right: 450, top: 16, bottom: 330, wide: 640, high: 380 }

/** Evenly spaced numbers from a to b. */
export function range(a, b, n = 60) {
  return Array.from({ length: n + 1 }, (_, i) => a + ((b - a) * i) / n)
}

export function chart(title, x, y, series) {
  const scale = (axis, low, high) => {
    const map = axis.log ? Math.log10 : (v) => v
    const span = map(axis.to) - map(axis.from)
    return (v) => low + ((map(v) - map(axis.from)) / span) * (high - low)
  }
  const px = scale(x, frame.left, frame.right)
  const py = scale(y, frame.bottom, frame.top)
  const inside = ([a, b]) => a >= x.from && a <= x.to && b >= y.from && b <= y.to
  const at = ([a, b]) => `${px(a).toFixed(1)} ${py(b).toFixed(1)}`
  const out = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.wide} ${frame.high}" font-family="sans-serif" font-size="12">`,
    `<title>${title}</title><rect width="${frame.wide}" height="${frame.high}" fill="#fff"/>`,
  ]
  for (const v of x.ticks)
    out.push(
      `<path d="M${px(v).toFixed(1)} ${frame.top}V${frame.bottom}" stroke="#e3e3e3"/><text x="${px(v).toFixed(1)}" y="${frame.bottom + 16}" text-anchor="middle">${v}</text>`,
    )
  for (const v of y.ticks)
    out.push(
      `<path d="M${frame.left} ${py(v).toFixed(1)}H${frame.right}" stroke="#e3e3e3"/><text x="${frame.left - 6}" y="${(py(v) + 4).toFixed(1)}" text-anchor="end">${v}</text>`,
    )
  out.push(
    `<text x="${(frame.left + frame.right) / 2}" y="${frame.high - 10}" text-anchor="middle">${x.label}</text>`,
    `<text transform="translate(16 ${(frame.top + frame.bottom) / 2}) rotate(-90)" text-anchor="middle">${y.label}</text>`,
  )
  series.forEach((s, i) => {
    const ink = s.ink ?? inks[i % inks.length]
    const labelY = frame.top + 14 + i * 18
    if (s.line) {
      const path = s.line.filter(inside).map(at).join('L')
      out.push(
        `<path d="M${path}" fill="none" stroke="${ink}" stroke-width="1.6"${s.dash ? ` stroke-dasharray="${s.dash}"` : ''}/>`,
      )
      out.push(
        `<path d="M${frame.right + 12} ${labelY - 4}h18" stroke="${ink}" stroke-width="1.6"${s.dash ? ` stroke-dasharray="${s.dash}"` : ''}/>`,
      )
    }
    for (const p of (s.points ?? []).filter(inside))
      out.push(
        `<circle cx="${px(p[0]).toFixed(1)}" cy="${py(p[1]).toFixed(1)}" r="3" fill="none" stroke="${ink}"/>`,
      )
    if (s.points)
      out.push(
        `<circle cx="${frame.right + 21}" cy="${labelY - 4}" r="3" fill="none" stroke="${ink}"/>`,
      )
    out.push(`<text x="${frame.right + 36}" y="${labelY}">${s.name}</text>`)
  })
  out.push('</svg>', '')
  return out.join('\n')
}
