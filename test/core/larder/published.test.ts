import { describe, expect, it } from 'vitest'
import { allergens, foodById, householdMass_kg } from '../../../src/core/larder/index.ts'
import { type UnitCode, volumeOfUnit_m3 } from '../../../src/core/units/index.ts'
import { published } from '../../support/published.ts'

const food = (id: string) => {
  const found = foodById(id)
  if (!found) throw new Error(`no food ${id}`)
  return found
}

describe('published figures', () => {
  it.each(published('larder/composition.csv').rows.map((row) => [row.text('food'), row] as const))(
    'composition of %s',
    (id, row) => {
      const { composition, source } = food(id)
      expect(source).toBe(`usda-sr28 ${row.text('ndb')}`)
      row.agrees('water', composition.water * 100)
      for (const part of ['protein', 'fat', 'ash'] as const)
        if (row.number(part) > 0) row.agrees(part, composition[part] * 100)
      if (row.number('carbohydrate') > 0)
        row.agrees('carbohydrate', (composition.carbohydrate + composition.fibre) * 100)
    },
  )

  it.each(published('larder/salt.csv').rows.map((row) => [row.text('food'), row] as const))('salt of %s', (id, row) =>
    row.agrees('salt_percent', food(id).salt * 100),
  )

  it.each(published('larder/absorbed.csv').rows.map((row) => [row.text('food'), row] as const))(
    'water taken up by %s',
    (id, row) => row.agrees('uptake', food(id).absorbs),
  )

  it.each(published('larder/density.csv').rows.map((row) => [row.text('food'), row] as const))(
    'density of %s',
    (id, row) => row.agrees('density', food(id).density_kg_per_m3),
  )

  it.each(published('larder/collagen.csv').rows.map((row) => [row.text('food'), row] as const))(
    'collagen of %s',
    (id, row) => row.agrees('collagen_percent', (food(id).collagen / (1 - food(id).composition.fat)) * 100),
  )

  it.each(published('larder/allergens.csv').rows.map((row) => [row.text('key'), row] as const))(
    'numbers of %s',
    (key, row) => {
      const allergen = allergens.find((a) => a.key === key)
      if (row.number('us') > 0) row.agrees('us', allergen?.us ?? 0)
      else expect(allergen?.us).toBeNull()
      if (row.number('eu') > 0) row.agrees('eu', allergen?.eu ?? 0)
      else expect(allergen?.eu).toBeNull()
    },
  )

  it.each(
    published('larder/household.csv').rows.map(
      (row) => [`${row.text('unit')} ${row.text('form')} ${row.text('food')}`, row] as const,
    ),
  )('one %s', (_, row) => {
    const mass = householdMass_kg(food(row.text('food')), {
      low: 1,
      high: 1,
      unit: row.text('unit') as UnitCode,
      form: row.text('form') || null,
    })
    row.agrees('grams', mass!.low_kg * 1000)
    row.agrees('grams', mass!.high_kg * 1000)
  })

  it.each(
    published('larder/service-cards.csv').rows.map((row) => [`${row.text('food')} ${row.text('form')}`, row] as const),
  )('service card: %s', (_, row) => {
    const unit = row.text('unit') as UnitCode
    const mass = householdMass_kg(food(row.text('food')), { low: 1, high: 1, unit, form: row.text('form') || null })
    const millilitres = volumeOfUnit_m3(unit, 'us')! * 1e6
    row.agrees('g_per_mL', ((mass!.low_kg + mass!.high_kg) / 2) * (1000 / millilitres))
  })
})
