import { describe, expect, it } from 'vitest'
import { allergens, type Character, foodById, foods, nutrientsOf } from '../../../src/core/larder/index.ts'
import { unitCodes } from '../../../src/core/units/index.ts'

const characters: readonly Character[] = [
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'sausage',
  'fish',
  'egg',
  'firm vegetable',
  'soft vegetable',
  'leafy vegetable',
  'aromatic',
  'mushroom',
  'fruit',
  'starch',
  'grain',
  'pasta',
  'pulse',
  'cooked pulse',
  'thin liquid',
  'thick liquid',
  'paste',
  'dairy',
  'fat',
  'acid',
  'alcohol',
  'spice',
  'herb',
  'salt',
  'sweetener',
  'thickener',
  'leavening',
  'nut',
  'seasoning',
  'other',
]

/** Foods that fail, named, so that a fault is found at once. */
const failing = (fails: (food: (typeof foods)[number]) => boolean) => foods.filter(fails).map((food) => food.id)

describe('the larder', () => {
  it('knows at least 250 foods, each by one id', () => {
    expect(foods.length).toBeGreaterThanOrEqual(250)
    expect(new Set(foods.map((food) => food.id)).size).toBe(foods.length)
    expect(failing((food) => !/^[a-z]+(-[a-z]+)*$/.test(food.id))).toEqual([])
    expect(failing((food) => foodById(food.id) !== food)).toEqual([])
    expect(foodById('no-such-food')).toBeNull()
  })

  it('has foods of every kitchen character', () => {
    expect(characters.filter((character) => !foods.some((food) => food.character === character))).toEqual([])
  })

  it('accounts for all of every food: composition sums to 1', () => {
    const sum = (food: (typeof foods)[number]) => Object.values(food.composition).reduce((a, b) => a + b, 0)
    expect(failing((food) => !(Math.abs(sum(food) - 1) <= 0.0005))).toEqual([])
    expect(failing((food) => Object.values(food.composition).some((share) => !(share >= 0 && share <= 1)))).toEqual([])
  })

  it('keeps the parts within their whole', () => {
    const slack = 0.02
    expect(failing((f) => !(f.starch >= 0 && f.starch <= f.composition.carbohydrate + slack))).toEqual([])
    expect(failing((f) => !(f.sugars >= 0 && f.sugars <= f.composition.carbohydrate + slack))).toEqual([])
    expect(failing((f) => !(f.collagen >= 0 && f.collagen <= f.composition.protein + slack))).toEqual([])
    expect(failing((f) => !(f.suspended >= 0 && f.suspended <= 1 - f.composition.water))).toEqual([])
    expect(failing((f) => !((f.acid ?? 0) >= 0 && (f.acid ?? 0) <= f.composition.carbohydrate + slack))).toEqual([])
    // A cure that is stated where the record is for fresh meat is more salt than the record has ash.
    expect(failing((f) => !(f.salt >= 0 && f.salt <= f.composition.ash + slack) && !f.basis?.salt)).toEqual([])
  })

  it('says where every figure comes from', () => {
    expect(failing((f) => !/^usda-(sr28 \d{5}|foundation-2024-10 \d+)$/.test(f.source))).toEqual([])
    expect(failing((f) => f.collagen > 0 && !f.basis?.collagen)).toEqual([])
    expect(failing((f) => f.suspended > 0 && !f.basis?.suspended)).toEqual([])
    expect(failing((f) => f.absorbs > 0 && !f.basis?.absorbs)).toEqual([])
    expect(failing((f) => (f.acid ?? 0) > 0 && !f.basis?.acid)).toEqual([])
    expect(failing((f) => f.measures.some((m) => m.source.trim() === ''))).toEqual([])
  })

  it('weighs only in units a manuscript can have, low before high', () => {
    const known = new Set<string>([...unitCodes, 'each'])
    expect(failing((f) => f.measures.some((m) => !known.has(m.unit)))).toEqual([])
    expect(failing((f) => f.measures.some((m) => !(m.low_kg > 0 && m.high_kg >= m.low_kg)))).toEqual([])
  })

  it('gives densities, edible shares and pieces of kitchen size', () => {
    expect(failing((f) => !(f.density_kg_per_m3 >= 780 && f.density_kg_per_m3 <= 2450))).toEqual([])
    expect(failing((f) => !(f.edible > 0 && f.edible <= 1))).toEqual([])
    const size = (f: (typeof foods)[number]) => f.usualPiece?.size_m ?? 0.01
    expect(failing((f) => !(size(f) >= 0.0005 && size(f) <= 0.15))).toEqual([])
    expect(failing((f) => !(f.absorbs >= 0 && f.absorbs <= 5))).toEqual([])
    expect(
      failing((f) => ['pulse', 'grain', 'pasta'].includes(f.character) && !f.absorbs && !f.tags?.includes('cooked')),
    ).toEqual([])
  })

  it('gives every cut of meat that braises the collagen and the rate to do it', () => {
    expect(failing((f) => f.character === 'collagen cut' && !(f.collagen >= 0.01))).toEqual([])
    expect(failing((f) => f.character === 'collagen cut' && f.kinetics === null)).toEqual([])
    expect(failing((f) => f.tags?.includes('vegetable') === true && f.collagen > 0)).toEqual([])
  })

  it('calls no thin liquid thick: stocks and broths hold nothing suspended', () => {
    const stocks = foods.filter((f) => f.tags?.includes('stock'))
    expect(stocks.length).toBeGreaterThanOrEqual(5)
    expect(stocks.filter((f) => f.character !== 'thin liquid' || f.suspended > 0)).toEqual([])
  })

  it('names only known allergens, and never one as certain and to be checked', () => {
    const keys = new Set(allergens.map((a) => a.key))
    expect(failing((f) => [...f.allergens, ...f.checkLabel].some((key) => !keys.has(key)))).toEqual([])
    expect(failing((f) => f.allergens.some((key) => f.checkLabel.includes(key)))).toEqual([])
  })

  it.each([
    ['soy-sauce', ['wheat', 'soy']],
    ['worcestershire-sauce', ['fish']],
    ['fish-sauce', ['fish']],
    ['celery', ['celery']],
    ['celeriac', ['celery']],
    ['celery-salt', ['celery']],
    ['mustard', ['mustard']],
    ['mustard-seed', ['mustard']],
    ['tahini', ['sesame']],
    ['pearl-barley', ['barley']],
    ['couscous', ['wheat']],
    ['beer', ['barley']],
    ['red-wine', ['sulphite']],
    ['shrimp', ['crustacean']],
    ['mussel', ['mollusc']],
    ['oyster-sauce', ['mollusc']],
    ['butter', ['milk']],
    ['egg-noodles', ['wheat', 'egg']],
    ['peanut-butter', ['peanut']],
    ['ground-almonds', ['almond']],
    ['cashew-butter', ['cashew']],
    ['edamame', ['soy']],
  ])('%s contains %j', (id, expected) => {
    expect(foodById(id)?.allergens).toEqual(expect.arrayContaining(expected))
  })

  it('sends the reader to the label of compounds', () => {
    expect(foodById('stock-cube')?.checkLabel).toEqual(expect.arrayContaining(['celery', 'wheat', 'soy', 'milk']))
    expect(foodById('curry-paste')?.checkLabel).toEqual(expect.arrayContaining(['crustacean', 'fish']))
    expect(foodById('dried-apricots')?.checkLabel).toContain('sulphite')
    expect(foodById('sausage')?.checkLabel).toContain('wheat')
  })

  it('marks beans that are poisonous half cooked, and only dried ones', () => {
    const toxic = foods.filter((f) => f.tags?.includes('bean-toxin'))
    expect(toxic.map((f) => f.id)).toEqual(expect.arrayContaining(['kidney-bean', 'cannellini-bean', 'white-bean']))
    expect(toxic.filter((f) => f.character !== 'pulse')).toEqual([])
    expect(foodById('kidney-bean-tinned')?.tags).not.toContain('bean-toxin')
  })

  it('counts leavening as sodium, not as salt', () => {
    const soda = foodById('baking-soda')!
    expect(soda.salt).toBe(0)
    expect(nutrientsOf(soda)?.sodium).toBeCloseTo(0.2736, 4)
  })

  it('knows the nutrients of a label for every food, or says null', () => {
    const known = foods.map((food) => nutrientsOf(food))
    expect(known.filter((n) => n === null)).toEqual([])
    const figures = known.flatMap((n) => Object.values(n!).filter((x) => x !== null))
    expect(figures.every((x) => Number.isFinite(x) && x >= 0)).toBe(true)
    expect(failing((f) => (nutrientsOf(f)?.saturated ?? 0) > f.composition.fat + 0.02)).toEqual([])
    // Some records have no figure for vitamin D; an unknown must not read as none.
    expect(known.some((n) => n!.vitaminD === null)).toBe(true)
  })
})
