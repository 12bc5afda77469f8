import { describe, expect, it } from 'vitest'
import type { Ingredient } from '../../../src/core/manuscript/index.ts'
import { readIngredients } from '../../../src/core/manuscript/ingredient.ts'
import { layOut } from '../../../src/core/manuscript/layout.ts'

function read(line: string, head = ''): Ingredient {
  const text = `A Dish\n${head}\n\nIngredients\n- ${line}\n\nMethod\nStir well for 5 minutes.\n`
  return readIngredients(layOut(text), text)[0]!
}
const grams = (line: string, head = ''): [number, number] | null => {
  const { mass_kg } = read(line, head)
  return mass_kg && [Math.round(mass_kg.low * 1e4) / 10, Math.round(mass_kg.high * 1e4) / 10]
}

describe('mass of an ingredient', () => {
  it('is the weight as written before anything else', () => {
    expect(grams('800g pork cheeks, trimmed')).toEqual([800, 800])
    expect(grams('1 1/2 cups (300 g) red lentils, rinsed')).toEqual([300, 300])
    expect(grams('2 to 3 lb beef brisket')).toEqual([907.2, 1360.8])
    expect(grams('2 cups/250 g plain flour')).toEqual([250, 250])
    expect(read('800g pork cheeks').massFrom).toBe('as written')
  })

  it('leaves out what is peeled away and thrown out', () => {
    const onion = read('400 g onion, diced')
    expect(onion.mass_kg!.high).toBeCloseTo(0.4, 9)
    expect(onion.mass_kg!.low).toBeLessThan(0.4)
    expect(onion.massFrom).toMatch(/edible/)
    expect(grams('400 g carrots (peeled weight)')).toEqual([400, 400])
  })

  it('multiplies packs, and drains a can', () => {
    expect(grams('2 x 400g tins chopped tomatoes')).toEqual([800, 800])
    // A 400 g can of beans declares about 240 g drained.
    const [low, high] = grams('1 x 400g tin butter beans, drained and rinsed')!
    expect(low).toBeLessThan(240)
    expect(high).toBeGreaterThan(240)
    expect(high).toBeLessThan(280)
    expect(grams('1 x 400g tin butter beans')).toEqual([400, 400])
    expect(grams('1 (20-oz) can pineapple chunks in juice, not drained')).toEqual([567, 567])
  })

  it('weighs cups, spoons and counts by the larder, and says so', () => {
    const sliced = read('1 1/2 cups thinly sliced yellow onion')
    // USDA SR28 11282: 1 cup sliced = 115 g.
    expect(sliced.mass_kg!.low).toBeCloseTo(0.1725, 4)
    expect(sliced.massFrom).toMatch(/household weight.*USDA SR28 11282/)
    const small = read('1 small onion')
    const large = read('1 large onion')
    expect(large.mass_kg!.low).toBeGreaterThan(small.mass_kg!.high * 0.9)
    expect(grams('2 eggs')![0]).toBeGreaterThan(80)
  })

  it('fills the cups and spoons of the country', () => {
    const us = grams('2 cups water')!
    const metric = grams('2 cups water', 'This recipe uses a 250 ml cup.')!
    expect(metric[0] / us[0]).toBeCloseTo(250 / 236.588, 2)
    const spoon = grams('3 tablespoons water', 'This recipe uses a 20 ml Australian tablespoon.')!
    expect(spoon[0] / grams('3 tablespoons water')![0]).toBeCloseTo(20 / 14.7868, 2)
  })

  it('takes juice and rind by the fruit', () => {
    expect(read('juice of 2 lemons')).toMatchObject({ item: 'lemon juice', mass_kg: { low: 0.06, high: 0.12 } })
    expect(read('zest of 1 orange').mass_kg!.high).toBeLessThan(0.01)
  })

  it('gives a usual size to a glass, and says that it has no source', () => {
    const wine = read('1 glass of red wine')
    expect(wine.mass_kg!.low).toBeGreaterThan(0.11)
    expect(wine.mass_kg!.high).toBeLessThan(0.22)
    expect(wine.massFrom).toMatch(/no source/)
  })

  it('is not known where the words do not settle it', () => {
    expect(read('Salt and pepper')).toMatchObject({ mass_kg: null, massFrom: 'no amount is written' })
    expect(read('2 gromwicks')).toMatchObject({ mass_kg: null, larder: null, massFrom: 'the larder does not know it' })
  })
})

describe('larder', () => {
  it.each([
    ['1 can black beans', 'black-bean-tinned'],
    ['2 carrots', 'carrot'],
    ['1 tbsp extra-virgin olive oil', 'olive-oil'],
    ['1 chicken carcass', null],
  ])('%s', (line, id) => {
    const { larder } = read(line)
    if (id === null) expect(larder).not.toBe('chicken-whole')
    else expect(larder).toBe(id)
  })
})
