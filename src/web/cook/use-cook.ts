import { useEffect, useRef, useState } from 'react'
import type { Draft } from '../server/dishes.ts'
import { type Hand, type Kitchen, openKitchen } from './kitchen.ts'
import type { Cooked } from './messages.ts'

export interface Dinner {
  /** The latest run that came back; its spans count into `of`. */
  readonly cooked: Cooked | null
  readonly of: string
  /** Why the latest text could not be cooked; null when it could. */
  readonly failure: string | null
  /** The latest text is taking long. */
  readonly late: boolean
}

const late_ms = 2500

/** Long enough to take a burst of keys as one, short enough that the strip follows the hand. */
const breath_ms = 60

const fresh = (): Hand =>
  new Worker(new URL('./cook.worker.ts', import.meta.url), { type: 'module', name: 'kitchen' }) as unknown as Hand

let warm: Hand | null = null

/** Lights the stove while the dish is still being fetched. */
export function warmKitchen(): void {
  if (warm) return
  const hand = fresh()
  // One that does not even start is not waited for: the first order tries again and says so if it must.
  hand.onerror = () => {
    if (warm === hand) warm = null
  }
  warm = hand
}

function hire(): Hand {
  const hand = warm ?? fresh()
  warm = null
  return hand
}

/** Cooks the draft apart from the page whenever it changes; the last good result stands until the next one. */
export function useCook(draft: Draft): Dinner {
  const [dinner, setDinner] = useState<Dinner>({ cooked: null, of: '', failure: null, late: false })
  const kitchen = useRef<Kitchen | null>(null)
  const texts = useRef(new Map<number, string>())
  const lateness = useRef<ReturnType<typeof setTimeout>>(undefined)

  useEffect(() => {
    kitchen.current = openKitchen(hire, (outcome) => {
      const of = texts.current.get(outcome.number) ?? ''
      for (const number of texts.current.keys()) if (number <= outcome.number) texts.current.delete(number)
      setDinner((before) =>
        outcome.ok
          ? { cooked: outcome.cooked, of, failure: null, late: false }
          : { ...before, failure: outcome.message, late: false },
      )
      if (texts.current.size === 0) clearTimeout(lateness.current)
    })
    return () => {
      clearTimeout(lateness.current)
      kitchen.current?.close()
    }
  }, [])

  const first = useRef(true)
  useEffect(() => {
    const { text, pot, altitude_m } = draft
    const order = () => {
      const number = kitchen.current?.order({ text, pot, altitude_m })
      if (number !== undefined) texts.current.set(number, text)
      clearTimeout(lateness.current)
      lateness.current = setTimeout(() => setDinner((before) => ({ ...before, late: before.cooked !== null })), late_ms)
    }
    if (first.current) {
      first.current = false
      order()
      return
    }
    const clock = setTimeout(order, breath_ms)
    return () => clearTimeout(clock)
  }, [draft])

  return dinner
}
