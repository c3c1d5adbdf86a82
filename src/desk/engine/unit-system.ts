import { type QuantityKind, systemOf } from '#units'

export function isInch(text: string | undefined, kind: QuantityKind): boolean {
  return text !== undefined && systemOf(text, kind) === 'inch'
}
