import type { QuantityKind } from '#units'
import { type Parameter, type Parameters, isParameter } from './parameter.ts'

const siUnit: Readonly<Record<QuantityKind, string>> = {
  length: 'm',
  mass: 'kg',
  temperature: 'K',
  time: 's',
  angle: 'rad',
  pressure: 'Pa',
  force: 'N',
  energy: 'J',
  lines: 'per m',
  twist: 'per m',
  ratio: '',
  speed: 'm/s',
  area: 'm²',
  volume: 'm³',
  money: '',
}

/**
 * Values back into what a job file holds. A number that was typed goes back as typed; any other is
 * written in SI with all its digits, so that reading gives the very same number.
 */
export function writeValues(
  parameters: Parameters,
  values: Readonly<Record<string, unknown>>,
  typed: Readonly<Record<string, { readonly text: string; readonly si: number }>> = {},
): Record<string, unknown> {
  return group(parameters, values, typed, '')
}

type Typed = Readonly<Record<string, { readonly text: string; readonly si: number }>>

function group(
  parameters: Parameters,
  values: Readonly<Record<string, unknown>>,
  typed: Typed,
  at: string,
) {
  const raw: Record<string, unknown> = {}
  for (const [name, p] of Object.entries(parameters)) {
    const value = values[name]
    if (value !== undefined) raw[name] = one(p, value, typed, at === '' ? name : `${at}.${name}`)
  }
  return raw
}

function one(p: Parameter, value: unknown, typed: Typed, at: string): unknown {
  if (p.form === 'quantity') {
    const was = typed[at]
    return was && was.si === value
      ? was.text
      : `${plainDigits(value as number)} ${siUnit[p.of]}`.trim()
  }
  if (p.form === 'list') {
    const { item } = p
    return (value as readonly unknown[]).map((v, i) =>
      isParameter(item)
        ? one(item, v, typed, `${at}[${i}]`)
        : group(item, v as Record<string, unknown>, typed, `${at}[${i}]`),
    )
  }
  return value
}

/** All digits of a number without an exponent: people do not write 1e-5 m. */
function plainDigits(value: number): string {
  const text = String(value)
  if (!text.includes('e')) return text
  const [digits, exponent] = text.split('e')
  const places = Math.max(0, (digits.split('.')[1] ?? '').length - Number(exponent))
  return value.toFixed(Math.min(100, places))
}
