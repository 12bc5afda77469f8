import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stacked } from '../../src/web/bench/stack.ts'

describe('stacking notes', () => {
  it('leaves notes at their level where there is room', () => {
    expect(
      stacked(
        [
          { level: 0, height: 40 },
          { level: 100, height: 40 },
        ],
        12,
      ),
    ).toEqual([0, 100])
  })

  it('pushes down what would collide, and no further than needed', () => {
    expect(
      stacked(
        [
          { level: 0, height: 40 },
          { level: 10, height: 40 },
          { level: 200, height: 40 },
        ],
        12,
      ),
    ).toEqual([0, 52, 200])
  })

  it('never lets two notes overlap and never moves one up', () => {
    const note = fc.record({ level: fc.nat(2000), height: fc.nat(200) })
    fc.assert(
      fc.property(fc.array(note), (notes) => {
        const wanted = notes.sort((a, b) => a.level - b.level)
        const tops = stacked(wanted, 12)
        tops.forEach((top, i) => {
          expect(top).toBeGreaterThanOrEqual(wanted[i].level)
          if (i > 0) expect(top).toBeGreaterThanOrEqual(tops[i - 1] + wanted[i - 1].height + 12)
        })
      }),
    )
  })
})
