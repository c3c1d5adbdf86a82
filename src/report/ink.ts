/** Weight of type on a terminal; plain where there is none. Colour is not used for meaning. */
export interface Ink {
  bold(text: string): string
  soft(text: string): string
}

export const plainInk: Ink = { bold: (text) => text, soft: (text) => text }

export const terminalInk: Ink = {
  bold: (text) => `\u001b[1m${text}\u001b[22m`,
  soft: (text) => `\u001b[2m${text}\u001b[22m`,
}
