import { describe, expect, it } from 'vitest'
import { findFood, foods, type HouseholdAmount, householdMass_kg } from '../../../src/core/larder/index.ts'

const weigh = (words: string, amount: Partial<HouseholdAmount> & Pick<HouseholdAmount, 'unit'>) => {
  const food = findFood(words, { unit: amount.unit === 'each' ? null : amount.unit })
  if (!food) throw new Error(`no ${words}`)
  return householdMass_kg(food, { low: 1, high: 1, ...amount })
}
const grams = (mass: { low_kg: number; high_kg: number } | null) => mass && [mass.low_kg * 1000, mass.high_kg * 1000]
const near = (actual: number[] | null, expected: readonly number[]) => {
  expect(actual).not.toBeNull()
  for (const [i, x] of expected.entries()) expect(actual![i]).toBeCloseTo(x, 1)
}

describe('householdMass_kg', () => {
  it('says in plain words where a weight comes from', () => {
    expect(weigh('onion', { unit: 'cup', form: 'chopped' })?.from).toBe(
      'household weight, 1 cup chopped = 160 g, USDA SR28 11282',
    )
    expect(weigh('beef', { unit: 'lb' })?.from).toBe('weight as written')
    expect(weigh('chicken stock', { unit: 'cup' })?.from).toMatch(/^by volume, density 1004 kg\/m3/)
  })

  it('keeps the spread of a count: an onion is what two kitchens mean by it', () => {
    near(grams(weigh('onion', { unit: null })), [110, 230])
    near(grams(weigh('onion', { unit: null, size: 'small' })), [70, 115])
    near(grams(weigh('onion', { unit: null, size: 'large' })), [150, 340])
    near(grams(weigh('onions', { low: 2, high: 3, unit: null })), [220, 690])
    near(grams(weigh('eggs', { low: 2, high: 2, unit: null, size: 'large' })), [100, 100])
  })

  it('tells kinds of salt apart by the spoon', () => {
    near(grams(weigh('table salt', { unit: 'tsp' })), [5.7, 6.1])
    near(grams(weigh('fine sea salt', { unit: 'tsp' })), [5, 6])
    near(grams(weigh('kosher salt', { unit: 'tsp' })), [2.8, 5])
    near(grams(weigh('hollow-flake kosher salt', { unit: 'tbsp' })), [8.4, 9])
    near(grams(weigh('sea salt flakes', { unit: 'tsp' })), [2, 3.5])
  })

  it('serves every country with one weight, through the volume', () => {
    const cup = (system: HouseholdAmount['system']) => grams(weigh('milk', { unit: 'cup', system }))![0]
    expect(cup('us')).toBeCloseTo(244, 1)
    expect(cup('metric') / cup('us')).toBeCloseTo(250 / 236.5882365, 6)
    const spoon = (system: HouseholdAmount['system']) => grams(weigh('olive oil', { unit: 'tbsp', system }))![0]
    expect(spoon('australian') / spoon('us')).toBeCloseTo(20 / 14.78676478125, 6)
    near(grams(weigh('rice', { unit: 'ml', low: 250, high: 250 })), [(185 * 250) / 236.5882365])
  })

  it('weighs cloves, stalks, cans, sticks, sprigs and pieces', () => {
    near(grams(weigh('garlic', { unit: 'clove' })), [3, 6])
    near(grams(weigh('celery', { unit: 'rib' })), [40, 64])
    near(grams(weigh('celery', { unit: 'stick' })), [40, 64])
    near(grams(weigh('butter', { unit: 'stick' })), [113, 113.4])
    near(grams(weigh('chickpeas', { unit: 'can' })), [235, 265])
    near(grams(weigh('thyme', { unit: 'sprig' })), [0.4, 1.5])
    near(grams(weigh('ginger', { unit: 'inch' })), [6, 15])
    near(grams(weigh('saffron', { unit: 'pinch' })), [0.03, 0.15])
    near(grams(weigh('bacon', { unit: 'slice' })), [18, 35])
  })

  it('falls back on the bulk of like foods, and says so', () => {
    const mass = weigh('salsify', { unit: 'cup', form: 'sliced' })
    expect(mass?.from).toMatch(/household weight/)
    const heaped = weigh('lotus root', { unit: 'cup' })!
    expect(heaped.from).toMatch(/no household weight.*like foods \(firm vegetable\)/)
    expect(heaped.low_kg).toBeLessThan(heaped.high_kg)
    expect(heaped.high_kg * 1000).toBeGreaterThan(90)
    expect(heaped.high_kg * 1000).toBeLessThan(180)
  })

  it('admits what it does not know', () => {
    expect(weigh('salt', { unit: null })).toBeNull()
    expect(weigh('flour', { unit: 'bunch' })).toBeNull()
    expect(weigh('carrot', { unit: 'stick' })).toBeNull()
    expect(weigh('beef chuck', { unit: 'inch' })).toBeNull()
  })

  it('refuses amounts that are none', () => {
    const onion = findFood('onion')!
    expect(() => householdMass_kg(onion, { low: -1, high: 1, unit: 'cup' })).toThrow(RangeError)
    expect(() => householdMass_kg(onion, { low: 2, high: 1, unit: 'cup' })).toThrow(/allowed 0 <= low <= high/)
    expect(() => householdMass_kg(onion, { low: Number.NaN, high: 1, unit: 'cup' })).toThrow(RangeError)
  })

  it('weighs a cup, a tablespoon and a teaspoon of every food within what can be heaped', () => {
    for (const food of foods)
      for (const unit of ['cup', 'tbsp', 'tsp'] as const) {
        const mass = householdMass_kg(food, { low: 1, high: 1, unit })
        const filled_kg = food.density_kg_per_m3 * { cup: 236.6e-6, tbsp: 14.79e-6, tsp: 4.93e-6 }[unit]
        expect(mass, food.id).not.toBeNull()
        expect(mass!.low_kg, `${unit} of ${food.id}`).toBeGreaterThan(filled_kg * 0.02)
        expect(mass!.high_kg, `${unit} of ${food.id}`).toBeLessThan(filled_kg * 1.3)
        expect(mass!.low_kg).toBeLessThanOrEqual(mass!.high_kg)
      }
  })
})
