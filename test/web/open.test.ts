import { describe, expect, it } from 'vitest'
import { type Copy, open } from '../../src/web/keep/open.ts'
import type { Dish } from '../../src/web/server/dishes.ts'

const dish: Dish = {
  id: 'soup',
  title: 'Soup',
  titleGiven: false,
  text: 'Soup\n\n1 onion',
  version: 6,
  savedAt: '2026-03-02T10:00:00.000Z',
  pot: null,
  altitude_m: null,
  revision: null,
  demonstration: false,
  putAway: false,
}

const copy = (text: string, more: Partial<Copy> = {}): Copy => ({
  draft: { text, pot: null, altitude_m: null },
  base: 6,
  at_ms: Date.parse('2026-03-02T11:00:00.000Z'),
  writer: text,
  ...more,
})

describe('opening a dish', () => {
  it('shows what the server holds when this device has nothing', () => {
    expect(open(dish, []).keep.draft.text).toBe(dish.text)
    expect(open(dish, []).effects).toEqual([])
  })

  it('puts an unsent text back on the sheet, says so and sends it', () => {
    const opening = open(dish, [copy('Soup\n\n2 onions')])
    expect(opening.keep.draft.text).toBe('Soup\n\n2 onions')
    expect(opening.keep.notice).toEqual({ kind: 'restored' })
    expect(opening.effects.map((effect) => effect.type)).toEqual(['keep-here', 'wait'])
    expect(opening.spent).toHaveLength(1)
  })

  it('forgets a copy that the server already holds', () => {
    const opening = open(dish, [copy(dish.text)])
    expect(opening.keep.notice).toBeNull()
    expect(opening.spent).toHaveLength(1)
  })

  it('lets the newer text stand when the server has moved on, and keeps the older as a revision', () => {
    const stale = copy('stale', { base: 3, at_ms: Date.parse('2026-03-01T09:00:00.000Z') })
    const opening = open(dish, [stale])
    expect(opening.keep.draft.text).toBe(dish.text)
    expect(opening.older).toEqual([stale])
    const fresh = copy('fresh', { base: 3 })
    expect(open(dish, [fresh]).keep).toMatchObject({ draft: fresh.draft, base: 3 })
  })

  it('keeps the texts of several windows: the latest stands, the others become revisions', () => {
    const first = copy('first', { at_ms: Date.parse('2026-03-02T10:30:00.000Z') })
    const opening = open(dish, [first, copy('second')])
    expect(opening.keep.draft.text).toBe('second')
    expect(opening.older).toEqual([first])
  })

  it('loses no copy: each stands, becomes a revision or says what the server holds', () => {
    const copies = [
      copy('a'),
      copy('b', { base: 2 }),
      copy(dish.text, { writer: 'c' }),
      copy('d', { at_ms: 0, base: 1 }),
    ]
    const { keep, older, spent } = open(dish, copies)
    const places = copies.map(
      ({ draft, writer }) =>
        draft.text === keep.draft.text ||
        draft.text === keep.held.text ||
        older.some((each) => each.writer === writer) ||
        spent.some((each) => each.writer === writer && each.draft.text === keep.draft.text),
    )
    expect(places).toEqual([true, true, true, true])
  })
})
