import { describe, expect, it } from 'vitest'
import { applyCure, type Finding } from '../../../src/core/findings/index.ts'
import { readRecipe, statedTimes_s } from '../../../src/core/manuscript/index.ts'
import { manuscript } from './reading.ts'

const list = ['1 kg beef chuck, cut into 3-cm pieces', '2 tbsp oil, divided', '1 tsp salt', '500 ml beef stock']
const good =
  'Season the beef with the salt. Heat 1 tablespoon of the oil and brown the beef, 6 minutes. Add the remaining oil and the stock and scrape up the browned bits. ' +
  'Lock the lid and cook at high pressure for 30 minutes. Let the pressure release naturally for 10 minutes, then vent the rest. Simmer for 5 minutes and serve.'

const queriesOf = (text: string): readonly Finding[] => readRecipe(text).queries
const codes = (text: string): string[] => queriesOf(text).map((query) => `${query.severity} ${query.code}`)
const words = (text: string, code: string): string | undefined => {
  const span = queriesOf(text).find((query) => query.code === code)?.span
  return span ? text.slice(span.from, span.to) : undefined
}
const withMethod = (method: string): string => manuscript(method, list)
const withList = (...lines: string[]): string => manuscript(good, lines)

it('a good manuscript leaves nothing to ask', () => {
  expect(codes(withMethod(good))).toEqual([])
})

describe('texts that are no recipe', () => {
  it.each([
    ['', 'empty', 'empty-text'],
    [' \n\t \n', 'empty', 'empty-text'],
    ['\u0000\u0001\u0002PNG\u0003\u0004\ufffd\ufffd\ufffd\u0005\u0006', 'not-text', 'not-text'],
    ['Shopping\n\n2 kg beef\n1 bag flour\n6 eggs\n500 g butter\n2 litres milk\n', 'list', 'no-method'],
    [
      "Shall I compare thee to a summer's day?\nThou art more lovely and more temperate:\nRough winds do shake the darling buds of May,\nAnd summer's lease hath all too short a date.",
      'prose',
      'not-a-recipe',
    ],
    [
      'Rindergulasch\n\nZutaten\n\n1 kg Rindfleisch\n500 g Zwiebeln\n2 EL Öl\n500 ml Brühe\n\nZubereitung\n\nDas Fleisch in Würfel schneiden und in dem Öl anbraten. Die Zwiebeln dazugeben und mit der Brühe ablöschen. Den Deckel auflegen und das Gulasch für zwei Stunden bei kleiner Hitze schmoren lassen. Dann mit Salz und Pfeffer abschmecken und mit Nudeln auf den Tisch geben.',
      'prose',
      'other-language',
    ],
  ])('%j', (text, kind, code) => {
    const recipe = readRecipe(text)
    expect(recipe.kind).toBe(kind)
    expect(recipe.queries.map((query) => query.code)).toContain(code)
    expect(recipe.queries.find((query) => query.code === code)).toMatchObject({ severity: 'blocking' })
  })

  it('tags are passed over and said to be', () => {
    const html = `<html><body><h1>Stew</h1><ul>${list.map((line) => `<li>${line}</li>`).join('')}</ul><p>${good}</p></body></html>`
    const recipe = readRecipe(html)
    expect(recipe.kind).toBe('recipe')
    expect(recipe.steps.flatMap((step) => step.operations).some((operation) => operation.verb === 'hold')).toBe(true)
    expect(codes(html)).toContain('hint markup-passed-over')
  })

  it('what is too long is read in part, and said to be', () => {
    const text = `${withMethod(good)}\n${'Simmer on and on. '.repeat(8000)}`
    expect(codes(text)[0]).toBe('warning text-too-long')
    expect(readRecipe(text).text).toBe(text)
  })
})

describe('amounts', () => {
  it.each([
    ['beef stock', 'warning amount-missing', 'beef stock'],
    ['2 flour', 'warning unit-missing', '2'],
    ['1 lb (900 g) potatoes', 'warning measure-pair-mismatch', '1 lb (900 g) potatoes'],
    ['1 cup (720 ml) water', 'warning measure-pair-mismatch', '1 cup (720 ml) water'],
    ['100 g (3 cups) flour', 'hint measure-pair-mismatch', '100 g (3 cups) flour'],
    ['2 lb plain flour', 'warning unlikely-amount', '2 lb'],
    ['5 tbsp salt', 'warning unlikely-amount', '5 tbsp'],
  ])('%s', (line, wanted, at) => {
    const text = manuscript(`${good} Add the ${line.split(' ').at(-1)}.`, [
      ...list.filter((one) => !/salt/.test(one) || !/salt/.test(line)),
      line,
    ])
    expect(codes(text)).toContain(wanted)
    expect(words(text, wanted.split(' ')[1]!)).toBe(at)
  })

  it.each([
    '1 lb (450 g) potatoes',
    '1 litre (4 cups) water',
    '1 1/2 cups (10 ounces/280 grams) farro',
    '2 tbsp plain flour',
    'Salt and pepper',
    'Rice, to serve',
    'Butter, for greasing',
    '2 onions',
  ])('%s is well', (line) => {
    const text = manuscript(`${good} Serve with the ${line}.`, [...list, line])
    expect(codes(text).filter((code) => /amount|unit|pair/.test(code))).toEqual([])
  })

  it('baking soda by the spoonful', () => {
    const text = manuscript('Soak the chickpeas in the water with the baking soda for 8 hours. Drain.', [
      '500 g dried chickpeas',
      '2 L water',
      '3 tbsp baking soda',
    ])
    expect(codes(text)).toEqual(['warning unlikely-amount'])
    expect(codes(text.replace('3 tbsp', '1 tsp'))).toEqual([])
  })

  it('a cut without a size, where the minutes hang on it', () => {
    const text = manuscript(good, ['1 kg beef chuck, cut into chunks', ...list.slice(1)])
    expect(codes(text)).toEqual(['hint cut-size-missing'])
    expect(codes(text.replace('chunks', '4-cm chunks'))).toEqual([])
    expect(
      codes(text.replace('1 kg beef chuck, cut into chunks', '4 lamb shanks').replace(/beef(?! stock)/g, 'lamb')),
    ).toEqual([])
  })
})

describe('list and method', () => {
  it('listed, never used', () => {
    const text = withList(...list, '1 tsp paprika')
    expect(codes(text)).toEqual(['warning listed-unused'])
    expect(words(text, 'listed-unused')).toBe('paprika')
    const cure = queriesOf(text)[0]!.cure!
    expect(codes(applyCure(text, cure))).toEqual([])
  })

  it('optional and serving lines are only hinted at', () => {
    expect(codes(withList(...list, '1 tsp paprika (optional)'))).toEqual(['hint listed-unused'])
    expect(codes(withList(...list, 'Mashed potato, to serve'))).toEqual(['hint listed-unused'])
  })

  it('used, never listed', () => {
    const text = withMethod(good.replace('and the stock', 'the stock and the celery'))
    expect(codes(text)).toEqual(['warning used-unlisted'])
    expect(words(text, 'used-unlisted')).toBe('celery')
    expect(codes(withMethod(good.replace('and the stock', 'the stock and 2 tablespoons flour')))).toEqual([
      'hint used-unlisted',
    ])
  })

  it('what is made on the way, and the things of the kitchen, need no line', () => {
    for (const more of [
      'Skim the fat and pour the sauce over the meat.',
      'Lift the meat onto a warm dish and boil the juices for 2 minutes.',
      'Cover with foil.',
      'Serve with crusty bread.',
    ]) {
      expect(codes(withMethod(`${good} ${more}`)), more).toEqual([])
    }
  })

  it('portions that do not add up', () => {
    const short = withMethod(good.replace('the remaining oil and ', ''))
    expect(codes(short)).toEqual(['warning divided-mismatch'])
    expect(words(short, 'divided-mismatch')).toBe('2 tbsp')
    const wrong = withMethod(good.replace('the remaining oil', 'the remaining 2 tablespoons oil'))
    expect(codes(wrong)).toEqual(['warning divided-mismatch'])
    expect(codes(applyCure(wrong, queriesOf(wrong)[0]!.cure!))).toEqual([])
    const over = withMethod(good.replace('the remaining oil', '2 tablespoons of the oil'))
    expect(codes(over)).toEqual(['warning divided-mismatch'])
  })

  it('"it" after two things', () => {
    const text = withMethod(
      good.replace(
        'Add the remaining oil',
        'Brown the beef and the stock, then add it to the pot. Add the remaining oil',
      ),
    )
    expect(codes(text)).toEqual(['warning ambiguous-reference'])
    expect(codes(applyCure(text, queriesOf(text)[0]!.cure!))).toEqual([])
  })

  it('"cover it" after two vessels', () => {
    const text = withMethod(
      `${good} Put the trivet in the cooker and lower in the basin. Cover it and steam for 15 minutes.`,
    )
    expect(words(text, 'ambiguous-reference')).toBe('Cover it')
  })
})

describe('method', () => {
  it('no release', () => {
    const text = withMethod(good.replace(' Let the pressure release naturally for 10 minutes, then vent the rest.', ''))
    expect(codes(text)).toEqual(['warning no-release'])
    expect(words(text, 'no-release')).toBe('cook at high pressure for 30 minutes')
  })

  it('no level', () => {
    const text = withMethod(good.replace('cook at high pressure', 'cook under pressure'))
    expect(codes(text)).toEqual(['warning no-pressure-level'])
    const cured = applyCure(text, queriesOf(text)[0]!.cure!)
    expect(cured).toContain('cook at high pressure under pressure')
    expect(codes(cured)).toEqual([])
  })

  it('a level said once holds for the second time', () => {
    expect(
      codes(
        withMethod(
          good.replace(
            ' Simmer for 5',
            ' Lock the lid, come back to pressure and cook for 3 minutes. Vent the steam. Simmer for 5',
          ),
        ),
      ),
    ).toEqual([])
  })

  it.each([
    ['Lock the lid and cook at high pressure. Vent the steam.', 'warning no-time'],
    ['Simmer.', 'hint no-time-no-cue'],
    ['Cook until done.', 'warning vague-cue'],
    ['Simmer until thick.', 'warning reduce-no-target'],
    ['Simmer until the sauce is thickened.', 'warning reduce-no-target'],
    ['Reduce the sauce.', 'warning reduce-no-target'],
    ['Heat the oven to 300°F (180°C).', 'warning temperature-pair-mismatch'],
  ])('%s', (more, wanted) => {
    expect(codes(withMethod(`${good} ${more}`))).toEqual([wanted])
  })

  it.each([
    'Simmer for 10 minutes.',
    'Simmer until the carrots are tender.',
    'Bring to a boil.',
    'Boil the sauce until it coats a spoon.',
    'Simmer until reduced by half.',
    'Reduce the sauce to 300 ml.',
    'Heat the oven to 300°F (150°C).',
    'Heat the oven to 180C/160C fan/gas mark 4.',
    'Boil the pasta according to the packet.',
  ])('%s is well', (more) => {
    expect(codes(withMethod(`${good} ${more}`)).filter((code) => !/unlisted/.test(code))).toEqual([])
  })

  it('a pair of temperatures is mended by the first', () => {
    const text = withMethod(`${good} Heat the oven to 300°F (180°C).`)
    const { cure } = queriesOf(text)[0]!
    expect(cure!.label).toBe('Keep 300 °F, write 150 °C')
    expect(applyCure(text, cure!)).toContain('300°F (150°C)')
  })
})

describe('the promised time', () => {
  const promised = (words: string): string => withMethod(good).replace('Serves 6', `Serves 6\n${words}`)
  it('shorter than the sum of the stated times', () => {
    expect(codes(promised('Ready in 40 minutes'))).toEqual(['warning headline-time-short'])
    expect(words(promised('Ready in 40 minutes'), 'headline-time-short')).toBe('Ready in 40 minutes')
    expect(codes(promised('Ready in 1 hour 15 minutes'))).toEqual([])
  })
  it('counts every batch, each side, and no other way', () => {
    const sum = (method: string): number => statedTimes_s(readRecipe(withMethod(method))).low / 60
    expect(sum('Brown the beef in two batches, 5 minutes per batch.')).toBe(10)
    expect(sum('Brown the beef, 4 minutes a side.')).toBe(8)
    expect(sum('Brown the beef in two batches for 8 minutes in all.')).toBe(8)
    expect(sum('Simmer for 10 minutes. Serve warm, or chill for 3 hours.')).toBe(10)
    expect(sum('Simmer for 10 minutes. Meanwhile, simmer the stock for 20 minutes.')).toBe(10)
    expect(statedTimes_s(readRecipe(withMethod('Soak for 8 hours. Simmer for 10 minutes.')), true).low / 60).toBe(490)
  })
  it('waiting that is promised apart is not held against it', () => {
    const soaked = (words: string): string =>
      promised(words).replace('Season the beef', 'Soak the beef for 8 hours. Season the beef')
    expect(codes(soaked('Total time: 1 hour 30 minutes, plus 8 hours soaking'))).toEqual([])
    expect(codes(soaked('Total time: 1 hour 30 minutes'))).toEqual(['warning headline-time-short'])
  })
})

it('titles and advice are plain sentences', () => {
  const texts = [
    withMethod('Lock the lid and cook. Simmer until thick. Cook until done. Add the celery.'),
    withList('beef', '2 flour', '1 lb (900 g) rice'),
  ]
  for (const query of texts.flatMap(queriesOf)) {
    expect(query.title).toMatch(/[.?]$/)
    expect(query.title.length).toBeLessThan(70)
    expect(query.code).toMatch(/^[a-z]+(?:-[a-z]+)*$/)
    expect(`${query.title}${query.message}${query.advice}`).not.toMatch(/undefined|NaN|null/)
  }
})
