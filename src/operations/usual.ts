/** Parameters that several operations ask for in the same words. */
export const kerf = {
  form: 'quantity',
  of: 'length',
  min: 0,
  max: 0.01,
  optional: true,
  help: "Lost in each cut; left out, the shop's",
} as const

export const cleanUp = {
  form: 'quantity',
  of: 'length',
  min: 0,
  max: 0.005,
  optional: true,
  help: "Ground off each face that will be welded; left out, the shop's",
} as const

export const crop = {
  form: 'quantity',
  of: 'length',
  min: 0,
  max: 0.2,
  optional: true,
  help: "Cut off each end first; left out, the shop's",
} as const

export const sectionOptions = {
  rectangle: 'square or flat',
  octagon: 'eight-sided',
  round: 'round',
} as const
