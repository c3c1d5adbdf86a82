import type { Command } from './command.ts'
import { face } from './commands/face.ts'
import { measure } from './commands/measure.ts'
import { section } from './commands/section.ts'
import { steps } from './commands/steps.ts'
import { check } from './commands/check.ts'
import { layers } from './commands/layers.ts'
import { heat } from './commands/heat.ts'
import { mass } from './commands/mass.ts'
import { force } from './commands/force.ts'
import { fresh } from './commands/new.ts'
import { plan } from './commands/plan.ts'
import { range } from './commands/range.ts'
import { schema } from './commands/schema.ts'
import { steels } from './commands/steels.ts'
import { cut, fromRemnant, quote } from './commands/stock.ts'
import { suggest } from './commands/suggest.ts'
import { ifChanged } from './commands/what-if.ts'

/** Every command, in the order help lists them. */
export const commands: readonly Command[] = [
  plan,
  face,
  section,
  steps,
  measure,
  suggest,
  range,
  ifChanged,
  cut,
  quote,
  fromRemnant,
  heat,
  check,
  fresh,
  mass,
  layers,
  force,
  steels,
  schema,
]
