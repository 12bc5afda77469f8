import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import pg from 'pg'

/** For hooks that start a server: two seconds on a machine with nothing else to do, many on a busy one. */
export const patience_ms = 90_000

export interface TestServer {
  /** The address of a new, empty database on the server. */
  newDatabase(): Promise<string>
  query(url: string, text: string): Promise<Record<string, unknown>[]>
  stop(): Promise<void>
}

/** A PostgreSQL server of the tests' own; see postgres-keeper.mjs. Takes about two seconds. */
export async function startPostgres(): Promise<TestServer> {
  const keeper = spawn(process.execPath, [new URL('./postgres-keeper.mjs', import.meta.url).pathname], {
    stdio: ['pipe', 'pipe', 'inherit'],
    // Outlives a Ctrl-C on the tests by the moment it needs to tidy up.
    detached: true,
  })
  const [line] = (await once(createInterface(keeper.stdout), 'line')) as [string]
  const { url, sentence } = JSON.parse(line) as { url?: string; sentence?: string }
  if (url === undefined) throw new Error(sentence)

  const query = async (at: string, text: string) => {
    const client = new pg.Client({ connectionString: at })
    await client.connect()
    try {
      return (await client.query(text)).rows
    } finally {
      await client.end()
    }
  }
  let count = 0
  return {
    query,
    newDatabase: async () => {
      const name = `test_${++count}`
      await query(`${url}/postgres`, `create database ${name}`)
      return `${url}/${name}`
    },
    stop: async () => {
      const gone = once(keeper, 'exit')
      keeper.stdin.end()
      await gone
    },
  }
}
