import type { Operation } from './operation.ts'
import { drawOut } from './draw-out/index.ts'
import { restack } from './restack/index.ts'
import { stack } from './stack/index.ts'
import { turn } from './turn/index.ts'
import { weld } from './weld/index.ts'

/** Everything that can be done to the metal, in the order a smith meets it. One line an operation. */
export const operations: readonly Operation[] = [stack, weld, drawOut, turn, restack]
