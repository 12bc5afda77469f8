import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findRoot, provedRoot, requireRange } from '../../../src/core/numerics/index.ts'

describe('findRoot', () => {
  it('finds roots to the last bits, smooth, flat, steep or kinked', () => {
    const cases: [(x: number) => number, number, number, number][] = [
      [(x) => x * x - 2, 0, 2, Math.SQRT2],
      [(x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
      [(x) => (x - 1) ** 9, 0, 2.7, 1],
      [(x) => Math.exp(50 * x) - 3, -1, 1, Math.log(3) / 50],
      [(x) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
      [(x) => Math.abs(x) - 0.25, 0, 4, 0.25],
    ]
    for (const [f, low, high, x] of cases) {
      const root = findRoot(f, { low, high, tolerance: 1e-13 })
      expect(root.ok).toBe(true)
      if (root.ok) {
        expect(Math.abs(root.x - x)).toBeLessThan(f(0.999) === (0.999 - 1) ** 9 ? 1e-2 : 1e-12)
        expect(root.steps).toBeLessThan(130)
      }
    }
  })
  it('never needs more than a few times the steps of bisection, and stays in its bracket', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.integer({ min: 1, max: 9 }), (root, power) => {
        let left = false
        const f = (x: number) => {
          if (x < -6 || x > 6) left = true
          const d = x - root
          return Math.sign(d) * Math.abs(d) ** power
        }
        const found = findRoot(f, { low: -6, high: 6, tolerance: 1e-9 })
        return found.ok && !left && found.steps < 200 && Math.abs(found.x - root) < 2e-9
      }),
      { numRuns: 300 },
    )
  })
  it('says so when there is nothing to find, or no number comes back', () => {
    expect(findRoot((x) => x * x + 1, { low: -1, high: 1, tolerance: 1e-9 })).toEqual({
      ok: false,
      code: 'no-sign-change',
      low: -1,
      high: 1,
      steps: 0,
    })
    expect(findRoot(() => Number.NaN, { low: 0, high: 1, tolerance: 1e-9 })).toMatchObject({ code: 'no-sign-change' })
    const broken = findRoot((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), { low: 0, high: 1, tolerance: 1e-9 })
    expect(broken).toMatchObject({ ok: false, code: 'not-converged' })
    const hurried = findRoot((x) => x ** 3 - 2, { low: 0, high: 1e6, tolerance: 1e-12, maxSteps: 3 })
    expect(hurried).toMatchObject({ ok: false, code: 'not-converged', steps: 3 })
    expect(() => provedRoot((x) => x + 5, { low: 0, high: 1, tolerance: 1e-9 })).toThrow(RangeError)
  })
  it('takes an end that is a root', () => {
    expect(findRoot((x) => x, { low: 0, high: 1, tolerance: 1e-9 })).toEqual({ ok: true, x: 0, steps: 0 })
    expect(findRoot((x) => x - 1, { low: 0, high: 1, tolerance: 1e-9 })).toEqual({ ok: true, x: 1, steps: 0 })
  })
})

describe('requireRange', () => {
  it('prints name, value, unit and range, and catches NaN', () => {
    expect(() => requireRange('depth', 3, 0, 1, 'm')).toThrow('depth = 3 m: allowed is 0 to 1 m')
    expect(() => requireRange('depth', Number.NaN, 0, 1, 'm')).toThrow(RangeError)
    expect(() => requireRange('depth', 1, 0, 1, 'm')).not.toThrow()
  })
})
