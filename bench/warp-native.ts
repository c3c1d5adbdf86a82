import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Node } from '../src/warp/graph.ts'
import { tableValues, type Group, type Program, type Stage } from '../src/warp/program.ts'

export interface NativeBuild {
  readonly name: string
  readonly compiler: string
  readonly flags: readonly string[]
  readonly precision: 'f32' | 'f64'
}

/** The program as C: the same groups, the same tiles, numbers and tables in memory; the compiler makes the vectors. */
export function nativeText(program: Program): string {
  const real = program.precision === 'f32' ? 'float' : 'double'
  const suffix = program.precision === 'f32' ? 'f' : ''
  return [
    '#include <math.h>',
    `typedef ${real} real;`,
    `real numbers[${Math.max(1, program.uniformCount)}];`,
    ...program.tables.map((t, i) => `real table${i}[${t.length}];`),
    ...Array.from(
      { length: program.channels },
      (_, i) => `real channel${i}[4096] __attribute__((aligned(64)));`,
    ),
    ...program.groups.map((group, i) => groupText(group, i, suffix)),
    'void run(int n) {',
    ...program.groups.map((_, i) => `  group${i}(n);`),
    '}',
    '',
  ].join('\n')
}

function groupText(group: Group, index: number, suffix: string): string {
  const names = new Map<Node, string>()
  const literal = (value: number) => {
    const text = (suffix ? Math.fround(value) : value).toString()
    return `${/[.e]/.test(text) ? text : `${text}.0`}${suffix}`
  }
  const value = (node: Node): string => {
    if (node.op === 'const') return literal(node.at)
    if (node.op === 'input') return `i${node.at}`
    const slot = group.uniforms.get(node)
    return slot === undefined ? names.get(node)! : `u${slot}`
  }
  const line = (node: Node): string => {
    const [a, b, c, d] = node.args.map(value)
    switch (node.op) {
      case 'add':
        return `${a} + ${b}`
      case 'sub':
        return `${a} - ${b}`
      case 'mul':
        return `${a} * ${b}`
      case 'div':
        return `${a} / ${b}`
      case 'min':
        return `${b} < ${a} ? ${b} : ${a}`
      case 'max':
        return `${a} < ${b} ? ${b} : ${a}`
      case 'less':
        return `${a} < ${b} ? ${c} : ${d}`
      case 'fetch':
        return `table${group.tables[node.table]!}[(int)${a} + ${node.at}]`
      case 'abs':
        return `fabs${suffix}(${a})`
      default:
        return `${node.op}${suffix}(${a})`
    }
  }
  const body = group.order.map((node, i) => {
    const text = `    real t${i} = ${line(node)};`
    names.set(node, `t${i}`)
    return text
  })
  return [
    `static void group${index}(int n) {`,
    ...[...group.uniforms.values()].map((slot) => `  const real u${slot} = numbers[${slot}];`),
    '  for (int k = 0; k < n; k++) {',
    ...group.reads.map((c) => `    real i${c} = channel${c}[k];`),
    ...body,
    ...group.writes.map(({ node }, i) => `    real e${i} = ${value(node)};`),
    ...group.writes.map(({ channel }, i) => `    channel${channel}[k] = e${i};`),
    '  }',
    '}',
  ].join('\n')
}

/** A whole program that fills the face's rows, runs the tiles and prints the best time and the steels' sum. */
function mainText(program: Program, steps: readonly Stage[], face: NativeFace): string {
  const numbers = program.uniforms(steps)
  const { values, starts } = tableValues(program, steps)
  const list = (all: ArrayLike<number>) => Array.from(all, (v) => v.toPrecision(17)).join(',')
  const steel = program.outputs[0]!.channel
  return [
    '#include <stdio.h>',
    '#include <stdlib.h>',
    '#include <string.h>',
    '#include <time.h>',
    `static const double numbers0[] = {${list(numbers)}};`,
    ...program.tables.map(
      (t, i) =>
        `static const double entries${i}[] = {${list(values.subarray(starts[i], starts[i]! + t.length))}};`,
    ),
    `#define COLUMNS ${face.columns}`,
    `#define ROWS ${face.rows}`,
    `#define TILE ${face.tile}`,
    'static real ramp[COLUMNS];',
    'int main(void) {',
    `  for (int i = 0; i < ${numbers.length}; i++) numbers[i] = (real)numbers0[i];`,
    ...program.tables.map(
      (t, i) => `  for (int i = 0; i < ${t.length}; i++) table${i}[i] = (real)entries${i}[i];`,
    ),
    `  for (int i = 0; i < COLUMNS; i++) ramp[i] = (real)(((i + 0.5) / COLUMNS) * ${face.length});`,
    '  real *out = malloc(sizeof(real) * COLUMNS * ROWS);',
    `  double bands[ROWS / ${face.band}], best = 0, sum = 0;`,
    `  for (int b = 0; b < ROWS / ${face.band}; b++) bands[b] = 1e9;`,
    `  for (int turn = 0; turn < ${face.repeats}; turn++)`,
    `  for (int b = 0; b < ROWS / ${face.band}; b++) {`,
    '    struct timespec from, to;',
    '    clock_gettime(CLOCK_MONOTONIC, &from);',
    `    for (int row = b * ${face.band}; row < (b + 1) * ${face.band}; row++) {`,
    `      double y = ((row + 0.5) / ROWS - 0.5) * ${face.width};`,
    `      double z = ${face.spine} - ${face.slope} * fabs(y);`,
    '      for (int start = 0; start < COLUMNS; start += TILE) {',
    '        memcpy(channel0, ramp + start, sizeof(real) * TILE);',
    '        for (int i = 0; i < TILE; i++) { channel1[i] = (real)y; channel2[i] = (real)z; }',
    '        run(TILE);',
    `        memcpy(out + (size_t)row * COLUMNS + start, channel${steel}, sizeof(real) * TILE);`,
    '      }',
    '    }',
    '    clock_gettime(CLOCK_MONOTONIC, &to);',
    '    double t = (to.tv_sec - from.tv_sec) * 1e3 + (to.tv_nsec - from.tv_nsec) / 1e6;',
    '    if (t < bands[b]) bands[b] = t;',
    '  }',
    `  for (int b = 0; b < ROWS / ${face.band}; b++) best += bands[b];`,
    '  for (size_t i = 0; i < (size_t)COLUMNS * ROWS; i++) sum += out[i];',
    '  printf("%.6f %.1f\\n", best, sum);',
    '  return 0;',
    '}',
  ].join('\n')
}

export interface NativeFace {
  readonly columns: number
  readonly rows: number
  /** Rows timed together. */
  readonly band: number
  readonly tile: number
  readonly repeats: number
  readonly length: number
  readonly width: number
  readonly spine: number
  readonly slope: number
}

/** Compiles and runs; undefined where the compiler is not installed or the machine lacks the instructions. */
export function runNative(
  build: NativeBuild,
  program: Program,
  steps: readonly Stage[],
  face: NativeFace,
): { milliseconds: number; sum: number } | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'billetwright-bench-'))
  const source = join(folder, 'chain.c')
  const binary = join(folder, 'chain')
  writeFileSync(source, nativeText(program) + mainText(program, steps, face))
  const flags = ['-O3', '-fno-math-errno', '-fno-trapping-math', '-w', ...build.flags]
  const made = spawnSync(build.compiler, [...flags, source, '-o', binary, '-lm'], {
    encoding: 'utf8',
  })
  if (made.status !== 0) {
    if (made.stderr) console.error(made.stderr.slice(0, 400))
    return undefined
  }
  const ran = spawnSync(binary, [], { encoding: 'utf8' })
  if (ran.status !== 0) return undefined
  const [milliseconds, sum] = ran.stdout.trim().split(' ').map(Number) as [number, number]
  return { milliseconds, sum }
}
