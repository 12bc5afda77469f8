import { describe, expect, it } from 'vitest'
import { normalFrom, seededRandom } from '../../../src/core/numerics/index.ts'

const draw = (seed: number, n: number) => {
  const random = seededRandom(seed)
  return Array.from({ length: n }, random)
}

describe('seededRandom', () => {
  it('repeats itself for a seed and not for another', () => {
    expect(draw(7, 5)).toEqual(draw(7, 5))
    expect(draw(7, 5)).not.toEqual(draw(8, 5))
    // Frozen: a run by its seed has to be the same next year.
    expect(draw(1, 3)).toEqual([0.5636717735324055, 0.5851113414391875, 0.8959073920268565])
  })
  it('is even: mean, variance, sixteen bins and pairs', () => {
    const n = 60_000
    for (const seed of [0, 1, 2, 123456789]) {
      const x = draw(seed, n)
      expect(x.every((v) => v >= 0 && v < 1)).toBe(true)
      const mean = x.reduce((a, b) => a + b) / n
      // Five standard errors.
      expect(Math.abs(mean - 0.5)).toBeLessThan((5 * Math.sqrt(1 / 12)) / Math.sqrt(n))
      const bins = new Array(256).fill(0)
      for (let i = 0; i < n; i += 2) bins[Math.floor(x[i] * 16) * 16 + Math.floor(x[i + 1] * 16)]++
      const expected = n / 2 / 256
      const chi2 = bins.reduce((s, o) => s + (o - expected) ** 2 / expected, 0)
      // 255 degrees of freedom: mean 255, deviation 22.6.
      expect(Math.abs(chi2 - 255)).toBeLessThan(5 * 22.6)
    }
  })
  it('neighbouring seeds are strangers', () => {
    const n = 20_000
    const a = draw(1, n)
    const b = draw(2, n)
    let r = 0
    for (let i = 0; i < n; i++) r += (a[i] - 0.5) * (b[i] - 0.5) * 12
    expect(Math.abs(r / n)).toBeLessThan(5 / Math.sqrt(n))
  })
})

describe('normalFrom', () => {
  it('has the moments of the normal law', () => {
    const n = 100_000
    const normal = normalFrom(seededRandom(3))
    const sums = [0, 0, 0, 0]
    let within = 0
    for (let i = 0; i < n; i++) {
      const z = normal()
      for (let k = 0; k < 4; k++) sums[k] += z ** (k + 1)
      if (Math.abs(z) < 1.959964) within++
    }
    expect(Math.abs(sums[0] / n)).toBeLessThan(5 / Math.sqrt(n))
    expect(Math.abs(sums[1] / n - 1)).toBeLessThan((5 * Math.SQRT2) / Math.sqrt(n))
    expect(Math.abs(sums[2] / n)).toBeLessThan((5 * Math.sqrt(15)) / Math.sqrt(n))
    expect(Math.abs(sums[3] / n - 3)).toBeLessThan((5 * Math.sqrt(96)) / Math.sqrt(n))
    expect(Math.abs(within / n - 0.95)).toBeLessThan((5 * Math.sqrt(0.95 * 0.05)) / Math.sqrt(n))
  })
})
