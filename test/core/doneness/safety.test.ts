import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  coolingVerdict,
  holdMet,
  holdRules,
  type LethalityColumn,
  lectinRule,
  lethalityFrom_K,
  lethalityRate_per_s,
  lethalTime_s,
  longestStay_s,
  sporeRate,
} from '../../../src/core/doneness/index.ts'
import { published } from '../../support/published.ts'

const F = (t: number) => (t - 32) / 1.8 + 273.15

describe('lethality', () => {
  it('of beef agrees with every printed row, within 7 % or one printed unit', () => {
    for (const row of published('doneness/fsis-beef.csv').rows) {
      for (const [column, name] of [
        ['seven_log_s', 'meat-7-log'],
        ['six_and_half_log_s', 'meat-6.5-log'],
      ] as const) {
        const time_s = lethalTime_s(F(row.number('F')), name)
        if (Math.abs(time_s - row.number(column)) > row.number('unit_s')) row.agrees(column, time_s)
      }
    }
    expect(lethalTime_s(F(140), 'meat-7-log') / 60).toBeCloseTo(12, 9)
    expect(lethalTime_s(F(150), 'meat-7-log')).toBeCloseTo(72, 9)
  })
  it('of poultry goes through its rows and falls between them', () => {
    for (const row of published('doneness/fsis-poultry.csv').rows) {
      row.agrees('time_s', lethalTime_s(F(row.number('F')), row.text('column') as LethalityColumn))
    }
    for (const column of ['meat-7-log', 'meat-6.5-log', 'poultry-lean', 'poultry-fat'] as const) {
      let before = Infinity
      for (let T = lethalityFrom_K[column]; T < 400; T += 0.1) {
        const now = lethalTime_s(T, column)
        expect(now).toBeLessThanOrEqual(before)
        before = now
      }
    }
  })
  it('asks more of poultry than of beef, and most of fat poultry', () => {
    for (let f = 140; f <= 160; f += 0.5) {
      expect(lethalTime_s(F(f), 'poultry-lean')).toBeGreaterThan(lethalTime_s(F(f), 'meat-7-log'))
      expect(lethalTime_s(F(f), 'poultry-fat')).toBeGreaterThan(lethalTime_s(F(f), 'poultry-lean'))
    }
  })
  it('counts nothing below the standard, and stays finite above', () => {
    expect(lethalityRate_per_s(F(129.9), 'meat-7-log')).toBe(0)
    expect(lethalityRate_per_s(F(139.9), 'poultry-lean')).toBe(0)
    expect(() => lethalTime_s(F(129), 'meat-7-log')).toThrow(RangeError)
    expect(lethalityRate_per_s(400, 'poultry-fat')).toBeCloseTo(1 / 16.9, 12)
    expect(() => lethalityRate_per_s(Number.NaN, 'meat-7-log')).toThrow(RangeError)
    // A ramp adds up to the same whatever its step, to the step's own order.
    const dose = (step: number) => {
      let sum = 0
      for (let t = step / 2; t < 1200; t += step) sum += lethalityRate_per_s(330 + t / 100, 'meat-7-log') * step
      return sum
    }
    expect(Math.abs(dose(10) / dose(1) - 1)).toBeLessThan(1e-3)
  })
  it('of spores is ten times a decade of kelvin', () => {
    for (const row of published('doneness/lethal-rate.csv').rows) {
      // Printed against 121.11 °C; ours stands on 121.1: two parts in a thousand.
      const rate = sporeRate(row.number('t_C') + 273.15)
      row.agrees('rate', rate / 10 ** 0.001)
      row.agrees('minutes_30', (30 * rate) / 10 ** 0.001)
    }
  })
})

describe('the Food Code', () => {
  it('has the temperatures and times as printed', () => {
    for (const row of published('doneness/food-code.csv').rows) {
      const rule = holdRules.find((r) => r.code === row.text('code'))
      expect(rule, row.text('code')).toBeDefined()
      if (!rule) continue
      row.agrees('C', rule.temperature_K - 273.15)
      expect(rule.temperature_K).toBeCloseTo(F(row.number('F')), 9)
      expect(rule.time_s).toBe(row.number('time_s'))
    }
    expect(new Set(holdRules.map((r) => r.code)).size).toBe(holdRules.length)
    expect(lectinRule.boil_s).toBe(1800)
  })
  it('measures a stay between samples', () => {
    const time = [0, 60, 120, 180, 240]
    const temp = [300, 340, 350, 340, 300]
    expect(longestStay_s(time, temp, 345)).toBeCloseTo(60, 9)
    expect(longestStay_s(time, temp, 340)).toBeCloseTo(120, 9)
    expect(longestStay_s(time, temp, 350)).toBe(0)
    expect(longestStay_s(time, temp, 351)).toBe(-1)
    expect(longestStay_s(time, temp, 300)).toBe(240)
    // Two stays: the longer counts, not the sum.
    expect(longestStay_s([0, 10, 20, 30, 100], [350, 350, 300, 350, 350], 350)).toBe(70)
    expect(longestStay_s([5], [350], 345)).toBe(0)
    const rule = holdRules.find((r) => r.code === 'minced-150')
    if (!rule) throw new Error('no rule')
    expect(holdMet(rule, [0, 100], [F(151), F(151)])).toBe(true)
    expect(holdMet(rule, [0, 50], [F(151), F(151)])).toBe(false)
    expect(() => longestStay_s([0, 1], [300], 300)).toThrow(RangeError)
    expect(() => longestStay_s([], [], 300)).toThrow(RangeError)
  })
  it('never finds a stay longer than the record, nor a longer one at a higher temperature', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 280, max: 400, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (temps) => {
          const times = temps.map((_, i) => i * 7)
          let before = Infinity
          for (let T = 285; T < 400; T += 5) {
            const stay = longestStay_s(times, temps, T)
            if (stay > times[times.length - 1] + 1e-9 || stay > before + 1e-9) return false
            before = stay
          }
          return true
        },
      ),
    )
  })
  it('judges cooling from the moment it falls below 135 °F', () => {
    const at = (...points: [hours: number, F: number][]) =>
      coolingVerdict(
        points.map((p) => p[0] * 3600),
        points.map((p) => F(p[1])),
      )
    const fine = at([0, 200], [0.5, 135], [2.4, 70], [6.4, 41], [8, 38])
    expect(fine.ok).toBe(true)
    if (fine.ok) {
      expect(fine.toMiddle_s / 3600).toBeCloseTo(1.9, 6)
      expect(fine.toCold_s / 3600).toBeCloseTo(5.9, 6)
    }
    expect(at([0, 135], [2.1, 70], [5, 41])).toMatchObject({ ok: false, code: 'too-slow-to-70F' })
    expect(at([0, 135], [1, 70], [6.2, 41])).toMatchObject({ ok: false, code: 'too-slow-to-41F' })
    expect(at([0, 135], [1, 70], [4, 50])).toMatchObject({ ok: false, code: 'record-too-short' })
    expect(at([0, 135], [1, 70], [7, 45])).toMatchObject({ ok: false, code: 'too-slow-to-41F' })
    expect(at([0, 135], [3, 80])).toMatchObject({ ok: false, code: 'too-slow-to-70F' })
    expect(at([0, 180], [1, 150])).toMatchObject({ ok: false, code: 'record-too-short', toMiddle_s: null })
    expect(at([0, 40], [1, 39])).toMatchObject({ ok: true, toMiddle_s: 0, toCold_s: 0 })
    // Warmed again: the clock starts over.
    expect(at([0, 135], [1, 70], [1.5, 140], [2, 135], [3.5, 70], [7, 41]).ok).toBe(true)
  })
})
