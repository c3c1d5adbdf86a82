import type { Command } from './command.ts'
import { check } from './commands/check.ts'
import { layers } from './commands/layers.ts'
import { heat } from './commands/heat.ts'
import { mass } from './commands/mass.ts'
import { force } from './commands/force.ts'
import { fresh } from './commands/new.ts'
import { plan } from './commands/plan.ts'
import { schema } from './commands/schema.ts'
import { steels } from './commands/steels.ts'

/** Every command, in the order help lists them. */
export const commands: readonly Command[] = [
  plan,
  heat,
  check,
  fresh,
  mass,
  layers,
  force,
  steels,
  schema,
]
