import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { createAdaptorServer } from '@hono/node-server'
import { openStore, type Store, type StorePlace } from '../store/index.ts'
import { makeApp } from './app.ts'
import { demonstrationDishes, home, version } from './home.ts'
import { titleOf } from './title.ts'

export interface ServeOptions {
  /** Where the dishes are: a folder for the embedded database, or the address of a PostgreSQL database. */
  readonly at: StorePlace['at']
  /** 0 takes any free port. */
  readonly port: number
  /** Folder of the built page; the project's own when it is not given. */
  readonly web?: string
  readonly now?: () => string
}

export interface Serving {
  /** Where to point the browser. */
  readonly address: string
  readonly store: Store
  /** Lets what is under way finish, then closes port and store. */
  close(): Promise<void>
}

export class PortError extends Error {
  readonly cure: string
  constructor(message: string, cure: string) {
    super(message)
    this.name = 'PortError'
    this.cure = cure
  }
}

// Only this machine: there are no accounts, whoever reaches the port owns the dishes.
const loopback = '127.0.0.1'
const grace_ms = 2000

/** Opens the store, lays the demonstration on first use, and serves until closed. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const now = options.now ?? (() => new Date().toISOString())
  const store = await openStore({ at: options.at, titleOf })
  try {
    await store.layDemonstration({ dishes: demonstrationDishes(), now: now() })
    const web = options.web ?? join(home, 'dist', 'web')
    const app = makeApp({ store, version: version(), web, now })
    const server = createAdaptorServer({ fetch: app.fetch }) as Server
    const port = await listen(server, options.port)
    const address = `http://${loopback}:${port}`
    store.reachableAt(address)
    return {
      address,
      store,
      close: async () => {
        await hangUp(server)
        await store.close()
      },
    }
  } catch (error) {
    await store.close()
    throw error
  }
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      portSentence(error, port).then(reject, reject)
    })
    server.listen(port, loopback, () => resolve((server.address() as AddressInfo).port))
  })
}

async function portSentence(error: NodeJS.ErrnoException, port: number): Promise<Error> {
  const other = 'choose another with --port NUMBER or PORT.'
  if (error.code === 'EACCES') {
    return new PortError(`Port ${port} is reserved by the system.`, `Please ${other}`)
  }
  if (error.code !== 'EADDRINUSE') return error
  const address = `http://${loopback}:${port}`
  return (await isUnderlid(address))
    ? new PortError(`Underlid already runs at ${address}, on other data.`, `Use it there, stop it, or ${other}`)
    : new PortError(`Port ${port} is taken by another program.`, `Stop that, or ${other}`)
}

async function isUnderlid(address: string): Promise<boolean> {
  try {
    const answer = await fetch(`${address}/api/health`, { signal: AbortSignal.timeout(1000) })
    return ((await answer.json()) as { name?: unknown }).name === 'underlid'
  } catch {
    return false
  }
}

function hangUp(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const impatience = setTimeout(() => server.closeAllConnections(), grace_ms)
    server.close(() => {
      clearTimeout(impatience)
      resolve()
    })
    server.closeIdleConnections()
  })
}
