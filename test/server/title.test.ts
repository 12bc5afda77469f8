import { describe, expect, it } from 'vitest'
import { demonstrationDishes } from '../../src/server/home.ts'
import { titleOf } from '../../src/server/title.ts'

describe('the title of a manuscript', () => {
  it.each([
    ['Oxtail with grapes\n\nServes 6', 'Oxtail with grapes'],
    ['\n\n   Beans  \nmore', 'Beans'],
    ['', 'Untitled dish'],
    [' \n\t\n', 'Untitled dish'],
    ['\r\nPeas\r\nsalt', 'Peas'],
    ['2 cups beans\n1 onion\n\n1. Boil the beans.', '2 cups beans'],
  ])('%j is called %j', (text, title) => {
    expect(titleOf(text)).toBe(title)
  })

  it('is the one the reader finds in each demonstration dish', () => {
    const titles = demonstrationDishes().map(({ text }) => titleOf(text))
    expect(titles).toEqual([
      'Pork shoulder with leeks and cider',
      'White bean soup with carrots and sage',
      'Beef and tomato sauce for a crowd',
    ])
  })

  it('is found without reading a long manuscript to its end', () => {
    const long = `Stock\n\n${'1 carrot, chopped\n'.repeat(60_000)}`
    const start = performance.now()
    expect(titleOf(long)).toBe('Stock')
    // A whole reading of it takes minutes; the rest is room for a busy machine.
    expect(performance.now() - start).toBeLessThan(8000)
  })

  it('is short enough for the contract, however long the line', () => {
    expect(titleOf('word '.repeat(1000)).length).toBeLessThanOrEqual(300)
  })
})
