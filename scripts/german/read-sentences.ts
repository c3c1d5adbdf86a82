/**
 * Finds in the source every sentence that can reach the screen: string and template literals that
 * read as prose, with what is put into them at run time as numbered holes.
 */
import { readFileSync, readdirSync } from 'node:fs'
import { join, relative } from 'node:path'
import ts from 'typescript'
import { noSentences, notShown, rooms } from './where-sentences-are.ts'

export interface Sentence {
  /** `the bar is {0} too short` */
  readonly text: string
  /** `src/operations/crop/index.ts:75` */
  readonly at: string
}

/** Named so, a literal is shown however short it is. */
const shownByName = new Set([
  'what',
  'why',
  'help',
  'summary',
  'danger',
  'care',
  'options',
  'shows',
])

/** Named so, a literal is a value, a name that is looked up elsewhere, or a note of where a figure is from. */
const notShownByName = new Set([
  'do',
  'title',
  'how',
  'form',
  'standing',
  'law',
  'set',
  'lie',
  'shape',
])

/** Values, whatever stands in them. */
const neverShownByName = new Set(['default', 'examples', 'example'])

/** What is given to these is not said: it names how a bar came to be, or breaks a rule of the program. */
const notShownInCalls =
  /^(worked|joinBuilds|lossBetween|takeFeatures|cutOut|.*\.(includes|startsWith|split|replace|join))$/

export function readSentences(root: string): Sentence[] {
  return rooms.flatMap((room) =>
    filesOf(join(root, 'src', room))
      .filter(
        (path) =>
          !Object.keys(notShown).some((place) =>
            relative(join(root, 'src'), path).startsWith(place),
          ),
      )
      .flatMap((path) => sentencesIn(readFileSync(path, 'utf8'), relative(root, path))),
  )
}

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((file) => file.isFile() && /\.ts$/.test(file.name) && !/\.test\.ts$/.test(file.name))
    .map((file) => join(file.parentPath, file.name))
    .sort()
}

/** What the text of one file can say. */
export function sentencesIn(code: string, place: string): Sentence[] {
  const source = ts.createSourceFile(place, code, ts.ScriptTarget.Latest, true)
  const found: Sentence[] = []
  const visit = (node: ts.Node, shown: boolean): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return
    if (ts.isNewExpression(node) && node.expression.getText().endsWith('Error')) return
    if (ts.isBinaryExpression(node) && /^[!=]==$/.test(node.operatorToken.getText())) return
    if (ts.isCaseClause(node)) return node.statements.forEach((s) => visit(s, false))
    if (ts.isElementAccessExpression(node)) return visit(node.expression, shown)
    if (ts.isConditionalExpression(node)) visit(node.condition, false)
    if (ts.isCallExpression(node) && notShownInCalls.test(node.expression.getText())) {
      visit(node.expression, false)
      return node.arguments.filter((a) => !isText(a)).forEach((a) => visit(a, false))
    }
    if (ts.isPropertyAssignment(node)) {
      const name = node.name.getText()
      if (neverShownByName.has(name)) return
      // A parameter may be called so too: what is declared for it is shown.
      const isDeclaration = ts.isObjectLiteralExpression(node.initializer)
      if (notShownByName.has(name) && !isDeclaration && !isOption(node)) return
      return visit(node.initializer, shown || shownByName.has(name))
    }
    const text = textOf(node)
    if (
      text !== undefined &&
      (shown ? /[a-z]/i.test(text) : isProse(text)) &&
      !noSentences.has(text)
    ) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1
      found.push({ text, at: `${place}:${line}` })
    }
    const inner = shown && !ts.isTemplateExpression(node) && !ts.isCallExpression(node)
    node.forEachChild((child) => {
      if (!ts.isConditionalExpression(node) || child !== node.condition) visit(child, inner)
    })
  }
  visit(source, false)
  return found
}

/** A choice may have any name. */
const isOption = ({ parent: { parent } }: ts.Node) =>
  ts.isPropertyAssignment(parent) && parent.name.getText() === 'options'

const isText = (node: ts.Node) =>
  ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)

/** What a literal says, `${…}` as holes; undefined of any other node. */
function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text
  if (!ts.isTemplateExpression(node)) return undefined
  return node.templateSpans.reduce(
    (text, span, i) => `${text}{${i}}${span.literal.text}`,
    node.head.text,
  )
}

/** Units as they follow a number. */
const UNIT =
  '(?:mm[²³]?|cm[²³]?|in|ft|m|kg|g|lb|oz|min|h|s|deg|rad|°[CF]|US ton|ton(?:ne)?|bar|k?psi|ksi|lbf|kgf|lpi|tpi|ft·lbf|ft/min|sq in|cu in|kr|(?:turns? )?per (?:inch|mm|m)|mm pitch|turn)'
const SIZE = new RegExp(`^(?:(?:\\{\\d\\}|[\\d\\s./,×?−-])*${UNIT}?\\s?)+$`)

/** Words with a space among them, and not merely a size: `12 mm`, `1/4 turn`, `5 ft 2 in`. */
function isProse(text: string): boolean {
  const own = text.replaceAll(/\{\d+\}/g, '')
  return /[a-z]{2}/.test(own) && /\s/.test(text) && !SIZE.test(text)
}
