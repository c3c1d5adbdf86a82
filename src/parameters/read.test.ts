import { describe, expect, it } from 'vitest'
import { readQuantity } from '#units'
import { declare } from './parameter.ts'
import { readValues } from './read.ts'

const asked = declare({
  height: { form: 'quantity', of: 'length', min: 1e-3, max: 1, help: 'Height' },
  heat: { form: 'quantity', of: 'temperature', min: 300, max: 1700, help: 'Heat' },
})

describe('a number without its unit', () => {
  it('is given back with the units it most likely lacks, each of which can be read', () => {
    const { problems } = readValues(asked, { height: 12, heat: 1150 })
    expect(problems?.map((p) => [p.at, p.try[0]])).toEqual([
      ['height', 'write "12 mm" or "12 in"'],
      ['heat', 'write "1150 °C" or "1150 °F"'],
    ])
    for (const [kind, cure] of [
      ['length', '12 mm'],
      ['length', '12 in'],
      ['temperature', '1150 °C'],
      ['temperature', '1150 °F'],
    ] as const)
      expect(readQuantity(cure, kind).problems).toBeUndefined()
  })
})
