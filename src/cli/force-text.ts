import { printCount } from '#units'
import type { AskedForce, AskedStamp, ForceAnswer, StampAnswer } from '#job'
import { type Ink, blowsOf, ranged, sayIn } from '#report'

/** A tool asked about, by the name it was given. */
export interface ForceTool {
  readonly name: string
  readonly tool: AskedForce['tools'][number]
  /** Asked what it must have, not whether it is enough. */
  readonly unlimited?: boolean
}

const metric = sayIn('metric')
const megapascals = (Pa: number) => String(Math.round(Pa / 1e6))
const wordless = (three: readonly [number, number, number]) => ({
  low: three[0],
  value: three[1],
  high: three[2],
})

function steelsSaid({ steels, onEdge }: Pick<AskedForce, 'steels' | 'onEdge'>): string {
  return `${steels.join(' and ')}${onEdge ? ', layers on edge' : ''}`
}

export function forceText(
  asked: AskedForce,
  answer: ForceAnswer,
  tools: readonly ForceTool[],
  ink: Ink,
): string {
  const { width, height, length, toHeight } = asked
  const lines = [
    `${metric.size({ width, height, length })} of ${steelsSaid(asked)} at ${metric.temperature(asked.temperature)}, to ${metric.length(toHeight)}`,
    `comes out ${ranged(wordless(answer.width), metric.length)} wide and ${ranged(wordless(answer.length), metric.length)} long, in ${printCount(answer.passes, 'pass')}${answer.turns > 0 ? ` with ${printCount(answer.turns, 'turn')}` : ''}`,
  ]
  answer.judged.forEach(({ judgement: j }, i) => {
    const { name, tool, unlimited } = tools[i]!
    const press = tool.kind === 'press'
    const heats = printCount(j.heats, 'heat')
    const takes = press
      ? `${ranged(j.force, metric.force)}, ${printCount(Math.round(j.blows.value), 'squeeze')}`
      : blowsOf(j.blows)
    lines.push(
      `${ink.bold(name)}: ${unlimited ? 'must have ' : ''}${takes}, ${heats}${unlimited ? '' : `; ${ink.bold(j.verdict)}`}`,
      `  flow stress ${ranged(j.flowStress, megapascals, ' MPa')} by ${lawsOf(j.flowStress)}`,
      ...(unlimited ? [] : j.wouldDo.map((cure) => `  try: ${cure}`)),
    )
  })
  lines.push(...answer.cautions.map((c) => ink.soft(`note: ${c.what} ${c.why}`)))
  return `${lines.join('\n')}\n`
}

function lawsOf({ basis }: { readonly basis: readonly { readonly law: string }[] }): string {
  return [...new Set(basis.map((b) => b.law))].join('; ')
}

export function stampText(
  asked: AskedStamp,
  answer: StampAnswer,
  tools: readonly ForceTool[],
  ink: Ink,
): string {
  const { emblem, at } = answer
  const millimetres2 = (m2: number) => `${Math.round(m2 * 1e6)} mm²`
  const lines = [
    `emblem ${metric.length(emblem.size[0])} × ${metric.length(emblem.size[1])}: ${millimetres2(emblem.area)} raised, edge ${metric.length(emblem.perimeter)}, strokes ${metric.length(emblem.stroke)} in the mean, ${metric.length(emblem.thinnest)} at the thinnest`,
    `${metric.length(asked.depth)} deep in ${steelsSaid(asked)} ${metric.length(asked.thickness)} thick`,
  ]
  for (const { temperature, advice } of at)
    advice.forEach(({ advice: a }, i) => {
      const { name, tool, unlimited } = tools[i]!
      const takes = tool.kind === 'press' ? ranged(a.force, metric.force) : blowsOf(a.blows)
      const verdict = unlimited ? '' : `; ${ink.bold(a.verdict)}`
      lines.push(
        `${metric.temperature(temperature).padStart(8)}  ${ink.bold(name)}${unlimited ? ' of' : ':'} ${takes}${verdict}`,
      )
    })
  const asSaid = at[1]?.advice[0]?.advice
  if (asSaid) {
    lines.push(
      `${metric.length(asSaid.depthLeft)} is left when ${metric.length(asked.takenOff)} has come off the face; strokes under ${metric.length(asSaid.smallestStroke)} do not last; crack risk ${asSaid.crack.risk}`,
      `layers below sink with it: a tenth of that is left ${metric.length(asSaid.bending.reach)} below the face`,
      ...asSaid.wouldDo.map((cure) => `  try: ${cure}`),
      ...asSaid.cautions.map((c) => ink.soft(`note: ${c.what} ${c.why}`)),
    )
  }
  return `${lines.join('\n')}\n`
}
