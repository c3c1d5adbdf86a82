import { existsSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { join, posix } from 'node:path'
import { type Fault, type House, importsIn, isTest, memberOf, roomOf, testingIn } from './house.ts'
import type { Import, Source } from './source.ts'

/** The table itself: levels descend, every folder is a room, every room has one door in package.json. */
export function checkTable(house: House): Fault[] {
  const faults: Fault[] = []
  const wrong = (what: string, cure: string, at = 'rooms.json') =>
    faults.push({ at, what, try: cure })
  for (const [name, room] of Object.entries(house.rooms)) {
    for (const imported of room.imports) {
      const below = house.rooms[imported]
      if (!below) wrong(`${name} imports ${imported}, which is no room`, 'mend the name')
      else if (below.level >= room.level)
        wrong(
          `${name} (level ${room.level}) imports ${imported} (level ${below.level})`,
          'imports go to lower levels only: move what both need into a room below',
        )
    }
    if (room.names !== undefined && !room.namesWhy)
      wrong(`${name} is allowed ${room.names} names without a reason`, 'give it "namesWhy"')
    const door = house.package.imports[`#${name}`]
    if (door !== undefined && door !== `./src/${name}/index.ts`)
      wrong(`#${name} opens ${door}`, `open ./src/${name}/index.ts`, 'package.json')
  }
  for (const door of Object.keys(house.package.imports)) {
    if (!house.rooms[door.slice(1)])
      wrong(
        `${door} is no room's door`,
        'only rooms have doors, and nothing deeper',
        'package.json',
      )
  }
  for (const room of new Set(house.files.map(roomOf))) {
    if (room !== undefined && !house.rooms[room])
      wrong(`src/${room} is not in the table`, 'add the room, its level and what it may import')
  }
  return faults
}

/** Every import of every file: within its room, through declared doors, of allowed packages. */
export function checkImports(house: House): Fault[] {
  const testing = testingIn(house)
  return [...house.sources.values()].flatMap((source) =>
    source.imports.flatMap((imported) => {
      const fault = checkImport(house, source, imported, testing.has(source.path))
      return fault ? [{ at: `${source.path}:${imported.line}`, ...fault }] : []
    }),
  )
}

function checkImport(
  house: House,
  source: Source,
  { from }: Import,
  testing: boolean,
): Omit<Fault, 'at'> | undefined {
  if (from.startsWith('#')) return checkDoor(house, source.path, from)
  if (from.startsWith('.')) return checkPath(house, source.path, from)
  if (from.startsWith('/'))
    return { what: `imports the path ${from}`, try: 'import from ./ or #room' }
  return checkPackage(house, source.path, from, testing)
}

function checkDoor(house: House, path: string, from: string): Omit<Fault, 'at'> | undefined {
  const [name, ...deeper] = from.slice(1).split('/')
  if (deeper.length > 0)
    return { what: `imports ${from}, past the door of ${name}`, try: `import from #${name}` }
  if (!house.rooms[name]) return { what: `imports ${from}, which is no room`, try: 'mend the name' }
  const room = roomOf(path)
  if (room === undefined) return undefined
  if (room === name)
    return { what: 'comes in through its own door', try: 'import the file itself by ./' }
  if (house.rooms[room] && !house.rooms[room].imports.includes(name))
    return {
      what: `${room} may not import ${name}`,
      try: `see rooms.json: pass what is needed in, or move it to a room below both`,
    }
  return undefined
}

function checkPath(house: House, path: string, from: string): Omit<Fault, 'at'> | undefined {
  const target = posix.join(posix.dirname(path), from)
  if (!existsSync(join(house.root, target)))
    return { what: `imports ${from}, which is not there`, try: 'mend the path, with its extension' }
  // The package's own name and version.
  if (target === 'package.json') return undefined
  const [room, other] = [roomOf(path), roomOf(target)]
  // A bench, or a test of the page, may measure what lies behind a door.
  const measures = /^(bench|test\/outlets\/web)\//.test(path) && target !== `src/${other}/index.ts`
  if (room !== other && !measures) {
    return room === undefined
      ? { what: `reaches into ${other} by ${from}`, try: `import from #${other}` }
      : { what: `leaves ${room} by ${from}`, try: 'import another room as #room' }
  }
  if (isTest(target) && !isTest(path))
    return { what: `imports ${from}, which is for tests`, try: 'move what is needed out of it' }
  return undefined
}

function checkPackage(
  house: House,
  path: string,
  from: string,
  testing: boolean,
): Omit<Fault, 'at'> | undefined {
  const { dependencies, devDependencies } = house.package
  const builtin = isBuiltin(from)
  const name = builtin ? from : /^(@[^/]+\/)?[^/]+/.exec(from)![0]
  if (builtin && !from.startsWith('node:'))
    return { what: `imports ${from}`, try: `write node:${from}` }
  const room = roomOf(path)
  const free = room === undefined || testing
  if (!builtin && ![...dependencies, ...(free ? devDependencies : [])].includes(name))
    return {
      what: `imports ${name}, which is not among the ${free ? '' : 'run-time '}packages`,
      try: 'add it to package.json at an exact version, with a reason, or do without',
    }
  if (free) return undefined
  const allowed = house.rooms[room]?.packages ?? []
  if (allowed.includes(name) || (builtin && allowed.includes('node:*'))) return undefined
  return {
    what: `${room} may not use the package ${name}`,
    try: `its packages are: ${allowed.join(', ') || 'none'} (rooms.json)`,
  }
}

/** Files that import each other in a ring, types included: a knot to whoever reads them. */
export function checkCycles(house: House): Fault[] {
  const edges = importsIn(house)
  const faults: Fault[] = []
  const state = new Map<string, 'open' | 'done'>()
  const trail: string[] = []
  const visit = (path: string): void => {
    state.set(path, 'open')
    trail.push(path)
    for (const next of edges.get(path) ?? []) {
      if (state.get(next) === 'open') {
        const ring = [...trail.slice(trail.indexOf(next)), next]
        faults.push({
          at: next,
          what: `files import each other in a ring: ${ring.join(' → ')}`,
          try: 'move what both need into a file of its own',
        })
      } else if (!state.has(next)) visit(next)
    }
    trail.pop()
    state.set(path, 'done')
  }
  for (const path of edges.keys()) if (!state.has(path)) visit(path)
  return faults
}

/** Every member folder (an operation, a kind, a grade) is named in its room's list. */
export function checkLists(house: House): Fault[] {
  return Object.entries(house.rooms).flatMap(([name, { members }]) => {
    if (!members?.list) return []
    const list = house.sources.get(`src/${name}/${members.list}`)
    if (!list) return []
    const named = new Set(list.imports.map(({ from }) => posix.join(`src/${name}`, from)))
    const within = `src/${name}/${members.in ? `${members.in}/` : ''}`
    const found = new Set<string>()
    for (const path of house.files) {
      const member = memberOf(house, path)
      if (member?.startsWith(within)) found.add(`${member}/index.ts`)
      else if (members.in && path.startsWith(within) && path.endsWith('.json')) found.add(path)
    }
    return [...found]
      .filter((path) => !named.has(path))
      .map((path) => ({
        at: path,
        what: `this ${members.each} is not in src/${name}/${members.list}`,
        try: 'add its line to the list',
      }))
  })
}
