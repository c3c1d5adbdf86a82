/** Just enough of the WebAssembly binary format for kernels: one memory, functions of one parameter, SIMD. */
export type Bytes = number[]

export function unsigned(value: number): Bytes {
  const bytes: Bytes = []
  let left = value >>> 0
  do {
    const seven = left & 0x7f
    left >>>= 7
    bytes.push(left === 0 ? seven : seven | 0x80)
  } while (left !== 0)
  return bytes
}

export function signed(value: number): Bytes {
  const bytes: Bytes = []
  let left = value | 0
  for (;;) {
    const seven = left & 0x7f
    left >>= 7
    if ((left === 0 && !(seven & 0x40)) || (left === -1 && seven & 0x40)) return [...bytes, seven]
    bytes.push(seven | 0x80)
  }
}

function list(items: readonly Bytes[]): Bytes {
  return [...unsigned(items.length), ...items.flat()]
}
function section(id: number, content: Bytes): Bytes {
  return [id, ...unsigned(content.length), ...content]
}
function text(name: string): Bytes {
  const bytes = [...new TextEncoder().encode(name)]
  return [...unsigned(bytes.length), ...bytes]
}

export const I32 = 0x7f
export const V128 = 0x7b

export interface FunctionBody {
  /** Locals after the one i32 parameter. */
  readonly locals: readonly { readonly count: number; readonly type: number }[]
  readonly code: Bytes
}

/** A module that imports its memory as `m.m` and exports each function, all (i32) → (), as f0, f1, … */
export function encodeModule(functions: readonly FunctionBody[]): Uint8Array<ArrayBuffer> {
  const type = [0x60, 1, I32, 0]
  const memory = [...text('m'), ...text('m'), 0x02, 0x00, 1]
  const bodies = functions.map(({ locals, code }) => {
    const body = [
      ...list(locals.filter((l) => l.count > 0).map((l) => [...unsigned(l.count), l.type])),
      ...code,
      0x0b,
    ]
    return [...unsigned(body.length), ...body]
  })
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, list([type])),
    ...section(2, list([memory])),
    ...section(3, list(functions.map(() => [0]))),
    ...section(7, list(functions.map((_, i) => [...text(`f${i}`), 0x00, ...unsigned(i)]))),
    ...section(10, list(bodies)),
  ])
}

export function simd(code: number, ...immediates: Bytes): Bytes {
  return [0xfd, ...unsigned(code), ...immediates]
}
export function localGet(index: number): Bytes {
  return [0x20, ...unsigned(index)]
}
export function localSet(index: number): Bytes {
  return [0x21, ...unsigned(index)]
}
export function localTee(index: number): Bytes {
  return [0x22, ...unsigned(index)]
}
export function i32Const(value: number): Bytes {
  return [0x41, ...signed(value)]
}
/** Alignment (a power of two) and offset. */
export function memoryAt(align: number, offset: number): Bytes {
  return [...unsigned(align), ...unsigned(offset)]
}
