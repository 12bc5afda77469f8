import { describe, expect, it } from 'vitest'
import { newsOf } from '../../src/web/bench/announce.ts'
import type { Note } from '../../src/web/bench/reading.ts'
import { ago, titleOf } from '../../src/web/words.ts'

describe('when something was touched', () => {
  const now = new Date(2026, 2, 12, 15, 0).getTime()
  const at = (...parts: [number, number, number, number, number]) => new Date(...parts).toISOString()
  it.each([
    [at(2026, 2, 12, 14, 59), 'a minute ago'],
    [at(2026, 2, 12, 14, 20), '40 minutes ago'],
    [at(2026, 2, 12, 9, 5), 'today, 09:05'],
    [at(2026, 2, 11, 23, 50), 'yesterday, 23:50'],
    [at(2026, 2, 9, 8, 0), 'Monday'],
    [at(2026, 0, 3, 8, 0), '3 January'],
    [at(2025, 0, 3, 8, 0), '3 January 2025'],
  ])('%s', (iso, words) => {
    expect(ago(iso, now)).toBe(words)
  })
})

describe('a title', () => {
  it('is the first line with something in it', () => {
    expect(titleOf('\n  \n Leek pie \nServes 4')).toBe('Leek pie')
    expect(titleOf('  ')).toBe('Untitled')
  })
})

describe('news of the notes', () => {
  const note = (key: string): Note => ({
    key,
    from: 0,
    to: 1,
    finding: {
      code: key,
      severity: 'hint',
      span: null,
      title: `${key}.`,
      message: '',
      source: '',
      advice: null,
      cure: null,
    },
  })
  it('counts at first, then tells what came and what went, and is silent otherwise', () => {
    expect(newsOf([], [note('a'), note('b')])).toBe('Two notes.')
    expect(newsOf([note('a'), note('b')], [note('b'), note('c')])).toBe('Two notes. Settled: a. New: c.')
    expect(newsOf([note('a')], [])).toBe('No notes. Settled: a.')
    expect(newsOf([note('a')], [note('a')])).toBe('')
  })
})
