import { describe, expect, it } from 'vitest'
import type { Measure } from '../../../src/core/manuscript/index.ts'
import { measureSystemOf } from '../../../src/core/manuscript/system.ts'

const m = (low: number, unit: Measure['unit']): Measure => ({ low, high: low, unit })

describe('whose cups a manuscript means', () => {
  it('by what it says', () => {
    expect(measureSystemOf('Please note: a 20 ml Australian tablespoon and a 250 ml cup.', [])).toBe('australian')
    expect(measureSystemOf('All cups are 250 ml cups.', [])).toBe('metric')
    expect(measureSystemOf('US cups and spoons throughout; 250 ml beaker.', [])).toBe('us')
  })
  it('by its own pairs', () => {
    expect(measureSystemOf('', [[m(1, 'l'), m(4, 'cup')]])).toBe('metric')
    expect(measureSystemOf('', [[m(1, 'cup'), m(240, 'ml')]])).toBe('us')
    expect(measureSystemOf('', [[m(570, 'ml'), m(1, 'pint')]])).toBe('metric')
    expect(measureSystemOf('', [[m(2, 'tbsp'), m(40, 'ml')]])).toBe('australian')
    // Every teaspoon and most tablespoons are alike: they tell nothing.
    expect(measureSystemOf('', [[m(2, 'tbsp'), m(30, 'ml')]])).toBe('us')
    // "1 cup/720 ml" is a slip, no system.
    expect(measureSystemOf('', [[m(1, 'cup'), m(720, 'ml')]])).toBe('us')
  })
  it('by its words, and else the US', () => {
    expect(
      measureSystemOf('Heat the oven to gas mark 4. Add the double cream and plain flour. Put on the hob.', []),
    ).toBe('metric')
    expect(measureSystemOf('Add 2 cups capsicum, 1 cup pumpkin and the tin of tomatoes.', [])).toBe('australian')
    expect(measureSystemOf('2 cups all-purpose flour, kosher salt, heavy cream', [])).toBe('us')
    expect(measureSystemOf('onions', [])).toBe('us')
  })
})
