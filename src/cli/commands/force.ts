import { type QuantityKind, readQuantity } from '#units'
import type { Problem, Result } from '#problem'
import { askForce, askStamp, readSides } from '#job'
import { problemsText } from '#report'
import { BadUsage, type Command, type Given, type Terminal, text } from '../command.ts'
import { outlineFrom } from '../outline.ts'
import { type ForceTool, forceText, stampText } from '../force-text.ts'

export const force: Command = {
  name: 'force',
  summary: 'Blows, press force and heats to bring a bar to a section, or to press a mark in.',
  usage:
    '--steel NAME[,NAME] --heat T (--section "W x H" --to H | --emblem FILE.svg|PATH --across L --depth L) [--hammer MASS | --press FORCE]',
  options: {
    steel: { type: 'string' },
    heat: { type: 'string' },
    section: { type: 'string' },
    to: { type: 'string' },
    width: { type: 'string' },
    length: { type: 'string' },
    bite: { type: 'string' },
    'on-edge': { type: 'boolean' },
    emblem: { type: 'string' },
    across: { type: 'string' },
    depth: { type: 'string' },
    thickness: { type: 'string' },
    off: { type: 'string' },
    hammer: { type: 'string' },
    power: { type: 'string' },
    speed: { type: 'string' },
    press: { type: 'string' },
    json: { type: 'boolean' },
  },
  help: [
    'billetwright force --steel 1084 --section "40 x 50 mm" --to "32 mm" --heat "1100 °C" --hammer "4 lb"',
    'billetwright force --steel 1095,15N20 --section "40 x 50 mm" --to "16 mm" --width "40 mm" --heat "1050 °C" --press "25 ton"',
    'billetwright force --steel 1095 --heat "1100 °C" --emblem gull.svg --across "46 mm" --depth "1.2 mm" --off "0.25 mm"',
    '--steel     one grade, or several that lie on one another in equal shares; --on-edge: they stand in the blow',
    '--heat      of the metal while it is worked; a mark is told of 100 °C to either side as well',
    '--section   width and height; --to the height wanted; --width kept by turning on edge, else the bar spreads',
    '--length    of the bar, 100 mm if left out; --bite of the dies, 40 mm if left out',
    '--emblem    an SVG drawing or the text of its d="…"; --thickness of the piece, 8 mm if left out; --off ground off later',
    '--hammer    hand hammer; --power falling mass of a power hammer; --press; --speed of the one asked for',
    '            none of them: a 4 lb hand hammer, and the force a press must have (common practice)',
  ],
  async run(given, terminal) {
    const about = {
      steels: wanted(given, 'steel').split(/\s*,\s*/),
      temperature: quantity(given, 'heat', 'temperature'),
      ...(given.options['on-edge'] === true && { onEdge: true }),
    }
    const tools = toolsAsked(given)
    return text(given, 'emblem') === undefined
      ? section(given, about, tools, terminal)
      : await emblem(given, about, tools, terminal)
  },
}

interface About {
  readonly steels: readonly string[]
  readonly temperature: number
  readonly onEdge?: boolean
}

function section(
  given: Given,
  about: About,
  tools: readonly ForceTool[],
  terminal: Terminal,
): 0 | 1 {
  const sides = orUsage(readSides(wanted(given, 'section'), 2))
  const [width, height] = [sides[0] as number, sides[1] as number]
  const toWidth = text(given, 'width')
  const asked = {
    ...about,
    width,
    height,
    length: quantity(given, 'length', 'length', '100 mm'),
    toHeight: quantity(given, 'to', 'length'),
    ...(toWidth !== undefined && { toWidth: quantity(given, 'width', 'length') }),
    bite: quantity(given, 'bite', 'length', '40 mm'),
    tools: tools.map((t) => t.tool),
  }
  const answer = askForce(asked)
  if (answer.problems) return failure(answer.problems, terminal)
  terminal.out(
    given.options.json === true
      ? json(asked, answer.ok)
      : forceText(asked, answer.ok, tools, terminal.ink),
  )
  return 0
}

async function emblem(
  given: Given,
  about: About,
  tools: readonly ForceTool[],
  terminal: Terminal,
): Promise<0 | 1> {
  const outline = await outlineFrom(wanted(given, 'emblem'))
  if (outline.problems) return failure(outline.problems, terminal)
  const asked = {
    ...about,
    outline: outline.ok,
    across: quantity(given, 'across', 'length'),
    depth: quantity(given, 'depth', 'length'),
    thickness: quantity(given, 'thickness', 'length', '8 mm'),
    takenOff: quantity(given, 'off', 'length', '0 mm', true),
    tools: tools.map((t) => t.tool),
  }
  const answer = askStamp(asked)
  if (answer.problems) return failure(answer.problems, terminal)
  terminal.out(
    given.options.json === true
      ? json(asked, answer.ok)
      : stampText(asked, answer.ok, tools, terminal.ink),
  )
  return 0
}

/** A press without a limit: for the force that one must have. */
const ANY_PRESS = 1e12

function toolsAsked(given: Given): readonly ForceTool[] {
  const speed = (usual: string) => quantity(given, 'speed', 'speed', usual)
  const tools: ForceTool[] = []
  const hand = text(given, 'hammer')
  const power = text(given, 'power')
  const press = text(given, 'press')
  if ([hand, power, press].filter((t) => t !== undefined).length > 1)
    throw new BadUsage('one tool at a time: --hammer, --power or --press')
  if (hand !== undefined || (power === undefined && press === undefined)) {
    const mass = quantity(given, 'hammer', 'mass', '4 lb')
    tools.push({
      name: `${hand ?? '4 lb'} hand hammer`,
      tool: { kind: 'hand', mass, speed: speed('8 m/s') },
    })
  }
  if (power !== undefined) {
    const mass = quantity(given, 'power', 'mass')
    tools.push({
      name: `${power} power hammer`,
      tool: { kind: 'power', mass, speed: speed('5 m/s') },
    })
  }
  if (press !== undefined || (hand === undefined && power === undefined)) {
    const limit = press === undefined ? ANY_PRESS : quantity(given, 'press', 'force')
    tools.push({
      name: press === undefined ? 'a press' : `${press} press`,
      tool: { kind: 'press', force: limit, speed: press === undefined ? 0.03 : speed('0.03 m/s') },
      ...(press === undefined && { unlimited: true }),
    })
  }
  return tools
}

/** Infinity is no number in JSON, and a press without a limit no tool of a shop. */
function json(asked: object, answer: object): string {
  const plain = (_key: string, value: unknown) =>
    typeof value === 'number' && !(Math.abs(value) < ANY_PRESS) ? null : value
  return `${JSON.stringify({ asked, answer }, plain, 2)}\n`
}

function failure(problems: readonly Problem[], { error, ink }: Terminal): 1 {
  error(`${problemsText(problems, ink)}\n`)
  return 1
}

function wanted(given: Given, option: string): string {
  const word = text(given, option)
  if (word === undefined || word.trim() === '')
    throw new BadUsage(`--${option} is not given`, ['billetwright help force'])
  return word
}

function quantity(
  given: Given,
  option: string,
  kind: QuantityKind,
  usual?: string,
  mayBeNone = false,
): number {
  const word = usual === undefined ? wanted(given, option) : (text(given, option) ?? usual)
  const { si } = orUsage(readQuantity(word, kind))
  if (!(mayBeNone ? si >= 0 : si > 0))
    throw new BadUsage(`--${option} ${word} must be more than nothing`)
  return si
}

function orUsage<T>(read: Result<T>): T {
  if (read.problems) throw new BadUsage(read.problems[0].what, read.problems[0].try)
  return read.ok
}
