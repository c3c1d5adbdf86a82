/** Holds the house to its rules; `node scripts/check-rooms.ts` prints every breach and fails on any. */
import { fileURLToPath } from 'node:url'
import { type Fault, readHouse } from './house/house.ts'
import { checkCycles, checkImports, checkLists, checkTable } from './house/import-rules.ts'
import { checkExports, checkLeftOvers, checkNames } from './house/name-rules.ts'
import { checkGlossary, checkLinks } from './house/page-rules.ts'
import { checkDoors, checkFileSizes, checkRoomSizes } from './house/size-rules.ts'

const rules = [
  checkTable,
  checkImports,
  checkCycles,
  checkLists,
  checkDoors,
  checkFileSizes,
  checkRoomSizes,
  checkNames,
  checkExports,
  checkLeftOvers,
  checkLinks,
  checkGlossary,
]

/** Every breach of every rule in the house at `root`. */
export function checkRooms(root: string): Fault[] {
  const house = readHouse(root)
  return rules.flatMap((rule) => rule(house))
}

if (import.meta.main) {
  const faults = checkRooms(fileURLToPath(new URL('..', import.meta.url)))
  for (const { at, what, try: cure } of faults) console.error(`${at}\n  ${what}\n  try: ${cure}`)
  if (faults.length > 0) console.error(`${faults.length} breaches of the rules of the house`)
  process.exitCode = faults.length > 0 ? 1 : 0
}
