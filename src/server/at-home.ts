import type { MiddlewareHandler } from 'hono'
import { Refused } from './refused.ts'

const ownNames = new Set(['127.0.0.1', 'localhost', '[::1]'])

/**
 * Lets in only what was addressed to this machine under its own name, and writes only from the page it served.
 *
 * Any site a cook visits can make the browser send requests to 127.0.0.1. Two ways in are closed here. A site may point
 * a name of its own at 127.0.0.1 (rebinding) and then counts as the same origin: its requests carry its own name in
 * Host. A site may send a form or a simple request across: the browser then names it in Origin and Sec-Fetch-Site.
 * Programs such as curl send neither header and are let in: whoever runs programs here owns the data anyway.
 */
export const atHome: MiddlewareHandler = async (c, next) => {
  const host = c.req.header('host') ?? ''
  if (!ownNames.has(hostname(`http://${host}`))) {
    throw new Refused(
      403,
      'stranger',
      `"${host}" is not a name of this machine.`,
      'Open http://127.0.0.1 with the port.',
    )
  }
  if (c.req.method !== 'GET' && c.req.method !== 'HEAD') {
    const origin = c.req.header('origin')
    const site = c.req.header('sec-fetch-site')
    const fromElsewhere =
      (origin !== undefined && origin !== `http://${host}`) ||
      (site !== undefined && site !== 'same-origin' && site !== 'none')
    if (fromElsewhere) {
      const from = origin === undefined || origin === 'null' ? 'another site' : origin
      throw new Refused(
        403,
        'stranger',
        `A page of ${from} may not write here.`,
        'Write from the page Underlid serves.',
      )
    }
  }
  await next()
}

function hostname(url: string): string {
  try {
    return new URL(url).hostname
  } catch {
    return ''
  }
}
