/** A label beneath one step's heats, or beneath those of several that are too short for one each. */
export interface StepMark<S> {
  readonly number: string
  readonly steps: readonly S[]
  /** Where it begins and how much it may take, px. */
  readonly from: number
  readonly free: number
}

const APART = 8

/** Numbers of steps along a line: neighbours whose numbers would stand upon one another are said together. */
export function groupSteps<S extends { readonly step: number }>(
  steps: readonly S[],
  fromOf: (step: S, i: number) => number,
  end: number,
  widthOf: (text: string) => number,
): StepMark<S>[] {
  const groups: { steps: S[]; from: number }[] = []
  const numberOf = (group: readonly S[]) =>
    group.length === 1 ? `${group[0]!.step}` : `${group[0]!.step}–${group.at(-1)!.step}`
  const fits = (group: (typeof groups)[number], till: number) =>
    group.from + widthOf(numberOf(group.steps)) + APART <= till
  steps.forEach((step, i) => {
    const from = fromOf(step, i)
    const last = groups.at(-1)
    if (last && !fits(last, from)) last.steps.push(step)
    else groups.push({ steps: [step], from })
  })
  // The last has nothing after it to grow into: it joins the one before.
  while (groups.length > 1 && !fits(groups.at(-1)!, end)) {
    const gone = groups.pop()!
    groups.at(-1)!.steps.push(...gone.steps)
  }
  return groups.map((group, i) => ({
    number: numberOf(group.steps),
    steps: group.steps,
    from: group.from,
    free: (groups[i + 1]?.from ?? end) - group.from - APART,
  }))
}
