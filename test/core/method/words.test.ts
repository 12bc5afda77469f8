import { describe, expect, it } from 'vitest'
import {
  cutIn,
  lengthIn,
  numberOf,
  piecesNamed,
  sentenceAround,
  shareIn,
  spoken,
} from '../../../src/core/method/words.ts'

describe('numbers and sizes in words', () => {
  it.each([
    ['3', 3],
    ['2.5', 2.5],
    ['2,5', 2.5],
    ['1 1/2', 1.5],
    ['3/4', 0.75],
    ['¾', 0.75],
    ['1½', 1.5],
    ['two', 2],
    ['a', 1],
    ['lots', null],
    ['', null],
    ['1/0', null],
  ])('%s is %s', (word, value) => {
    expect(numberOf(word)).toBe(value)
  })
  it.each([
    ['cut into 4-cm pieces', 4, 4],
    ['in 3 to 4 cm cubes', 3, 4],
    ['sliced 5 mm thick', 0.5, 0.5],
    ['in 1-inch pieces', 2.54, 2.54],
    ['cut in 3/4-inch cubes', 1.905, 1.905],
    ['into 1-1/2-inch lengths', 3.81, 3.81],
    ['2cm rounds', 2, 2],
  ])('%s', (words, low, high) => {
    const size = lengthIn(words)!
    expect(size.low * 100).toBeCloseTo(low, 9)
    expect(size.high * 100).toBeCloseTo(high, 9)
  })
  it.each(['chop', '3 onions', 'for 20 minutes in', '90 cm long'])('finds no size in “%s”', (words) => {
    expect(lengthIn(words)).toBeNull()
  })
  it('knows into how many pieces', () => {
    expect(piecesNamed('cut into 6 big chunks')).toBe(6)
    expect(piecesNamed('in four pieces')).toBe(4)
    expect(piecesNamed('cut into pieces')).toBeNull()
  })
  it.each([
    ['a third of the soup', 1 / 3],
    ['two-thirds', 2 / 3],
    ['half', 0.5],
    ['three quarters of it', 0.75],
    ['the soup', null],
  ])('%s', (words, share) => {
    expect(shareIn(words)).toBe(share)
  })
})

it.each([
  ['finely chopped', 'chopped'],
  ['cut into cubes', 'cubes'],
  ['thinly sliced', 'slices'],
  ['minced', 'minced'],
  ['shredded', 'shredded'],
  ['halved', 'halves'],
  ['quartered', 'pieces'],
  ['peeled', null],
])('%s is cut as %s', (words, shape) => {
  expect(cutIn(words)?.shape ?? null).toBe(shape)
})

it('finds the sentence round a place', () => {
  const text = 'First this. Then brown the beef, slowly; stir. At 1.5 cm it is done.'
  const at = text.indexOf('brown')
  expect(sentenceAround(text, { from: at, to: at + 5 }).trim()).toBe('Then brown the beef, slowly')
  const half = text.indexOf('1.5')
  expect(sentenceAround(text, { from: half, to: half + 1 }).trim()).toBe('At 1.5 cm it is done')
})

it.each([
  [{ low: 1800, high: 1800 }, '30 minutes'],
  [{ low: 60, high: 60 }, '60 seconds'],
  [{ low: 30, high: 30 }, '30 seconds'],
  [{ low: 90, high: 150 }, '2 to 3 minutes'],
  [{ low: 480, high: 720 }, '8 to 12 minutes'],
  [{ low: 6300, high: 9000 }, '1.8 to 2.5 hours'],
  [{ low: 7200, high: 7200 }, '2 hours'],
])('%o is said as %s', (time, words) => {
  expect(spoken(time)).toBe(words)
})
