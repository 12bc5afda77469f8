import { useCallback, useEffect, useState } from 'react'
import { NoAnswer, Refused } from '../server/ask.ts'
import { type Dish, keepRevision, revisionOf } from '../server/dishes.ts'

/** The latest kept revision, and whether the sheet still says the same. */
export interface KeptRevision {
  readonly number: number | null
  /** Null while the revision's text is not known yet. */
  readonly changed: boolean | null
  readonly busy: boolean
  readonly failure: string | null
  /** Keeps what stands on the sheet now. */
  readonly keep: (note?: string) => Promise<void>
}

export function useRevision(dish: Dish, text: string): KeptRevision {
  const [latest, setLatest] = useState<{ number: number | null; text: string | null }>({
    number: dish.revision?.number ?? null,
    text: null,
  })
  const [busy, setBusy] = useState(false)
  const [failure, setFailure] = useState<string | null>(null)

  useEffect(() => {
    const number = dish.revision?.number
    if (number === undefined) return
    let left = false
    revisionOf(dish.id, number).then(
      (revision) => {
        // A revision kept in the meantime is newer than this answer.
        if (!left) setLatest((now) => (now.number === number ? { number, text: revision.text } : now))
      },
      () => undefined,
    )
    return () => {
      left = true
    }
  }, [dish])

  const keep = useCallback(
    async (note?: string) => {
      setBusy(true)
      try {
        const kept = await keepRevision(dish.id, text, note)
        setLatest({ number: kept.number, text })
        setFailure(null)
      } catch (error) {
        setFailure(sentenceOf(error))
      } finally {
        setBusy(false)
      }
    },
    [dish.id, text],
  )

  return {
    number: latest.number,
    changed: latest.number === null ? true : latest.text === null ? null : latest.text !== text,
    busy,
    failure,
    keep,
  }
}

function sentenceOf(error: unknown): string {
  if (error instanceof NoAnswer)
    return 'The revision is not kept: the server does not answer. The text itself is kept on this device.'
  if (error instanceof Refused) return `The revision is not kept. ${error.message} ${error.cure ?? ''}`
  return `The revision is not kept. ${String(error)}`
}
