/** A length a smith states, and its usual value; limits in metres. */
export function size<const D extends string>(usual: D, min: number, max: number, help: string) {
  return { form: 'quantity', of: 'length', min, max, default: usual, help } as const
}

/** A length that may be left out. */
export function sizeIfGiven(min: number, max: number, help: string) {
  return { form: 'quantity', of: 'length', min, max, optional: true, help } as const
}
