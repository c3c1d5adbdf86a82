import type { Warp } from '#warp'

/**
 * The chain as one would write it first: a closure a step over points as objects. What P3 is counted against; only the
 * kinds the chain uses, its ladder read from the same table by linear interpolation.
 */
interface Point {
  x: number
  y: number
  z: number
}
type Step = (p: Point) => Point

const makers: Partial<Record<Warp['kind'], (w: Warp) => Step>> = {
  draw({ numbers: { length, width, height } }) {
    return (p) => ({ x: p.x / length!, y: p.y / width!, z: p.z / height! })
  },
  affine({ numbers: n }) {
    const row = (i: number) => (p: Point) =>
      n[`m${i}0`]! * p.x + n[`m${i}1`]! * p.y + n[`m${i}2`]! * p.z + n[`o${i}`]!
    const rows = [row(0), row(1), row(2)] as const
    return (p) => ({ x: rows[0](p), y: rows[1](p), z: rows[2](p) })
  },
  turn() {
    return (p) => ({ x: p.x, y: -p.z, z: p.y })
  },
  twist({ numbers: { turnsPerMetre, phase } }) {
    return (p) => {
      const a = 2 * Math.PI * (p.x * turnsPerMetre! + phase!)
      const [c, s] = [Math.cos(a), Math.sin(a)]
      return { x: p.x, y: p.y * c + p.z * s, z: p.z * c - p.y * s }
    }
  },
  restack({ form, numbers: { pieces, length, height, kerf } }) {
    return (p) => {
      const up = p.z + (pieces! * height!) / 2
      const j = Math.min(Math.max(Math.floor(up / height!), 0), pieces! - 1)
      const z = up - j * height! - height! / 2
      const odd = form === 'folded' && j % 2 === 1
      const x = odd ? length! - p.x : p.x
      return { x: x + j * (length! + kerf!), y: p.y, z: odd ? -z : z }
    }
  },
  column({ numbers: { from, cell, start, mean }, tables }) {
    const { place, placeSlope, middle } = tables as Record<string, readonly number[]>
    return (p) => {
      const t = (p.x - from!) / cell!
      const i = Math.min(Math.max(Math.floor(t), 0), place!.length - 2)
      const f = t - i
      const at = (table: readonly number[]) => table[i]! + f * (table[i + 1]! - table[i]!)
      const x = start! + mean! * (p.x - from!) + at(place!)
      return { x, y: p.y, z: at(middle!) + p.z / (mean! + at(placeSlope!) / cell!) }
    }
  },
}

export function closures(warps: readonly Warp[], sheets: number, stackHeight: number) {
  const steps = warps.map((w) => makers[w.kind]!(w)).reverse()
  const steels = Array.from({ length: sheets }, (_, i) => i % 2)
  return (point: Point): number => {
    const p = steps.reduce((at, step) => step(at), point)
    const layer = Math.floor((p.z / stackHeight) * sheets + sheets / 2)
    return steels[Math.min(Math.max(layer, 0), sheets - 1)]!
  }
}
