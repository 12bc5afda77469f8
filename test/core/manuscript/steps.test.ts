import { describe, expect, it } from 'vitest'
import { splitSentences } from '../../../src/core/manuscript/sentences.ts'
import { tokenise } from '../../../src/core/manuscript/sentences-tokens.ts'
import { brief, operationsOf, ordered, readMethod } from './reading.ts'

const sentences = (text: string): string[] =>
  splitSentences(text, 0, text.length).map(({ from, to }) => text.slice(from, to))

describe('sentences', () => {
  it.each([
    ['Add the stock. Simmer.', ['Add the stock.', 'Simmer.']],
    ['Lock lid. hold 20 min. Take off burner.', ['Lock lid.', 'hold 20 min.', 'Take off burner.']],
    ['Add 2 tsp. salt and cook 5 min. more.', ['Add 2 tsp. salt and cook 5 min. more.']],
    ['Bake at 350 F. for 10 minutes.', ['Bake at 350 F. for 10 minutes.']],
    ['Bake at 350 F. 15 minutes or until done.', ['Bake at 350 F. 15 minutes or until done.']],
    ['Use 1.5 litres. Stir 2.5 minutes.', ['Use 1.5 litres.', 'Stir 2.5 minutes.']],
    ['Bring to 15 lb over high heat; lower heat & hold.', ['Bring to 15 lb over high heat; lower heat & hold.']],
    ['Scrape v. well. Too thick? Thin it!', ['Scrape v. well.', 'Too thick?', 'Thin it!']],
    ['cook until soft. add the garlic', ['cook until soft.', 'add the garlic']],
    ['the bottom of the pan.season the meat', ['the bottom of the pan.', 'season the meat']],
    ['Time.--2-1/2 hours to simmer.', ['Time.', '2-1/2 hours to simmer.']],
    ['Put the potatoes in a pan\nof water and boil.', ['Put the potatoes in a pan\nof water and boil.']],
    ['Drain the beans\nAdd the stock', ['Drain the beans', 'Add the stock']],
    ['Add salt (a pinch). Stir.', ['Add salt (a pinch).', 'Stir.']],
    ['Add "salt." Stir.', ['Add "salt."', 'Stir.']],
    ['...', []],
  ] as [string, string[]][])('%j', (text, wanted) => {
    expect(sentences(text)).toEqual(wanted)
  })

  it('lie in order inside the text and lose no letter', () => {
    const text = 'Heat 1 1/2 tsp. oil (a little). Add onion; cook 5-6 min. Serve!\n\nEnjoy: it is good. '
    const spans = splitSentences(text, 0, text.length)
    let at = 0
    for (const { from, to } of spans) {
      expect(text.slice(at, from).trim()).toBe('')
      expect(to).toBeGreaterThan(from)
      at = to
    }
    expect(text.slice(at).trim()).toBe('')
  })
})

describe('tokens', () => {
  const lows = (text: string): string[] => tokenise(text, 0, text.length).map((token) => token.low)
  const values = (text: string): number[] =>
    tokenise(text, 0, text.length).flatMap((token) => (token.kind === 'number' ? [token.value] : []))
  it.each([
    ['1 1/2 cups', [1.5]],
    ['1-1/2 cups', [1.5]],
    ['1½ cups', [1.5]],
    ['2 to 3, and ¾', [2, 3, 0.75]],
    ['3 and ¾', [3.75]],
    ['10-12 min', [10, 12]],
    ['1,200 g', [1200]],
    ['1,5 kg', [1.5]],
    ['.25 tsp', [0.25]],
    ['0/0 x', [0, 0]],
  ] as [string, number[]][])('%j holds %j', (text, wanted) => {
    expect(values(text)).toEqual(wanted)
  })
  it.each([
    ['S/té w/ o/n p/c and/or', ['s/té', 'w/', 'o/n', 'p/c', 'and', '/', 'or']],
    ["Don’t quick‑release: it's bone-in", ["don't", 'quick-release', ':', "it's", 'bone-in']],
    ['**Stir** the _whole_ pot', ['stir', 'the', 'whole', 'pot']],
    ['beef -> tray – 😀', ['beef', '->', 'tray', '-', '😀']],
    ['constructor __proto__', ['constructor', 'proto']],
  ] as [string, string[]][])('%j is %j', (text, wanted) => {
    expect(lows(text)).toEqual(wanted)
  })
})

describe('spans of operations', () => {
  it('are the words of their order, inside their sentence', () => {
    const recipe = readMethod('Heat the oil, then brown the beef well, 5 minutes a side. Remove to a plate; keep warm.')
    const words = operationsOf(recipe).map(({ from, to }) => recipe.text.slice(from, to))
    expect(words).toEqual(['Heat the oil', 'brown the beef well, 5 minutes a side', 'Remove to a plate'])
  })
  it('start behind a bracketed aside', () => {
    const recipe = readMethod('Add the stock. (Optional) Finish the cooking under the grill for 2 minutes.')
    const last = operationsOf(recipe).at(-1)!
    expect(recipe.text.slice(last.from, last.to)).toBe('Finish the cooking under the grill for 2 minutes')
    expect(brief(last)).toBe('bake 2 @oven')
  })
})

describe('the state of the pot', () => {
  it('goes through two times under pressure', () => {
    const method =
      'Brown the beef in the oil, 6 minutes. Add the stock, scrape up the browned bits. Lock the lid, bring to 15 psi and cook for 40 minutes. ' +
      'Quick-release the pressure. Add the carrots. Lock the lid again, come back to pressure and cook for 3 minutes more. Cool the pot under cold running water. ' +
      'Simmer for 5 minutes.'
    expect(ordered(method)).toEqual([
      'brown 6',
      'add',
      'deglaze scrapes',
      'lock lid on',
      'heat at high',
      'hold 40 at high',
      'release vented',
      'add',
      'lock lid on',
      'heat',
      'hold 3',
      'release vented',
      'simmer 5',
    ])
  })

  it('the oven stays the oven until the pot leaves it', () => {
    const method =
      'Add the stock and bring to a simmer. Cover and braise in the oven for 2 hours. Add the beans, cover again and braise for 15 minutes more. ' +
      'Put the casserole back on the hob and simmer for 5 minutes.'
    expect(ordered(method)).toEqual([
      'add',
      'simmer',
      'bake 120 lid on @oven',
      'add',
      'bake 15 lid on',
      'simmer 5 lid on',
    ])
  })

  it('a lid lies until it is lifted', () => {
    expect(ordered('Add the stock. Cover; simmer 15 minutes. Add the carrots. Simmer 20 minutes.')).toEqual([
      'add',
      'simmer 15 lid on',
      'add',
      'simmer 20',
    ])
  })

  it('after an opened lid "cook" is no hold, even when the release was forgotten', () => {
    const method =
      'Add the stock. Lock the lid and cook at high pressure for 30 minutes. Add the carrots and cook for 10 minutes.'
    expect(ordered(method)).toEqual(['add', 'lock lid on', 'hold 30 at high', 'add', 'simmer 10'])
  })

  it('a time that stands apart goes to what was said before', () => {
    expect(ordered('Add the garlic and cumin; 30 seconds more.')).toEqual(['add', 'bloom 30 s'])
    expect(ordered('Add the stock. Lock the lid. Set the timer for 20 minutes.')).toEqual([
      'add',
      'lock lid on',
      'hold 20',
    ])
  })
})
