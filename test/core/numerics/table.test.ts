import { describe, expect, it } from 'vitest'
import { linearTable } from '../../../src/core/numerics/index.ts'

describe('linearTable', () => {
  it('is exact on its nodes and for straight lines, and errs by h²/8 f″ between', () => {
    const line = linearTable((x) => 3 * x - 1, { low: -2, high: 5, step: 0.7 })
    for (let x = -2; x <= 5; x += 0.01) expect(line.at(x)).toBeCloseTo(3 * x - 1, 12)
    const sine = linearTable(Math.sin, { low: 0, high: 3, step: 0.01 })
    let worst = 0
    for (let x = 0; x <= 3; x += 0.00137) worst = Math.max(worst, Math.abs(sine.at(x) - Math.sin(x)))
    expect(worst).toBeLessThanOrEqual((0.01 ** 2 / 8) * 1.001)
    expect(worst).toBeGreaterThan((0.01 ** 2 / 8) * 0.9)
  })
  it('reaches both ends exactly', () => {
    const t = linearTable(Math.exp, { low: 273.15 / 100, high: 433.15 / 100, step: 0.001 })
    expect(t.at(t.low)).toBeCloseTo(Math.exp(t.low), 12)
    expect(t.at(t.high)).toBeCloseTo(Math.exp(t.high), 9)
  })
  it('refuses what is outside, NaN included, and tables without cells', () => {
    const t = linearTable((x) => x, { low: 0, high: 1, step: 0.1, name: 'depth in m' })
    for (const x of [-1e-9, 1.000001, Number.NaN]) expect(() => t.at(x)).toThrow(/depth in m = /)
    expect(t.inner(0.55)).toBeCloseTo(0.55, 12)
    expect(() => linearTable((x) => x, { low: 1, high: 1, step: 0.1 })).toThrow(RangeError)
    expect(() => linearTable((x) => x, { low: 0, high: 1, step: Number.NaN })).toThrow(RangeError)
  })
})
