import fc from 'fast-check'
import { expect, it } from 'vitest'
import { solveTridiagonal } from '../../../src/core/numerics/index.ts'

it('solves any diagonally dominant system, in place, into rhs as well', () => {
  const number = fc.double({ min: -1, max: 1, noNaN: true })
  fc.assert(
    fc.property(
      fc.array(fc.tuple(number, number, number), { minLength: 1, maxLength: 30 }),
      fc.boolean(),
      (rows, into) => {
        const n = rows.length
        const lower = Float64Array.from(rows, (r, i) => (i > 0 ? r[0] : Number.NaN))
        const upper = Float64Array.from(rows, (r, i) => (i < n - 1 ? r[1] : Number.NaN))
        const diagonal = Float64Array.from(rows, (r) => 2.1 + r[2])
        const x = Float64Array.from(rows, (_, i) => Math.sin(i + 1) * 10)
        const rhs = x.map(
          (v, i) => diagonal[i] * v + (i > 0 ? lower[i] * x[i - 1] : 0) + (i < n - 1 ? upper[i] * x[i + 1] : 0),
        )
        const out = into ? rhs : new Float64Array(n)
        solveTridiagonal(lower, diagonal, upper, rhs, out)
        return out.every((v, i) => Math.abs(v - x[i]) < 1e-9)
      },
    ),
    { numRuns: 200 },
  )
  // One row.
  const out = new Float64Array(1)
  solveTridiagonal(new Float64Array(1), Float64Array.of(4), new Float64Array(1), Float64Array.of(2), out)
  expect(out[0]).toBe(0.5)
})
