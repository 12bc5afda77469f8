import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { findFood, foods } from '../../../src/core/larder/index.ts'

const phrases = readFileSync(new URL('phrases.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line) => line.split(' | ') as [string, string])

describe('findFood', () => {
  it('has more than 150 phrases to answer', () => expect(phrases.length).toBeGreaterThan(150))

  it.each(phrases)('%s', (words, id) => expect(findFood(words)?.id ?? null).toBe(id))

  it.each([
    '',
    '   ',
    '1 1/2',
    'tomato bredie',
    'chair',
    'the lid',
    'cutting board',
    'kitchen twine',
    'paper towels',
    'onion mixture',
    'remaining ingredients',
    'flurbish',
    'goat curry',
    'liquid',
    'wooden spoon',
    'high heat',
    '!!!',
    '🍲',
  ])('%j is nothing the larder knows', (words) => expect(findFood(words)).toBeNull())

  it('takes a head noun it knows, whatever stands before it', () => {
    expect(findFood('chicken')?.id).toBe('chicken')
    expect(findFood('chicken stock')?.id).toBe('chicken-stock')
    expect(findFood('smoky grandmother beans')?.id).toBe('white-bean')
    expect(findFood('stock')?.character).toBe('thin liquid')
    expect(findFood('oil')?.character).toBe('fat')
  })

  it('heeds the words that change what a thing is', () => {
    expect(findFood('ginger')?.id).toBe('ginger')
    expect(findFood('ground ginger')?.id).toBe('ground-ginger')
    expect(findFood('ginger, minced')?.id).toBe('ginger')
    expect(findFood('chickpeas')?.id).toBe('chickpea')
    expect(findFood('chickpeas, canned')?.id).toBe('chickpea-tinned')
    expect(findFood('tomatoes')?.id).toBe('tomato')
    expect(findFood('tomatoes, chopped')?.id).toBe('tomato')
    expect(findFood('chopped tomatoes')?.id).toBe('tinned-tomatoes')
    expect(findFood('bone-in chicken thighs')?.id).toBe('chicken-thigh')
    expect(findFood('boneless chicken thighs')?.id).toBe('chicken-thigh-boneless')
    expect(findFood('pepper')?.id).toBe('black-pepper')
    expect(findFood('peppers')?.id).toBe('red-pepper')
  })

  it('hears the unit where the words leave it open', () => {
    expect(findFood('thyme', { unit: 'sprig' })?.id).toBe('thyme')
    expect(findFood('thyme', { unit: 'tsp' })?.id).toBe('dried-thyme')
    expect(findFood('fresh thyme', { unit: 'tsp' })?.id).toBe('thyme')
    expect(findFood('coriander', { unit: 'tsp' })?.id).toBe('ground-coriander')
    expect(findFood('coriander', { unit: 'bunch' })?.id).toBe('coriander-leaf')
    expect(findFood('garlic', { unit: 'tsp' })?.id).toBe('garlic')
    expect(findFood('tomatoes', { unit: 'can' })?.id).toBe('tinned-tomatoes')
    expect(findFood('black beans', { unit: 'can' })?.id).toBe('black-bean-tinned')
    expect(findFood('black beans', { unit: 'cup' })?.id).toBe('black-bean')
    expect(findFood('tomato puree', { unit: 'tbsp' })?.id).toBe('tomato-paste')
    expect(findFood('tomato puree', { unit: 'ml' })?.id).toBe('passata')
    expect(findFood('cinnamon', { unit: 'stick' })?.id).toBe('cinnamon-stick')
    expect(findFood('chicken', { unit: null })?.id).toBe('chicken-whole')
    expect(findFood('chicken', { unit: 'lb' })?.id).toBe('chicken')
    expect(findFood('pepper', { unit: null })?.id).toBe('black-pepper')
  })

  it('never throws and never wavers, whatever the text', () => {
    let seed = 20261125
    const next = (n: number) => {
      seed = (seed * 1664525 + 1013904223) % 2 ** 32
      return seed % n
    }
    const letters = "abc defghij'klmnop qrs-tuvwxyz(,/)&½ éÜ3."
    for (let i = 0; i < 500; i++) {
      const words = Array.from({ length: next(40) }, () => letters[next(letters.length)]).join('')
      expect(findFood(words), words).toBe(findFood(words))
    }
  })

  it('answers fast enough to follow typing', () => {
    // A measure of the way it goes, not of the machine: thousands of new phrases within a second.
    const start = process.cpuUsage()
    let asked = 0
    for (const food of foods)
      for (const size of ['large ripe', '2 small', 'finely chopped fresh']) {
        findFood(`${size} ${food.name}`)
        asked++
      }
    const { user, system } = process.cpuUsage(start)
    expect((user + system) / asked).toBeLessThan(500)
  })
})
