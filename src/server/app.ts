import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { secureHeaders } from 'hono/secure-headers'
import { maxBody_bytes } from '../contract/index.ts'
import type { Store } from '../store/index.ts'
import { answerError } from './answer-errors.ts'
import { api } from './api.ts'
import { atHome } from './at-home.ts'
import { page } from './page.ts'
import { Refused } from './refused.ts'

export interface AppParts {
  readonly store: Store
  readonly version: string
  /** Folder of the built page. */
  readonly web: string
  /** The present moment, ISO 8601 in UTC. */
  readonly now: () => string
}

/** Everything between a request and its answer; knows no port and no process. */
export function makeApp({ store, version, web, now }: AppParts): Hono {
  const app = new Hono()
  app.onError(answerError)
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        workerSrc: ["'self'"],
        connectSrc: ["'self'"],
        fontSrc: ["'self'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        manifestSrc: ["'self'"],
        // The editor writes its measured styles into style elements; a style cannot run anything.
        styleSrc: ["'self'", "'unsafe-inline'"],
        formAction: ["'self'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
      },
      referrerPolicy: 'no-referrer',
      xFrameOptions: 'DENY',
      // Served on this machine over plain HTTP: a promise of HTTPS would lock the address up.
      strictTransportSecurity: false,
    }),
  )
  app.use(atHome)
  app.use(
    bodyLimit({
      maxSize: maxBody_bytes,
      onError: () => {
        const limit = maxBody_bytes / (1024 * 1024)
        throw new Refused(413, 'too-large', `The request is larger than ${limit} MB.`, 'Divide the manuscript.')
      },
    }),
  )
  app.use('/api/*', async (c, next) => {
    await next()
    c.header('Cache-Control', 'no-store')
  })
  app.route('/api', api({ store, version, now }))
  app.route('/', page(web))
  return app
}
