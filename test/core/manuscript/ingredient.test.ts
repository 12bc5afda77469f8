import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Ingredient } from '../../../src/core/manuscript/index.ts'
import { readIngredients } from '../../../src/core/manuscript/ingredient.ts'
import { layOut } from '../../../src/core/manuscript/layout.ts'

const figure = (x: number): string => String(Math.round(x * 1e4) / 1e4)
const range = (low: number | null, high: number | null): string =>
  low === null || high === null ? '' : low === high ? figure(low) : `${figure(low)}..${figure(high)}`
const wordsOf = (item: string): string =>
  [...new Set(item.split(/[^\p{L}\p{N}%'&-]+/u).filter(Boolean))].sort().join(' ')

/** Reads one line as the list of a small recipe. */
function read(line: string): Ingredient[] {
  const text = `A Dish\n\nIngredients\n- ${line}\n\nMethod\nStir well for 5 minutes.\n`
  return readIngredients(layOut(text), text)
}
const one = (line: string): Ingredient => {
  const [first, ...more] = read(line)
  expect(more, line).toEqual([])
  return first!
}

const table = readFileSync(new URL('ingredient-lines.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('# '))
  .map((line) => line.split('|'))

describe('amount, unit, pack and food of a line', () => {
  it('has lines to read', () => expect(table.length).toBeGreaterThan(200))
  it.each(table)('%s', (line, amount, unit, pack, item) => {
    const got = one(line)
    expect({
      amount: range(got.low, got.high),
      unit: got.unit ?? '',
      pack: got.pack ? `${range(got.pack.low, got.pack.high)} ${got.pack.unit}` : '',
      item: wordsOf(got.item),
    }).toEqual({ amount, unit, pack, item: wordsOf(item) })
  })
})

describe('further measures of the same thing', () => {
  it.each([
    ['1 1/2 cups (10 ounces/280 grams) farro', '10 oz, 280 g'],
    ['2 large yellow onions (about 1 lb.), sliced', '1 lb'],
    ['4 duck legs (about 2 3/4 lb./1.25 kg)', '2.75 lb, 1.25 kg'],
    ['1 smoked ham hock, about 1-1/4 pounds', '1.25 lb'],
    ['500g/1lb 2oz beef shin', '1.125 lb'],
    ['ONIONS,FRESH,CHOPPED 3-1/2 lbs 2 qts 2 cup 3-7/8 lbs', '2.5 quart'],
    ['1 live crab that weighs ~750 grams', '750 g'],
    ['1½ lb of potatoes or around 6 big ones, peeled', '6 null'],
    ['24 oz sausage (2 packs)', '2 packet'],
    ['27 g fine salt (1.5%)', ''],
    ['40 g rock sugar (or 3 tablespoons brown sugar)', ''],
    ['60 g parmesan, grated, plus 1 tablespoon to finish', ''],
  ])('%s', (line, also) => {
    expect(
      one(line)
        .also.map((m) => `${range(m.low, m.high)} ${m.unit}`)
        .join(', '),
    ).toBe(also)
  })
})

describe('what else a line says', () => {
  it.each([
    ['2 garlic cloves (optional, but not traditional)', true, false],
    ['(Optional) 6 artichokes, chopped', true, false],
    ['a tablespoonful of sugar if desired', true, false],
    ['Salt, to taste', false, true],
    ['¼ cup of lemon juice, more to taste', false, true],
    ['2 cups water, or as needed', false, false],
    ['2–3 canned chiles, chopped (go for 3 if you like a kick!)', false, false],
    ['Steamed rice, to serve', false, false],
  ])('%s', (line, optional, toTaste) => {
    const { optional: o, toTaste: t } = one(line)
    expect([o, t]).toEqual([optional, toTaste])
  })

  it.each([
    ['1 cup frozen peas', 'frozen'],
    ['1 cup frozen peas, thawed', null],
    ['300 ml boiling water', 'hot'],
    ['950 ml hot vegetable stock', 'hot'],
    ['1 l cold milk', 'chilled'],
    ['125 g butter, at room temperature', 'room'],
    ['1 tbsp cornflour, mixed with a little cold water', null],
    ['1 tbsp hot sauce', null],
    ['2 onions', null],
  ])('%s starts %s', (line, state) => expect(one(line).state).toBe(state))

  it('keeps the work apart from the food', () => {
    expect(one('1 1/2 cups thinly sliced yellow onion')).toMatchObject({ item: 'yellow onion', prep: 'thinly sliced' })
    expect(one('8 bone-in chicken thighs (about 3 pounds), excess skin trimmed').prep).toBe('excess skin trimmed')
    expect(one('2 Tbsp. coconut oil, divided')).toMatchObject({ divided: true, prep: 'divided' })
    expect(one('1 lb sausage (chopped rookworst, smoked sausage)').prep).toBe('chopped')
  })

  it('names a measure without a code by its word', () => {
    expect(one('1 glass of port wine')).toMatchObject({ low: 1, unit: null, unitWord: 'glass', item: 'port wine' })
    expect(one('2 33cl bottles of brown beer')).toMatchObject({
      low: 2,
      unitWord: 'bottle',
      pack: { low: 330, unit: 'ml' },
    })
    expect(one('2 onions').unitWord).toBeUndefined()
  })
})

describe('several foods in a line', () => {
  it.each([
    ['8 cups chicken broth + 2 cups water', ['8 cup chicken broth', '2 cup water']],
    ['1 large onion, 1 carrot and 2 celery stalks, all finely chopped', ['1 onion', '1 carrot', '2 stalk celery']],
    ['1 lb carrots, sliced, plus two medium carrots diced fine', ['1 lb carrots', '2 carrots']],
    ['salt and pepper', ['salt and pepper']],
    ['1 lemon, half thinly sliced and half juiced', ['1 lemon']],
    ['2 chicken breasts, 8 ounces each', ['2 chicken breasts']],
    ['1 cup plus 2 tablespoons milk', ['1.125 cup milk']],
    ['3 tbsp olive oil, plus 1 tbsp for the pan', ['3 tbsp olive oil']],
  ])('%s', (line, foods) => {
    const got = read(line).map((i) => [range(i.low, i.high), i.unit, i.item].filter(Boolean).join(' '))
    expect(got).toEqual(foods)
  })
})

describe('places', () => {
  it('lie on the words they are about', () => {
    const text =
      '\ufeffPea Soup 🥣\r\n\r\n🧅 2 large onions, sliced\r\n• 1½ cups (300 g) split peas\r\n\r\nSimmer for 1 hour.\r\n'
    const got = readIngredients(layOut(text), text)
    expect(got.map((i) => i.line)).toEqual(['2 large onions, sliced', '1½ cups (300 g) split peas'])
    for (const i of got) expect(text.slice(i.from, i.to)).toBe(i.line)
    expect(got.map((i) => text.slice(i.amountSpan!.from, i.amountSpan!.to))).toEqual(['2 large', '1½ cups (300 g)'])
    expect(got.map((i) => text.slice(i.itemSpan!.from, i.itemSpan!.to))).toEqual(['onions', 'split peas'])
  })
})
