import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cookPlan, potCards, type Run } from '../../../src/core/index.ts'
import { type Braise, braise, cube, food, PlanBuilder } from '../../support/plans.ts'

function sound(run: Run, what: string): void {
  const a = run.account
  for (const [name, book] of Object.entries({
    water: a.water_kg,
    fat: a.fat_kg,
    salt: a.salt_kg,
    energy: a.energy_J,
  })) {
    expect(Math.abs(book.closure_share), `${what}: ${name} does not close`).toBeLessThan(1e-3)
  }
  for (const column of [
    'liquor_K',
    'base_K',
    'baseHot_K',
    'wall_K',
    'gauge_Pa',
    'liquid_m3',
    'air_share',
    'power_W',
  ] as const) {
    for (const x of run.series[column]) expect(Number.isFinite(x), `${what}: ${column} is ${x}`).toBe(true)
  }
  const cold = Math.min(...run.series.liquor_K)
  expect(cold, what).toBeGreaterThan(250)
  for (const i of run.series.time_s.keys()) {
    if (run.series.lid[i] === 2) expect(run.series.liquor_K[i], `${what}: sealed liquor`).toBeLessThan(273.15 + 123)
    expect(run.series.liquid_m3[i], what).toBeGreaterThanOrEqual(0)
    if (i > 0) expect(run.series.time_s[i], what).toBeGreaterThanOrEqual(run.series.time_s[i - 1] - 6)
  }
  for (const p of run.pieces) {
    expect(p.mass_kg, what).toBeGreaterThan(0)
    if (p.tender !== null) expect(p.tender >= 0 && p.tender <= 1, what).toBe(true)
    if (p.firm !== null) expect(p.firm >= 0 && p.firm <= 1, what).toBe(true)
  }
}

describe('the books close to a thousandth', () => {
  it('for the base braise in every pot that holds pressure, by every release', () => {
    for (const card of potCards.filter((c) => c.regulator)) {
      for (const release of ['natural', 'vented', 'iced', 'natural-then-vented'] as const) {
        const scale = card.capacity_m3 < 4e-3 ? 0.5 : 1
        sound(cookPlan(braise({ pot: card, release, scale, batches: 2 })), `${card.id} ${release}`)
      }
    }
  })
  it('in the oven and on a burner', () => {
    sound(cookPlan(braise({ ovenHours: 2.5 })), 'oven')
    const b = new PlanBuilder()
    const meat = b.load('beef-chuck', 0.8, cube(0.04))
    const wine = b.load('red-wine', 0.4)
    const run = cookPlan(
      b
        .add([meat, wine])
        .do({
          kind: 'simmer',
          lid: 'on',
          setting: 'low',
          vigour: 'simmer',
          time_s: { low: 7200, high: 7200 },
          stirred: false,
        })
        .plan('dutch-burner'),
    )
    sound(run, 'burner')
    expect(run.pieces[0].tender).toBeGreaterThan(0.4)
  })
  it('with meat from frozen, and its core comes up later', () => {
    const run = (start_K: number): Run => {
      const b = new PlanBuilder()
      const meat = b.load('lamb-shoulder', 0.9, cube(0.05), start_K)
      return cookPlan(
        b
          .add([b.load('water', 0.5), meat])
          .do({ kind: 'lock', time_s: { low: 10, high: 10 } })
          .do({ kind: 'hold', level: 'high', time_s: { low: 1200, high: 1200 } })
          .do({ kind: 'release', how: 'natural', natural_s: null })
          .plan(),
      )
    }
    const cold = run(255.15)
    const chilled = run(278.15)
    sound(cold, 'frozen')
    expect(cold.clock.comeUp_s!).toBeGreaterThan(chilled.clock.comeUp_s! * 1.2)
    expect(cold.pieces[0].tender!).toBeLessThan(chilled.pieces[0].tender!)
  })
  it('for any braise in bounds', () => {
    const amounts = fc.record({
      meat_kg: fc.double({ min: 0.2, max: 1.6, noNaN: true }),
      size_m: fc.double({ min: 0.01, max: 0.1, noNaN: true }),
      stock_kg: fc.double({ min: 0.01, max: 1.5, noNaN: true }),
      passata_kg: fc.double({ min: 0, max: 0.8, noNaN: true }),
      scraped: fc.double({ min: 0, max: 1, noNaN: true }),
      batches: fc.integer({ min: 1, max: 3 }),
      hold_s: fc.integer({ min: 0, max: 5400 }),
      release: fc.constantFrom('natural', 'vented', 'iced', 'natural-then-vented'),
      altitude_m: fc.integer({ min: 0, max: 4000 }),
    })
    fc.assert(
      fc.property(amounts, (o) => {
        sound(cookPlan(braise(o as Braise)), JSON.stringify(o))
      }),
      { numRuns: 60 },
    )
  })
})

describe('beans and rice drink', () => {
  it('take up what the larder says, and the soup loses that much', () => {
    const b = new PlanBuilder()
    const beans = b.load(
      'white-bean',
      0.3,
      { shape: 'sphere', thickness_m: 0.008, width_m: 0.008, length_m: 0.012, spread: 0.15, count: 1, from: 'usual' },
      293.15,
    )
    const run = cookPlan(
      b
        .add([b.load('water', 1.4), beans])
        .do({ kind: 'lock', time_s: { low: 10, high: 10 } })
        .do({ kind: 'hold', level: 'high', time_s: { low: 2700, high: 2700 } })
        .do({ kind: 'release', how: 'natural', natural_s: null })
        .plan(),
    )
    sound(run, 'beans')
    const drunk = run.account.water_kg.absorbed
    expect(drunk).toBeGreaterThan(0.3 * food('white-bean').absorbs * 0.8)
    expect(run.fill.limit).toBe(0.5)
  })
})

describe('the step', () => {
  it('answers monotonically: more minutes, more tender; more stock, more sauce', () => {
    let last = -1
    for (const hold_s of [300, 900, 1500, 2100, 2700]) {
      const tender = cookPlan(braise({ hold_s })).pieces[0].tender!
      expect(tender).toBeGreaterThan(last)
      last = tender
    }
    let sauce = 0
    for (const stock_kg of [0.12, 0.2, 0.3, 0.5]) {
      const volume = cookPlan(braise({ stock_kg })).sauce.volume_m3
      expect(volume).toBeGreaterThan(sauce)
      sauce = volume
    }
  })
  it('gives the same run twice, and without a record the same verdict', () => {
    const one = cookPlan(braise())
    const two = cookPlan(braise())
    const bare = cookPlan(braise(), { record: false })
    expect(two.base).toEqual(one.base)
    expect(two.sauce).toEqual(one.sauce)
    expect(bare.sauce).toEqual(one.sauce)
    expect(bare.series.time_s.length).toBe(0)
  })
})
