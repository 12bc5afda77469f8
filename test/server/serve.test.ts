// The server as a browser, another site and another program meet it: over a real port.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { dishList, errorBody, maxBody_bytes, paths } from '../../src/contract/index.ts'
import { PortError, type Serving, serve } from '../../src/server/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'underlid-serve-'))
const web = join(folder, 'web')
let serving: Serving

beforeAll(async () => {
  mkdirSync(join(web, 'assets'), { recursive: true })
  writeFileSync(join(web, 'index.html'), '<!doctype html><title>Underlid</title>')
  writeFileSync(join(web, 'assets', 'page-1a2b.js'), 'export {}')
  writeFileSync(join(web, 'assets', 'letters-3c4d.woff2'), 'wOF2')
  writeFileSync(join(web, 'mark.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>')
  writeFileSync(join(folder, 'secret.txt'), 'secret')
  serving = await serve({ at: { folder: join(folder, 'data') }, port: 0, web })
})
afterAll(async () => {
  await serving?.close()
  rmSync(folder, { recursive: true, force: true })
})

interface Answer {
  status: number
  headers: IncomingHttpHeaders
  text: string
}

/** Node's own request: unlike fetch it lets a test say any Host, Origin and path. */
function call(
  path: string,
  p: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  const { port } = new URL(serving.address)
  return new Promise((resolve, reject) => {
    const asked = request(
      { host: '127.0.0.1', port, path, method: p.method, headers: p.headers, agent: false },
      (answer) => {
        let text = ''
        answer.setEncoding('utf8')
        answer.on('data', (chunk) => {
          text += chunk
        })
        answer.on('end', () => resolve({ status: answer.statusCode!, headers: answer.headers, text }))
      },
    )
    asked.on('error', reject)
    asked.end(p.body)
  })
}

const json = { 'content-type': 'application/json' }
const aDish = JSON.stringify({ text: 'From outside' })
const code = (answer: Answer) => errorBody.parse(JSON.parse(answer.text)).error.code
const titles = async () => {
  const { dishes } = dishList.parse(JSON.parse((await call(paths.dishes)).text))
  return dishes.map((line) => line.title)
}

it('lays the three demonstration dishes on first use', async () => {
  const { dishes } = dishList.parse(JSON.parse((await call(paths.dishes)).text))
  expect(dishes.map(({ id, demonstration, revision }) => [id, demonstration, revision])).toEqual([
    ['pork-shoulder-leeks-cider', true, 1],
    ['white-bean-soup', true, 1],
    ['beef-tomato-sauce', true, 1],
  ])
})

describe('the page', () => {
  it.each([
    ['/', 'text/html', 'no-cache'],
    ['/assets/page-1a2b.js', 'text/javascript', 'public, max-age=31536000, immutable'],
    ['/assets/letters-3c4d.woff2', 'font/woff2', 'public, max-age=31536000, immutable'],
    ['/mark.svg', 'image/svg+xml', 'no-cache'],
    ['/dish/white-bean-soup', 'text/html', 'no-cache'],
  ])('%s comes as %s, to be kept: %s', async (path, type, keep) => {
    const answer = await call(path)
    expect(answer.status).toBe(200)
    expect(answer.headers['content-type']).toMatch(new RegExp(`^${type.replace('+', '\\+')}`))
    expect(answer.headers['cache-control']).toBe(keep)
    expect(answer.headers['x-content-type-options']).toBe('nosniff')
  })

  it.each(['/nothing.js', '/assets/old-9999.js', '/assets/../../secret.txt', '/%2e%2e/secret.txt', '/..%5csecret.txt'])(
    'gives nothing for %s',
    async (path) => {
      const answer = await call(path)
      expect(answer.status).toBe(404)
      expect(code(answer)).toBe('not-found')
      expect(answer.text).not.toContain('secret"')
    },
  )

  it('may run its own scripts only, call nobody else, and be framed by nobody', async () => {
    const { headers } = await call('/')
    const policy = new Map(
      String(headers['content-security-policy'])
        .split(/;\s*/)
        .map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]),
    )
    expect(policy.get('default-src')).toBe("'none'")
    expect(policy.get('script-src')).toBe("'self'")
    expect(policy.get('connect-src')).toBe("'self'")
    expect(policy.get('frame-ancestors')).toBe("'none'")
    expect(policy.get('base-uri')).toBe("'none'")
    expect(headers['referrer-policy']).toBe('no-referrer')
    expect(headers['strict-transport-security']).toBeUndefined()
  })
})

describe('strangers', () => {
  it.each(['evil.example', 'evil.example:7413', '127.0.0.1.evil.example', 'localhost.evil.example', '192.168.1.5'])(
    'are sent away when they come under the name "%s"',
    async (host) => {
      const answer = await call(paths.dishes, { headers: { host } })
      expect(answer.status).toBe(403)
      expect(code(answer)).toBe('stranger')
    },
  )

  it.each(['127.0.0.1:7413', 'localhost:9999', '[::1]:7413'])('are not whoever comes as %s', async (host) => {
    expect((await call(paths.dishes, { headers: { host } })).status).toBe(200)
  })

  it.each([
    { origin: 'https://evil.example' },
    { origin: 'null' },
    { origin: 'http://localhost:1' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
  ])('may not write from a page of their own: %j', async (headers) => {
    const answer = await call(paths.dishes, { method: 'POST', headers: { ...json, ...headers } as never, body: aDish })
    expect(answer.status).toBe(403)
    expect(code(answer)).toBe('stranger')
    expect(await titles()).not.toContain('From outside')
  })

  it('may not write by a form, which asks no leave', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data']) {
      const answer = await call(paths.dishes, { method: 'POST', headers: { 'content-type': type }, body: aDish })
      expect(answer.status).toBe(415)
    }
    expect(await titles()).not.toContain('From outside')
  })

  it('are not the page itself', async () => {
    const headers = { ...json, origin: serving.address, 'sec-fetch-site': 'same-origin' }
    expect((await call(paths.dishes, { method: 'POST', headers, body: aDish })).status).toBe(201)
    expect(await titles()).toContain('From outside')
  })
})

describe('a body', () => {
  it('that is no JSON is refused', async () => {
    const answer = await call(paths.dishes, { method: 'POST', headers: json, body: '{"text":' })
    expect([answer.status, code(answer)]).toEqual([400, 'not-understood'])
  })

  it.each([true, false])('beyond 6 MB is refused in a sentence (length said: %s)', async (said) => {
    const body = JSON.stringify({ text: 'x'.repeat(maxBody_bytes) })
    const headers = {
      ...json,
      ...(said ? { 'content-length': String(body.length) } : { 'transfer-encoding': 'chunked' }),
    }
    const answer = await call(paths.dishes, { method: 'POST', headers, body })
    expect([answer.status, code(answer)]).toEqual([413, 'too-large'])
    expect(answer.text).toContain('6 MB')
  })
})

describe('the port', () => {
  const taken = async (at: string): Promise<PortError> => {
    const error = await serve({ at: { folder: join(folder, at) }, port: Number(new URL(serving.address).port) }).catch(
      (reason: unknown) => reason,
    )
    expect(error).toBeInstanceOf(PortError)
    return error as PortError
  }

  it('that another copy has is named with its address', async () => {
    const error = await taken('other')
    expect(error.message).toContain(`Underlid already runs at ${serving.address}`)
    // The store was closed again: it can be opened.
    const next = await serve({ at: { folder: join(folder, 'other') }, port: 0, web })
    await next.close()
  })
})
