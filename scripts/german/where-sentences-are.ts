/** The rooms whose sentences the app shows. */
export const rooms: readonly string[] = [
  'units',
  'parameters',
  'steel',
  'job',
  'planner',
  'heats',
  'metallurgy',
  'forming',
  'shop',
  'piece',
  'operations',
]

const figures = 'says where a figure is from, and where it holds: printed by the command line'
const commands = 'asked by the command line and over the wire, never in the app'
const laws = 'tries the operations out: said to nobody but their makers'

/** Places in those rooms that never speak in the app, and why. */
export const notShown: Readonly<Record<string, string>> = {
  'units/number-text.ts': 'codes, told by the refusal',
  'units/unit-name.ts': 'breaks a rule of the program',
  'units/unit-table.ts': 'names of units as they are read',
  'parameters/describe.ts': 'the printed reference',
  'parameters/write.ts': 'units as the file has them',
  'steel/density.ts': figures,
  'job/ask-force.ts': commands,
  'job/card-steps.ts': 'a place in the card record',
  'job/job-schema.ts': 'the schema of the file',
  'job/planning/stock.ts': commands,
  'job/starter-job.ts': 'writes a job',
  'job/steel-sheet.ts': commands,
  'job/weigh-bar.ts': commands,
  'job/write-job.ts': 'writes a job',
  'planner/layer-count.ts': commands,
  'planner/range/': commands,
  'heats/layers/': 'codes',
  'metallurgy/diffusion/': figures,
  'metallurgy/estimate.ts': figures,
  'metallurgy/etch/': figures,
  'metallurgy/hardenability/': figures,
  'metallurgy/hardness/': figures,
  'metallurgy/heat-cycle/': figures,
  'metallurgy/heating/': figures,
  'metallurgy/hot-steel/': figures,
  'metallurgy/mobility/': figures,
  'metallurgy/scale/': figures,
  'metallurgy/skin/': figures,
  'metallurgy/transformation/': figures,
  'forming/estimate.ts': figures,
  'forming/flow-stress/': figures,
  'forming/pressing/': figures,
  'forming/spread/flat-tools.ts': figures,
  'forming/stack/': figures,
  'operations/laws.ts': laws,
  'operations/movement-laws.ts': laws,
  'operations/sample-pieces.ts': laws,
  'operations/samples.ts': laws,
  'operations/text-art.ts': laws,
  'operations/trials.ts': laws,
}

/** Literals that only look like sentences. */
export const noSentences: ReadonlySet<string> = new Set([
  // Codes, compared and looked up, never shown.
  'can do',
  'layers lost',
  'oil, fast',
  'oil, moved',
  'read secondary',
  'from memory',
  'common practice',
  'too cold',
  'too hot',
  'water, moved',
  // How a build came to be: told apart by it, not shown.
  '{0} leaves unfolded',
  'bent {0}',
  'cut on the diagonals, layers {0}',
  'edge bar wrapped round the point',
  'forged round',
  'forged to an octagon',
  'forged to outline',
  'forged to shape',
  'pressed with {0} dies',
  'round the middle',
  'to the middle',
  'twisted {0}, {1} pitch',
  // Notes and laws that a figure of the models carries with it; the command line prints them.
  'the Fe-C solidus',
  'the grain growth laws',
  'Between Sellars and Whiteman (from memory) and LZ50 (GG). Carbides left undissolved, aluminium and vanadium hold grains back.',
  'Pure Fe-C. Phosphorus, sulphur and segregation start it earlier at the grain boundaries.',
])

/** Sizes as `#units` prints them from its table: no literal says them whole. */
export const printedSizes: readonly string[] = [
  '{0} per inch',
  '{0} per mm',
  '{0} mm pitch',
  '{0} turn',
  '{0} turns',
]
