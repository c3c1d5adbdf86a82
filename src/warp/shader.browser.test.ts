import { existsSync, readFileSync } from 'node:fs'
import { chromium, type Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { compile, type CompileOptions, type Points } from './evaluate.ts'
import { warpKinds } from './kinds.ts'
import { shaderText } from './shader.ts'
import {
  affine,
  draw,
  restack,
  turn,
  twist,
  type Domain,
  type TailStage,
  type Warp,
} from './index.ts'

/** What the page is given for one drawing: a shader, its numbers and tables, and the points. */
interface Drawing {
  readonly text: string
  readonly outputs: string
  readonly parameters: readonly string[]
  readonly numbers: number[]
  readonly tables: number[]
  readonly points: number[]
}

let browser: Browser

/** The browser that set-up found, else the usual place. */
function browserPath(): string {
  const found = new URL('../../.setup/browser.json', import.meta.url)
  if (!existsSync(found)) return '/usr/bin/chromium'
  return (JSON.parse(readFileSync(found, 'utf8')) as { executablePath: string }).executablePath
}

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: browserPath(),
    args: [
      '--no-sandbox',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
    ],
  })
})
afterAll(async () => {
  await browser?.close()
})

/** Runs each drawing in a page: a float texture of points in, a float texture of four results out. */
async function drawInBrowser(drawings: readonly Drawing[]): Promise<number[][]> {
  const page = await browser.newPage()
  try {
    return await page.evaluate(
      ([all, tableWidth]) => {
        const gl = document.createElement('canvas').getContext('webgl2')
        if (!gl || !gl.getExtension('EXT_color_buffer_float')) throw new Error('no float drawing')
        const stage = (type: number, source: string) => {
          const shader = gl.createShader(type)!
          gl.shaderSource(shader, source)
          gl.compileShader(shader)
          if (!gl.getShaderParameter(shader, gl.COMPILE_STATUS))
            throw new Error(`${gl.getShaderInfoLog(shader)}\n${source}`)
          return shader
        }
        const vertex = stage(
          gl.VERTEX_SHADER,
          `#version 300 es
          void main() { gl_Position = vec4(vec2(gl_VertexID & 1, gl_VertexID >> 1) * 4.0 - 1.0, 0.0, 1.0); }`,
        )
        const texture = (
          unit: number,
          format: number,
          width: number,
          height: number,
          data: Float32Array | null,
        ) => {
          gl.activeTexture(gl.TEXTURE0 + unit)
          const made = gl.createTexture()
          gl.bindTexture(gl.TEXTURE_2D, made)
          gl.texImage2D(
            gl.TEXTURE_2D,
            0,
            format,
            width,
            height,
            0,
            format === gl.R32F ? gl.RED : gl.RGBA,
            gl.FLOAT,
            data,
          )
          gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST)
          gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST)
          return made
        }
        return all.map((drawing) => {
          const outs = drawing.parameters.map((p) => `float ${p} = 0.0;`).join(' ')
          const program = gl.createProgram()!
          gl.attachShader(program, vertex)
          gl.attachShader(
            program,
            stage(
              gl.FRAGMENT_SHADER,
              `#version 300 es
              precision highp float; precision highp sampler2D;
              uniform highp sampler2D points;
              out vec4 result;
              ${drawing.text}
              void main() {
                vec4 p = texelFetch(points, ivec2(gl_FragCoord.xy), 0);
                ${outs}
                x = p.x; y = p.y; z = p.z;
                pullBack(${drawing.parameters.join(', ')});
                result = ${drawing.outputs};
              }`,
            ),
          )
          gl.linkProgram(program)
          if (!gl.getProgramParameter(program, gl.LINK_STATUS))
            throw new Error(gl.getProgramInfoLog(program)!)
          gl.useProgram(program)
          const count = drawing.points.length / 4
          const width = Math.min(count, 1024)
          const height = count / width
          texture(0, gl.RGBA32F, width, height, new Float32Array(drawing.points))
          texture(
            1,
            gl.R32F,
            tableWidth,
            Math.max(1, drawing.tables.length / tableWidth),
            drawing.tables.length > 0 ? new Float32Array(drawing.tables) : null,
          )
          const target = texture(2, gl.RGBA32F, width, height, null)
          gl.bindFramebuffer(gl.FRAMEBUFFER, gl.createFramebuffer())
          gl.framebufferTexture2D(gl.FRAMEBUFFER, gl.COLOR_ATTACHMENT0, gl.TEXTURE_2D, target, 0)
          gl.uniform1i(gl.getUniformLocation(program, 'points'), 0)
          gl.uniform1i(gl.getUniformLocation(program, 'pullBackTables'), 1)
          gl.uniform4fv(
            gl.getUniformLocation(program, 'pullBackNumbers'),
            new Float32Array(drawing.numbers),
          )
          gl.viewport(0, 0, width, height)
          gl.drawArrays(gl.TRIANGLES, 0, 3)
          const result = new Float32Array(count * 4)
          gl.readPixels(0, 0, width, height, gl.RGBA, gl.FLOAT, result)
          const error = gl.getError()
          if (error !== gl.NO_ERROR) throw new Error(`drawing failed: ${error}`)
          return Array.from(result)
        })
      },
      [drawings, shaderText([]).tableWidth] as const,
    )
  } finally {
    await page.close()
  }
}

function drawing(
  warps: readonly Warp[],
  points: Points,
  outputs: (parameters: readonly string[]) => string,
  options: Pick<CompileOptions, 'tail'> = {},
): Drawing {
  const shader = shaderText(warps, options)
  return {
    text: shader.text,
    parameters: shader.parameters,
    outputs: outputs(shader.parameters),
    numbers: Array.from(shader.numbers(warps)),
    tables: Array.from(shader.tables(warps)),
    points: Array.from(points.x).flatMap((x, i) => [x, points.y[i]!, points.z[i]!, 0]),
  }
}

/** A golden-ratio lattice over the box: even, and the same every time. */
function lattice(domain: Domain, count: number): Points {
  const share = (i: number, step: number) => ((i + 0.5) * step) % 1
  const side = ([a, b]: readonly [number, number], step: number) =>
    Float32Array.from({ length: count }, (_, i) => a + (b - a) * share(i, step))
  return {
    x: side(domain.x, 0.8191725133961645),
    y: side(domain.y, 0.6710436067037893),
    z: side(domain.z, 0.5497004779019703),
  }
}

describe('shader text in a real browser', () => {
  it('draws every kind as the processor computes it', async () => {
    const examples = warpKinds.flatMap((kind) =>
      kind.examples.map((example) => ({ kind, example })),
    )
    const count = 256
    const results = await drawInBrowser(
      examples.map(({ example }) =>
        drawing([example.warp], lattice(example.domain, count), (names) =>
          names.length > 3 ? 'vec4(x, y, z, branch0)' : 'vec4(x, y, z, 0.0)',
        ),
      ),
    )
    examples.forEach(({ kind, example }, k) => {
      const points = lattice(example.domain, count)
      const cpu = compile([example.warp], { precision: 'f32' }).evaluate(points)
      const scale = Math.max(
        0.05,
        ...(['x', 'y', 'z'] as const).map((s) => Math.abs(example.domain[s][1])),
      )
      let off = 0
      for (let i = 0; i < count; i++) {
        const [x, y, z, branch] = results[k]!.slice(4 * i, 4 * i + 4) as [
          number,
          number,
          number,
          number,
        ]
        const far = Math.max(
          Math.abs(x - cpu.x[i]!),
          Math.abs(y - cpu.y[i]!),
          Math.abs(z - cpu.z[i]!),
        )
        if (!(far < 4e-6 * scale) || branch !== (cpu.branches[0]?.of[i] ?? 0)) off++
      }
      expect(off, `${kind.name} ${example.warp.form}`).toBeLessThanOrEqual(kind.branches ? 1 : 0)
    })
  })

  it('reads the same steel as double precision at 99.995 % of points, 300 layers', async () => {
    const back = (f: number) => draw({ length: f, width: f ** -0.5, height: f ** -0.5 })
    const warps = [
      back(2),
      restack({ pieces: 2, length: 0.05, height: 0.02, kerf: 0.002 }),
      affine({
        rows: [
          [1, 0, 0],
          [0, 0.8, 0.6],
          [0, -0.6, 0.8],
        ],
      }),
      back(1.5),
      restack({ pieces: 2, length: 0.05, height: 0.02 }),
      twist({ pitch: 0.04 }),
      restack({ pieces: 3, length: 0.25, height: 0.011, turn: 'folded' }),
      turn('quarter'),
      back(1.6),
    ]
    const tail: TailStage = {
      numbers: { perMetre: 25 / 0.02, half: 12.5 },
      outputs: ['layer'],
      read: (g, place, at) => [
        g.clamp(g.floor(g.add(g.mul(place.z, at.number('perMetre')), at.number('half'))), 0, 24),
      ],
    }
    const points = lattice({ x: [0, 0.2], y: [-0.02, 0.02], z: [0.003, 0.005] }, 256 * 256)
    const [result] = await drawInBrowser([drawing(warps, points, () => 'vec4(layer)', { tail })])
    const exact = compile(warps, { tail }).evaluate(points).outputs['layer']!
    let same = 0
    exact.forEach((layer, i) => (same += result![4 * i] === layer ? 1 : 0))
    expect(new Set(exact).size).toBe(25)
    expect(same / exact.length).toBeGreaterThanOrEqual(0.99995)
  })
})
