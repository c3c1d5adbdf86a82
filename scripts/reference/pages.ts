import { CAUTIONS_DEFER, type Operation, cautions, operations } from '#operations'
import { type PieceKind, pieceKinds } from '#piece'
import {
  cuttingParameters,
  rackItemParameters,
  rateParameters,
  shopParameters,
  toleranceParameters,
} from '#shop'
import { type Figure, bibliography, cite } from '#sources'
import { type Grade, densityOf, grades } from '#steel'
import { type Section, json, page, parameterTable, table } from './page.ts'

/** Every printed page by its path under `docs/reference/`. */
export function referencePages(): ReadonlyMap<string, string> {
  return new Map([
    ['operations.md', operationsPage()],
    ['cautions.md', cautionsPage()],
    ['pieces.md', piecesPage()],
    ['shop.md', shopPage()],
    ['steels.md', steelsPage()],
    ['sources.md', sourcesPage()],
  ])
}

function operationsPage(): string {
  return page(
    'Operations',
    `What can be done to the metal, in the order a smith meets it. A step of a job file names one by "do" and gives its values; a quantity is written as people write it ([units](../units.md)).`,
    operations.map(operationSection),
  )
}

function operationSection(operation: Operation): Section {
  const takes = {
    none: 'Starts a bar.',
    one: 'Takes the bar in hand.',
    others: 'Takes the bar in hand and other bars of the job.',
  }[operation.takes]
  const loses = operation.loses.length > 0 ? operation.loses.join(', ') : 'nothing'
  const dangers = operation.cautions.map((name) => `[${name}](cautions.md#${name})`).join(', ')
  const [example] = operation.examples
  return {
    title: operation.name,
    parts: [
      `${operation.summary} ${takes} Done ${operation.gradual ? 'bit by bit' : 'at a stroke'}. Metal lost: ${loses}. Dangers: ${dangers || 'none of its own'}.`,
      parameterTable(operation.parameters),
      ...(example ? [json({ do: operation.name, ...example.values })] : []),
    ],
  }
}

function cautionsPage(): string {
  return page(
    'Cautions',
    `What can hurt, the usual care, and what that rests on. ${CAUTIONS_DEFER}`,
    Object.entries(cautions).map(([title, { danger, care, restsOn }]) => ({
      title,
      parts: [`**${danger}** ${care} *(${restsOn})*`],
    })),
  )
}

function piecesPage(): string {
  return page(
    'Pieces',
    'What can be made. A job file names the kind and gives its sizes; what has a usual value may be left out.',
    pieceKinds.map(pieceSection),
  )
}

function pieceSection(kind: PieceKind): Section {
  const [example] = kind.examples
  return {
    title: kind.name,
    parts: [
      `**${kind.title}.** ${kind.summary}`,
      parameterTable(kind.parameters),
      ...(example ? [json({ kind: kind.name, ...example })] : []),
    ],
  }
}

function shopPage(): string {
  return page(
    'The shop',
    'What the smith has and what is lost there. A job file states only what differs; the usual values are common practice unless a source is named, and a shop that weighs its own billets should write its own.',
    [
      { title: 'Values', parts: [parameterTable(shopParameters)] },
      { title: 'Rates', parts: ['`rates`: what the work costs.', parameterTable(rateParameters)] },
      {
        title: 'Tolerances',
        parts: ['`tolerances`: how far things turn out.', parameterTable(toleranceParameters)],
      },
      { title: 'Rack', parts: ['`rack`: one entry a bar.', parameterTable(rackItemParameters)] },
      {
        title: 'Cutting',
        parts: ['`cutting`: how bars are cut.', parameterTable(cuttingParameters)],
      },
    ],
  )
}

function steelsPage(): string {
  const overview = table(
    ['steel', 'other names', 'standard', 'family', 'in the acid', 'density, kg/m³'],
    grades.map((grade) => {
      const { value, range } = densityOf(grade)
      return [
        `[${grade.name}](#${grade.name
          .toLowerCase()
          .replace(/[^a-z0-9 -]/g, '')
          .replace(/ /g, '-')})`,
        grade.aliases.join(', ') || '–',
        grade.standard,
        grade.family,
        grade.etch.class,
        `${Math.round(value)} (${Math.round(range[0])} to ${Math.round(range[1])})`,
      ]
    }),
  )
  return page(
    'Steels',
    'Every grade that comes with the program, as its sources print it. Iron is the rest. A figure no source states is left out. Sources by key: [sources](sources.md).',
    [{ title: 'All grades', parts: [overview] }, ...grades.map(gradeSection)],
  )
}

function gradeSection(grade: Grade): Section {
  const figures: [string, Figure | undefined][] = [
    ...Object.entries(grade.composition),
    ['slag', grade.slag],
    ['forging, start', grade.forging?.start],
    ['forging, never over', grade.forging?.max],
    ['forging, stop', grade.forging?.stop],
    ['harden from', grade.austenitise],
    ['hardness as quenched', grade.asQuenched],
    ['not magnetic above', grade.nonmagnetic],
    ['density', grade.density],
  ]
  const rows = figures.flatMap(([name, figure]) => (figure ? [figureRow(name, figure)] : []))
  const quench = grade.quench ? [['quench', grade.quench.text, '', cite(grade.quench)]] : []
  return {
    title: grade.name,
    parts: [
      table(['figure', 'value', 'range', 'source'], [...rows, ...quench]),
      ...(grade.notes ?? []),
    ],
  }
}

function figureRow(name: string, figure: Figure): string[] {
  const { value, range, unit, note } = figure
  const between = range ? `${range[0]} to ${range[1]}` : '–'
  return [name, `${value} ${unit}`, between, note ? `${cite(figure)}; ${note}` : cite(figure)]
}

function sourcesPage(): string {
  const rows = Object.entries(bibliography).map(([key, text]) => [`\`${key}\``, text])
  return page('Sources', 'Every source a figure in this project may name.', [
    { title: 'By key', parts: [table(['key', 'source'], rows)] },
  ])
}
