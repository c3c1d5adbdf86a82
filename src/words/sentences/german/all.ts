import { cautions } from './cautions.ts'
import { counts } from './counts.ts'
import { forming } from './forming.ts'
import { heats } from './heats.ts'
import { job } from './job.ts'
import { keeping } from './keeping.ts'
import { operationsAC } from './operations-a-c.ts'
import { operationsDE } from './operations-d-e.ts'
import { operationsFG } from './operations-f-g.ts'
import { operationsHN } from './operations-h-n.ts'
import { operationsPR } from './operations-p-r.ts'
import { operationsS } from './operations-s.ts'
import { operationsTW } from './operations-t-w.ts'
import { piece } from './piece.ts'
import { pieceBlades } from './piece-blades.ts'
import { planner } from './planner.ts'
import { reading } from './reading.ts'
import { shop } from './shop.ts'

/** Every sentence of the engine in German, by the English one. `{0}` is what is put in; `{0!}` stays as it is. */
export const germanSentences: Readonly<Record<string, string>> = {
  ...counts,
  ...reading,
  ...job,
  ...keeping,
  ...planner,
  ...heats,
  ...forming,
  ...shop,
  ...pieceBlades,
  ...piece,
  ...cautions,
  ...operationsAC,
  ...operationsDE,
  ...operationsFG,
  ...operationsHN,
  ...operationsPR,
  ...operationsS,
  ...operationsTW,
}
