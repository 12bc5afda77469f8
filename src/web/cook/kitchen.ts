import type { Cooked, Order, Reply } from './messages.ts'

/** The part of a worker that the kitchen uses. */
export interface Hand {
  postMessage: (order: Order) => void
  terminate: () => void
  onmessage: ((event: { data: Reply }) => void) | null
  onerror: ((event: { message?: string }) => void) | null
}

export interface Kitchen {
  /** Cooks this next; what was waiting before is forgotten. Answers the order's number. */
  readonly order: (order: Omit<Order, 'number'>) => number
  readonly close: () => void
}

export type Outcome =
  | { readonly number: number; readonly ok: true; readonly cooked: Cooked }
  | { readonly number: number; readonly ok: false; readonly message: string }

/** A run takes milliseconds, the first one a second; what takes this long will not end. */
export const patience_ms = 30_000

/**
 * One hand, one order at a time, the latest text next. A hand that fails or does not come back is replaced, and
 * whoever ordered is told; the text is not the kitchen's to lose.
 */
export function openKitchen(hire: () => Hand, served: (outcome: Outcome) => void): Kitchen {
  let hand: Hand | null = null
  let busy: Order | null = null
  let next: Order | null = null
  let count = 0
  let clock: ReturnType<typeof setTimeout> | undefined

  const begin = (): void => {
    if (busy || !next) return
    busy = next
    next = null
    hand ??= hired()
    clock = setTimeout(() => fail('It took too long to cook.'), patience_ms)
    hand.postMessage(busy)
  }

  const done = (outcome: Outcome): void => {
    clearTimeout(clock)
    busy = null
    served(outcome)
    begin()
  }

  const fail = (message: string): void => {
    const number = busy?.number ?? count
    hand?.terminate()
    hand = null
    done({ number, ok: false, message })
  }

  const hired = (): Hand => {
    const fresh = hire()
    fresh.onmessage = ({ data }) => {
      if (busy && data.number === busy.number) done(data)
    }
    fresh.onerror = (event) => fail(event.message || 'The kitchen did not start.')
    return fresh
  }

  return {
    order: (order) => {
      next = { ...order, number: ++count }
      begin()
      return count
    },
    close: () => {
      clearTimeout(clock)
      hand?.terminate()
      hand = null
      next = null
      busy = null
    },
  }
}
