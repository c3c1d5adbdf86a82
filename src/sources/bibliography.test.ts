import { describe, expect, it } from 'vitest'
import { bibliography, cite, isSourceKey } from './index.ts'
import { diffusionAndTransformation } from './diffusion-and-transformation.ts'
import { etchingAndSafety } from './etching-and-safety.ts'
import { formingAndMachines } from './forming-and-machines.ts'
import { hardnessAndTempering } from './hardness-and-tempering.ts'
import { heatingAndScale } from './heating-and-scale.ts'
import { steelsAndStock } from './steels-and-stock.ts'
import { unitsAndHandbooks } from './units-and-handbooks.ts'

const subjects = [
  diffusionAndTransformation,
  etchingAndSafety,
  formingAndMachines,
  hardnessAndTempering,
  heatingAndScale,
  steelsAndStock,
  unitsAndHandbooks,
]

describe('bibliography', () => {
  it('holds no key twice: a spread would let one subject silently hide another', () => {
    const keys = subjects.flatMap((subject) => Object.keys(subject))
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([])
    expect(Object.keys(bibliography)).toHaveLength(keys.length + 5)
  })

  it('gives each source one readable line that ends as a sentence', () => {
    for (const [key, line] of Object.entries(bibliography)) {
      expect(line, key).toMatch(/^\S[^\n]{10,300}\.$/)
    }
  })

  it('names nothing on the machine it was written on', () => {
    expect(
      Object.values(bibliography).filter((line) => /\/(home|tmp|usr|root)\b|[A-Z]:\\/.test(line)),
    ).toEqual([])
  })

  it('tells a key from a word that only looks like one', () => {
    expect(isSourceKey('CPART')).toBe(true)
    expect(isSourceKey('toString')).toBe(false)
    expect(isSourceKey('cpart')).toBe(false)
  })
})

describe('cite', () => {
  it('prints key and standing, and says so where there is no source', () => {
    expect(cite({ source: 'AZO-W', standing: 'read' })).toBe('AZO-W (read)')
    expect(cite({ source: 'practice', standing: 'common practice' })).toBe(
      'common practice, no source',
    )
    expect(cite({ source: 'memory', standing: 'from memory' })).toBe('from memory')
  })
})
