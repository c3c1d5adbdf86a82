import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axeSource = readFileSync(
  createRequire(import.meta.resolve('@axe-core/playwright')).resolve('axe-core/axe.min.js'),
  'utf8',
)

interface Violation {
  readonly id: string
  readonly impact: string | null
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[]
}

interface Checker {
  run(options: object): Promise<{ readonly violations: readonly Violation[] }>
}

/** Serious and critical findings of the accessibility checker, in words; by some of its rules, or by all. */
export async function findings(page: Page, rules?: readonly string[]): Promise<string[]> {
  const isThere = await page.evaluate(() => 'axe' in window)
  if (!isThere) await page.evaluate(axeSource)
  const violations = await page.evaluate(async (only) => {
    const { axe } = window as unknown as { axe: Checker }
    const found = await axe.run({ resultTypes: ['violations'], ...(only && { runOnly: only }) })
    return found.violations
  }, rules)
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`),
    )
}
