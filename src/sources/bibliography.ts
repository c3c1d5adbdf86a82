/**
 * Every source a figure in this project may name. Texts marked secondary were read in another
 * text that cites them. One line a source: enough for a reader to find it.
 */
export const bibliography = {
  practice: 'Common practice among smiths; no published source.',
  memory: 'From memory; to be checked against a text before it is relied on.',
  project: "Worked out in this project from the figures and equations named beside it.",
} as const satisfies Record<string, string>

export type SourceKey = keyof typeof bibliography
