import { readFile } from 'node:fs/promises'
import { printQuantity, readQuantity } from '#units'
import { readPicture } from '#formats'
import { angleOf, brightShare, fieldOfPicture, linesAlong, repeatAlong, spectrumAlong } from '#look'
import { BadUsage, type Command, text } from '../command.ts'

export const measure: Command = {
  name: 'measure',
  summary:
    'Measure a photograph or a drawn picture of an etched face: lines, spacing, angle, repeat, bright share.',
  usage: 'PICTURE [--scale "20 per mm"] [--from "X, Y" --to "X, Y"] [--json]',
  options: {
    scale: { type: 'string' },
    from: { type: 'string' },
    to: { type: 'string' },
    json: { type: 'boolean' },
  },
  help: [
    'billetwright measure face.png',
    'billetwright measure photo.jpg --scale "34.2 per mm" --from "5 mm, 12 mm" --to "95 mm, 12 mm"',
    '--scale   pixels to a length: measure something of known length in the picture; left out, what the file says',
    '--from    ends of the line along which layers are counted, from the upper left corner; left out, right across the middle',
  ],
  async run(given, terminal) {
    const [path, ...more] = given.words
    if (path === undefined || more.length > 0)
      throw new BadUsage('one picture is measured at a time', ['billetwright measure face.png'])
    const { picture, wrong } = await pictureIn(path)
    if (!picture) {
      terminal.error(`"${path}" cannot be read: ${wrong}.\n`)
      return 1
    }
    const perMetre = scaleOf(text(given, 'scale'), picture.perMetre)
    const field = fieldOfPicture(picture, perMetre)
    const [width, height] = [picture.width / perMetre, picture.height / perMetre]
    const from = spot(text(given, 'from')) ?? { x: 0, y: height / 2 }
    const to = spot(text(given, 'to')) ?? { x: width, y: height / 2 }
    const lines = linesAlong(field, from, to)
    const [along, across] = [
      spectrumAlong(field, { axis: 'x' }),
      spectrumAlong(field, { axis: 'y' }),
    ]
    const angle = angleOf(field)
    const record = {
      width,
      height,
      pixelsPerMetre: perMetre,
      linesPerMetre: lines.perMetre,
      lineSpacing: lines.spacing,
      lineDeviation: lines.deviation,
      strongestAlong: along.spacing,
      strongestAcross: across.spacing,
      repeatAlong: repeatAlong(field, { axis: 'x' }),
      angle: angle.turns * 360,
      clear: angle.clear,
      brightShare: brightShare(field, 'photograph'),
    }
    const length = (m: number) => (Number.isFinite(m) ? printQuantity(m, 'length') : 'none found')
    if (given.options.json === true)
      terminal.out(
        `${JSON.stringify(record, (_, v) => (Number.isFinite(v) || typeof v !== 'number' ? v : null), 2)}\n`,
      )
    else
      terminal.out(
        [
          `Picture        ${length(width)} × ${length(height)}`,
          `Lines          ${printQuantity(lines.perMetre, 'lines')} along the line, ${length(lines.spacing)} apart (± ${length(lines.deviation)})`,
          `Spacing        strongest ${length(along.spacing)} along, ${length(across.spacing)} across`,
          `Repeat         every ${length(record.repeatAlong)} along (rungs, stars)`,
          `Angle          lines lie at ${record.angle.toFixed(1)}° (clear ${angle.clear.toFixed(2)} of 1)`,
          `Bright         ${printQuantity(record.brightShare, 'ratio')} of the metal`,
          '',
        ].join('\n'),
      )
    return 0
  },
}

async function pictureIn(path: string): Promise<ReturnType<typeof readPicture>> {
  try {
    return readPicture(await readFile(path))
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    return { wrong: code === 'ENOENT' ? 'there is no such file' : String(code ?? error) }
  }
}

function scaleOf(written: string | undefined, own: number | undefined): number {
  if (written === undefined) {
    if (own !== undefined) return own
    throw new BadUsage('the picture does not say how large it is', ['--scale "20 per mm"'])
  }
  const read = readQuantity(written, 'lines')
  if (read.problems)
    throw new BadUsage(`--scale: ${read.problems[0].what}`, ['--scale "20 per mm"'])
  return read.ok.si
}

function spot(written: string | undefined): { x: number; y: number } | undefined {
  if (written === undefined) return undefined
  const parts = written.split(',').map((part) => readQuantity(part.trim(), 'length'))
  const [x, y] = parts
  if (parts.length !== 2 || !x?.ok || !y?.ok)
    throw new BadUsage(`"${written}" is no place in the picture`, ['--from "5 mm, 12 mm"'])
  return { x: x.ok.si, y: y.ok.si }
}
