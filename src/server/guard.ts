import helmet from '@fastify/helmet'
import type { FastifyInstance } from 'fastify'

/**
 * Only this machine's own pages may talk to the server. The name in the address must be the
 * machine's own (a foreign name that resolves to it is refused), and so must the page that asks.
 */
export async function guard(app: FastifyInstance): Promise<void> {
  app.addHook('onRequest', async (request, reply) => {
    const host = request.headers.host ?? ''
    const name = host.replace(/:\d+$/, '')
    const { origin } = request.headers
    const foreign = origin !== undefined && origin !== `http://${host}`
    if (!['127.0.0.1', 'localhost', '[::1]'].includes(name) || foreign)
      return reply.code(403).send({
        problems: [
          {
            at: foreign ? 'origin' : 'host',
            what: 'this page may not ask here',
            why: 'the server answers only its own pages on this machine',
            try: ['open http://127.0.0.1 with the port that was printed'],
          },
        ],
      })
  })
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        // Kernels of the pattern are WebAssembly made on the spot.
        scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        workerSrc: ["'self'", 'blob:'],
        connectSrc: ["'self'"],
        fontSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    // Both together let workers share memory: long work is stopped by a flag.
    crossOriginOpenerPolicy: { policy: 'same-origin' },
    crossOriginEmbedderPolicy: { policy: 'require-corp' },
    crossOriginResourcePolicy: { policy: 'same-origin' },
    strictTransportSecurity: false,
    referrerPolicy: { policy: 'no-referrer' },
  })
}
