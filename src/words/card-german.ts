import { counting } from './counting.ts'
import type { Catalogue } from './english.ts'

const { nounFor, plural } = counting('de')

/** What stands on a step of the card: its heats and blows, and what is to be minded. */
export const cardGerman: Catalogue['card'] = {
  heatTime: {
    until: (from, time) =>
      `${from === '' ? 'aus dem Kalten' : `von ${from}`} etwa ${time}, bis der Kern heiß ist`,
    held: (time) => `${time} gehalten`,
    work: (time, stop) => `dann ${time} Arbeit bis ${stop}`,
    quenched: (medium) => `abgeschreckt, Mittel: ${medium}`,
    cooled: (medium) => `abgekühlt, Mittel: ${medium}`,
  },
  withoutTimes:
    'Die Hitzen stehen hier ohne ihre Zeiten: die waren noch nicht ausgerechnet. Noch einmal gedruckt, sind sie da.',
  blows: (likely, few, many) =>
    `${likely} ${nounFor(Number(likely), 'Schlag', 'Schläge')}${few === many ? '' : ` (${few} bis ${many})`}`,
  squeezes: (force, low, high, n) =>
    `${force} (${low} bis ${high}), ${n} ${nounFor(Number(n), 'Druck', 'Drücke')}`,
  inHeats: (n) => `in ${plural(n, 'Hitze', 'Hitzen')}`,
  comesOut: (narrow, wide, short, long) =>
    `wird ${narrow} bis ${wide} breit, ${short} bis ${long} lang`,
  danger: {
    heat: 'Feuer',
    glare: 'Feuer',
    gas: 'Feuer',
    strike: 'Hammer',
    flux: 'Flussmittel',
    dust: 'Staub',
    saw: 'Säge',
    arc: 'Lichtbogen',
    sealed: 'Platzen',
    quench: 'Ölbrand',
    acid: 'Säure',
    spring: 'Bruch',
    drill: 'Bohrer',
  },
  usualDangers:
    'Feuer: Brandwunden, Strahlung, Gas. Hammer: fliegender Zunder, Lärm. Alles im Wortlaut am offenen Schritt und am Fuß.',
}

/** The ways the planner lays beside the card. */
export const waysGerman: Catalogue['ways'] = {
  title: 'Andere Wege',
  looking: (n) => `Andere Wege werden gesucht: ${n} …`,
  considered: (n) =>
    `${n} ${nounFor(Number(n.replace(/\D/g, '')), 'Weg', 'Wege')} angesehen; neben der Karte die besten Mittelwege:`,
  asWritten: 'die Karte, wie sie steht',
  recipe: (sheets, high) =>
    high.length === 0
      ? `${plural(sheets, 'Blech', 'Bleche')}, nicht neu gestapelt`
      : `${plural(sheets, 'Blech', 'Bleche')}, neu gestapelt ${high.map((n) => `${n} hoch`).join(', dann ')}`,
  way: 'Weg',
  take: 'Nehmen',
  takeNamed: (name) => `Diesen Weg nehmen: ${name}`,
  table: 'Wege nebeneinander',
  heats: 'Hitzen',
  layers: 'Lagen',
  lines: 'Linien',
  steel: 'Stahl vom Regal',
  yield: 'Bleibt im Stück',
  hands: 'Hände am Werk',
  cost: 'Kosten',
  hardness: 'Härte, HRC',
  failing: 'Eine Schweißung misslingt',
  layersLost: 'Äußere Lagen fort',
  inHundred: (n) => `${n} von 100`,
  none: 'keine',
}
