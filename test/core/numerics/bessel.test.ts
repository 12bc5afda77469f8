import { describe, expect, it } from 'vitest'
import { besselJ0, besselJ1, provedRoot } from '../../../src/core/numerics/index.ts'
import { published } from '../../support/published.ts'

describe('Bessel functions', () => {
  it('agree with the handbook', () => {
    for (const row of published('numerics/bessel.csv').rows) {
      row.agrees('J0', besselJ0(row.number('x')))
      row.agrees('J1', besselJ1(row.number('x')))
    }
    for (const row of published('numerics/bessel-zeros.csv').rows) {
      const f = row.number('order') === 0 ? besselJ0 : besselJ1
      const zero = row.number('zero')
      row.agrees('zero', provedRoot(f, { low: zero - 0.3, high: zero + 0.3, tolerance: 0 }))
    }
  })
  it('J0′ = −J1, and x J1 integrates x J0, across the change of method at 25', () => {
    for (let x = 0.05; x < 60; x += 0.173) {
      const d = 1e-5
      expect(Math.abs((besselJ0(x + d) - besselJ0(x - d)) / (2 * d) + besselJ1(x))).toBeLessThan(1e-9)
      const slope = ((x + d) * besselJ1(x + d) - (x - d) * besselJ1(x - d)) / (2 * d)
      expect(Math.abs(slope - x * besselJ0(x))).toBeLessThan(1e-8)
    }
    expect(Math.abs(besselJ0(25 - 1e-12) - besselJ0(25 + 1e-12))).toBeLessThan(1e-12)
    expect(Math.abs(besselJ1(25 - 1e-12) - besselJ1(25 + 1e-12))).toBeLessThan(1e-12)
  })
  it('is even and odd, and mild at zero', () => {
    expect(besselJ0(-3)).toBe(besselJ0(3))
    expect(besselJ1(-3)).toBe(-besselJ1(3))
    expect(besselJ0(0)).toBe(1)
    expect(besselJ1(1e-10)).toBeCloseTo(5e-11, 20)
  })
})
