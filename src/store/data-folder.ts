import { homedir } from 'node:os'
import { join } from 'node:path'

/** Where a program keeps a person's data on this system. */
export function dataFolder(
  env: Readonly<Record<string, string | undefined>> = process.env,
  platform: string = process.platform,
): string {
  if (env.BILLETWRIGHT_DATA) return env.BILLETWRIGHT_DATA
  const home = homedir()
  if (platform === 'win32')
    return join(env.LOCALAPPDATA ?? join(home, 'AppData', 'Local'), 'Billetwright')
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Billetwright')
  return join(env.XDG_DATA_HOME || join(home, '.local', 'share'), 'billetwright')
}
