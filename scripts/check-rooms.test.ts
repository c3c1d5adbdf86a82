import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { checkRooms } from './check-rooms.ts'

type Files = Readonly<Record<string, string>>

const rooms = {
  iron: { level: 0, door: 'Iron.', imports: [], packages: [] },
  fire: { level: 1, door: 'Fire.', imports: ['iron'], packages: ['bellows'] },
  forge: {
    level: 2,
    door: 'Forge.',
    imports: ['iron', 'fire'],
    packages: ['node:*'],
    members: { each: 'tool', list: 'tools.ts' },
  },
}

const table = (changed: object) => JSON.stringify({ rooms: { ...rooms, ...changed } })
const lines = (n: number) => 'export const line = 1\n'.repeat(n)

/** A small house that keeps every rule. */
const sound: Files = {
  'package.json': JSON.stringify({
    imports: {
      '#iron': './src/iron/index.ts',
      '#fire': './src/fire/index.ts',
      '#forge': './src/forge/index.ts',
    },
    dependencies: { bellows: '1.0.0' },
    devDependencies: { anvil: '1.0.0' },
  }),
  'rooms.json': table({}),
  'README.md': '# House\n\nSee [the words](docs/glossary.md#words).\n',
  'docs/glossary.md':
    '# Words\n\n| word | meaning | not |\n|---|---|---|\n| bar | long | rod |\n| bloom | spongy | – |\n',
  'src/iron/index.ts': "/** Iron. */\nexport { type Ore, smelt } from './ore.ts'\n",
  'src/iron/ore.ts':
    'export interface Ore {\n  mass: number\n}\nexport const smelt = (o: Ore) => o\n',
  'src/fire/index.ts': "export { blow } from './blow.ts'\n",
  'src/fire/blow.ts':
    "import { pump } from 'bellows'\nimport { smelt } from '#iron'\nexport const blow = [pump, smelt]\n",
  'src/fire/blow.test.ts': "import 'anvil'\nimport { blow } from './blow.ts'\nblow()\n",
  'src/forge/index.ts': "export { tools } from './tools.ts'\n",
  'src/forge/tools.ts': "import { tongs } from './tongs/index.ts'\nexport const tools = [tongs]\n",
  'src/forge/tongs/index.ts':
    "import { arch } from 'node:os'\nimport { blow } from '#fire'\nexport const tongs = [arch, blow]\n",
}

const folders: string[] = []
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })))

function breaches(changed: Files): string[] {
  const root = mkdtempSync(join(tmpdir(), 'house-'))
  folders.push(root)
  for (const [path, text] of Object.entries({ ...sound, ...changed })) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
  return checkRooms(root).map(({ at, what }) => `${at} ${what}`)
}

test('a house that keeps every rule has no breach', () => {
  expect(breaches({})).toEqual([])
})

const names = (n: number) => Array.from({ length: n }, (_, i) => `n${i}`)
const doorOf = (n: number) => `export { ${names(n).join(', ')} } from './ore.ts'\n`
const pump = "import { pump } from 'bellows'\nexport const p = pump\n"

/** What is planted, and the one breach that must come of it. */
const plants: readonly (readonly [string, Files, string])[] = [
  [
    'a room above its imports',
    { 'rooms.json': table({ iron: { ...rooms.iron, imports: ['fire'] } }) },
    'rooms.json iron (level 0) imports fire (level 1)',
  ],
  [
    'rooms on one level importing each other',
    { 'rooms.json': table({ fire: { ...rooms.fire, level: 0 } }) },
    'rooms.json fire (level 0) imports iron (level 0)',
  ],
  ['a folder that is no room', { 'src/attic/box.ts': lines(1) }, 'rooms.json src/attic is not'],
  [
    'more names without a reason',
    { 'rooms.json': table({ iron: { ...rooms.iron, names: 40 } }) },
    'rooms.json iron is allowed 40 names without a reason',
  ],
  [
    'an undeclared room',
    { 'src/iron/rust.ts': "import { blow } from '#fire'\nexport const rust = blow\n" },
    'src/iron/rust.ts:1 iron may not import fire',
  ],
  [
    'an undeclared room, types only',
    { 'src/iron/rust.ts': "export type Rust = import('#forge').Rust\n" },
    'src/iron/rust.ts:1 iron may not import forge',
  ],
  [
    'an undeclared room, imported late',
    { 'src/iron/rust.ts': "export const rust = () => import('#forge')\n" },
    'src/iron/rust.ts:1 iron may not import forge',
  ],
  [
    'a way past a door',
    { 'src/fire/hot.ts': "export { smelt } from '#iron/ore.ts'\n" },
    'src/fire/hot.ts:1 imports #iron/ore.ts, past the door',
  ],
  [
    'a path out of the room',
    { 'src/fire/hot.ts': "export { smelt } from '../iron/ore.ts'\n" },
    'src/fire/hot.ts:1 leaves fire by ../iron/ore.ts',
  ],
  [
    'a test of the whole that reaches in',
    { 'test/hot.test.ts': "import { smelt } from '../src/iron/ore.ts'\nsmelt({ mass: 1 })\n" },
    'test/hot.test.ts:1 reaches into iron',
  ],
  [
    'a bench that walks round an open door',
    { 'bench/hot.ts': "import { smelt } from '../src/iron/index.ts'\nsmelt({ mass: 1 })\n" },
    'bench/hot.ts:1 reaches into iron',
  ],
  [
    'a file that is not there',
    { 'src/fire/hot.ts': "export { x } from './cold.ts'\n" },
    'src/fire/hot.ts:1 imports ./cold.ts, which is not there',
  ],
  [
    'a package in the wrong room',
    { 'src/iron/blast.ts': pump },
    'iron may not use the package bell',
  ],
  [
    'a test package in a source',
    { 'src/fire/hot.ts': "export { x } from 'anvil'\n" },
    'src/fire/hot.ts:1 imports anvil, which is not among the run-time packages',
  ],
  [
    'what comes with Node in a room that must run anywhere',
    { 'src/iron/file.ts': "export { readFileSync } from 'node:fs'\n" },
    'src/iron/file.ts:1 iron may not use the package node:fs',
  ],
  [
    'a source that imports a test',
    { 'src/fire/hot.ts': "import './blow.test.ts'\n" },
    'src/fire/hot.ts:1 imports ./blow.test.ts, which is for tests',
  ],
  [
    'files in a ring',
    {
      'src/iron/a.ts': "import type { B } from './b.ts'\nexport type A = B\n",
      'src/iron/b.ts': "import type { A } from './a.ts'\nexport type B = A\n",
    },
    'files import each other in a ring: src/iron/a.ts → src/iron/b.ts → src/iron/a.ts',
  ],
  [
    'a member missing from its list',
    { 'src/forge/hammer/index.ts': lines(1) },
    'src/forge/hammer/index.ts this tool is not in src/forge/tools.ts',
  ],
  ['a file over the ceiling', { 'src/iron/ore.ts': lines(501) }, 'src/iron/ore.ts 501 lines'],
  ['a crowded door', { 'src/iron/index.ts': doorOf(31) }, 'src/iron/index.ts 31 names; 30'],
  ['a long door', { 'src/iron/index.ts': '//\n'.repeat(41) }, 'src/iron/index.ts 41 lines'],
  [
    'a door that does something',
    { 'src/iron/index.ts': 'export const ore = 1\n' },
    'src/iron/index.ts:1 a door only exports',
  ],
  [
    'a member over its size',
    { 'src/forge/tongs/a.ts': lines(300), 'src/forge/tongs/b.ts': lines(301) },
    'src/forge/tongs 604 lines',
  ],
  [
    'a room over its size',
    Object.fromEntries(names(6).map((n) => [`src/iron/${n}.ts`, lines(420)])),
    'src/iron 2526 lines',
  ],
  ['a grab-bag', { 'src/iron/utils.ts': lines(1) }, 'src/iron/utils.ts "utils.ts" does not say'],
  ['a grab-bag word', { 'src/iron/ore-manager.ts': lines(1) }, '"ore-manager.ts" does not say'],
  ['a types file', { 'src/iron/types.ts': lines(1) }, '"types.ts" does not say'],
  ['a name in capitals', { 'src/iron/OreList.ts': lines(1) }, '"OreList.ts" is not kebab-case'],
  [
    'a default export',
    { 'src/iron/a.ts': 'export default 1\n' },
    'src/iron/a.ts:1 a default export',
  ],
  [
    'a default export by name',
    { 'src/iron/a.ts': 'const a = 1\nexport { a as default }\n' },
    'src/iron/a.ts:2 a default export',
  ],
  ['export of everything', { 'src/iron/a.ts': "export * from './ore.ts'\n" }, '"export *" hides'],
  [
    'a skipped test',
    { 'src/iron/a.test.ts': `import { it } from 'anvil'\nit.${'skip'}('x', () => {})\n` },
    'src/iron/a.test.ts:2 a test that is not run',
  ],
  ['unfinished work', { 'src/iron/a.ts': `// ${'TO'}DO later\n` }, `src/iron/a.ts:1 "${'TO'}DO"`],
  ['a dead link', { 'README.md': '[x](docs/none.md)\n' }, 'README.md:1 links to docs/none.md'],
  [
    'a link to a heading that is gone',
    { 'README.md': '[x](docs/glossary.md#gone)\n' },
    'README.md:1 links to a heading docs/glossary.md#gone',
  ],
  [
    'a word explained twice',
    { 'docs/glossary.md': '# Words\n| bar | long | – |\n| Bar | short | – |\n' },
    'docs/glossary.md:3 "bar" has an entry already',
  ],
  [
    'a word refused and used',
    { 'docs/glossary.md': '# Words\n| bar | long | rod |\n| rod | thin | – |\n' },
    'docs/glossary.md:2 "rod" is refused for "bar" and is itself an entry',
  ],
]

test.each(plants)('finds %s', (_name, files, breach) => {
  const found = breaches(files)
  expect(found).toHaveLength(1)
  expect(found[0]).toContain(breach)
})

test('a reason allows more', () => {
  const why = 'one vocabulary'
  const larger = { tongs: { lines: 700, why } }
  const found = breaches({
    'rooms.json': table({
      iron: { ...rooms.iron, names: 35, namesWhy: why },
      forge: { ...rooms.forge, members: { ...rooms.forge.members, larger } },
    }),
    'src/iron/index.ts': doorOf(35),
    'src/forge/tongs/a.ts': lines(300),
    'src/forge/tongs/b.ts': lines(301),
  })
  expect(found).toEqual([])
})

test('a bench may measure what lies behind a door', () => {
  const inner = "import { smelt } from '../src/iron/ore.ts'\nsmelt({ mass: 1 })\n"
  expect(breaches({ 'bench/hot.ts': inner })).toEqual([])
})

test('tests, and files only tests import, may use test packages and do not count into a room', () => {
  const found = breaches({
    'src/iron/laws.ts': "import 'anvil'\n" + lines(499),
    ...Object.fromEntries(names(6).map((n) => [`src/iron/${n}.test.ts`, lines(450)])),
    'src/iron/ore.test.ts': "import './laws.ts'\n",
  })
  expect(found).toEqual([])
})
