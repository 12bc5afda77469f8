import { describe, expect, it } from 'vitest'
import { choosePot } from '../../../src/core/method/index.ts'
import { potById } from '../../../src/core/pots/index.ts'
import { type Op, recipeOf } from './hand-made.ts'

const line = { line: '1 kg beef', item: 'beef', larder: null, kg: 1 }
const pick = (text: string, verb: Op['verb'], named: string | null = null) => {
  const recipe = recipeOf({
    lines: [line],
    steps: [{ text, ops: [{ words: text, verb }] }],
    more: named ? { named: { pot: { id: named, from: 0, to: 1 }, altitude_m: null } } : {},
  })
  const { pot, potFrom } = choosePot(recipe, {})
  return [pot.id, potFrom]
}

describe('the pot of a plan', () => {
  it.each([
    ['Cook at high pressure for 30 minutes in an electric pressure cooker.', 'hold', 'electric-6qt', 'manuscript'],
    [
      'Cook at high pressure for 30 minutes in an 8-quart electric pressure cooker.',
      'hold',
      'electric-8qt',
      'manuscript',
    ],
    [
      'Set the sauté function to high, then cook at pressure for 10 minutes in a 3-litre pot.',
      'hold',
      'electric-3qt',
      'manuscript',
    ],
    ['Bring to 15 psi over high heat, lower the heat and hold for 60 minutes.', 'hold', 'stovetop-6qt', 'manuscript'],
    ['Cook at high pressure for 60 minutes and take the pan off the heat.', 'hold', 'stovetop-6qt', 'manuscript'],
    ['Cook at high pressure for 30 minutes.', 'hold', 'electric-6qt', 'default'],
    ['Cover the casserole and cook in the oven for 2 hours.', 'bake', 'dutch-oven', 'manuscript'],
    ['Simmer in a heavy casserole on the hob for 2 hours.', 'simmer', 'dutch-burner', 'manuscript'],
    ['Simmer for 2 hours.', 'simmer', 'electric-6qt', 'default'],
  ] as const)('%s', (text, verb, id, from) => {
    expect(pick(text, verb)).toEqual([id, from])
  })
  it('goes by a pot the reader has found named', () => {
    expect(pick('Simmer for 2 hours.', 'simmer', 'stovetop-6qt')).toEqual(['stovetop-6qt', 'manuscript'])
    expect(pick('Simmer for 2 hours.', 'simmer', 'no-such-pot')).toEqual(['electric-6qt', 'default'])
  })
  it('goes by the caller before the words', () => {
    const recipe = recipeOf({
      lines: [line],
      steps: [
        { text: 'Cook in the oven in a casserole.', ops: [{ words: 'Cook in the oven in a casserole', verb: 'bake' }] },
      ],
    })
    const asked = choosePot(recipe, { pot: potById('electric-8qt')! })
    expect([asked.pot.id, asked.potFrom]).toEqual(['electric-8qt', 'asked'])
  })
})
