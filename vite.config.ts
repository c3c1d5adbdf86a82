import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { brotliCompress } from 'node:zlib'
import react from '@vitejs/plugin-react'
import { type Plugin, defineConfig } from 'vite'
import type { CuttingPicture } from './scripts/draw-cuttings.ts'

/**
 * The service worker is written by hand; the build gives it the names of everything it made, so that
 * the app opens again with the network gone.
 */
function serviceWorker(): Plugin {
  return {
    name: 'billetwright-service-worker',
    apply: 'build',
    enforce: 'post',
    generateBundle(_options, bundle) {
      const text = readFileSync('src/web/offline/service-worker.js', 'utf8')
      const files = Object.keys(bundle).filter((name) => !name.endsWith('.map'))
      const release = createHash('sha256').update(files.join()).update(text).digest('hex')
      this.emitFile({
        type: 'asset',
        fileName: 'service-worker.js',
        source: text
          .replace("'__RELEASE__'", JSON.stringify(release.slice(0, 16)))
          .replace('__FILES__', JSON.stringify(files.map((name) => `/${name}`))),
      })
    },
  }
}

/**
 * Pictures of the patterns: always the same for the same program, so the build draws them, by the program's own engine,
 * and the page has only to fetch them.
 */
function cuttings(): Plugin {
  const list = resolve('src/web/sheets/piece/cuttings.ts')
  let building = true
  return {
    name: 'billetwright-cuttings',
    configResolved: ({ command }) => {
      building = command === 'build'
    },
    async load(id) {
      if (id !== list) return undefined
      // By its own path: the rooms it imports are found from there.
      const script = pathToFileURL(resolve('scripts/draw-cuttings.ts')).href
      const { drawCuttings } = (await import(script)) as { drawCuttings(): CuttingPicture[] }
      const lie = drawCuttings().map(({ name, width, height, jpeg }) => {
        if (!building) {
          const url = `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`
          return [name, { url, width, height }]
        }
        const mark = createHash('sha256').update(jpeg).digest('hex').slice(0, 8)
        const fileName = `assets/${name.replaceAll(' ', '-')}-${mark}.jpg`
        this.emitFile({ type: 'asset', fileName, source: jpeg })
        return [name, { url: `/${fileName}`, width, height }]
      })
      return `export const cuttings = ${JSON.stringify(Object.fromEntries(lie))}`
    },
  }
}

/** Lays each file of code beside itself compressed, as the server sends it: a third of its size, and done once. */
function packed(): Plugin {
  const pack = promisify(brotliCompress)
  return {
    name: 'billetwright-packed',
    apply: 'build',
    async writeBundle({ dir = '.' }, bundle) {
      const files = Object.keys(bundle).filter((name) => /\.(js|css)$/.test(name))
      await Promise.all(
        files.map(async (name) => {
          const path = join(dir, name)
          await writeFile(`${path}.br`, await pack(await readFile(path)))
        }),
      )
    },
  }
}

export default defineConfig({
  root: 'src/web',
  publicDir: 'public',
  plugins: [react(), cuttings(), serviceWorker(), packed()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 900,
  },
  server: { host: '127.0.0.1', proxy: { '/api': 'http://127.0.0.1:4177' } },
})
