import ts from 'typescript'

/** An import or a re-export of a file. */
export interface Import {
  readonly from: string
  readonly line: number
}

/** What the rules need to know of a TypeScript file. */
export interface Source {
  readonly path: string
  readonly text: string
  readonly lines: number
  readonly imports: readonly Import[]
  /** Lines of `export *`. */
  readonly exportsAll: readonly number[]
  readonly exportsDefault: readonly number[]
  /** Names it exports by `export { … }`, and lines that are anything else than that. */
  readonly names: readonly string[]
  readonly otherStatements: readonly number[]
  /** Lines of skipped, pending or lone tests. */
  readonly unrun: readonly number[]
}

export function readSource(path: string, text: string): Source {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, false, kind)
  const lineOf = (node: ts.Node) => file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1
  const imports: Import[] = []
  const exportsAll: number[] = []
  const exportsDefault: number[] = []
  const names: string[] = []
  const otherStatements: number[] = []
  const unrun: number[] = []
  const note = (from: ts.Node | undefined, at: ts.Node) => {
    if (from && ts.isStringLiteralLike(from)) imports.push({ from: from.text, line: lineOf(at) })
  }

  for (const statement of file.statements) {
    if (ts.isExportDeclaration(statement)) {
      note(statement.moduleSpecifier, statement)
      if (!statement.exportClause || ts.isNamespaceExport(statement.exportClause)) {
        exportsAll.push(lineOf(statement))
      } else {
        for (const { name } of statement.exportClause.elements) {
          names.push(name.text)
          if (name.text === 'default') exportsDefault.push(lineOf(statement))
        }
      }
      if (statement.moduleSpecifier) continue
    }
    if (ts.isImportDeclaration(statement)) note(statement.moduleSpecifier, statement)
    if (ts.isExportAssignment(statement)) exportsDefault.push(lineOf(statement))
    const modifiers = ts.canHaveModifiers(statement) ? ts.getModifiers(statement) : undefined
    if (modifiers?.some((m) => m.kind === ts.SyntaxKind.DefaultKeyword))
      exportsDefault.push(lineOf(statement))
    otherStatements.push(lineOf(statement))
  }

  const walk = (node: ts.Node): void => {
    if (ts.isCallExpression(node)) {
      if (node.expression.kind === ts.SyntaxKind.ImportKeyword) note(node.arguments[0], node)
      if (isUnrun(node.expression)) unrun.push(lineOf(node))
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      note(node.argument.literal, node)
    }
    ts.forEachChild(node, walk)
  }
  if (/\bimport\s*\(|\.(skip|only|todo|skipIf|runIf)\b/.test(text)) walk(file)

  const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0)
  return { path, text, lines, imports, exportsAll, exportsDefault, names, otherStatements, unrun }
}

/** A test or group that is skipped, pending, conditional or alone, however it is called. */
function isUnrun(called: ts.Expression): boolean {
  if (ts.isCallExpression(called)) return isUnrun(called.expression)
  return (
    ts.isPropertyAccessExpression(called) &&
    ['skip', 'only', 'todo', 'skipIf', 'runIf', 'fails'].includes(called.name.text) &&
    ts.isIdentifier(called.expression) &&
    ['it', 'test', 'describe', 'suite'].includes(called.expression.text)
  )
}
