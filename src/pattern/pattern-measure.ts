import { type Reach, type Weighing, type Weights, aloneTo, meanStage, weighPile } from '#share'
import { type TailStage, shaderText } from '#warp'
import { LEAST, bendStage } from './bend-reader.ts'
import { cutsOf } from './joints.ts'
import { type Origin, stacksOf } from './origin.ts'
import { bendText, meansText } from './pattern-shader-text.ts'
import { type ShaderValues, Values } from './shader-values.ts'

const REACH_NAMES: Readonly<Record<Reach, string>> = { near: 'Near', alone: 'Alone', far: 'Far' }
const REACHES = Object.keys(REACH_NAMES) as readonly Reach[]

/** The measuring of a pixel (see PatternShader): its text, and values for it, if it is the right text. */
export function patternMeasure(name: string, origin: Origin, means: number) {
  const sampler = `${name}Weights`
  const bends = bendStage(LEAST)
  const bending = shaderText([], { directions: 2, tail: bends, name: `${name}Bends`, sampler })
  const blank = Array.from({ length: means }, () => ({}))
  const chains = weighed(origin, blank).map((of, s) =>
    byReach(of, (reach, tail) =>
      shaderText([], { tail, name: `${name}${REACH_NAMES[reach]}${s}`, sampler }),
    ),
  )
  const text = [
    ...(means > 0 ? [meansText(name, chains, means, `${name}Alone`)] : []),
    bendText(name, bending),
  ].join('\n')
  const values = (other: Origin, weights: readonly Weights[]): ShaderValues | undefined => {
    const stacks = weighed(other, weights)
    if (weights.length !== means || stacks.length !== chains.length) return undefined
    const made = new Values()
    made.add(`${name}BendsNumbers`, bending, [], bends)
    for (const [s, of] of stacks.entries()) {
      const tails = byReach(of, (_, tail) => tail)
      for (const reach of REACHES) {
        const [chain, tail] = [chains[s]![reach], tails[reach]]
        if (!chain && !tail) continue
        const own = `${name}${REACH_NAMES[reach]}${s}Numbers`
        if (!chain || !tail || !made.add(own, chain, [], tail)) return undefined
      }
    }
    made.numbers[`${name}Alone`] = Float32Array.from(
      stacks.flatMap((of) => [aloneTo(of[0]!), 0, 0, 0]),
    )
    return made.told(bending.tableWidth)
  }
  return { text, values }
}

/** What each stack is weighed by; nothing where nothing is. */
function weighed(origin: Origin, weights: readonly Weights[]): readonly (readonly Weighing[])[] {
  if (weights.length === 0) return []
  const cuts = cutsOf(origin)
  return stacksOf(origin).map((s, i) => weighPile(s, weights, i, cuts?.get(s)))
}

/** A stack is read near and far, and alone where its joints are unlike. */
function byReach<T>(
  of: readonly Weighing[],
  make: (reach: Reach, tail: TailStage) => T,
): Partial<Record<Reach, T>> {
  const reaches = REACHES.filter((reach) => reach !== 'alone' || aloneTo(of[0]!) > 0)
  return Object.fromEntries(
    reaches.map((reach) => [reach, make(reach, meanStage(of, 'f32', reach))]),
  )
}
