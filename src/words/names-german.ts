/** Names that the app puts together with others, in German. */

/** What metal is lost to. */
export const lostTo: Readonly<Record<string, string>> = {
  scale: 'Zunder',
  crop: 'Enden',
  trim: 'Rand',
  kerf: 'Fuge',
  ground: 'Schliff',
  'cut out': 'Ausschnitt',
  drilled: 'Bohrung',
  polished: 'Politur',
  etched: 'Ätzung',
}

/** Patterns as they are called; the trade's words for the operations of the same name are verbs. */
export const patterns: Readonly<Record<string, string>> = {
  random: 'Wild',
  'straight laminate on edge': 'Streifen hochkant',
  'straight laminate on end': 'Streifen quer',
  ladder: 'Leiter',
  raindrop: 'Regentropfen',
  twist: 'Torsion',
  feather: 'Feder',
}
