// Keeps the app and all jobs for when the network is gone. The build fills in the names of
// its files; a new build is a new release, and the old one's files are dropped.
const RELEASE = '__RELEASE__'
const FILES = __FILES__
const APP = `app-${RELEASE}`
const JOBS = 'jobs'

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(APP)
      .then((cache) => cache.addAll(['/', ...FILES.filter((name) => name !== '/index.html')]))
      .then(() => self.skipWaiting()),
  )
})

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(names.filter((n) => n !== APP && n !== JOBS).map((n) => caches.delete(n))),
      )
      .then(() => self.clients.claim()),
  )
})

self.addEventListener('fetch', (event) => {
  const { request } = event
  const url = new URL(request.url)
  if (request.method !== 'GET' || url.origin !== location.origin) return
  if (url.pathname === '/api/events') return
  if (url.pathname.startsWith('/api/')) event.respondWith(freshElseKept(request))
  else if (request.mode === 'navigate') event.respondWith(pageElseKept(request))
  else event.respondWith(caches.match(request).then((kept) => kept ?? fetch(request)))
})

// The page tells the list of jobs as it stands: those not kept yet, or kept as they were before, are fetched.
self.addEventListener('message', (event) => {
  if (Array.isArray(event.data?.jobs)) event.waitUntil(keepJobs(event.data.jobs))
})

async function keepJobs(lines) {
  const cache = await caches.open(JOBS)
  const list = new Response(JSON.stringify(lines), {
    headers: { 'content-type': 'application/json' },
  })
  await cache.put('/api/jobs', list)
  for (const { id, version } of lines) {
    const path = `/api/jobs/${encodeURIComponent(id)}`
    const kept = await cache.match(path)
    if (kept && (await kept.json()).version === version) continue
    try {
      const fresh = await fetch(path)
      if (fresh.ok) await cache.put(path, fresh)
    } catch {
      // The network went meanwhile: what is kept is kept.
      return
    }
  }
}

/** Jobs: what the server says now, else what it said last. */
async function freshElseKept(request) {
  const cache = await caches.open(JOBS)
  try {
    const fresh = await fetch(request)
    if (fresh.ok) await cache.put(request, fresh.clone())
    return fresh
  } catch (fault) {
    const kept = await cache.match(request)
    if (kept) return kept
    throw fault
  }
}

async function pageElseKept(request) {
  try {
    return await fetch(request)
  } catch (fault) {
    const kept = await (await caches.open(APP)).match('/')
    if (kept) return kept
    throw fault
  }
}
