// The addresses of the contract, on both databases; every answer is read with the contract's own checks.
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  dish,
  dishList,
  draftConflict,
  draftSaved,
  errorBody,
  health,
  maxTextUnits,
  paths,
  revision,
  revisionKept,
  revisionList,
} from '../../src/contract/index.ts'
import { makeApp } from '../../src/server/index.ts'
import { patience_ms } from '../support/postgres.ts'
import { type Places, places } from '../support/stores.ts'

describe.each(['sqlite', 'postgresql'] as const)('%s', (kind) => {
  let rooms: Places
  let second = 0
  let call: (method: string, path: string, body?: unknown) => Promise<Response>
  beforeAll(async () => {
    rooms = await places(kind)
    const app = makeApp({
      store: await rooms.open(),
      version: '1.2.3',
      web: join('no', 'page'),
      now: () => new Date(Date.UTC(2026, 10, 25, 9, 0, second++)).toISOString(),
    })
    call = async (method, path, body) =>
      app.request(path, {
        method,
        headers: { host: 'localhost:7413', ...(body === undefined ? {} : { 'content-type': 'application/json' }) },
        body: body === undefined ? undefined : JSON.stringify(body),
      })
  }, patience_ms)
  afterAll(() => rooms?.end())

  const post = async (text: string, more = {}) =>
    dish.parse(await (await call('POST', paths.dishes, { text, ...more })).json())

  it('tells how it is', async () => {
    const answer = await call('GET', paths.health)
    expect(answer.status).toBe(200)
    expect(health.parse(await answer.json())).toEqual({ ok: true, name: 'underlid', version: '1.2.3', store: kind })
    expect(answer.headers.get('cache-control')).toBe('no-store')
  })

  it('makes, reads and lists a dish', async () => {
    const answer = await call('POST', paths.dishes, { text: '\nOxtail\n\n2 kg oxtail' })
    expect(answer.status).toBe(201)
    const made = dish.parse(await answer.json())
    expect(made).toMatchObject({ title: 'Oxtail', version: 1, pot: null, altitude_m: null, revision: null })
    expect(dish.parse(await (await call('GET', paths.dish(made.id))).json())).toEqual(made)
    const { dishes } = dishList.parse(await (await call('GET', paths.dishes)).json())
    expect(dishes[0]).toEqual({
      id: made.id,
      title: 'Oxtail',
      updatedAt: made.savedAt,
      revision: null,
      demonstration: false,
      putAway: false,
    })
  })

  it('saves drafts, and answers a late one with the newer draft and the place of the late text', async () => {
    const { id } = await post('Stew')
    const draft = { text: 'Stew, left', pot: 'electric-6qt', altitude_m: 1600, version: 1, writer: 'left' }
    const saved = await call('PUT', paths.draft(id), draft)
    expect(saved.status).toBe(200)
    expect(draftSaved.parse(await saved.json()).version).toBe(2)

    const late = await call('PUT', paths.draft(id), { ...draft, text: 'Stew, right', writer: 'right' })
    expect(late.status).toBe(409)
    const conflict = draftConflict.parse(await late.json())
    expect(conflict.error.code).toBe('newer-draft')
    expect(conflict.error.cure).toContain('revision 1')
    expect(conflict.current).toMatchObject({ text: 'Stew, left', version: 2, writer: 'left', altitude_m: 1600 })
    const kept = await call('GET', paths.revision(id, conflict.kept.number))
    expect(revision.parse(await kept.json())).toMatchObject({ text: 'Stew, right', kind: 'automatic' })
    expect((await (await call('GET', paths.dish(id))).json()).text).toBe('Stew, left')
  })

  it('keeps revisions', async () => {
    const { id } = await post('Beans')
    const first = await call('POST', paths.revisions(id), { text: 'Beans', note: 'before the tasting' })
    expect(first.status).toBe(201)
    expect(revisionKept.parse(await first.json()).number).toBe(1)
    expect((await call('POST', paths.revisions(id), { text: 'Beans' })).status).toBe(200)
    await call('POST', paths.revisions(id), { text: 'Beans, soaked' })
    const list = revisionList.parse(await (await call('GET', paths.revisions(id))).json())
    expect(list.revisions.map(({ number, parent, note }) => [number, parent, note])).toEqual([
      [2, 1, null],
      [1, null, 'before the tasting'],
    ])
    expect((await (await call('GET', paths.dish(id))).json()).revision.number).toBe(2)
  })

  it('renames, puts away and takes out again', async () => {
    const { id } = await post('Tripe', { title: 'No. 14' })
    const renamed = dish.parse(await (await call('PATCH', paths.dish(id), { title: '  Winter issue ' })).json())
    expect(renamed).toMatchObject({ title: 'Winter issue', titleGiven: true })
    expect(dish.parse(await (await call('PATCH', paths.dish(id), { title: null })).json()).title).toBe('Tripe')
    const away = await call('PATCH', paths.dish(id), { putAway: true })
    expect(dish.parse(await away.json()).putAway).toBe(true)
    const ids = async (path: string) =>
      dishList.parse(await (await call('GET', path)).json()).dishes.map((line) => line.id)
    expect(await ids(paths.dishes)).not.toContain(id)
    expect(await ids(paths.putAway)).toContain(id)
    await call('PATCH', paths.dish(id), { putAway: false })
    expect(await ids(paths.dishes)).toContain(id)
  })

  describe('refuses, in a sentence,', () => {
    const refusal = async (answer: Promise<Response>, status: number, code: string) => {
      const response = await answer
      expect(response.status).toBe(status)
      const { error } = errorBody.parse(await response.json())
      expect(error.code).toBe(code)
      return error.message
    }

    it('what is not there', async () => {
      const { id } = await post('There')
      expect(await refusal(call('GET', paths.dish('gone')), 404, 'not-found')).toContain('"gone"')
      for (const [method, path, body] of [
        ['GET', paths.revisions('gone')],
        ['PATCH', paths.dish('gone'), { putAway: true }],
        ['POST', paths.revisions('gone'), { text: 'x' }],
        ['PUT', paths.draft('gone'), { text: 'x', pot: null, altitude_m: null, version: 1, writer: 'w' }],
        ['GET', paths.revision(id, 7)],
        ['GET', `${paths.dish(id)}/revisions/0`],
        ['GET', `${paths.dish(id)}/revisions/99999999999`],
        ['GET', '/api/dishes/%00'],
        ['GET', "/api/dishes/x'--"],
        ['GET', '/api/elsewhere'],
        ['DELETE', paths.dish(id)],
      ] as const) {
        await refusal(call(method, path, body), 404, 'not-found')
      }
    })

    it.each([
      ['no text', 'POST', paths.dishes, {}, '"text"'],
      ['a misspelt field', 'PATCH', 'dish', { putaway: true }, '"putaway"'],
      ['an empty title', 'PATCH', 'dish', { title: '  ' }, '"title"'],
      ['half a version', 'PUT', 'draft', { version: 1.5 }, '"version" is missing or is not a whole number'],
      ['an altitude in space', 'PUT', 'draft', { altitude_m: 40_000 }, '"altitude_m" is larger than 6000'],
      ['no writer', 'PUT', 'draft', { writer: undefined }, '"writer"'],
      ['no object', 'POST', paths.dishes, 'text', 'an object'],
    ])('%s', async (_, method, where, body, words) => {
      const { id } = await post('Untouched')
      const path = where === 'dish' ? paths.dish(id) : where === 'draft' ? paths.draft(id) : where
      const whole = { text: 'Changed', pot: null, altitude_m: null, version: 1, writer: 'w', ...(body as object) }
      const answer = call(method, path, where === 'draft' ? whole : body)
      expect(await refusal(answer, 400, 'not-understood')).toContain(words)
      expect((await (await call('GET', paths.dish(id))).json()).text).toBe('Untouched')
    })

    it('a manuscript beyond all measure', async () => {
      expect((await call('POST', paths.dishes, { text: 'é'.repeat(maxTextUnits) })).status).toBe(201)
      const text = 'x'.repeat(maxTextUnits + 1)
      expect(await refusal(call('POST', paths.dishes, { text }), 413, 'too-large')).toContain('1,500,000')
    })
  })
})
