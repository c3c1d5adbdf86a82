import type { Look } from '#job'

/** A pattern of the trade as a small job, and where to look at it. */
export interface Preset {
  /** The job: `jobs/patterns/NAME.json`. */
  readonly name: string
  readonly title: string
  /** What to look for, in a sentence. */
  readonly say: string
  readonly looks: readonly Looking[]
}

export interface Looking {
  /** Under the picture. */
  readonly caption: string
  readonly look: Look
  /** Start of the piece shown along the picture, and its length, m; left out, all of it. */
  readonly from?: number
  readonly length?: number
}

const mm = (n: number) => n / 1000
const strip = (caption: string, depth = 0): Looking => ({
  caption,
  look: { side: 'front', depth: mm(depth) },
  from: mm(90),
  length: mm(84),
})
const end: Looking = { caption: 'the end', look: { cut: { axis: 'x', at: mm(30) } } }

export const presets: readonly Preset[] = [
  {
    name: 'straight-laminate',
    title: 'Straight laminate on edge',
    say: 'Edge-on layers as lines along the bar, as far apart as they are thick; grinding does not change them.',
    looks: [strip('the face')],
  },
  {
    name: 'straight-laminate-on-end',
    title: 'Straight laminate on end',
    say: 'The bar stood on its end and drawn out across its layers: lines across the piece.',
    looks: [strip('the face')],
  },
  {
    name: 'random',
    title: 'Random',
    say: 'Contour lines of the unevenness of hammer and hand, cut by a flat face.',
    looks: [strip('the face')],
  },
  {
    name: 'ladder',
    title: 'Ladder',
    say: 'Rungs across the bar, one to each groove; those of the other face lie between.',
    looks: [strip('the face'), strip('1 mm deeper', 1)],
  },
  {
    name: 'raindrop',
    title: 'Raindrop',
    say: 'Rings about each dimple, as many as it went through layers.',
    looks: [strip('the face'), strip('1 mm deeper', 1)],
  },
  {
    name: 'twist',
    title: 'Twist',
    say: 'Stripes at the skin, bent half-way in, stars at the middle, one every half turn.',
    looks: [strip('0.3 mm deep', 0.3), strip('3 mm deep', 3), strip('at the middle', 5.8)],
  },
  {
    name: 'interrupted-twist',
    title: 'Interrupted twist',
    say: 'Zones turned right and left by turns, straight layers between them.',
    looks: [
      { ...strip('1 mm deep', 1), length: mm(168) },
      { ...strip('at the middle', 5.8), length: mm(168) },
    ],
  },
  {
    name: 'two-bar-twist',
    title: 'Two bars twisted against each other',
    say: 'Stripes meet in the seam as a herringbone.',
    looks: [strip('the face')],
  },
  {
    name: 'three-bar-twist',
    title: 'Three bars, ground to their middle',
    say: 'Stars in rows, those of the middle bar turning the other way.',
    looks: [strip('the face')],
  },
  {
    name: 'ws',
    title: 'W’s',
    say: 'Standing layers bowed by pressing, then stacked: bows in a row on the end.',
    looks: [end],
  },
  {
    name: 'feather',
    title: 'Feather',
    say: 'Barbs swept back to the quill, where the wedge went through.',
    looks: [{ ...strip('the face'), from: mm(40), length: mm(140) }],
  },
  {
    name: 'basket-weave',
    title: 'Basket weave',
    say: 'Bars squared on the bias, four and four: bent corners woven through one another.',
    looks: [end],
  },
  {
    name: 'radial',
    title: 'Radial',
    say: 'Layers running to the middle, a bow-tie each way.',
    looks: [end],
  },
  {
    name: 'explosion',
    title: 'Explosion',
    say: 'Bias bars about one middle: lines fly from it or close round it.',
    looks: [end],
  },
  {
    name: 'four-way',
    title: 'Four-way mosaic',
    say: 'One small bar sixteen times, each the mirror of its neighbours.',
    looks: [end],
  },
  {
    name: 'accordion',
    title: 'Accordion',
    say: 'The end of an explosion bar, over and over along the face, mirrored at every hinge.',
    looks: [{ ...strip('the face'), length: mm(140) }],
  },
  {
    name: 'jelly-roll',
    title: 'Jelly roll',
    say: 'A strip rolled up: a spiral on the end, squared with the bar.',
    looks: [end],
  },
  {
    name: 'san-mai',
    title: 'San mai',
    say: 'One line, where the ground bevel leaves the jacket and meets the core.',
    looks: [
      {
        caption: 'the bevel of a flat grind, spine above',
        look: {
          cut: {
            through: [0, 0.018, 0.00225],
            // From the full thickness at the back to the middle at the edge.
            out: [0, -0.00225, 0.036],
            up: [0, 1, 0],
          },
        },
        from: mm(90),
        length: mm(84),
      },
    ],
  },
  {
    name: 'stamped-relief',
    title: 'Pressed relief, ground level',
    say: 'Bands of contour lines where the ridges of the die went in.',
    looks: [strip('the face'), strip('1 mm deeper', 1)],
  },
  {
    name: 'can',
    title: 'Can',
    say: 'Solid steel in a matrix of powder; boxes stand for balls and cubes.',
    looks: [end, { ...strip('the face', 3), from: mm(40) }],
  },
]
