// What the store promises, on both databases in the same words.
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openStore, type Store } from '../../src/store/index.ts'
import { patience_ms } from '../support/postgres.ts'
import { firstLine, type Places, places } from '../support/stores.ts'

const at = (second: number) => new Date(Date.UTC(2026, 10, 25, 9, 0, second)).toISOString()
const write = { pot: null, altitude_m: null, version: 1, writer: 'left window' }

describe.each(['sqlite', 'postgresql'] as const)('%s', (kind) => {
  let rooms: Places
  let store: Store
  beforeAll(async () => {
    rooms = await places(kind)
    store = await rooms.open()
  }, patience_ms)
  afterAll(() => rooms?.end())

  describe('dishes', () => {
    it('gives a dish back as it was made', async () => {
      const id = await store.createDish({ text: 'Oxtail\n\n2 kg oxtail', altitude_m: 1609.5, writer: 'w', now: at(0) })
      expect(await store.getDish(id)).toEqual({
        id,
        title: 'Oxtail',
        titleGiven: false,
        text: 'Oxtail\n\n2 kg oxtail',
        version: 1,
        savedAt: at(0),
        pot: null,
        altitude_m: 1609.5,
        revision: null,
        demonstration: false,
        putAway: false,
        createdAt: at(0),
        updatedAt: at(0),
      })
    })

    it('knows no dish of another name', async () => {
      expect(await store.getDish('nobody')).toBeNull()
      expect(await store.changeDish({ dish: 'nobody', putAway: true, now: at(0) })).toBe(false)
      expect(await store.keepRevision({ dish: 'nobody', text: 'x', now: at(0) })).toBeNull()
      expect(await store.saveDraft({ ...write, dish: 'nobody', text: 'x', now: at(0) })).toEqual({
        ok: false,
        code: 'not-found',
      })
      expect(await store.listRevisions('nobody')).toEqual([])
    })

    it('lists the latest change first, with the latest kept revision', async () => {
      const own = await rooms.open()
      const a = await own.createDish({ text: 'A', writer: 'w', now: at(0) })
      const b = await own.createDish({ text: 'B', writer: 'w', now: at(1) })
      await own.keepRevision({ dish: a, text: 'A', now: at(2) })
      await own.keepRevision({ dish: a, text: 'A, with salt', now: at(3) })
      const lines = await own.listDishes({ putAway: false })
      expect(lines.map(({ id, revision, updatedAt }) => [id, revision, updatedAt])).toEqual([
        [a, 2, at(3)],
        [b, null, at(1)],
      ])
    })

    it('puts a dish away and takes it out again, text and revisions untouched', async () => {
      const own = await rooms.open()
      const id = await own.createDish({ text: 'Tripe', writer: 'w', now: at(0) })
      await own.keepRevision({ dish: id, text: 'Tripe', now: at(1) })
      expect(await own.changeDish({ dish: id, putAway: true, now: at(2) })).toBe(true)
      expect(await own.listDishes({ putAway: false })).toEqual([])
      expect((await own.listDishes({ putAway: true })).map((line) => line.id)).toEqual([id])
      expect((await own.getDish(id))?.putAway).toBe(true)
      await own.changeDish({ dish: id, putAway: false, now: at(3) })
      expect((await own.listDishes({ putAway: false })).map((line) => line.id)).toEqual([id])
      expect((await own.getDish(id))?.revision).toEqual({ number: 1, savedAt: at(1) })
    })

    it('lets the title follow the manuscript until one is given by hand, and again after', async () => {
      const dish = await store.createDish({ text: 'Lamb', writer: 'w', now: at(0) })
      await store.saveDraft({ ...write, dish, text: 'Lamb with peas', now: at(1) })
      expect((await store.getDish(dish))?.title).toBe('Lamb with peas')
      await store.changeDish({ dish, title: 'Spring issue', now: at(2) })
      await store.saveDraft({ ...write, dish, text: 'Lamb with beans', version: 2, now: at(3) })
      expect(await store.getDish(dish)).toMatchObject({ title: 'Spring issue', titleGiven: true })
      await store.changeDish({ dish, title: null, now: at(4) })
      expect(await store.getDish(dish)).toMatchObject({ title: 'Lamb with beans', titleGiven: false })
    })

    it('gives two dishes made in the same moment two names', async () => {
      const made = await Promise.all(
        Array.from({ length: 20 }, () => store.createDish({ text: 'Same', writer: 'w', now: at(0) })),
      )
      expect(new Set(made).size).toBe(20)
      for (const id of made) expect(id).toMatch(/^[a-z0-9]{12}$/)
    })
  })

  describe('drafts', () => {
    it('saves a draft from the version it was made from', async () => {
      const dish = await store.createDish({ text: 'One', writer: 'w', now: at(0) })
      const saved = await store.saveDraft({
        dish,
        text: 'Two',
        pot: 'electric-6qt',
        altitude_m: 0,
        version: 1,
        writer: 'left',
        now: at(1),
      })
      expect(saved).toEqual({ ok: true, version: 2, savedAt: at(1) })
      expect(await store.getDish(dish)).toMatchObject({
        text: 'Two',
        version: 2,
        pot: 'electric-6qt',
        altitude_m: 0,
        updatedAt: at(1),
      })
    })

    it('overwrites nothing and loses nothing when a save comes too late', async () => {
      const dish = await store.createDish({ text: 'Stew', writer: 'w', now: at(0) })
      await store.saveDraft({ ...write, dish, text: 'Stew, from the left', writer: 'left', now: at(1) })
      const late = await store.saveDraft({ ...write, dish, text: 'Stew, from the right', writer: 'right', now: at(2) })
      expect(late).toEqual({
        ok: false,
        code: 'newer-draft',
        current: {
          text: 'Stew, from the left',
          pot: null,
          altitude_m: null,
          version: 2,
          savedAt: at(1),
          writer: 'left',
        },
        kept: { number: 1, savedAt: at(2) },
      })
      expect((await store.getDish(dish))?.text).toBe('Stew, from the left')
      expect(await store.getRevision(dish, 1)).toMatchObject({
        kind: 'automatic',
        text: 'Stew, from the right',
        parent: null,
      })
      // The same late text once more takes no second place.
      const again = await store.saveDraft({ ...write, dish, text: 'Stew, from the right', writer: 'right', now: at(3) })
      expect(again).toMatchObject({ ok: false, kept: { number: 1, savedAt: at(2) } })
      expect(await store.listRevisions(dish)).toHaveLength(1)
      // An automatic revision is no kept one: the dish still has none.
      expect((await store.getDish(dish))?.revision).toBeNull()
    })

    it('answers a repeated save as the first time: its answer got lost on the way', async () => {
      const dish = await store.createDish({ text: 'One', writer: 'w', now: at(0) })
      const first = await store.saveDraft({ ...write, dish, text: 'Two', now: at(1) })
      const second = await store.saveDraft({ ...write, dish, text: 'Two', now: at(9) })
      expect(second).toEqual(first)
      expect(await store.listRevisions(dish)).toEqual([])
    })

    it('lets exactly one of many writers through; the texts of all others are kept', async () => {
      const dish = await store.createDish({ text: 'Race', writer: 'w', now: at(0) })
      const texts = Array.from({ length: 12 }, (_, i) => `Race, runner ${i}`)
      const outcomes = await Promise.all(
        texts.map((text, i) => store.saveDraft({ ...write, dish, text, writer: `w${i}`, now: at(i) })),
      )
      expect(outcomes.filter((outcome) => outcome.ok)).toHaveLength(1)
      const kept = await Promise.all(
        (await store.listRevisions(dish)).map(async ({ number }) => (await store.getRevision(dish, number))?.text),
      )
      const draft = (await store.getDish(dish))?.text
      expect([draft, ...kept].sort()).toEqual([...texts].sort())
    })
  })

  describe('revisions', () => {
    it('numbers revisions from 1 in each dish and never changes one', async () => {
      const dish = await store.createDish({ text: 'Beans', writer: 'w', now: at(0) })
      const first = await store.keepRevision({ dish, text: 'Beans', note: 'before the tasting', now: at(1) })
      const second = await store.keepRevision({ dish, text: 'Beans, soaked', now: at(2) })
      expect([first, second]).toEqual([
        { number: 1, savedAt: at(1), isNew: true },
        { number: 2, savedAt: at(2), isNew: true },
      ])
      expect(await store.listRevisions(dish)).toEqual([
        { number: 2, parent: 1, kind: 'kept', note: null, savedAt: at(2) },
        { number: 1, parent: null, kind: 'kept', note: 'before the tasting', savedAt: at(1) },
      ])
      expect(await store.getRevision(dish, 1)).toMatchObject({ text: 'Beans' })
      expect(await store.getRevision(dish, 3)).toBeNull()
    })

    it('keeps the same text twice running as one revision, and a text come back to as a new one', async () => {
      const dish = await store.createDish({ text: 'Rice', writer: 'w', now: at(0) })
      await store.keepRevision({ dish, text: 'Rice', now: at(1) })
      expect(await store.keepRevision({ dish, text: 'Rice', now: at(2) })).toEqual({
        number: 1,
        savedAt: at(1),
        isNew: false,
      })
      await store.keepRevision({ dish, text: 'Rice, rinsed', now: at(3) })
      expect(await store.keepRevision({ dish, text: 'Rice', now: at(4) })).toMatchObject({ number: 3, isNew: true })
    })

    it('gives simultaneous keepers numbers without gap or double', async () => {
      const dish = await store.createDish({ text: 'Peas', writer: 'w', now: at(0) })
      const kept = await Promise.all(
        Array.from({ length: 12 }, (_, i) => store.keepRevision({ dish, text: `Peas ${i}`, now: at(i) })),
      )
      expect(kept.map((one) => one!.number).sort((a, b) => a - b)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1))
    })
  })

  it('gives any text back unit for unit, but for NUL and half characters, which keep their place', async () => {
    const dish = await store.createDish({ text: '', writer: 'w', now: at(0) })
    let version = 1
    const anyText = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: 'grapheme' }),
      fc.array(fc.integer({ min: 0, max: 0xffff })).map((units) => String.fromCharCode(...units)),
    )
    await fc.assert(
      fc.asyncProperty(anyText, async (text) => {
        const outcome = await store.saveDraft({ ...write, dish, text, version, now: at(1) })
        if (!outcome.ok) throw new Error('a save was refused')
        version = outcome.version
        const back = (await store.getDish(dish))!.text
        expect(back.length).toBe(text.length)
        for (let i = 0; i < text.length; i++) {
          if (text[i] === back[i]) continue
          expect(text[i]).toMatch(/^[\0\uD800-\uDFFF]$/)
          expect(back[i]).toBe(text[i] === '\0' ? '\u2400' : '\uFFFD')
        }
      }),
      { numRuns: 40 },
    )
    await store.saveDraft({ ...write, dish, text: 'half \uD83C and nul \0 rest', version, now: at(2) })
    expect((await store.getDish(dish))?.text).toBe('half \uFFFD and nul \u2400 rest')
  })

  it('holds a manuscript of a million and a half characters', async () => {
    const text = 'Sel, poivre, safran: 3 œufs. '.repeat(52_000)
    const dish = await store.createDish({ text, writer: 'w', now: at(0) })
    expect((await store.getDish(dish))?.text === text).toBe(true)
  })

  it('lays the demonstration dishes once, each with a first revision', async () => {
    const own = await rooms.open()
    const dishes = [
      { id: 'soup', text: 'Soup\n' },
      { id: 'roast', text: 'Roast\n' },
    ]
    expect(await own.layDemonstration({ dishes, now: at(0) })).toBe(true)
    await own.changeDish({ dish: 'soup', putAway: true, now: at(1) })
    expect(await own.layDemonstration({ dishes, now: at(2) })).toBe(false)
    expect(await own.listDishes({ putAway: false })).toEqual([
      // A second older than the one before it, so that the list keeps the order.
      {
        id: 'roast',
        title: 'Roast',
        updatedAt: new Date(Date.parse(at(0)) - 1000).toISOString(),
        revision: 1,
        demonstration: true,
        putAway: false,
      },
    ])
  })

  it('has everything after closing and opening again', async () => {
    const place = await rooms.fresh()
    const first = await openStore({ at: place, titleOf: firstLine })
    const dish = await first.createDish({ text: 'Kept', writer: 'w', now: at(0) })
    await first.saveDraft({ ...write, dish, text: 'Kept, changed', now: at(1) })
    await first.keepRevision({ dish, text: 'Kept', now: at(2) })
    await first.close()
    const second = await openStore({ at: place, titleOf: firstLine })
    try {
      expect(await second.getDish(dish)).toMatchObject({ text: 'Kept, changed', version: 2, revision: { number: 1 } })
    } finally {
      await second.close()
    }
  })
})
