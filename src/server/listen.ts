import { spawn } from 'node:child_process'
import type { FastifyInstance } from 'fastify'

/** The usual port, and how many above it are tried when it is taken. */
export const USUAL_PORT = 4177
const PORTS_TRIED = 20

/** Listens on this machine only, on the port or the next free one; gives the address. */
export async function listen(app: FastifyInstance, port: number): Promise<string> {
  for (let tried = 0; ; tried++) {
    try {
      return await app.listen({ host: '127.0.0.1', port: port === 0 ? 0 : port + tried })
    } catch (fault) {
      const taken = (fault as NodeJS.ErrnoException).code === 'EADDRINUSE'
      if (!taken || port === 0 || tried >= PORTS_TRIED) throw fault
    }
  }
}

/** Opens the person's browser where there is one; that there is none is no fault. */
export function openBrowser(address: string): void {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', address]
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '', address]
        : ['xdg-open', address]
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return
  const child = spawn(command, args, { stdio: 'ignore', detached: true })
  child.on('error', () => undefined)
  child.unref()
}
