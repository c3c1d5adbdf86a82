import { expect, test } from 'vitest'
import { sentencesIn } from './read-sentences.ts'

const said = (code: string) => sentencesIn(code, 'a.ts').map(({ text }) => text)

test('finds what is said, however it is put together, and leaves values and codes', () => {
  expect(
    said(`
      const p = { help: 'Width', default: '4 lb', summary: \`Cut it.\` }
      const problem = {
        what: both ? 'one' : \`the \${x} takes \${show(y)}\${z ? \`, and \${z} more\` : ''}\`,
        try: ['12 mm', 'a longer bar', \`\${n} per inch\`, ...more.map((m) => \`write "\${m}" there\`)],
      }
      if (temper === 'as forged') notes.push('It is soft.')
      throw new Error('never seen by anybody')
    `),
  ).toEqual([
    'Width',
    'Cut it.',
    'one',
    'the {0} takes {1}{2}',
    ', and {0} more',
    'a longer bar',
    'write "{0}" there',
    'It is soft.',
  ])
})
