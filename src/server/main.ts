import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { dataFolder, openStore } from '#store'
import own from '../../package.json' with { type: 'json' }
import { buildApp } from './app.ts'
import { USUAL_PORT, listen, openBrowser } from './listen.ts'
import { readSamples } from './samples.ts'

export interface Serving {
  readonly address: string
  stop(): Promise<void>
}

export interface ServeOptions {
  /** 0 takes any free one; a taken one is left for the next free. */
  readonly port?: number
  /** Where jobs are kept; otherwise the system's place for a person's data. */
  readonly dataDir?: string
  /** Opens the browser. */
  readonly open?: boolean
  /** The built pages. */
  readonly pages?: string
}

const builtPages = fileURLToPath(new URL('../../dist/web', import.meta.url))

/** Serves the app on this machine until it is stopped. */
export async function serve(options: ServeOptions = {}): Promise<Serving> {
  const store = await openStore(options.dataDir ?? dataFolder())
  const samples = readSamples()
  if (await store.isEmpty()) await store.resetSamples(samples)
  const app = await buildApp({
    store,
    samples,
    pages: options.pages ?? builtPages,
    version: own.version,
  })
  const address = await listen(app, options.port ?? USUAL_PORT)
  if (options.open) openBrowser(address)
  let stopping: Promise<void> | undefined
  const stop = () =>
    (stopping ??= (async () => {
      await app.close()
      await store.close()
    })())
  return { address, stop }
}

const usage =
  'billetwright open [--port N] [--data FOLDER] [--no-open]\n' +
  '  Serves the app on this machine and opens it in the browser. Ctrl-C stops it.\n'

/** `billetwright open`: serves until interrupted; the exit code comes back. */
export async function openApp(argv: readonly string[]): Promise<number> {
  let values
  try {
    values = parseArgs({
      args: [...argv],
      options: {
        port: { type: 'string' },
        data: { type: 'string' },
        'no-open': { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }).values
  } catch (fault) {
    process.stderr.write(`${(fault as Error).message.split('. ')[0]}.\nUsage: ${usage}`)
    return 2
  }
  if (values.help) {
    process.stdout.write(usage)
    return 0
  }
  const port = values.port === undefined ? USUAL_PORT : Number(values.port)
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    process.stderr.write(`"${values.port}" is no port; a port is 0 to 65535.\nUsage: ${usage}`)
    return 2
  }
  const stopped = new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
      process.once(signal, () => resolve())
  })
  const serving = await serve({
    port,
    dataDir: values.data,
    open: !values['no-open'] && !process.env.CI,
  })
  process.stdout.write(`Billetwright is open at ${serving.address}\nCtrl-C stops it.\n`)
  await stopped
  await serving.stop()
  return 0
}
