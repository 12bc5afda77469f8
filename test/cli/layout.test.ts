import { describe, expect, test } from 'vitest'
import { amount, clock, grams, kitchenNumber, minutes, place, size } from '../../src/cli/figures.ts'
import { columnsOf, paragraph, table, wrap } from '../../src/cli/layout.ts'
import { lineOf, quoted } from '../../src/cli/places.ts'

describe('lines', () => {
  test('break at blanks and never pass the width', () => {
    const text =
      'The liquor is too thick to carry the heat away: a layer dries on the floor. Donaudampfschifffahrtsgesellschaft'
    for (let width = 5; width < 60; width++) {
      const lines = wrap(text, width)
      for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(width)
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
    }
  })

  test('paragraphs hang', () =>
    expect(paragraph('one two three four', 11, 4, 2)).toEqual(['  one two', '    three', '    four']))

  test('wide letters count two, marks none', () => {
    expect(columnsOf('肉')).toBe(2)
    expect(columnsOf('e\u0301')).toBe(1)
    expect(columnsOf('שלום')).toBe(4)
  })
})

describe('tables', () => {
  test('columns align, numbers to the right, the last column takes the rest', () => {
    expect(
      table(
        [
          ['1.2 kg', 'pork', 'from the shoulder, boned and rolled'],
          ['2', 'onions', ''],
        ],
        [{ side: 'right' }, {}, {}],
        40,
      ),
    ).toEqual(['  1.2 kg  pork    from the shoulder,', '                  boned and rolled', '       2  onions'])
  })

  test('empty columns leave no gap', () => {
    expect(table([['a', '', 'b']], [{}, {}, {}], 40)).toEqual(['  a  b'])
  })
})

describe('figures', () => {
  test('kitchen fractions', () =>
    expect([1.25, 0.5, 2 / 3, 180, 1.2, 0.125].map(kitchenNumber)).toEqual(['1¼', '½', '⅔', '180', '1.2', '⅛']))
  test('grams', () => {
    expect(grams({ low: 1.2, high: 1.2 })).toBe('1200 g')
    expect(grams({ low: 0.0071, high: 0.0089 })).toBe('7.1 to 8.9 g')
    expect(grams({ low: 0.0004, high: 0.0004 })).toBe('0.4 g')
  })
  test('sizes', () => {
    expect(size({ low: 0.04, high: 0.04 })).toBe('4 cm')
    expect(size({ low: 0.004, high: 0.006 })).toBe('4 to 6 mm')
    expect(size({ low: 0.0254, high: 0.0254 })).toBe('2.5 cm')
  })
  test('times', () => {
    expect(minutes({ low: 1800, high: 1800 })).toBe('30 min')
    expect(minutes({ low: 360, high: 480 })).toBe('6 to 8 min')
    expect(minutes({ low: 30, high: 30 })).toBe('30 s')
    expect(minutes({ low: 6300, high: 6300 })).toBe('1 h 45 min')
    expect(clock(3900)).toBe('1:05')
  })
  test('places', () => {
    expect(place(0)).toBe('at sea level')
    expect(place(1600)).toBe('at 1,600 m (5,249 ft)')
  })
  test('amounts', () => {
    const line = { low: 4, high: 4, unit: 'clove', pack: null, toTaste: false } as never
    expect(amount(line)).toBe('4 cloves')
    expect(
      amount({ low: 2, high: 2, unit: 'can', pack: { low: 400, high: 400, unit: 'g' }, toTaste: false } as never),
    ).toBe('2 × 400 g cans')
    expect(amount({ low: null, high: null, unit: null, pack: null, toTaste: true } as never)).toBe('to taste')
  })
})

describe('places in a text', () => {
  test('lines count from one, whatever ends them', () => {
    expect(lineOf('a\nb\r\nc\rd', 0)).toBe(1)
    expect(lineOf('a\nb\r\nc\rd', 2)).toBe(2)
    expect(lineOf('a\nb\r\nc\rd', 5)).toBe(3)
    expect(lineOf('a\nb\r\nc\rd', 7)).toBe(4)
  })
  test('long words are cut with an ellipsis', () => {
    expect(quoted('Stir  the\npot', { from: 0, to: 13 })).toBe('“Stir the pot”')
    expect([...quoted('x'.repeat(200), { from: 0, to: 200 })].length).toBeLessThanOrEqual(62)
  })
})
