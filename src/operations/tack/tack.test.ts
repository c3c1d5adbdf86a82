import { describe, expect, it } from 'vitest'
import { attempt } from '../attempt.ts'
import { harden } from '../harden/index.ts'
import { loose, sampleBar, samplePack } from '../samples.ts'
import { weld } from '../weld/index.ts'
import { tack } from './index.ts'

const dangers = (values: Readonly<Record<string, unknown>>) =>
  attempt(tack, values, loose(samplePack())).ok?.cautions

describe('cautions stand where the danger is', () => {
  it.each([
    [{ how: 'corners' }, ['arc']],
    [{ how: 'corners', flux: 'borax' }, ['arc', 'flux']],
    [{ how: 'sealed' }, ['arc', 'sealed']],
    [{ how: 'wired' }, []],
    [{ how: 'wired', flux: 'borax' }, ['flux']],
  ])('tacked %j', (values, met) => {
    expect(dangers(values)).toEqual(met)
  })

  it('what is sealed can burst in the fire that welds it; what is open may spit flux', () => {
    const fire = (how: string) => {
      const tacked = attempt(tack, { how }, loose(samplePack())).ok!.after
      return attempt(weld, {}, tacked).ok!.cautions
    }
    expect(fire('sealed')).toContain('sealed')
    expect(fire('sealed')).not.toContain('flux')
    expect(fire('corners')).toContain('flux')
    expect(fire('corners')).not.toContain('sealed')
  })

  it('there is no oil to flare between plates', () => {
    const bar = { ...sampleBar(200, 30, 4), temper: 'normalised' as const }
    expect(attempt(harden, { medium: 'plates' }, bar).ok!.cautions).toEqual(['heat', 'gas'])
    // Left out, all that the operation declares.
    expect(attempt(harden, {}, bar).ok!.cautions).toBeUndefined()
    expect(harden.cautions).toContain('quench')
  })
})
