import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join, posix } from 'node:path'
import { type Source, readSource } from './source.ts'

/** One line of `rooms.json`. */
export interface Room {
  readonly level: number
  readonly door: string
  /** Rooms it may import; complete. */
  readonly imports: readonly string[]
  /** Outside packages its sources may import; `node:*` is all that comes with Node. */
  readonly packages: readonly string[]
  /** What each folder in it is one of; `list` is the file that must name each, `in` where they are. */
  readonly members?: {
    readonly each: string
    readonly list?: string
    readonly in?: string
    /** Members that are one idea and yet larger than usual: lines allowed, and why. */
    readonly larger?: Readonly<Record<string, { readonly lines: number; readonly why: string }>>
  }
  /** Names its door may export, where that is more than usual, and why. */
  readonly names?: number
  readonly namesWhy?: string
  /** Lines it may have beside its members, where that is more than usual, and why. */
  readonly lines?: { readonly most: number; readonly why: string }
}

/** Everything the rules look at, read once. */
export interface House {
  readonly root: string
  readonly rooms: Readonly<Record<string, Room>>
  readonly package: {
    readonly imports: Readonly<Record<string, string>>
    readonly dependencies: readonly string[]
    readonly devDependencies: readonly string[]
  }
  /** TypeScript files of src, scripts, bench and test, by path from the root. */
  readonly sources: ReadonlyMap<string, Source>
  /** All files of those folders and of docs and jobs, and the pages at the root. */
  readonly files: readonly string[]
  readonly pages: ReadonlyMap<string, string>
}

/** Something that breaks a rule of the house. */
export interface Fault {
  /** `src/units/kind.ts:12`. */
  readonly at: string
  readonly what: string
  readonly try: string
}

const looked = ['src', 'scripts', 'bench', 'test', 'docs', 'jobs', 'bin']

export function readHouse(root: string): House {
  const read = (path: string) => readFileSync(join(root, path), 'utf8')
  const manifest = JSON.parse(read('package.json'))
  const files = [
    ...looked.flatMap((folder) => list(root, folder)),
    ...readdirSync(root).filter((name) => name.endsWith('.md')),
  ]
  const typeScript = files.filter((path) => /\.tsx?$/.test(path))
  const pages = files.filter((path) => path.endsWith('.md'))
  return {
    root,
    rooms: JSON.parse(read('rooms.json')).rooms,
    package: {
      imports: manifest.imports ?? {},
      dependencies: Object.keys(manifest.dependencies ?? {}),
      devDependencies: Object.keys(manifest.devDependencies ?? {}),
    },
    sources: new Map(typeScript.map((path) => [path, readSource(path, read(path))])),
    files,
    pages: new Map(pages.map((path) => [path, read(path)])),
  }
}

function list(root: string, folder: string): string[] {
  if (!existsSync(join(root, folder))) return []
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`
    if (entry.name.startsWith('.') || entry.name === 'node_modules') return []
    return entry.isDirectory() ? list(root, path) : [path]
  })
}

/** The room a path lies in, if it lies in one. */
export function roomOf(path: string): string | undefined {
  return /^src\/([^/]+)\//.exec(path)?.[1]
}

export function isTest(path: string): boolean {
  return /\.test\.tsx?$/.test(path)
}

/**
 * Tests, and files that only tests import (laws, trials): not counted into a room's size, free in
 * outside packages.
 */
export function testingIn(house: House): ReadonlySet<string> {
  const importers = new Map<string, string[]>()
  for (const [path, targets] of importsIn(house)) {
    for (const target of targets) importers.set(target, [...(importers.get(target) ?? []), path])
  }
  const testing = new Set([...house.sources.keys()].filter(isTest))
  for (let before = -1; before !== testing.size;) {
    before = testing.size
    for (const [path, by] of importers) if (by.every((one) => testing.has(one))) testing.add(path)
  }
  return testing
}

/** Which files of the house each file imports, doors followed to their `index.ts`. */
export function importsIn(house: House): ReadonlyMap<string, readonly string[]> {
  return new Map(
    [...house.sources].map(([path, { imports }]) => {
      const targets = imports.map(({ from }) => {
        if (from.startsWith('#')) return house.package.imports[from]?.replace('./', '') ?? ''
        return from.startsWith('.') ? posix.join(posix.dirname(path), from) : ''
      })
      return [path, [...new Set(targets)].filter((target) => house.sources.has(target))]
    }),
  )
}

/**
 * The folder of a member (one operation, one kind of piece, one model) that a path lies in. Where
 * members are listed, a folder without an `index.ts` is no member but a part of its room.
 */
export function memberOf(house: House, path: string): string | undefined {
  const room = roomOf(path)
  const members = room === undefined ? undefined : house.rooms[room]?.members
  if (!members) return undefined
  const within = `src/${room}/${members.in ? `${members.in}/` : ''}`
  if (!path.startsWith(within)) return undefined
  const [folder, ...rest] = path.slice(within.length).split('/')
  if (rest.length === 0) return undefined
  const member = within + folder
  return !members.list || house.sources.has(`${member}/index.ts`) ? member : undefined
}
