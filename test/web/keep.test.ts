import { describe, expect, it } from 'vitest'
import {
  type Keep,
  type KeepEffect,
  type KeepEvent,
  patience_ms,
  pause_ms,
  step,
  unsent,
} from '../../src/web/keep/keep.ts'

const draft = (text: string, pot: string | null = null) => ({ text, pot, altitude_m: null })

const settled: Keep = {
  draft: draft('soup'),
  base: 4,
  held: draft('soup'),
  sent: null,
  trouble: null,
  tries: 0,
  keptHere: true,
  notice: null,
}

/** Plays events one after another and gathers everything that was asked for. */
function play(...events: KeepEvent[]): { keep: Keep; effects: KeepEffect[] } {
  let keep = settled
  const effects: KeepEffect[] = []
  for (const event of events) {
    const next = step(keep, event)
    keep = next.keep
    effects.push(...next.effects)
  }
  return { keep, effects }
}

const typed = (text: string): KeepEvent => ({ type: 'changed', draft: draft(text) })
const kinds = (effects: readonly KeepEffect[]) => effects.map((effect) => effect.type)

describe('keeping a text', () => {
  it('keeps every change on this device at once and tells the server after a pause', () => {
    const { effects } = play(typed('soup!'))
    expect(effects).toEqual([
      { type: 'keep-here', draft: draft('soup!'), base: 4 },
      { type: 'wait', ms: pause_ms },
    ])
  })

  it('forgets the copy here only when the server holds the very same text', () => {
    const { keep, effects } = play(typed('a'), { type: 'due' }, typed('ab'), { type: 'saved', version: 5 })
    expect(unsent(keep)).toBe(true)
    expect(kinds(effects)).not.toContain('forget-here')
    const after = step(step(keep, { type: 'due' }).keep, { type: 'saved', version: 6 })
    expect(unsent(after.keep)).toBe(false)
    expect(kinds(after.effects)).toEqual(['forget-here'])
    expect(after.keep.base).toBe(6)
  })

  it('never has two sendings under way', () => {
    const { effects } = play(typed('a'), { type: 'due' }, typed('ab'), { type: 'due' }, { type: 'leaving' })
    expect(kinds(effects).filter((kind) => kind === 'send')).toHaveLength(1)
  })

  it('sends at once when the page is left', () => {
    const { effects } = play(typed('a'), { type: 'leaving' })
    expect(effects.at(-1)).toEqual({ type: 'send', draft: draft('a'), base: 4 })
  })

  it('tries again and again while nobody answers, further and further apart', () => {
    const gone: KeepEvent = { type: 'failed', trouble: { kind: 'no-answer' } }
    const { keep, effects } = play(typed('a'), { type: 'due' }, gone, { type: 'due' }, gone, { type: 'due' }, gone)
    expect(keep.tries).toBe(3)
    expect(effects.filter((effect) => effect.type === 'wait').map((effect) => effect.ms)).toEqual([
      600, 500, 1000, 2000,
    ])
    expect(patience_ms(50)).toBe(15_000)
  })

  it('does not let typing put a retry off', () => {
    const { effects } = play(
      typed('a'),
      { type: 'due' },
      { type: 'failed', trouble: { kind: 'no-answer' } },
      typed('ab'),
    )
    expect(effects.at(-1)?.type).toBe('keep-here')
  })

  it('tries at once when the network or the reader comes back', () => {
    const { effects } = play(
      typed('a'),
      { type: 'due' },
      { type: 'failed', trouble: { kind: 'no-answer' } },
      { type: 'awake' },
    )
    expect(effects.at(-1)).toEqual({ type: 'wait', ms: 0 })
    expect(play({ type: 'awake' }).effects).toEqual([])
  })

  it('does not repeat what was refused until the text changes', () => {
    const refused: KeepEvent = { type: 'failed', trouble: { kind: 'refused', message: 'Too long.', cure: null } }
    const { keep, effects } = play(typed('a'), { type: 'due' }, refused)
    expect(effects.at(-1)?.type).toBe('send')
    const next = step(keep, typed('b'))
    expect(next.keep.trouble).toBeNull()
    expect(kinds(next.effects)).toEqual(['keep-here', 'wait'])
  })

  it('keeps both texts when another window was faster: mine on the sheet, theirs as a revision', () => {
    const current = { ...draft('their soup'), version: 9 }
    const { keep, effects } = play(typed('my soup'), { type: 'due' }, { type: 'conflict', current, own: false })
    expect(effects.at(-1)).toEqual({ type: 'keep-theirs', current })
    expect(keep.draft.text).toBe('my soup')
    const after = step(keep, { type: 'theirs-kept', current, revision: 3 })
    expect(after.keep).toMatchObject({ base: 9, sent: null, notice: { kind: 'theirs-kept', revision: 3 } })
    expect(step(after.keep, { type: 'due' }).effects).toEqual([{ type: 'send', draft: draft('my soup'), base: 9 }])
  })

  it('knows its own save again when only the answer was lost', () => {
    const current = { ...draft('soup with'), version: 5 }
    const { keep, effects } = play(typed('soup with salt'), { type: 'due' }, { type: 'conflict', current, own: true })
    expect(kinds(effects)).not.toContain('keep-theirs')
    expect(keep).toMatchObject({ base: 5, notice: null })
    expect(unsent(keep)).toBe(true)
  })

  it('asks for no revision when the other window holds the same words', () => {
    const current = { ...draft('my soup'), version: 9 }
    const { keep, effects } = play(typed('my soup'), { type: 'due' }, { type: 'conflict', current, own: false })
    expect(kinds(effects)).not.toContain('keep-theirs')
    expect(keep.base).toBe(9)
    expect(unsent(keep)).toBe(false)
  })

  it('takes over a newer text only when nothing of its own is unsent', () => {
    const current = { ...draft('newer'), version: 7 }
    const taken = play({ type: 'seen', current })
    expect(taken.keep.draft.text).toBe('newer')
    expect(taken.effects).toEqual([{ type: 'show', draft: draft('newer') }])
    const busy = play(typed('mine'), { type: 'seen', current })
    expect(busy.keep.draft.text).toBe('mine')
    expect(play({ type: 'seen', current: { ...draft('older'), version: 3 } }).keep.draft.text).toBe('soup')
  })

  it('keeps the unsent text whatever happens in whatever order', () => {
    const events: KeepEvent[] = [
      { type: 'due' },
      { type: 'saved', version: 5 },
      { type: 'conflict', current: { ...draft('x'), version: 8 }, own: false },
      { type: 'theirs-kept', current: { ...draft('x'), version: 8 }, revision: 2 },
      { type: 'failed', trouble: { kind: 'no-answer' } },
      { type: 'failed', trouble: { kind: 'gone' } },
      { type: 'seen', current: { ...draft('y'), version: 99 } },
      { type: 'awake' },
      { type: 'leaving' },
      { type: 'kept-here', ok: false },
      { type: 'read-notice' },
    ]
    const states = [typed('typed')].map((event) => step(settled, event).keep)
    for (let depth = 0; depth < 3; depth++)
      states.push(...states.slice(-60).flatMap((keep) => events.map((event) => step(keep, event).keep)))
    // A text leaves the sheet only for one that is newer on the server, and only once the server holds the text itself.
    const lost = states.filter((keep) => keep.draft.text !== 'typed' && keep.held.text !== keep.draft.text)
    expect(states.length).toBeGreaterThan(500)
    expect(lost).toEqual([])
  })
})
