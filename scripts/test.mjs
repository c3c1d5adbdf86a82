// `npm test`: set-up, then everything that must hold. The last line is the count, alone.
import { spawnSync } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { delimiter } from 'node:path'
import { explainNoNode, findNode } from '../bin/node-24.mjs'
import { runChecks } from './check.mjs'
import { at } from './set-up/place.mjs'

const resultsPath = at('.setup/test-results.json')

function run(command, args) {
  const env = { ...process.env, PATH: `${at('node_modules/.bin')}${delimiter}${process.env.PATH}` }
  return spawnSync(command, args, { cwd: at('.'), stdio: 'inherit', env }).status ?? 1
}

function close(passed, failed, skipped = 0) {
  console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`)
  process.exit(failed > 0 ? 1 : 0)
}

/** Tests by outcome; a test file that did not even load counts as one failure. */
function count(results) {
  const unloaded = results.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length
  return {
    passed: results.numPassedTests,
    failed: results.numFailedTests + unloaded,
    skipped: results.numPendingTests + results.numTodoTests,
  }
}

console.log('== set-up')
if (run(process.execPath, ['scripts/set-up.mjs', '--app', '--browser', '--oracles']) !== 0)
  close(0, 1)
const node = findNode()
if (!node) {
  console.error(explainNoNode())
  close(0, 1)
}

const wrong = await runChecks(node)
if (wrong.length > 0) {
  console.log(`\nNo test was run: first mend ${wrong.join(', ')}. Tests alone: npm run unit`)
  close(0, wrong.length)
}

/** Runs one of the two groups of tests; tests named on the command line narrow both. */
function test(project) {
  console.log(`== tests: ${project}`)
  rmSync(resultsPath, { force: true })
  const status = run(node, [
    'node_modules/vitest/vitest.mjs',
    'run',
    `--project=${project}`,
    '--passWithNoTests',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${resultsPath}`,
    ...process.argv.slice(2),
  ])
  try {
    const { passed, failed, skipped } = count(JSON.parse(readFileSync(resultsPath, 'utf8')))
    // The runner can also fail outside any test, by an error that nobody caught.
    return { passed, failed: status !== 0 && failed === 0 ? 1 : failed, skipped }
  } catch {
    console.log('The test runner ended without results; its own words are above.')
    return { passed: 0, failed: 1, skipped: 0 }
  }
}

const groups = ['rooms', 'browser'].map(test)
const sum = (name) => groups.reduce((total, group) => total + group[name], 0)
close(sum('passed'), sum('failed'), sum('skipped'))
