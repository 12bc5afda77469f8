import { homedir } from 'node:os'
import { join, posix, win32 } from 'node:path'

/** Where the system keeps what belongs to a user and an application. */
export function dataFolder(
  environment: Readonly<Record<string, string | undefined>>,
  platform: string = process.platform,
  home: string = homedir(),
): string {
  if (environment.UNDERLID_DATA) return environment.UNDERLID_DATA
  if (platform === 'darwin') return posix.join(home, 'Library', 'Application Support', 'Underlid')
  if (platform === 'win32') {
    return win32.join(environment.LOCALAPPDATA || win32.join(home, 'AppData', 'Local'), 'Underlid')
  }
  // The XDG base directory specification: a relative path there is to be ignored.
  const xdg = environment.XDG_DATA_HOME
  return join(xdg?.startsWith('/') ? xdg : join(home, '.local', 'share'), 'underlid')
}
