import { describe, expect, it } from 'vitest'
import { soakedFood, soakedUp_kg_per_kg } from '../../../src/core/method/index.ts'
import { someFood } from './some-food.ts'

describe('soaking', () => {
  it('takes up nothing at once, little in half an hour, nearly all overnight, and never gives back', () => {
    expect(soakedUp_kg_per_kg(0)).toBe(0)
    expect(soakedUp_kg_per_kg(1800)).toBeLessThan(0.25)
    expect(soakedUp_kg_per_kg(8 * 3600)).toBeGreaterThan(0.95)
    let before = -1
    for (let hours = 0; hours <= 24; hours += 0.5) {
      const now = soakedUp_kg_per_kg(hours * 3600)
      expect(now).toBeGreaterThan(before)
      before = now
    }
    expect(() => soakedUp_kg_per_kg(Number.NaN)).toThrow(RangeError)
    expect(() => soakedUp_kg_per_kg(-1)).toThrow(/-1 s/)
  })
  it('keeps every gram of the dry bean and adds only water', () => {
    const dry = someFood('pulse', { absorbs: 1.4, density_kg_per_m3: 1300, starch: 0.4 })
    const wet = soakedFood(dry, 0.9)
    for (const part of ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const)
      expect(wet.composition[part] * 1.9).toBeCloseTo(dry.composition[part], 12)
    expect(wet.composition.water * 1.9).toBeCloseTo(dry.composition.water + 0.9, 12)
    expect(Object.values(wet.composition).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
    expect(wet.starch * 1.9).toBeCloseTo(0.4, 12)
  })
  it('leaves only the rest to absorb in the pot', () => {
    expect(soakedFood(someFood('pulse', { absorbs: 1.4 }), 0.9).absorbs * 1.9).toBeCloseTo(0.5, 12)
    expect(soakedFood(someFood('pulse', { absorbs: 0.5 }), 0.9).absorbs).toBe(0)
  })
  it('weighs what bean and water weigh together in the room both take', () => {
    const wet = soakedFood(someFood('pulse', { density_kg_per_m3: 1300 }), 1)
    expect(wet.density_kg_per_m3).toBeCloseTo(2 / (1 / 1300 + 1 / 1000), 9)
  })
})
