import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress } from 'node:zlib'
import react from '@vitejs/plugin-react'
import { type Plugin, defineConfig } from 'vite'

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
  plugins: [react(), serviceWorker(), packed()],
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
