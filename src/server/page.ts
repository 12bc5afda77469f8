import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { serveStatic } from '@hono/node-server/serve-static'
import { Hono, type MiddlewareHandler } from 'hono'
import { Refused } from './refused.ts'

/** The built page. Addresses without an extension are places inside the page and get its front door. */
export function page(root: string): Hono {
  if (!existsSync(join(root, 'index.html'))) {
    return new Hono().all('*', () => {
      throw new Refused(404, 'not-found', 'The page has not been built.', 'Start Underlid with "npm start".')
    })
  }
  const frontDoor = fileServer(root, 'index.html')
  return new Hono()
    .get('*', fileServer(root))
    .get('*', (c, next) => (/\.[^/]*$/.test(c.req.path) ? next() : frontDoor(c, next)))
    .all('*', (c) => {
      throw new Refused(404, 'not-found', `There is nothing at ${c.req.method} ${c.req.path}.`, null)
    })
}

function fileServer(root: string, path?: string): MiddlewareHandler {
  return serveStatic({
    root,
    path,
    onFound: (file, c) => {
      // Files under assets carry a hash of their content in the name; the others keep their name when they change.
      const forever = file.startsWith(join(root, 'assets'))
      c.header('Cache-Control', forever ? 'public, max-age=31536000, immutable' : 'no-cache')
    },
  })
}
