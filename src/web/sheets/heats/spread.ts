/** Places for labels that want to stand at `at`, none nearer to another than `apart`, all within the limits. */
export function spreadLabels(
  at: readonly number[],
  apart: number,
  low: number,
  high: number,
): number[] {
  const order = at.map((_, i) => i).sort((a, b) => at[a]! - at[b]!)
  const places = order.map((i) => at[i]!)
  for (let i = 1; i < places.length; i++) places[i] = Math.max(places[i]!, places[i - 1]! + apart)
  // Pushed too far: back from the end.
  let limit = high
  for (let i = places.length - 1; i >= 0; i--) {
    places[i] = Math.max(low, Math.min(places[i]!, limit))
    limit = places[i]! - apart
  }
  const result = Array<number>(at.length)
  order.forEach((i, k) => (result[i] = places[k]!))
  return result
}
