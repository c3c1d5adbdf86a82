import e140 from './e140.json' with { type: 'json' }

const rows = e140.rows as [number, number][]

/** HV from HRC, ASTM E140, non-austenitic steel (E140-KT, read). Held to 20.3 to 68 HRC. */
export function vickers(hrc: number): number {
  return between(hrc, 1, 0)
}

/** HRC from HV, the same table. Held to 240 to 940 HV. */
export function rockwell(hv: number): number {
  return between(hv, 0, 1)
}

function between(x: number, from: 0 | 1, to: 0 | 1): number {
  const last = rows[rows.length - 1]!
  if (!(x > last[from])) return last[to]
  for (let i = rows.length - 2; i >= 0; i--) {
    const a = rows[i + 1]!
    const b = rows[i]!
    if (x <= b[from]) return a[to] + ((b[to] - a[to]) * (x - a[from])) / (b[from] - a[from])
  }
  return rows[0]![to]
}
