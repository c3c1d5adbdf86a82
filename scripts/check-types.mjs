// The native compiler checks the whole tree in about a second; the JavaScript one stays for the linter.
import { spawnSync } from 'node:child_process'
const run = spawnSync(process.execPath, ['node_modules/typescript-native/bin/tsc', '-p', '.'], {
  stdio: 'inherit',
})
process.exit(run.status ?? 1)
