import { describe, expect, it } from 'vitest'
import { attempt, coldFire, mass, stepOf } from '../attempt.ts'
import { drawOut } from '../draw-out/index.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { twist } from './index.ts'

const round = (length: number, across: number) => sampleBar(length, across, across, '1084', 'round')

describe('twisting', () => {
  it.each([
    ['1/2 per inch', '50.8', '25.4', '0.618', '2.845'],
    ['1 per inch', '25.4', '12.7', '1.24', '1.422'],
    ['2 per inch', '12.7', '6.35', '2.47', '0.7112'],
    ['4 per inch', '6.35', '3.175', '4.95', '0.3556'],
  ])('%s: pitch %s, stars every %s, shear %s at radius 5', (pitch, turn, stars, shear, upright) => {
    const { notes } = stepOf(twist, { pitch }, round(300, 10), { shop: coldFire })
    const said = notes.join(' ')
    expect(said).toContain(`one turn every ${turn} mm`)
    expect(said).toContain(`a star every ${stars} mm`)
    expect(said).toContain(`sheared by ${shear}`)
    expect(said).toContain(`no more than ${upright} mm is left`)
  })

  it('turns a bar of 551 mm at a pitch of 16 mm 34 times', () => {
    const { notes } = stepOf(twist, { pitch: '16 mm pitch', ends: '0 mm' }, round(551, 12))
    expect(notes[0]).toMatch(/^34\.\d turns/)
  })

  it('and drawn from 12 to 6 with a spread of 0.4 its pitch goes to 24.3', () => {
    const twisted = stepOf(
      twist,
      { pitch: '16 mm pitch', ends: '0 mm' },
      sampleBar(551, 12, 12, '1084', 'octagon'),
      { shop: coldFire },
    )
    const flat = { ...twisted.after, shape: 'cut' as const }
    const drawn = stepOf(
      drawOut,
      { height: '6 mm', heats: 1 },
      { ...flat, volume: 0.551 * 0.012 ** 2, shape: 'rectangle' },
      { shop: { ...coldFire, spread: 0.4 } },
    )
    const stretch = drawn.after.size.length / 0.551
    expect(stretch).toBeCloseTo(2 ** 0.6, 9)
    expect(16 * stretch).toBeCloseTo(24.3, 1)
  })

  it('keeps the metal and its length, but widens the box of a bar with corners', () => {
    const square = samplePack(200, 12, 12, 9)
    const step = stepOf(twist, { turn: '1 turn' }, square, { shop: coldFire })
    expect(mass(step.after)).toBeCloseTo(mass(square), 12)
    expect(step.after.size.width).toBeCloseTo(0.012 * Math.SQRT2, 12)
    expect(step.after.size.length).toBe(0.2)
    // An eighth of a turn stands it exactly on its corner; a sixteenth not yet.
    const less = stepOf(twist, { turn: '1/16 turn' }, square, { shop: coldFire })
    expect(less.after.size.width).toBeCloseTo(
      0.012 * (Math.cos(Math.PI / 8) + Math.sin(Math.PI / 8)),
      12,
    )
  })

  it('warns of corners, of shear and of young welds, and says which way out', () => {
    const said = (raw: object, bar: ReturnType<typeof samplePack>) =>
      stepOf(twist, raw as never, bar)
        .warnings.map((w) => w.what)
        .join('; ')
    expect(said({ turn: '1 turn' }, samplePack(200, 12, 12, 9))).not.toMatch(/corners/)
    expect(said({ turn: '3 turns' }, samplePack(200, 12, 12, 9))).toMatch(/corners/)
    // 3/4 in square at one turn to the inch: the flats (9.4 after scale) shear by 2.3, the corners by √2 more.
    expect(said({ pitch: '1 per inch' }, samplePack(300, 19, 19, 9))).toMatch(/sheared by 3\.29/)
    expect(said({ turn: '1 turn' }, { ...samplePack(200, 12, 12, 9), worked: 0.85 })).toMatch(
      /young welds/,
    )
  })

  it('wants one of pitch and turn, and some bar to twist', () => {
    expect(attempt(twist, {}, round(300, 10)).problems?.[0].at).toBe('pitch')
    expect(
      attempt(twist, { pitch: '1 per inch', turn: '1 turn' }, round(300, 10)).problems,
    ).toBeDefined()
    expect(
      attempt(twist, { pitch: '1 per inch', ends: '160 mm' }, round(300, 10)).problems?.[0].at,
    ).toBe('ends')
  })
})
