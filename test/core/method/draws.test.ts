import { describe, expect, it } from 'vitest'
import { placeOperations } from '../../../src/core/method/classify.ts'
import { shareOut } from '../../../src/core/method/draws.ts'
import { type Op, recipeOf } from './hand-made.ts'

const lines = [
  { line: '900 g beef', item: 'beef', larder: null, kg: 0.9 },
  { line: '9 g salt', item: 'salt', larder: null, kg: 0.009 },
]
const shares = (ingredient: number, ...ops: Op[]) => {
  const recipe = recipeOf({ lines, steps: [{ text: ops.map((op) => op.words).join('. '), ops }] })
  const draws = shareOut(recipe, placeOperations(recipe), {
    mass_kg: (line) => lines[line].kg,
    solid: (line) => line === 0,
  })
  return draws.taken.map((list) => list.filter((draw) => draw.ingredient === ingredient).map((draw) => draw.share))
}
const add = (words: string, share: number | null, again?: 'again'): Op => ({
  words,
  verb: 'add',
  uses: [['salt', 1, share, ...(again ? [again] : [])] as never],
  more: { place: 'pot' },
})

describe('how a line is shared out', () => {
  it('gives every portion its share and the last what is left', () => {
    expect(shares(1, add('half the salt', 0.5), add('the rest of the salt', 1))).toEqual([[0.5], [0.5]])
    expect(shares(1, add('a third of the salt', 1 / 3), add('more salt', 1 / 3))).toEqual([[1 / 3], [1 / 3]])
  })
  it('never gives more than there is', () => {
    const [first, second, third] = shares(
      1,
      add('most of the salt', 0.8),
      add('half the salt', 0.5),
      add('the salt too', 1),
    )
    expect(first).toEqual([0.8])
    expect(second[0]).toBeCloseTo(0.2, 12)
    expect(third).toEqual([])
  })
  it('takes nothing twice when it comes back', () => {
    expect(shares(1, add('the salt', 1), add('the same salt', 1, 'again'))).toEqual([[1], []])
  })
  it('takes what is said to come back, but never went in', () => {
    expect(shares(1, add('the salt once more', 1, 'again'))).toEqual([[1]])
  })
  it('divides what is left open', () => {
    expect(shares(1, add('some salt', null), add('more of the salt', null))).toEqual([[0.5], [0.5]])
    const [little, rest] = shares(1, add('a little salt', null), add('all the rest of the salt', 1))
    expect(little[0]).toBeCloseTo(1 / 3, 12)
    expect(rest[0]).toBeCloseTo(2 / 3, 12)
  })
  it('keeps one load of what is browned half by half', () => {
    const brown = (words: string): Op => ({ words, verb: 'brown', uses: [['beef', 0, 0.5]] })
    expect(shares(0, brown('Brown half the beef'), brown('brown the other half of the beef'))).toEqual([[1], []])
  })
})
