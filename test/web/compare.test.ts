import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compare } from '../../src/web/revisions/compare.ts'

const without = (kind: 'gone' | 'new', from: string, to: string) =>
  compare(from, to)
    .filter((part) => part.kind !== kind)
    .map((part) => part.text)
    .join('')

describe('comparing two texts', () => {
  it('marks the words that changed and no others', () => {
    expect(compare('Add 150 ml dry cider.', 'Add 120 ml dry cider.')).toEqual([
      { kind: 'same', text: 'Add ' },
      { kind: 'gone', text: '150' },
      { kind: 'new', text: '120' },
      { kind: 'same', text: ' ml dry cider.' },
    ])
  })

  it('holds both texts whole', () => {
    const text = fc
      .array(fc.constantFrom('a', 'b ', '\n', '½ cup', '…', ' 🍲'), { maxLength: 30 })
      .map((parts) => parts.join(''))
    fc.assert(
      fc.property(text, text, (from, to) => {
        expect(without('new', from, to)).toBe(from)
        expect(without('gone', from, to)).toBe(to)
      }),
    )
  })

  it('manages texts too long for a table of words', () => {
    const from = Array.from({ length: 4000 }, (_, n) => `line ${n} of many`).join('\n')
    const to = from.replaceAll('7', '8')
    expect(without('new', from, to)).toBe(from)
    expect(without('gone', from, to)).toBe(to)
  })
})
