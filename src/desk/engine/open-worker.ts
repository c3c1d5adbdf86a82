/** A worker with the engine in it. Several are fetched once: they run the same file. */
export function openEngineWorker(): Worker {
  return new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module' })
}
