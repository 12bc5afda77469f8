import { describe, expect, test } from 'vitest'
import { cookJson } from '../../src/cli/json-cook.ts'
import { readJson } from '../../src/cli/json-read.ts'
import type { Finding } from '../../src/core/findings/index.ts'
import type { Recipe } from '../../src/core/manuscript/index.ts'
import { syntheticRun } from '../support/synthetic-run.ts'

const text =
  'Leek stew\nServes 4 to 6\nTotal time: 55 minutes\n1 (400 g) can beans, drained\nsalt\nBrown for 6 to 8 minutes. Bake at 150 °C.'
const place = (words: string) => ({ from: text.indexOf(words), to: text.indexOf(words) + words.length })

const query: Finding = {
  code: 'cut-size-missing',
  severity: 'warning',
  span: place('beans'),
  title: 'Cut how large?',
  message: 'No size is said.',
  source: 'the words',
  advice: 'Write the size.',
  cure: null,
}

const recipe: Recipe = {
  text,
  kind: 'recipe',
  title: { ...place('Leek stew'), text: 'Leek stew' },
  yield: { ...place('Serves 4 to 6'), low: 4, high: 6, unit: 'servings' },
  stated: { total: { ...place('Total time: 55 minutes'), low_s: 3300, high_s: 3300 }, active: null },
  named: { pot: null, altitude_m: null },
  ingredients: [
    {
      ...place('1 (400 g) can beans, drained'),
      index: 0,
      line: '1 (400 g) can beans, drained',
      low: 1,
      high: 1,
      unit: 'can',
      amountSpan: place('1 (400 g) can'),
      pack: { low: 400, high: 400, unit: 'g' },
      also: [{ low: 14, high: 14, unit: 'oz' }],
      item: 'beans',
      itemSpan: place('beans'),
      larder: 'white-beans-canned',
      prep: 'drained',
      cut: null,
      state: null,
      optional: false,
      toTaste: false,
      divided: false,
      mass_kg: { low: 0.23, high: 0.1 + 0.2 },
      massFrom: 'drained weight of the can',
    },
    {
      ...place('salt'),
      index: 1,
      line: 'salt',
      low: null,
      high: null,
      unit: null,
      amountSpan: null,
      pack: null,
      also: [],
      item: 'salt',
      itemSpan: null,
      larder: null,
      prep: null,
      cut: null,
      state: null,
      optional: true,
      toTaste: true,
      divided: true,
      mass_kg: null,
      massFrom: 'not said',
    },
  ],
  steps: [
    {
      ...place('Brown for 6 to 8 minutes. Bake at 150 °C.'),
      text: 'Brown for 6 to 8 minutes. Bake at 150 °C.',
      operations: [
        {
          ...place('Brown for 6 to 8 minutes'),
          verb: 'brown',
          time_s: { low: 360, high: 480 },
          batches: null,
          perBatch: false,
          temperature_K: { low: 423.15, high: 423.15 },
          heat: 'medium-high',
          pressure: 'high',
          release: 'natural-then-vented',
          releaseTime_s: 600,
          uses: [
            { from: 0, to: 1, ingredient: 0, share: 0.5, again: false },
            { from: 0, to: 1, ingredient: 0, share: 0.5, again: true },
          ],
          cue: null,
          lid: null,
          scrapes: false,
          stirs: false,
          reduceTo: null,
          place: null,
        },
      ],
    },
  ],
  queries: [query, { ...query, span: null, message: '', cure: { label: 'Write 1½ hours', edits: [] } }],
}

test('read: every key of the contract with its meaning', () => {
  expect(readJson(recipe)).toEqual({
    kind: 'recipe',
    title: 'Leek stew',
    yield: { low: 4, high: 6, unit: 'servings' },
    stated: { total_s: [3300, 3300], active_s: null },
    ingredients: [
      {
        line: '1 (400 g) can beans, drained',
        ...place('1 (400 g) can beans, drained'),
        low: 1,
        high: 1,
        unit: 'can',
        pack: { low: 400, high: 400, unit: 'g' },
        also: [{ low: 14, high: 14, unit: 'oz' }],
        item: 'beans',
        larder: 'white-beans-canned',
        prep: 'drained',
        optional: false,
        toTaste: false,
        divided: false,
        mass_g: { low: 230, high: 300 },
        massFrom: 'drained weight of the can',
      },
      {
        line: 'salt',
        ...place('salt'),
        low: null,
        high: null,
        unit: null,
        pack: null,
        also: [],
        item: 'salt',
        larder: null,
        prep: null,
        optional: true,
        toTaste: true,
        divided: true,
        mass_g: null,
        massFrom: 'not said',
      },
    ],
    steps: [
      {
        text: 'Brown for 6 to 8 minutes. Bake at 150 °C.',
        ...place('Brown for 6 to 8 minutes. Bake at 150 °C.'),
        operations: [
          {
            verb: 'brown',
            ...place('Brown for 6 to 8 minutes'),
            minutes: [6, 8],
            temperature_C: [150, 150],
            heat: 'medium-high',
            pressure: 'high',
            release: 'natural-then-vented',
            releaseMinutes: 10,
            ingredients: [0],
          },
        ],
      },
    ],
    queries: [
      {
        code: 'cut-size-missing',
        severity: 'warning',
        ...place('beans'),
        message: 'Cut how large? No size is said.',
        cure: 'Write the size.',
      },
      {
        code: 'cut-size-missing',
        severity: 'warning',
        from: null,
        to: null,
        message: 'Cut how large?',
        cure: 'Write 1½ hours',
      },
    ],
  })
})

describe('cook: every key of the contract', () => {
  const run = syntheticRun({ findings: [query] })
  const json = cookJson(run)

  test('pot, place, clock', () => {
    expect(json.pot).toBe('electric-6qt')
    expect(json.altitude_m).toBe(120)
    expect(json.clock).toEqual({
      prep_s: 540,
      beforeLock_s: 1410,
      comeUp_s: 510,
      hold_s: 1800,
      release_s: 990,
      after_s: 450,
      total_s: [5400, 6360],
      handsOn_s: 2220,
      apart_s: 0,
    })
  })

  test('events carry their words where an operation caused them', () => {
    expect(json.events[0]).toEqual({ code: 'fat-hot', time_s: 720, from: 0, to: 40, ingredient: null })
    expect(json.events.find((event) => event.code === 'float-up')).toMatchObject({ time_s: 2160, from: null, to: null })
  })

  test('base, fill, pieces, sauce', () => {
    expect(json.base).toEqual({ margin_K: 12, trips: false, at_s: 2460, cause: 'fond' })
    expect(json.fill).toEqual({ volume_mL: 2300, fraction: 0.4, limit: 0.6667 })
    expect(json.pieces[0]).toMatchObject({
      ingredient: 0,
      coldest_C: 115.8,
      tender: 0.76,
      firm: null,
      word: 'tender',
      waterLost_g: 340,
      waterLost_pct: 28.3,
    })
    expect(json.pieces[1]).toMatchObject({ ingredient: 1, tender: null, firm: 0.04, word: 'soft' })
    expect(json.sauce).toEqual({
      mass_g: 240,
      volume_mL: 230,
      gelatin_pct: 3.5,
      starch_pct: 0,
      salt_pct: 0.9,
      fat_g: 70,
    })
  })

  test('the account closes in the units it names', () => {
    const { water_g } = json.account
    expect(Object.keys(water_g)).toEqual(
      expect.arrayContaining(['in', 'evaporated', 'vented', 'absorbed', 'inPieces', 'inLiquor', 'closure_pct']),
    )
    const out =
      water_g.evaporated! +
      water_g.vented! +
      water_g.absorbed! +
      water_g.lifted! +
      water_g.inPieces! +
      water_g.inLiquor! +
      water_g.inHeadspace!
    expect(out).toBeCloseTo(water_g.in!, 6)
    expect(json.account.energy_kJ.in).toBe(1900)
    for (const part of [json.account.fat_g, json.account.salt_g])
      expect(Object.keys(part)).toEqual(['in', 'lifted', 'inPieces', 'inLiquor', 'closure_pct'])
  })

  test('series are as long as the clock, in the units they name, null where nothing is', () => {
    const { series } = json
    for (const list of [
      series.liquor_C,
      series.base_C,
      series.gauge_kPa,
      series.liquid_mL,
      series.coldest_C[0],
      series.coldest_C[1],
    ])
      expect(list).toHaveLength(series.time_s.length)
    const at = (minutes: number) => series.time_s.indexOf(minutes * 60)
    expect(series.liquor_C[at(60)]).toBe(116.3)
    expect(series.gauge_kPa[at(60)]).toBe(75)
    expect(series.coldest_C[0][at(5)]).toBeNull()
    expect(series.coldest_C[0][at(60)]).toBeGreaterThan(100)
  })

  test('findings carry source and cure', () => {
    expect(json.findings).toEqual([
      {
        code: 'cut-size-missing',
        severity: 'warning',
        ...place('beans'),
        message: 'Cut how large? No size is said.',
        source: 'the words',
        cure: 'Write the size.',
      },
    ])
  })

  test('what the run does not know is null, never a broken number', () => {
    const odd = cookJson({
      ...run,
      clock: { ...run.clock, hold_s: null },
      base: { ...run.base, margin_dK: Number.POSITIVE_INFINITY },
    })
    expect(odd.clock.hold_s).toBeNull()
    expect(odd.base.margin_K).toBeNull()
    expect(JSON.stringify(odd)).not.toMatch(/NaN|Infinity/)
  })
})
