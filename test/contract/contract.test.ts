import { describe, expect, it } from 'vitest'
import * as contract from '../../src/contract/index.ts'

const { draftWrite, dishChange, newDish, newRevision, maxTextUnits, maxBody_bytes, paths, dishId } = contract

describe('a draft to be saved', () => {
  const good = { text: '', pot: null, altitude_m: null, version: 1, writer: 'a window' }

  it('may be empty, and need not say pot and altitude', () => {
    expect(draftWrite.parse(good)).toEqual(good)
    expect(draftWrite.parse({ ...good, pot: 'electric-6qt', altitude_m: -413.5 })).toMatchObject({ altitude_m: -413.5 })
  })

  it.each([
    { text: null },
    { text: 'x'.repeat(maxTextUnits + 1) },
    { pot: '' },
    { pot: undefined },
    { altitude_m: 6001 },
    { altitude_m: Number.NaN },
    { altitude_m: Number.POSITIVE_INFINITY },
    { altitude_m: '1600' },
    { version: 0 },
    { version: 1.5 },
    { version: 2 ** 53 },
    { writer: '' },
    { extra: 1 },
  ])('is refused with %j', (fault) => {
    expect(draftWrite.safeParse({ ...good, ...fault }).success).toBe(false)
  })
})

it('trims titles and refuses empty ones', () => {
  expect(newDish.parse({ text: 'x', title: '  Beans ' }).title).toBe('Beans')
  expect(dishChange.safeParse({ title: '   ' }).success).toBe(false)
  expect(dishChange.parse({ title: null })).toEqual({ title: null })
})

it('lets the longest manuscript through the limit on requests, whatever its script', () => {
  const text = '\u3042'.repeat(maxTextUnits)
  expect(newRevision.safeParse({ text }).success).toBe(true)
  expect(Buffer.byteLength(JSON.stringify({ text }))).toBeLessThan(maxBody_bytes)
})

it('knows ids that are safe in an address and in a file name', () => {
  for (const id of ['white-bean-soup', 'a', '0'.repeat(64)]) expect(dishId.safeParse(id).success).toBe(true)
  for (const id of ['', '-a', 'A', 'a/b', 'a.b', '../x', 'a b', '0'.repeat(65), 'a\n']) {
    expect(dishId.safeParse(id).success).toBe(false)
  }
})

it('builds addresses that keep to their place', () => {
  expect(paths.draft('white-bean-soup')).toBe('/api/dishes/white-bean-soup/draft')
  expect(paths.revision('a', 3)).toBe('/api/dishes/a/revisions/3')
  expect(paths.dish('../health?x')).toBe('/api/dishes/..%2Fhealth%3Fx')
})

it('checks without writing code at run time, which the page may not', () => {
  const { Function: real } = globalThis
  let written = 0
  globalThis.Function = new Proxy(real, {
    construct: (target, args) => {
      written++
      return Reflect.construct(target, args)
    },
  })
  try {
    draftWrite.safeParse({ text: 'x' })
    contract.dishList.safeParse({ dishes: [] })
  } finally {
    globalThis.Function = real
  }
  expect(written).toBe(0)
})
