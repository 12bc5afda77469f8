import type { Dish, Draft } from '../server/dishes.ts'
import { type Keep, type KeepEffect, sameDraft } from './keep.ts'

/** A text this device kept for a dish, written by one window. */
export interface Copy {
  readonly draft: Draft
  /** The server's version it grew from. */
  readonly base: number
  /** When it was last typed in, ms of the device's clock. */
  readonly at_ms: number
  /** The window that wrote it. */
  readonly writer: string
}

export interface Opening {
  readonly keep: Keep
  readonly effects: readonly KeepEffect[]
  /** Copies to keep as revisions, then to forget: older than what stands. */
  readonly older: readonly Copy[]
  /** Copies that say nothing new. */
  readonly spent: readonly Copy[]
}

/**
 * Decides what stands on the sheet when a dish is opened: the server's draft, or a text of this device that never
 * reached it. The newer of the two stands; the other is never dropped.
 */
export function open(dish: Dish, copies: readonly Copy[]): Opening {
  const held: Draft = { text: dish.text, pot: dish.pot, altitude_m: dish.altitude_m }
  const spent = copies.filter((copy) => sameDraft(copy.draft, held))
  const [newest, ...rest] = copies.filter((copy) => !sameDraft(copy.draft, held)).sort((a, b) => b.at_ms - a.at_ms)

  const keep: Keep = {
    draft: held,
    base: dish.version,
    held,
    sent: null,
    trouble: null,
    tries: 0,
    keptHere: true,
    notice: null,
  }
  if (!newest) return { keep, effects: [], older: [], spent }

  const stands = newest.base === dish.version || newest.at_ms > Date.parse(dish.savedAt)
  if (!stands) return { keep, effects: [], older: textsOf([newest, ...rest], held), spent }
  return {
    // With an older base the server will answer that it has a newer draft, and both are kept by the usual way.
    keep: { ...keep, draft: newest.draft, base: newest.base, notice: { kind: 'restored' } },
    effects: [
      { type: 'keep-here', draft: newest.draft, base: newest.base },
      { type: 'wait', ms: 0 },
    ],
    older: textsOf(rest, newest.draft),
    spent: [...spent, newest],
  }
}

/** Copies whose words differ from what stands; a different pot alone is not worth a revision. */
const textsOf = (copies: readonly Copy[], stands: Draft): Copy[] =>
  copies.filter((copy) => copy.draft.text !== stands.text)
