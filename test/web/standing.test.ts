import { describe, expect, it } from 'vitest'
import { revisionWords, standing, standingCure } from '../../src/web/bench/standing.ts'
import type { Keep } from '../../src/web/keep/keep.ts'

const draft = { text: 'soup', pot: null, altitude_m: null }
const keep: Keep = { draft, base: 1, held: draft, sent: null, trouble: null, tries: 0, keptHere: true, notice: null }

describe('how the text is kept, in words', () => {
  it('says saved only when the server holds the very same text', () => {
    expect(standing(keep)).toBe('saved')
    expect(standing({ ...keep, draft: { ...draft, text: 'soup!' } })).toBe('saving')
    expect(standing({ ...keep, draft: { ...draft, pot: 'electric-8qt' } })).toBe('saving')
  })

  it('says where the text is when the server does not answer', () => {
    const dead: Keep = { ...keep, trouble: { kind: 'no-answer' } }
    expect(standing(dead)).toBe('kept on this device; the server does not answer')
    expect(standingCure(dead)).toBeNull()
  })

  it('asks for a copy when this device has no room either', () => {
    const nowhere: Keep = { ...keep, trouble: { kind: 'no-answer' }, keptHere: false }
    expect(standing(nowhere)).toMatch(/^on this page only/)
    expect(standingCure(nowhere)).toMatch(/copy the text/)
  })

  it('passes on what the server said', () => {
    const refused: Keep = { ...keep, trouble: { kind: 'refused', message: 'Too large.', cure: 'Divide it.' } }
    expect(standingCure(refused)).toBe('Too large. Divide it.')
  })

  it('names the revision and whether the sheet has moved on', () => {
    expect(revisionWords(null, true)).toBe('no revision kept')
    expect(revisionWords(7, false)).toBe('revision 7')
    expect(revisionWords(7, true)).toBe('revision 7 and changes')
  })
})
