import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Node } from '../src/warp/graph.ts'
import { tableValues, type Program, type Stage } from '../src/warp/program.ts'
import type { NativeFace } from './warp-native.ts'

const HEADERS = '/usr/include/halide14'

/** The program, one kernel, as a Halide expression compiled by its JIT for this processor: 16 points at once. */
function halideText(program: Program, steps: readonly Stage[], face: NativeFace): string {
  const group = program.groups[0]!
  const numbers = program.uniforms(steps)
  const { values, starts } = tableValues(program, steps)
  const list = (all: ArrayLike<number>) => Array.from(all, (v) => `${v.toPrecision(12)}f`).join(',')
  const names = new Map<Node, string>()
  const value = (node: Node): string => {
    if (node.op === 'const') return `Expr((float)${node.at.toPrecision(17)})`
    if (node.op === 'input') return `i${node.at}`
    const slot = group.uniforms.get(node)
    return slot === undefined ? names.get(node)! : `u[${slot}]`
  }
  const body = group.order.map((node, i) => {
    const [a, b, c, d] = node.args.map(value)
    names.set(node, `t${i}`)
    const signs = { add: '+', sub: '-', mul: '*', div: '/' } as Partial<Record<string, string>>
    const sign = signs[node.op]
    const text = sign
      ? `${a} ${sign} ${b}`
      : node.op === 'less'
        ? `select(${a} < ${b}, ${c}, ${d})`
        : node.op === 'fetch'
          ? `table${group.tables[node.table]!}(clamp(cast<int>(${a}) + ${node.at}, 0, ${program.tables[group.tables[node.table]!]!.length - 1}))`
          : `${node.op}(${[a, b].filter((v) => v !== undefined).join(', ')})`
    return `  Expr t${i} = ${text};`
  })
  const steel = group.writes.find((w) => w.channel === program.outputs[0]!.channel)!
  return [
    '#include <Halide.h>',
    '#include <chrono>',
    '#include <cstdio>',
    'using namespace Halide;',
    `static float numbers[] = {${list(numbers)}};`,
    ...program.tables.map(
      (t, i) =>
        `static float entries${i}[] = {${list(values.subarray(starts[i], starts[i]! + t.length))}};`,
    ),
    'int main() {',
    '  Var c, r; Func f;',
    `  std::vector<Param<float>> u(${numbers.length});`,
    `  for (int i = 0; i < ${numbers.length}; i++) u[i].set(numbers[i]);`,
    ...program.tables.map((t, i) => `  Buffer<float> table${i}(entries${i}, ${t.length});`),
    `  Expr i0 = (cast<float>(c) + 0.5f) * ${face.length / face.columns}f;`,
    `  Expr i1 = ((cast<float>(r) + 0.5f) / ${face.rows}.0f - 0.5f) * ${face.width}f;`,
    `  Expr i2 = ${face.spine}f - ${face.slope}f * abs(i1);`,
    ...body,
    `  f(c, r) = ${value(steel.node)};`,
    '  f.vectorize(c, 16);',
    '  f.compile_jit(get_jit_target_from_environment());',
    `  Buffer<float> out(${face.columns}, ${face.rows});`,
    `  const int count = ${face.rows / face.band};`,
    '  double best = 0, sum = 0;',
    '  std::vector<double> bands(count, 1e9);',
    `  for (int k = 0; k < ${face.repeats}; k++) for (int b = 0; b < count; b++) {`,
    `    Buffer<float> band(out.get()->cropped(1, b * ${face.band}, ${face.band}));`,
    '    auto a = std::chrono::steady_clock::now();',
    '    f.realize(band);',
    '    double t = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - a).count();',
    '    if (t < bands[b]) bands[b] = t;',
    '  }',
    '  for (double t : bands) best += t;',
    '  for (int j = 0; j < out.height(); j++) for (int i = 0; i < out.width(); i++) sum += out(i, j);',
    '  printf("%.6f %.1f\\n", best, sum);',
    '}',
  ].join('\n')
}

/** Undefined where Halide 14 of Debian is not installed (libhalide14-0-dev). */
export function runHalide(
  program: Program,
  steps: readonly Stage[],
  face: NativeFace,
): { milliseconds: number; sum: number } | undefined {
  if (!existsSync(HEADERS)) return undefined
  const folder = mkdtempSync(join(tmpdir(), 'billetwright-bench-'))
  const [source, binary] = [join(folder, 'chain.cpp'), join(folder, 'chain')]
  writeFileSync(source, halideText(program, steps, face))
  const made = spawnSync(
    'g++',
    [
      '-O1',
      '-std=c++17',
      `-I${HEADERS}`,
      source,
      '-o',
      binary,
      '-l:libHalide14.so',
      '-lpthread',
      '-ldl',
    ],
    { encoding: 'utf8' },
  )
  if (made.status !== 0) {
    console.error(made.stderr.slice(0, 600))
    return undefined
  }
  const ran = spawnSync(binary, [], { encoding: 'utf8' })
  if (ran.status !== 0) {
    console.error(ran.stderr.slice(0, 400))
    return undefined
  }
  const [milliseconds, sum] = ran.stdout.trim().split(' ').map(Number) as [number, number]
  return { milliseconds, sum }
}
