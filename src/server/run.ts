import { StoreError } from '../store/index.ts'
import { PortError, type Serving, serve } from './serve.ts'
import { SettingsError, settings, usage } from './settings.ts'

export interface Voice {
  out(line: string): void
  err(line: string): void
}

/** Starts serving and says where; or says why not and answers with the exit code. */
export async function run(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
  voice: Voice,
): Promise<Serving | number> {
  try {
    const asked = settings(args, environment)
    if (asked === null) {
      voice.out(usage)
      return 0
    }
    const serving = await serve(asked)
    const { store, address } = serving
    voice.out(`Underlid is open at ${address}`)
    voice.out(`Your dishes are in ${store.where}${store.kind === 'postgresql' ? ' (PostgreSQL)' : ''}`)
    voice.out('Stop it with Ctrl-C.')
    return serving
  } catch (error) {
    voice.err(sentence(error))
    return 2
  }
}

/** What went wrong and the cure; for a fault of our own the trace, which is what mending it needs. */
export function sentence(error: unknown): string {
  if (error instanceof StoreError || error instanceof PortError) return `${error.message} ${error.cure}`
  if (error instanceof SettingsError) return `${error.message} See --help.`
  return error instanceof Error ? (error.stack ?? error.message) : String(error)
}
