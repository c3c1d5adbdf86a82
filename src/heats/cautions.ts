import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import type { TreatedSteel } from '#metallurgy'
import type { PlanFollowed } from './follow-plan.ts'
import { type Hardening, TOO_LEAN, hardensByRule } from './quench/hardening.ts'
import { type HeatRecord, ironBased } from './heat-records.ts'
import type { SteelRecord } from './layers/steel-records.ts'

/** Austenite kept that one temper does not see to, and that two do not (common practice), shares. */
const KEPT = [0.15, 0.22] as const

/** What a smith should watch, one sentence each. */
export function cautionsOf(
  steels: readonly SteelRecord[],
  heats: readonly HeatRecord[],
  compositionOf: (steel: string) => Composition,
  hardening: Hardening | undefined,
): string[] {
  const lines: string[] = []
  const group = Map.groupBy(
    steels.flatMap((s) => s.cautions.map((c) => ({ c, steel: s.steel }))),
    ({ c }) => c,
  )
  for (const [c, of] of group)
    lines.push(
      `${[...new Set(of.map((o) => o.steel))].join(' and ')}: ${c.charAt(0).toLowerCase()}${c.slice(1)}`,
    )
  const least = KEPT[(hardening?.tempers.length ?? 0) < 2 ? 0 : 1]
  for (const { steel, retained } of steels)
    if (retained && retained.value > least)
      lines.push(
        `${steel} keeps about ${Math.round(retained.value * 100)} % austenite: ${least === KEPT[0] ? 'temper twice' : 'harden cooler, or cool it well below freezing before the temper'}.`,
      )
  for (const { steel, carbon } of steels) {
    const composition = compositionOf(steel)
    if (!ironBased(composition))
      lines.push(
        `${steel} is no steel and stays soft; makers lay it as a barrier to carbon, and what it takes up is not known here.`,
      )
    else if (carbon.value < TOO_LEAN)
      lines.push(
        `${steel} ends with ${carbon.value.toFixed(2)} % carbon: too little to harden for an edge.`,
      )
    else if (!hardensByRule(composition, carbon.value) && hardening)
      lines.push(
        `${steel} has too much chromium for the rules of plain steels: its window and hardness are not worked out. Go by its maker's sheet.`,
      )
  }
  // Burning is told as a warning; of the other heats only those of treating leave their grain.
  for (const { cautions, step, purpose, do: verb } of heats)
    if (purpose === 'normalise' || purpose === 'harden')
      for (const c of cautions) lines.push(`Step ${step}, ${verb}: ${c}`)
  return [...new Set(lines)]
}

/** Where a model was asked beyond what it was published for: each once, in its place, in the words of the shop. */
export function rangeProblems(
  followed: PlanFollowed,
  heats: readonly HeatRecord[],
  steels: readonly { readonly steel: string; readonly treated?: TreatedSteel }[],
  hardening: Hardening | undefined,
  compositionOf: (steel: string) => Composition,
): Problem[] {
  const ofSteel = steels.flatMap(({ steel, treated }) =>
    (treated?.outOfRange ?? []).map((p) => ({
      ...p,
      at: hardening?.at ?? p.at,
      what: `${steel}: ${p.what}`,
    })),
  )
  const all = [
    ...followed.warnings,
    ...heats.flatMap((h) => h.outOfRange),
    ...ofSteel,
    ...beyondActivity(followed, compositionOf),
  ]
  return all.map((p) => ({
    ...p,
    what: inCelsius(p.what),
    why: inCelsius(p.why),
    try: p.try.map(inCelsius),
  }))
}

/** wt% of one metal the activity of carbon was described to (OC-TDB, MOBK); beyond it is held there. */
const DESCRIBED = 20
const described = ['Ni', 'Cr', 'Mn', 'Si'] as const

function beyondActivity(
  { steps }: PlanFollowed,
  compositionOf: (steel: string) => Composition,
): Problem[] {
  const steels = new Set(
    steps
      .at(-1)
      ?.metal.flat()
      .map((p) => p.steel),
  )
  return [...steels].flatMap((steel) =>
    described
      .map((metal) => [metal, percent(compositionOf(steel), metal)] as const)
      .filter(([, w]) => w > DESCRIBED)
      .map(([metal, w]) => ({
        at: 'steels',
        what: `${steel}: ${w} wt% ${metal} is outside the published range of the activity of carbon.`,
        why: `It is described to ${DESCRIBED} wt%: how much carbon this metal takes up is a guess.`,
        try: ['Read the carbon beside it as a rough guide only.'],
      })),
  )
}

/** Models speak kelvin; smiths do not. */
function inCelsius(text: string): string {
  const degrees = (k: string) => String(Math.round(Number(k) - 273.15))
  return text
    .replace(
      /([\d.]+) to ([\d.]+) K\b/g,
      (_, a: string, b: string) => `${degrees(a)} to ${degrees(b)} °C`,
    )
    .replace(/([\d.]+) K\b/g, (_, a: string) => `${degrees(a)} °C`)
}
