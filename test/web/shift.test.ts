import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyCure, type Cure } from '../../src/core/index.ts'
import { placedEdits, shiftOf } from '../../src/web/bench/shift.ts'

describe('shift', () => {
  it('moves places behind an insertion and leaves those before it', () => {
    const shift = shiftOf('1 onion, chopped', '1 large onion, chopped')
    expect(shift.span({ from: 0, to: 1 })).toEqual({ from: 0, to: 1 })
    expect(shift.span({ from: 9, to: 16 })).toEqual({ from: 15, to: 22 })
    expect(shift.untouched(9, 16)).toBe(true)
  })

  it('keeps untouched words the same words, wherever one stretch was changed', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), fc.string(), (head, out, into, tail) => {
        const before = head + out + tail
        const after = head + into + tail
        const shift = shiftOf(before, after)
        for (let from = 0; from <= before.length; from++) {
          const to = Math.min(before.length, from + 3)
          if (from === to || !shift.untouched(from, to)) continue
          const { from: start, to: end } = shift.span({ from, to })
          expect(after.slice(start, end)).toBe(before.slice(from, to))
        }
        for (let from = 0; from <= before.length; from++)
          for (let to = from; to <= before.length; to++) {
            const span = shift.span({ from, to })
            expect(span.from).toBeGreaterThanOrEqual(0)
            expect(span.to).toBeGreaterThanOrEqual(span.from)
            expect(span.to).toBeLessThanOrEqual(after.length)
          }
      }),
    )
  })
})

describe('placing a cure', () => {
  const of = 'Total time: 55 minutes\n\n150 ml cider'
  const cure: Cure = { label: 'Write 1½ hours', edits: [{ from: 12, to: 22, insert: '1½ hours' }] }

  it('gives the edits as they are when the text is the one that was read', () => {
    expect(placedEdits(cure, of, of)).toEqual(cure.edits)
  })

  it('moves them when something before was changed', () => {
    const now = of.replace('Total', 'Whole')
    const edits = placedEdits(cure, of, now)!
    expect(applyCure(now, { label: '', edits })).toBe('Whole time: 1½ hours\n\n150 ml cider')
  })

  it('refuses when the words themselves were changed', () => {
    expect(placedEdits(cure, of, of.replace('55', '50'))).toBeNull()
  })
})
