import type { Draft } from '../server/dishes.ts'

// How a text comes to be kept: a pure step from state and event to the next state and the things to do. Whatever
// is typed is on this device at once; the server follows. Nothing here can lose text: `draft` is only ever replaced
// when it equals what the server holds.

export interface Keep {
  /** What stands on the sheet. */
  readonly draft: Draft
  /** The server's version that `draft` grew from. */
  readonly base: number
  /** What the server is known to hold at `base`. */
  readonly held: Draft
  /** On its way; null when nothing is. */
  readonly sent: Draft | null
  readonly trouble: Trouble | null
  /** Failed sendings in a row. */
  readonly tries: number
  /** False when this device refuses to keep a copy. */
  readonly keptHere: boolean
  readonly notice: Notice | null
}

export type Trouble =
  | { readonly kind: 'no-answer' }
  /** The server's own fault; worth another try. */
  | { readonly kind: 'fault'; readonly message: string; readonly cure: string | null }
  /** No second try will help before the text changes. */
  | { readonly kind: 'refused'; readonly message: string; readonly cure: string | null }
  | { readonly kind: 'gone' }

export type Notice =
  /** Text of this device that had not reached the server, put back on the sheet. */
  | { readonly kind: 'restored' }
  /** Somebody else wrote meanwhile; their text is this revision. */
  | { readonly kind: 'theirs-kept'; readonly revision: number }
  /** An older unsent text of this device is this revision. */
  | { readonly kind: 'older-kept'; readonly revision: number }
  /** Nothing of ours was unsent, so the other window's text was taken over. */
  | { readonly kind: 'taken-over' }

export type Theirs = Draft & { readonly version: number }

export type KeepEvent =
  | { readonly type: 'changed'; readonly draft: Draft }
  | { readonly type: 'due' }
  | { readonly type: 'saved'; readonly version: number }
  /** The server holds a newer draft; `own` when this window wrote it and the answer got lost on the way. */
  | { readonly type: 'conflict'; readonly current: Theirs; readonly own: boolean }
  | { readonly type: 'theirs-kept'; readonly current: Theirs; readonly revision: number | null }
  | { readonly type: 'failed'; readonly trouble: Trouble }
  | { readonly type: 'seen'; readonly current: Theirs }
  | { readonly type: 'older-kept'; readonly revision: number }
  | { readonly type: 'awake' }
  | { readonly type: 'leaving' }
  | { readonly type: 'kept-here'; readonly ok: boolean }
  | { readonly type: 'read-notice' }

export type KeepEffect =
  | { readonly type: 'keep-here'; readonly draft: Draft; readonly base: number }
  | { readonly type: 'forget-here' }
  | { readonly type: 'send'; readonly draft: Draft; readonly base: number }
  /** Sets the one timer anew; its end is the event `due`. */
  | { readonly type: 'wait'; readonly ms: number }
  | { readonly type: 'keep-theirs'; readonly current: Theirs }
  /** Put this on the sheet, as an edit that can be undone. */
  | { readonly type: 'show'; readonly draft: Draft }

export interface Step {
  readonly keep: Keep
  readonly effects: readonly KeepEffect[]
}

/** Pause in typing after which the server is told. */
export const pause_ms = 600

/** 0.5 s, 1 s, 2 s … at most 15 s between tries. */
export const patience_ms = (tries: number): number => Math.min(15_000, 500 * 2 ** Math.max(0, tries - 1))

export const sameDraft = (a: Draft, b: Draft): boolean =>
  a.text === b.text && a.pot === b.pot && a.altitude_m === b.altitude_m

export const unsent = (keep: Keep): boolean => !sameDraft(keep.draft, keep.held)

const retryable = (trouble: Trouble | null): boolean => trouble?.kind === 'no-answer' || trouble?.kind === 'fault'

const still = (keep: Keep): Step => ({ keep, effects: [] })

export function step(keep: Keep, event: KeepEvent): Step {
  switch (event.type) {
    case 'changed':
      return changed(keep, event.draft)
    case 'due':
    case 'leaving':
      if (keep.sent || !unsent(keep) || keep.trouble?.kind === 'gone') return still(keep)
      return {
        keep: { ...keep, sent: keep.draft },
        effects: [{ type: 'send', draft: keep.draft, base: keep.base }],
      }
    case 'saved':
      return settled({ ...keep, held: keep.sent ?? keep.held, base: event.version })
    case 'conflict':
      // Same text: the other window only differs in where it cooks, and there is nothing to keep for it.
      if (event.own || event.current.text === keep.draft.text || event.current.text === keep.held.text)
        return settled({ ...keep, held: draftOf(event.current), base: event.current.version })
      return { keep, effects: [{ type: 'keep-theirs', current: event.current }] }
    case 'theirs-kept': {
      const notice: Notice | null =
        event.revision === null ? keep.notice : { kind: 'theirs-kept', revision: event.revision }
      return settled({ ...keep, held: draftOf(event.current), base: event.current.version, notice })
    }
    case 'failed':
      return failed(keep, event.trouble)
    case 'seen':
      if (keep.sent || unsent(keep) || event.current.version <= keep.base) return still(keep)
      return takenOver(keep, event.current)
    case 'older-kept':
      return still({ ...keep, notice: { kind: 'older-kept', revision: event.revision } })
    case 'awake':
      return keep.sent || !retryable(keep.trouble) ? still(keep) : { keep, effects: [{ type: 'wait', ms: 0 }] }
    case 'kept-here':
      return keep.keptHere === event.ok ? still(keep) : still({ ...keep, keptHere: event.ok })
    case 'read-notice':
      return still({ ...keep, notice: null })
  }
}

const draftOf = ({ text, pot, altitude_m }: Theirs): Draft => ({ text, pot, altitude_m })

function changed(keep: Keep, draft: Draft): Step {
  if (sameDraft(keep.draft, draft)) return still(keep)
  const next: Keep = {
    ...keep,
    draft,
    trouble: keep.trouble?.kind === 'refused' ? null : keep.trouble,
    notice: keep.notice?.kind === 'taken-over' ? null : keep.notice,
  }
  const effects: KeepEffect[] = [{ type: 'keep-here', draft, base: keep.base }]
  // A retry already has its own clock: typing must not keep putting it off.
  if (!keep.sent && !retryable(keep.trouble)) effects.push({ type: 'wait', ms: pause_ms })
  return { keep: next, effects }
}

/** The server holds `held` at `base` now: forget the copy here, or send what was typed meanwhile. */
function settled(keep: Keep): Step {
  const next: Keep = { ...keep, sent: null, trouble: null, tries: 0 }
  if (!unsent(next)) return { keep: next, effects: [{ type: 'forget-here' }] }
  return {
    keep: next,
    effects: [
      { type: 'keep-here', draft: next.draft, base: next.base },
      { type: 'wait', ms: pause_ms },
    ],
  }
}

function failed(keep: Keep, trouble: Trouble): Step {
  const tries = keep.tries + 1
  const next: Keep = { ...keep, sent: null, trouble, tries }
  const again: KeepEffect[] = retryable(trouble) ? [{ type: 'wait', ms: patience_ms(tries) }] : []
  return { keep: next, effects: again }
}

function takenOver(keep: Keep, current: Theirs): Step {
  const draft = draftOf(current)
  const shown = !sameDraft(draft, keep.draft)
  return {
    keep: {
      ...keep,
      draft,
      held: draft,
      base: current.version,
      notice: shown && draft.text !== keep.draft.text ? { kind: 'taken-over' } : keep.notice,
    },
    effects: shown ? [{ type: 'show', draft }] : [],
  }
}
