import { describe, expect, it } from 'vitest'
import { readRecipe } from '../../../src/core/manuscript/index.ts'
import { operationsOf, readMethod, usesOf } from './reading.ts'

/** What every operation of a method touches, in order. */
const touched = (method: string, list?: readonly string[]): string[] => {
  const recipe = readMethod(method, list)
  return operationsOf(recipe).map((operation) => `${operation.verb}: ${usesOf(recipe, operation)}`)
}
const first = (method: string, list?: readonly string[]): string => touched(method, list)[0]!

describe('portions', () => {
  it.each([
    ['Add the oil.', 'add: olive oil 1'],
    ['Add half the oil.', 'add: olive oil 0.5'],
    ['Add half of the beef.', 'add: beef chuck 0.5'],
    ['Add a third of the beans.', 'add: dried white beans 0.333'],
    ['Add two-thirds of the stock.', 'add: beef stock 0.667'],
    ['Heat 1 tablespoon of the oil.', 'heat: olive oil 0.5'],
    ['Heat a tablespoon of the oil.', 'heat: olive oil 0.5'],
    ['Heat 1 Tbsp oil.', 'heat: olive oil 0.5'],
    ['Season with 1 1/2 teaspoons of the salt.', 'season: salt 0.75'],
    ['Add 100 ml of the wine.', 'add: red wine 0.5'],
    ['Add 20 cl of the wine.', 'add: red wine 1'],
    ['Add 450 g of the beef.', 'add: beef chuck 0.5'],
    ['Add one of the onions.', 'add: onions 0.5'],
    ['Add a little of the oil.', 'add: olive oil ?'],
    ['Add a pinch of salt.', 'add: salt ?'],
    ['Add a splash of the wine.', 'add: red wine ?'],
    ['Add both the onions.', 'add: onions 1'],
  ])('%s', (method, wanted) => {
    expect(first(method)).toBe(wanted)
  })

  it('the remaining part is what has not been used', () => {
    expect(touched('Heat 1 tablespoon of the oil. Add the onions and the remaining oil.')).toEqual([
      'heat: olive oil 0.5',
      'add: onions 1, olive oil 0.5',
    ])
    expect(touched('Add a quarter of the stock. Add the rest of the stock.')).toEqual([
      'add: beef stock 0.25',
      'add: beef stock 0.75',
    ])
    expect(touched('Season with 1 teaspoon of the salt. Stir in the remaining 1 teaspoon salt.')).toEqual([
      'season: salt 0.5',
      'add: salt 0.5',
    ])
    expect(touched('Brown half of the beef. Brown the other half of the beef.')).toEqual([
      'brown: beef chuck 0.5',
      'brown: beef chuck 0.5',
    ])
  })

  it('"the remaining oil and pork" is the rest of both', () => {
    const wanted = [
      'heat: olive oil 0.5',
      'brown: beef chuck 0.5',
      'lift: beef chuck 0.5',
      'brown: olive oil 0.5, beef chuck 0.5',
      'lift: beef chuck 0.5',
    ]
    expect(
      touched(
        'Heat 1 tablespoon of the oil. Brown half of the beef and transfer to a plate. Repeat with the remaining oil and beef.',
      ),
    ).toEqual(wanted)
  })

  it('an amount of another kind is compared by the second measure, or not at all', () => {
    const list = ['1 litre (4 cups) stock', '2 cups rice', '500 g beans']
    expect(first('Add 2 cups of the stock.', list)).toBe('add: stock 0.5')
    expect(first('Add 1 sprig of the stock.', list)).toBe('add: stock ?')
  })

  it('"half sliced and half juiced" goes in by halves', () => {
    const list = ['8 chicken thighs', '1 lemon, half thinly sliced and half juiced']
    expect(
      touched('Add the chicken and the lemon slices. Simmer for 10 minutes. Stir in the lemon juice.', list),
    ).toEqual(['add: chicken thighs 1, lemon 0.5', 'simmer: ', 'add: lemon 0.5'])
  })
})

describe('names', () => {
  it.each([
    ['Add the beef.', 'beef chuck 1'],
    ['Add the meat.', 'beef chuck 1'],
    ['Add the beans.', 'dried white beans 1'],
    ['Add the broth.', 'beef stock 1'],
    ['Add the wine.', 'red wine 1'],
    ['Add the bay.', 'bay leaves 1'],
    ['Add the cumin.', 'ground cumin 1'],
    ['Add the paste.', 'tomato paste 1'],
    ['Add the drained beans.', 'dried white beans 1'],
    ['Add onion, carrots & garlic.', 'onions 1, carrots 1, garlic 1'],
    [
      'Add everything except the lemon juice and parsley.',
      'beef chuck 1, salt 1, olive oil 1, onions 1, carrots 1, garlic 1, ground cumin 1, tomato paste 1, red wine 1, beef stock 1, dried white beans 1, bay leaves 1',
    ],
    ['Add the vegetables.', 'onions 1, carrots 1, garlic 1'],
    ['Add the herbs.', 'bay leaves 1, parsley 1'],
  ])('%s', (method, wanted) => {
    expect(first(method)).toBe(`add: ${wanted}`)
  })

  it.each([
    [['8 chicken thighs', '500 ml chicken stock'], 'Add the chicken.', 'chicken thighs 1'],
    [['500 ml chicken stock', '8 chicken thighs'], 'Add the stock.', 'chicken stock 1'],
    [['1 onion', '3 spring onions'], 'Add the onion.', 'onion 1'],
    [['3 spring onions', '1 onion'], 'Add the scallions.', 'spring onions 1'],
    [['1 tsp black pepper', '1 green bell pepper'], 'Add the bell pepper.', 'green bell pepper 1'],
    [['1 green bell pepper', '1 tsp black pepper'], 'Add the pepper.', 'black pepper 1'],
    [['700 g passata'], 'Add the tomatoes.', 'passata 1'],
    [['2 tbsp coconut oil', '400 ml coconut milk'], 'Add the coconut milk.', 'coconut milk 1'],
    [['500 g red potatoes', '2 tbsp instant potato flakes'], 'Add the potatoes.', 'red potatoes 1'],
    [
      ['3 tbsp light soy sauce', '1 tbsp dark soy sauce'],
      'Add both soy sauces.',
      'light soy sauce 1, dark soy sauce 1',
    ],
    [['1 bunch cilantro'], 'Add the coriander.', 'cilantro 1'],
    [['1 kg chuck roast'], 'Add the beef.', 'chuck roast 1'],
    [['750 ml Burgundy'], 'Add the wine.', 'burgundy 1'],
    [['2 cups water, for soaking', '3 cups water, for cooking'], 'Add the cooking water.', 'water 1'],
  ])('%s: %s', (list, method, wanted) => {
    const recipe = readMethod(method, list)
    expect(usesOf(recipe, operationsOf(recipe)[0]!)).toBe(wanted)
  })

  it('of two lines with one name the one of the same part of the list is meant', () => {
    const text =
      'Two pots\n\nServes 4\n\nMEAT\n1 kg lamb\n27 g salt\n\nGRAIN\n600 g freekeh\n6 g salt\n\nMethod\n\nSeason the lamb with the salt. Simmer for 1 hour. Add the freekeh and salt.'
    expect(touchedText(text)).toEqual(['season: lamb 1, salt 1 (27)', 'simmer: ', 'add: freekeh 1, salt 1 (6)'])
  })
})

describe('what is carried over', () => {
  it.each([
    ['Brown the beef and lift it onto a plate.', ['brown: beef chuck 1', 'lift: beef chuck 1']],
    ['Brown the beef in the oil. Transfer to a plate.', ['brown: beef chuck 1, olive oil 1', 'lift: beef chuck 1']],
    [
      'Drain the beans. Put in the pot and add the stock.',
      ['drain: dried white beans 1', 'add: dried white beans 1', 'add: beef stock 1'],
    ],
    ['Add the garlic. Cook for 30 seconds.', ['add: garlic 1', 'fry: garlic 1']],
    ['Pat the beef dry and toss with 1 teaspoon of the salt.', ['mix: salt 0.5, beef chuck 1']],
    [
      'Lift out the beef. Shred it and return it to the pot.',
      ['lift: beef chuck 1', 'cut: beef chuck 1', 'add: beef chuck 1 again'],
    ],
    ['Salt the beef.', ['season: beef chuck 1, salt 1']],
  ] as [string, string[]][])('%s', (method, wanted) => {
    expect(touched(method)).toEqual(wanted)
  })

  it('what comes back into the pot comes again, and nothing is spent twice', () => {
    expect(
      touched(
        'Brown the beef in the oil, then lift it out. Add the onions. Return the beef and its juices to the pot.',
      ),
    ).toEqual(['brown: beef chuck 1, olive oil 1', 'lift: beef chuck 1', 'add: onions 1', 'add: beef chuck 1 again'])
  })

  it('a part of what was made is none of the listed things', () => {
    const method =
      'Add the beans and the stock. Ladle a third of the soup into a bowl, mash it smooth and stir it back in.'
    expect(touched(method)).toEqual(['add: dried white beans 1, beef stock 1', 'add: ', 'mash: ', 'add: '])
  })

  it('a vessel that is lifted out is no food', () => {
    expect(touched('Add the stock. Lift out the basin.')).toEqual(['add: beef stock 1', 'lift: '])
  })

  it('what is told is not touched', () => {
    expect(touched('Add the onions and cook until the onions are soft.')).toEqual(['add: onions 1', 'sweat: onions 1'])
    expect(touched('When the beef is tender, add the carrots.')).toEqual(['add: carrots 1'])
  })

  it('a marinade brings what was mixed into it', () => {
    const list = ['1 kg goat shoulder, in 4 cm pieces', '150 g yogurt', '1 tsp turmeric', '250 ml water']
    expect(
      touched(
        'Mix the goat with the yogurt and turmeric and chill overnight. Add the goat with its marinade and the water.',
        list,
      ),
    ).toEqual(['mix: goat shoulder 1, yogurt 1, turmeric 1', 'chill: goat shoulder 1', 'add: goat shoulder 1, water 1'])
  })

  it('water that food is blanched in is poured away', () => {
    const list = ['1 kg beef bones', '3 L cold water']
    expect(
      touched('Cover the bones with cold water and boil 5 min. Drain. Add the bones and the water.', list),
    ).toEqual(['add: beef bones 1, water ?', 'boil: ', 'drain: beef bones 1', 'add: beef bones 1 again, water 1'])
  })
})

function touchedText(text: string): string[] {
  const recipe = readRecipe(text)
  return operationsOf(recipe).map((operation) => {
    const said = operation.uses.map((use) => {
      const { item, low } = recipe.ingredients[use.ingredient]!
      return `${item} ${use.share}${item === 'salt' ? ` (${low})` : ''}`
    })
    return `${operation.verb}: ${said.join(', ')}`
  })
}
