import { describe, expect, it } from 'vitest'
import { placeOperations } from '../../../src/core/method/classify.ts'
import { type Op, recipeOf } from './hand-made.ts'

const lines = [
  { line: '900 g beef', item: 'beef', larder: null, kg: 0.9 },
  { line: '9 g salt', item: 'salt', larder: null, kg: 0.009 },
  { line: '1 onion', item: 'onion', larder: null, kg: 0.1 },
]
const where = (text: string, ...ops: Op[]) =>
  placeOperations(recipeOf({ lines, steps: [{ text, ops }] })).map((item) => item.where)
const heat: Op = { words: 'Heat the pot', verb: 'heat' }
const hold: Op = { words: 'cook at pressure', verb: 'hold', min: 30 }

describe('where an operation happens', () => {
  it('seasons at the bench what has not been in the pot, and in the pot what has', () => {
    expect(
      where(
        'Season the beef. Heat the pot. Add the beef. Season with salt.',
        { words: 'Season the beef', verb: 'season', uses: [['beef', 0]] },
        heat,
        { words: 'Add the beef', verb: 'add', uses: [['beef', 0]] },
        { words: 'Season with salt', verb: 'season', uses: [['salt', 1]] },
      ),
    ).toEqual(['bench', 'main', 'main', 'main'])
  })
  it('takes food out into a bowl, and mixes in one what never was in the pot', () => {
    expect(
      where(
        'Mix the salt in a bowl. Heat the pot. Brown the beef. Transfer to a bowl.',
        { words: 'Mix the salt in a bowl', verb: 'mix', uses: [['salt', 1]], more: { place: 'bowl' } },
        heat,
        { words: 'Brown the beef', verb: 'brown', uses: [['beef', 0]] },
        { words: 'Transfer to a bowl', verb: 'lift', more: { place: 'bowl' } },
      ),
    ).toEqual(['bench', 'main', 'main', 'main'])
  })
  it('calls a pan a side vessel only when the dish cooks in another', () => {
    const fry: Op = { words: 'Fry the onion in a skillet', verb: 'fry', uses: [['onion', 2]], more: { place: 'pan' } }
    expect(where('Fry the onion in a skillet. Lock and cook at pressure.', fry, hold)).toEqual(['side', 'main'])
    expect(
      where('Fry the onion in a skillet. Simmer in the skillet for 40 minutes.', fry, {
        words: 'Simmer in the skillet for 40 minutes',
        verb: 'simmer',
        min: 40,
        more: { place: 'pan' },
      }),
    ).toEqual(['main', 'main'])
  })
  it('heats the oven apart', () => {
    expect(
      where(
        'Heat the oven. Brown the beef.',
        { words: 'Heat the oven', verb: 'heat', more: { place: 'oven' } },
        { words: 'Brown the beef', verb: 'brown', uses: [['beef', 0]] },
      ),
    ).toEqual(['oven', 'main'])
  })
  it('follows the course of the method, not its asides', () => {
    expect(
      where('Heat the pot. Or chill the beef.', heat, {
        words: 'chill the beef',
        verb: 'chill',
        more: { aside: 'alternative' },
      }),
    ).toEqual(['main'])
  })
})
