import { describe, expect, it } from 'vitest'
import { retell } from './retell.ts'
import { sayIn } from './say.ts'

const inInches = (sentence: string) => retell(sentence, sayIn('inch'))

describe('a sentence of the account in the units of the card', () => {
  it('inches: a fraction where one fits, else thousandths (25.4 mm to the inch)', () => {
    // 2.5 mm = 0.0984 in, 19.05 mm = 3/4 in, 54 mm = 2.126 in, nearest 2 1/8.
    expect(inInches('Trim 2.5 mm off a bar of 19.05 × 54 mm.')).toBe(
      'Trim 0.098 in off a bar of 3/4 × 2 1/8 in.',
    )
    // 46 mm is 1.811 in: 1 13/16 is 1.8125.
    expect(inInches('covers 46 mm × 30 mm, 483 mm² of it')).toBe(
      'covers 1 13/16 × 1 3/16 in, 0.749 in² of it',
    )
  })

  it('Fahrenheit to the nearest five; a difference is only stretched by 9/5', () => {
    // 1150 °C = 2102 °F, 1260 °C = 2300 °F.
    expect(inInches('weld at 1150 to 1260 °C')).toBe('weld at 2100 to 2300 °F')
    expect(inInches('hotter metal: 50 °C more takes off 13 %')).toBe(
      'hotter metal: 90 °F more takes off 13 %',
    )
    expect(inInches('oil 28 °C or more below its flash point')).toBe(
      'oil 50 °F or more below its flash point',
    )
  })

  it('pounds and ounces (0.45359237 kg to the pound)', () => {
    expect(inInches('the hand hammer of 1.81 kg; 850 g of chips')).toBe(
      'the hand hammer of 3.99 lb; 30 oz of chips',
    )
  })

  it('in both, the inches follow in brackets', () => {
    expect(retell('The web is 6.35 mm.', sayIn('both'))).toBe('The web is 6.35 mm (1/4 in).')
  })

  it('metric: no finer than a rule reads, and what was coarser stays', () => {
    const metric = (sentence: string) => retell(sentence, sayIn('metric'))
    expect(metric('Outer layer 2.932 mm before, 0.6445 mm after; trim 2 mm of 146.62 mm.')).toBe(
      'Outer layer 2.93 mm before, 0.64 mm after; trim 2 mm of 147 mm.',
    )
    expect(metric('0.00321 mm')).toBe('0.0032 mm')
  })

  it('temperatures to the nearest five, as a fire is read', () => {
    expect(retell('These steels weld at 1150 to 1252 °C; burnt at 811 °C.', sayIn('metric'))).toBe(
      'These steels weld at 1150 to 1250 °C; burnt at 810 °C.',
    )
    expect(inInches('These steels weld at 1150 to 1252 °C')).toBe(
      'These steels weld at 2100 to 2285 °F',
    )
    expect(inInches('900 °C or more')).toBe('1650 °F or more')
    expect(inInches('stay 30 °C under it')).toBe('stay 54 °F under it')
  })

  it('two figures that differ stay apart', () => {
    // 12.34 and 12.36 mm are 0.4858 and 0.4866 in, both nearest 31/64.
    const short = 'The bar is 12.34 mm; 12.36 mm is wanted.'
    expect(inInches(short)).toBe('The bar is 0.4858 in; 0.4866 in is wanted.')
    expect(retell('It is 99.96 mm, outside 100 mm to 5 m.', sayIn('metric'))).toBe(
      'It is 99.96 mm, outside 100 mm to 5 m.',
    )
  })

  it('lines, forces, long bars and foils', () => {
    // 0.6 per mm = 15.24 per inch, 250 kN = 28.1 US ton, 10 m = 32.8 ft, 20 µm = 0.00079 in.
    expect(inInches('0.6 per mm; a press of 250 kN; 1 mm to 10 m; 20 µm of scale')).toBe(
      '15 per inch; a press of 28 ton; 0.039 in to 32.8 ft; 0.00079 in of scale',
    )
  })

  it('what was typed, or is a name, stays as it is', () => {
    expect(inInches('"12 mm" of “bar 20 mm” and 19.05 mm')).toBe(
      '"12 mm" of “bar 20 mm” and 3/4 in',
    )
  })

  it('German sentences too', () => {
    expect(inInches('Diese Stähle schweißen bei 1150 bis 1252 °C, 54 × 19.05 mm')).toBe(
      'Diese Stähle schweißen bei 2100 bis 2285 °F, 2 1/8 × 3/4 in',
    )
    expect(inInches('mindestens 28 °C unter seinem Flammpunkt; 0.6 je mm')).toBe(
      'mindestens 50 °F unter seinem Flammpunkt; 15 je Zoll',
    )
  })

  it('leaves alone what is no quantity of the shop', () => {
    for (const sentence of [
      '15.5 g/cm³, 163 MPa, 86 J, 26.1 %, 7.5 kg/m³',
      '23 grooves a side; 1095 and 15N20',
    ])
      expect(inInches(sentence)).toBe(sentence)
  })
})
