import { NEAR, type Reach } from '#share'
import type { ShaderText } from '#warp'
import type { Split } from './origin.ts'

/** One stage of a pattern: a chain of warps, and what is settled after it. */
export function stageText(
  name: string,
  chain: ShaderText,
  directions: 2 | 3,
  lines: readonly string[],
  declared: readonly string[] = [],
): string {
  const head = `void ${name}Step(inout vec3 p, inout vec3 u, inout vec3 v, inout vec3 w, inout float at, inout float way, inout float seam) {`
  const all = [callOf(chain, directions), ...lines]
  return [SLAB, ...declared, chain.text, head, ...all.map((l) => `  ${l}`), '}', ''].join('\n')
}

const RATES = ['u', 'v', 'w']

/** The call of a chain on the step's variables, its branches and outputs declared. */
function callOf(chain: ShaderText, directions: number): string {
  const moving = 3 + 3 * directions
  const names = chain.parameters.map((parameter, i) => {
    if (i < 3) return `p.${'xyz'[i]!}`
    if (i < moving) return `${RATES[Math.floor(i / 3) - 1]!}.${'xyz'[i % 3]!}`
    return parameter
  })
  const declared = names.slice(moving)
  const call = /void (\w+)\(/.exec(chain.text)![1]!
  const outs = declared.length > 0 ? `float ${declared.join(', ')}; ` : ''
  return `${outs}${call}(${names.join(', ')});`
}

/** Welded skins are looked for where the run ends; `numbers`: of each, where it lies and how deep. */
export function seamLines({ seams }: Split, numbers: string): string[] {
  return seams.map(
    ({ axis }, i) =>
      `seam = 1.0 - (1.0 - seam) * (1.0 - patternSlab(p.${axis} - ${numbers}[${i}].x, u.${axis}, v.${axis}, ${numbers}[${i}].y));`,
  )
}

/** Which run comes after this one; `first`: the stage each begins with. */
export function wayLines(
  split: Split,
  chain: ShaderText,
  first: (way: Split['ways'][number]) => number,
): string[] {
  const to = (way: number) => float(way < 0 ? -1 : first(split.ways[way]!))
  const list = split.branches ?? [0]
  // Branches are outputs of the chain in the order its maps are applied; of the run's, the last decides.
  const branch = chain.parameters.filter((p) => p.startsWith('branch')).at(-1)
  const lines = [`way = ${to(list[0] ?? 0)};`]
  if (split.warp < 0 || branch === undefined) return lines
  // Branches in a row that lead the same way take one comparison.
  for (let b = 1; b < list.length; b++)
    if (list[b] !== list[b - 1])
      lines.push(`if (${branch} > ${float(b - 0.5)}) way = ${to(list[b]!)};`)
  lines.push(`if (${branch} < -0.5) way = ${to(split.below ?? -1)};`)
  return lines
}

/** How the means of one stack are read, by how far a pixel reaches. */
export type MeansOfStack = Readonly<Partial<Record<Reach, ShaderText>>>

/** The means of a pixel by its stack; `alone`: numbers, up to what run each stack is read alone (see Weighing). */
export function meansText(
  name: string,
  stacks: readonly MeansOfStack[],
  count: number,
  alone: string,
): string {
  const outs = Array.from({ length: count }, (_, i) => `means[${i}]`).join(', ')
  const call = (chain: ShaderText) => `${/void (\w+)\(/.exec(chain.text)![1]!}(l, a, b, ${outs});`
  const calls = stacks.map((of, s) =>
    [
      `  if (stack == ${float(s)}) {`,
      `    if (reach <= ${float(NEAR)}) ${call(of.near!)}`,
      ...(of.alone ? [`    else if (reach <= ${alone}[${s}].x) ${call(of.alone)}`] : []),
      `    else ${call(of.far!)}`,
      '  }',
    ].join('\n'),
  )
  return [
    `uniform vec4 ${alone}[${stacks.length}];`,
    ...stacks.flatMap((of) => Object.values(of).map((chain) => chain.text)),
    `void ${name}Means(vec3 layer, float stack, out float means[${count}]) {`,
    `  for (int i = 0; i < ${count}; i++) means[i] = 0.0;`,
    '  float l = layer.x, a = layer.y, b = layer.z, reach = abs(a) + abs(b);',
    ...calls,
    '}',
  ].join('\n')
}

export function bendText(name: string, bends: ShaderText): string {
  return [
    bends.text,
    `float ${name}Bend(vec3 own, vec3 other, bool across) {`,
    '  float x = own.x, y = own.y, z = own.z;',
    '  vec3 left = other, up = other;',
    '  float toLeft, toUp;',
    `  ${name}Bends(x, y, z, left.x, left.y, left.z, up.x, up.y, up.z, toLeft, toUp);`,
    '  return across ? toLeft : toUp;',
    '}',
    '',
  ].join('\n')
}

export function float(value: number): string {
  const text = Math.fround(value).toString()
  return /[.e]/.test(text) ? text : `${text}.0`
}

/** Share of a pixel within `depth` of a face: see `slabShare`, whose text this is. */
const SLAB = `float patternBelow(float limit, float du, float dv) {
  float g = max(abs(du), abs(dv)), h = min(abs(du), abs(dv));
  float p = (g + h) * 0.5, q = (g - h) * 0.5;
  if (limit <= -p) return 0.0;
  if (limit >= p) return 1.0;
  if (h < 1e-6 * g) return (limit + g * 0.5) / g;
  if (limit < -q) return (limit + p) * (limit + p) / (2.0 * g * h);
  if (limit > q) return 1.0 - (p - limit) * (p - limit) / (2.0 * g * h);
  return 0.5 + limit / g;
}
float patternSlab(float value, float du, float dv, float depth) {
  float reach = (abs(du) + abs(dv)) * 0.5 + depth;
  if (abs(value) > reach) return 0.0;
  return patternBelow(depth - value, du, dv) - patternBelow(-depth - value, du, dv);
}`
