import { type Problem, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { Billet } from '#billet'
import { stays } from '#movement'
import type { CautionName } from '../cautions.ts'
import { operation, step } from '../operation.ts'
import { loose, samplePack } from '../samples.ts'

const parameters = declare({
  how: {
    form: 'choice',
    options: {
      corners: 'short arc tacks at the corners and along the ends',
      sealed: 'a bead all round, so that no air gets in: welded dry, without flux',
      wired: 'bound with wire or held in a clamp, no arc',
    },
    default: 'corners',
    help: 'How the stack is held together until it is welded',
  },
  flux: {
    form: 'choice',
    options: {
      none: 'no flux: a sealed stack, or a fire that burns rich',
      borax: 'borax, dried or not',
      other: 'another flux: read its safety data',
    },
    default: 'none',
    help: 'Flux put on as soon as the stack is hot enough to melt it',
  },
  rod: {
    form: 'text',
    optional: true,
    longest: 60,
    help: 'What the tacks are made of, for the record',
  },
})

/** Holds the sheets together for the first heats. What the rod adds is trimmed off again. */
export const tack = operation({
  name: 'tack',
  summary: 'Tack the clean stack, or seal it all round, so that it goes into the fire as one.',
  takes: 'one',
  parameters,
  loses: [],
  cautions: ['arc', 'sealed', 'flux'],
  examples: [
    { values: {}, before: [loose(samplePack())] },
    { values: { how: 'sealed', rod: 'mild steel wire' }, before: [loose(samplePack())] },
    { values: { how: 'wired', flux: 'borax' }, before: [loose(samplePack(140, 32, 50, 22))] },
  ],
  forward([before], values, { shop }) {
    const after: Billet =
      before.bond === 'welded'
        ? before
        : { ...before, bond: values.how === 'sealed' ? 'sealed' : 'tacked' }
    const warnings: Problem[] = []
    if (before.bond === 'welded') warnings.push(nothingLoose())
    if (values.how === 'sealed' && values.flux !== 'none') warnings.push(fluxShutIn())
    const trim = printQuantity(shop.trim, 'length')
    const notes: string[] = []
    if (values.how !== 'wired')
      notes.push(
        `The metal of the tacks is not counted: trim ${trim} off each side once welded, or it is folded into the bar.`,
      )
    if (values.how === 'sealed')
      notes.push(
        'Heat slowly: the bead cracks where the sheets bend as they warm (common practice).',
      )
    return ok(step(after, { warnings, notes, cautions: dangers(values) }))
  },
  movement() {
    return stays
  },
})

function dangers({ how, flux }: { readonly how: string; readonly flux: string }): CautionName[] {
  return [
    ...(how === 'wired' ? [] : (['arc'] as const)),
    ...(how === 'sealed' ? (['sealed'] as const) : []),
    ...(flux === 'none' ? [] : (['flux'] as const)),
  ]
}

function nothingLoose(): Problem {
  return {
    at: '',
    what: 'nothing lies loose here: the bar is welded already',
    why: 'tacks hold sheets until they are welded',
    try: ['leave this step out', 'tack before the weld'],
  }
}

function fluxShutIn(): Problem {
  return {
    at: 'flux',
    what: 'flux is shut in behind the bead',
    why: 'flux must run out as the stack closes; sealed in, it stays as an inclusion',
    try: ['seal clean and dry, without flux', 'tack the corners only and use flux'],
  }
}
