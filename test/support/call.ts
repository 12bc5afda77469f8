// Calls the command line as a child process and answers with what it printed and how it ended.
import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { main } from '../../src/cli/main.ts'

const entry = fileURLToPath(new URL('./cli-entry.ts', import.meta.url))
export const projectFolder = fileURLToPath(new URL('../../', import.meta.url))

export interface Answer {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

export interface CallOptions {
  readonly input?: string | Uint8Array
  readonly env?: Readonly<Record<string, string>>
  readonly cwd?: string
  /** The program to run in place of the source: the built one. */
  readonly program?: readonly string[]
}

export function call(
  args: readonly string[],
  { input, env = {}, cwd = projectFolder, program }: CallOptions = {},
): Promise<Answer> {
  const command = program ?? ['--import', import.meta.resolve('tsx'), entry]
  return new Promise((resolve, reject) => {
    const { NO_COLOR: _, FORCE_COLOR: __, COLUMNS: ___, ...plain } = process.env
    const child = spawn(process.execPath, [...command, ...args], { cwd, env: { ...plain, ...env } })
    let out = ''
    let err = ''
    child.stdout.setEncoding('utf8').on('data', (part) => (out += part))
    child.stderr.setEncoding('utf8').on('data', (part) => (err += part))
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, out, err }))
    child.stdin.on('error', () => {})
    child.stdin.end(input ?? '')
  })
}

/** The same call inside this process, for the many cases where only words and exit code matter. */
export async function callInside(args: readonly string[]): Promise<Answer> {
  const printed = { out: '', err: '' }
  const { write: out } = process.stdout
  const { write: err } = process.stderr
  const keep = (to: 'out' | 'err') => (text: string | Uint8Array) => {
    printed[to] += String(text)
    return true
  }
  // As wide as nobody said: the window of whoever runs the tests must not matter.
  delete process.env.COLUMNS
  process.stdout.write = keep('out') as typeof process.stdout.write
  process.stderr.write = keep('err') as typeof process.stderr.write
  try {
    const code = await main(args, {
      version: '0.0.0-test',
      serve: async (rest) => process.stdout.write(`served ${JSON.stringify(rest)}\n`),
    })
    return { code, ...printed }
  } finally {
    process.stdout.write = out
    process.stderr.write = err
  }
}
