import { NoAnswer, Refused } from '../server/ask.ts'
import { type Dish, type Draft, dishOf, keepRevision, saveDraft } from '../server/dishes.ts'
import { copiesHere, forgetHere, keepHere } from './here.ts'
import { type Keep, type KeepEffect, type KeepEvent, step, type Theirs, type Trouble, unsent } from './keep.ts'
import { open } from './open.ts'

/** Keeps one dish: runs what `step` asks for and tells whoever listens. */
export interface Keeper {
  readonly id: string
  readonly state: () => Keep
  readonly listen: (heard: () => void) => () => void
  /** Told when another window's text has to go on the sheet. */
  readonly onShow: (show: (draft: Draft) => void) => () => void
  readonly change: (draft: Draft) => void
  readonly readNotice: () => void
  /** The dish as the server holds it has been read again. */
  readonly see: (dish: Dish) => void
  /** Browser events attached; the answer detaches them. */
  readonly attach: () => () => void
}

/**
 * Requests that outlive the page may hold 64 kB together, at up to 3 bytes a unit of text. A larger text that is cut
 * off waits on this device for the next visit.
 */
const outliving_units = 15_000

const keepers = new Map<string, Keeper>()

/** The dish's keeper: one a dish and window, so that leaving the bench and coming back loses no thread. */
export function keeperFor(dish: Dish): Keeper {
  const keeper = keepers.get(dish.id) ?? keeperOf(dish)
  keepers.set(dish.id, keeper)
  keeper.see(dish)
  return keeper
}

function keeperOf(dish: Dish): Keeper {
  const id = dish.id
  const writer = crypto.randomUUID?.() ?? Math.random().toString(36).slice(2)
  const opening = open(dish, copiesHere(id))
  let keep = opening.keep
  let timer: ReturnType<typeof setTimeout> | undefined
  const listeners = new Set<() => void>()
  const shows = new Set<(draft: Draft) => void>()

  const happen = (event: KeepEvent): void => {
    const next = step(keep, event)
    keep = next.keep
    for (const effect of next.effects) run(effect)
    for (const heard of listeners) heard()
  }

  const run = (effect: KeepEffect): void => {
    switch (effect.type) {
      case 'keep-here': {
        const ok = keepHere(id, writer, effect.draft, effect.base, Date.now())
        keep = step(keep, { type: 'kept-here', ok }).keep
        return
      }
      case 'forget-here':
        forgetHere(id, writer)
        return
      case 'wait':
        clearTimeout(timer)
        timer = setTimeout(() => happen({ type: 'due' }), effect.ms)
        return
      case 'send':
        void send(effect.draft, effect.base)
        return
      case 'keep-theirs':
        void keepTheirs(effect.current)
        return
      case 'show':
        for (const show of shows) show(effect.draft)
    }
  }

  const send = async (draft: Draft, base: number): Promise<void> => {
    try {
      const keepalive = draft.text.length <= outliving_units
      const answer = await saveDraft(id, draft, { version: base, writer, keepalive })
      happen(
        answer.kind === 'saved'
          ? { type: 'saved', version: answer.version }
          : { type: 'conflict', current: answer.current, own: answer.current.writer === writer },
      )
    } catch (error) {
      happen({ type: 'failed', trouble: troubleOf(error) })
    }
  }

  const keepTheirs = async (current: Theirs): Promise<void> => {
    try {
      const kept = await keepRevision(id, current.text, 'Written in another window at the same time.')
      happen({ type: 'theirs-kept', current, revision: kept.number })
    } catch (error) {
      happen({ type: 'failed', trouble: troubleOf(error) })
    }
  }

  const look = async (): Promise<void> => {
    if (keep.sent || unsent(keep)) return
    const seen = await dishOf(id).catch(() => null)
    if (seen) happen({ type: 'seen', current: seen })
  }

  const keepOlder = async (): Promise<void> => {
    for (const copy of opening.older) {
      const kept = await keepRevision(id, copy.draft.text, 'Typed on this device and not sent at the time.').catch(
        () => null,
      )
      if (!kept) continue
      forgetHere(id, copy.writer)
      happen({ type: 'older-kept', revision: kept.number })
    }
  }

  for (const copy of opening.spent) forgetHere(id, copy.writer)
  for (const effect of opening.effects) run(effect)
  void keepOlder()

  return {
    id,
    state: () => keep,
    listen: (heard) => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
    onShow: (show) => {
      shows.add(show)
      return () => shows.delete(show)
    },
    change: (draft) => happen({ type: 'changed', draft }),
    see: (dish) => happen({ type: 'seen', current: dish }),
    readNotice: () => happen({ type: 'read-notice' }),
    attach: () => {
      const awake = () => {
        happen({ type: 'awake' })
        void look()
      }
      const turned = () => (document.visibilityState === 'hidden' ? happen({ type: 'leaving' }) : awake())
      const leaving = () => happen({ type: 'leaving' })
      const warn = (event: BeforeUnloadEvent) => {
        // Only when the text is nowhere but on this page.
        if (unsent(keep) && !keep.keptHere) event.preventDefault()
      }
      window.addEventListener('online', awake)
      window.addEventListener('focus', awake)
      window.addEventListener('pagehide', leaving)
      window.addEventListener('beforeunload', warn)
      document.addEventListener('visibilitychange', turned)
      return () => {
        leaving()
        window.removeEventListener('online', awake)
        window.removeEventListener('focus', awake)
        window.removeEventListener('pagehide', leaving)
        window.removeEventListener('beforeunload', warn)
        document.removeEventListener('visibilitychange', turned)
      }
    },
  }
}

function troubleOf(error: unknown): Trouble {
  if (error instanceof NoAnswer) return { kind: 'no-answer' }
  if (!(error instanceof Refused)) return { kind: 'fault', message: String(error), cure: null }
  if (error.status === 404) return { kind: 'gone' }
  const kind = error.status >= 500 ? 'fault' : 'refused'
  return { kind, message: error.message, cure: error.cure }
}
