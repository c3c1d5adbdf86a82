// A small line chart as SVG text: axes, lines, points, a legend. No styling beyond legibility.
const [W, H, left, right, top, bottom] = [640, 380, 62, 170, 14, 46]
const inks = ['#1f4e79', '#b3541e', '#3d7a3d', '#7a3d6d', '#555555', '#a08a00']

const place = ({ from, to, log }, a, b) => {
  const f = log ? Math.log : (x) => x
  return (x) => a + ((f(x) - f(from)) / (f(to) - f(from))) * (b - a)
}
const short = (x) => Number(x.toPrecision(4)).toString()
const at = (x) => x.toFixed(1)

/** axes: {label, from, to, ticks, log}; series: {name, line?: [[x, y]], points?: [[x, y]], dash?, band?: [[x, low, high]]} */
export function chart(title, x, y, series) {
  const [px, py] = [place(x, left, W - right), place(y, H - bottom, top)]
  const out = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${W} ${H}" font-family="sans-serif" font-size="12">`,
    `<title>${title}</title><rect width="${W}" height="${H}" fill="#fff"/>`,
  ]
  for (const t of x.ticks)
    out.push(
      `<path d="M${at(px(t))} ${top}V${H - bottom}" stroke="#e3e3e3"/><text x="${at(px(t))}" y="${H - bottom + 16}" text-anchor="middle">${short(t)}</text>`,
    )
  for (const t of y.ticks)
    out.push(
      `<path d="M${left} ${at(py(t))}H${W - right}" stroke="#e3e3e3"/><text x="${left - 6}" y="${at(py(t) + 4)}" text-anchor="end">${short(t)}</text>`,
    )
  out.push(
    `<rect x="${left}" y="${top}" width="${W - right - left}" height="${H - bottom - top}" fill="none" stroke="#444"/>`,
    `<text x="${(left + W - right) / 2}" y="${H - 10}" text-anchor="middle">${x.label}</text>`,
    `<text transform="translate(16 ${(top + H - bottom) / 2}) rotate(-90)" text-anchor="middle">${y.label}</text>`,
  )
  series.forEach((s, i) => {
    const ink = s.ink ?? inks[i % inks.length]
    const within = ([a, b]) => a >= x.from && a <= x.to && b >= y.from && b <= y.to
    if (s.band)
      out.push(
        `<path d="M${s.band.map(([a, , h]) => `${at(px(a))} ${at(py(h))}`).join('L')}L${s.band
          .toReversed()
          .map(([a, l]) => `${at(px(a))} ${at(py(l))}`)
          .join('L')}Z" fill="${ink}" opacity="0.15"/>`,
      )
    if (s.line) {
      const d = s.line.filter(within).map(([a, b]) => `${at(px(a))} ${at(py(b))}`)
      out.push(
        `<path d="M${d.join('L')}" fill="none" stroke="${ink}" stroke-width="1.6"${s.dash ? ` stroke-dasharray="${s.dash}"` : ''}/>`,
      )
    }
    for (const p of (s.points ?? []).filter(within))
      out.push(
        `<circle cx="${at(px(p[0]))}" cy="${at(py(p[1]))}" r="3.4" fill="#fff" stroke="${ink}" stroke-width="1.5"/>`,
      )
    const ly = top + 10 + 18 * i
    const mark =
      s.points && !s.line
        ? `<circle cx="${W - right + 20}" cy="${ly}" r="3.4" fill="#fff" stroke="${ink}" stroke-width="1.5"/>`
        : `<path d="M${W - right + 10} ${ly}h20" stroke="${ink}" stroke-width="${s.band ? 8 : 1.6}"${s.band ? ' opacity="0.25"' : ''}${s.dash ? ` stroke-dasharray="${s.dash}"` : ''}/>`
    out.push(`${mark}<text x="${W - right + 36}" y="${ly + 4}">${s.name}</text>`)
  })
  return out.join('\n') + '\n</svg>\n'
}

export const range = (from, to, n = 80) =>
  Array.from({ length: n + 1 }, (_, i) => from + ((to - from) * i) / n)
