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

/** Serious and critical findings of the accessibility checker, in words. */
export async function findings(page: Page): Promise<string[]> {
  const violations = await page.evaluate(async (source) => {
    new Function(source)()
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: readonly Violation[] }> }
    }
    return (await axe.run()).violations
  }, axeSource)
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`),
    )
}
