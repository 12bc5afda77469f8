import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { Cooked } from '../cook/messages.ts'
import type { Dinner } from '../cook/use-cook.ts'
import type { Keep } from '../keep/keep.ts'
import type { Keeper } from '../keep/keeper.ts'
import { LightChoice } from '../light.tsx'
import { margin, useMedia, wide } from '../measure.ts'
import { type Dish, type Draft, startDish } from '../server/dishes.ts'
import { newsOf } from './announce.ts'
import { type Cursor, cursorAt, timeAsked_s, timeOf, withinAsked, wordsAt } from './cursor.ts'
import type { Aside, SheetHand } from './editor/editor.tsx'
import { CookedIn, Head } from './head.tsx'
import { PrintSheet } from './print-sheet.tsx'
import { blankReading, type Note, noteAt, type Reading, readingOf } from './reading.ts'
import { Said } from './said.tsx'
import { Sheet } from './sheet.tsx'
import { placedEdits, shiftOf } from './shift.ts'
import { UnderLid } from './under-lid.tsx'
import { usePace } from './use-pace.ts'
import type { KeptRevision } from './use-revision.ts'

interface BenchProps {
  readonly dish: Dish
  readonly title: string
  readonly keeper: Keeper
  readonly keep: Keep
  readonly dinner: Dinner
  readonly kept: KeptRevision
  readonly aside: Aside | null
  readonly onAside: (aside: Aside) => void
}

/** The bench of one dish: manuscript, glass pot and strip, all three on one cursor. */
export function Bench({ dish, title, keeper, keep, dinner, kept, aside, onAside }: BenchProps) {
  const { draft } = keep
  const { cooked, of } = dinner
  const isWide = useMedia(wide)
  const hasMargin = useMedia(margin)
  const hand = useRef<SheetHand | null>(null)
  const [cursor, setCursor] = useState<Cursor | null>(null)
  const [caret, setCaret] = useState<number | null>(null)
  const [looked, setLooked] = useState<string | null>(null)
  const [pointed, setPointed] = useState<string | null>(null)
  const [hovered, setHovered] = useLater<string | null>(null, 150)
  const [sentence, setSentence] = useState<{ words: string; undo: string | null } | null>(null)
  const [, go] = useLocation()

  const reading: Reading = useMemo(
    () => (cooked ? readingOf(cooked.recipe, findingsOf(cooked), of, draft.text) : blankReading),
    [cooked, of, draft.text],
  )
  const run = cooked?.run ?? null
  const time_s = run ? timeOf(run, cursor) : 0

  const moment = useMemo(() => {
    const asked = cooked && wordsAt(cooked.recipe, cooked.run, time_s)
    if (!asked) return null
    const shift = shiftOf(of, draft.text)
    return { words: shift.span(asked.words), step: shift.span(asked.step) }
  }, [cooked, time_s, of, draft.text])

  const atCaret = caret === null ? null : (noteAt(reading.notes, caret)?.key ?? null)
  const open = hovered ?? looked ?? atCaret
  const active = pointed ?? open

  const changeDraft = useCallback((next: Draft) => keeper.change(next), [keeper])
  const changeText = useCallback(
    (text: string) => {
      const now = keeper.state().draft
      keeper.change({ ...now, text })
      setSentence((said) => (said?.undo && said.undo !== text ? null : said))
    },
    [keeper],
  )

  // Another window's text goes on the sheet as an edit.
  useEffect(() => keeper.onShow((shown) => hand.current?.replace(shown.text)), [keeper])

  const moveTo = (to_s: number) => {
    if (run) setCursor(cursorAt(run, to_s))
  }

  const pace = usePace(run, time_s, moveTo)
  const moveByHand = (to_s: number) => {
    pace.stop()
    moveTo(to_s)
  }

  const onCaret = (at: number, byHand: boolean) => {
    setCaret(at)
    setLooked(null)
    if (!cooked || !byHand || of !== draft.text) return
    const asked_s = timeAsked_s(cooked.recipe, cooked.run, at)
    if (asked_s !== null && !withinAsked(cooked.run, time_s, asked_s)) moveByHand(asked_s)
  }

  const onWords = (at_s: number) => {
    const asked = cooked && wordsAt(cooked.recipe, cooked.run, at_s)
    if (asked) hand.current?.reveal(asked.words, false)
  }

  const onLook = (note: Note) => {
    setLooked(note.key)
    if (note.from !== null && note.to !== null) hand.current?.reveal({ from: note.from, to: note.to }, true)
  }

  const onCure = (note: Note) => {
    const { cure } = note.finding
    if (!cure || !hand.current) return
    const edits = placedEdits(cure, of, draft.text)
    if (!edits) {
      setSentence({ words: 'The words have changed since; the note will follow in a moment.', undo: null })
      return
    }
    hand.current.edit(edits)
    setSentence({ words: `Done: ${cure.label}.`, undo: keeper.state().draft.text })
  }

  const undoCure = () => {
    hand.current?.undo()
    setSentence(null)
  }

  const stepNote = (by: 1 | -1) => {
    const placed = reading.notes.filter((note) => note.from !== null)
    if (placed.length === 0) return
    const at = caret ?? 0
    const next =
      by === 1
        ? (placed.find((note) => note.from! > at) ?? placed[0])
        : (placed.filter((note) => note.from! < at).at(-1) ?? placed[placed.length - 1])
    onLook(next)
  }

  const startAnew = async () => {
    try {
      const fresh = await startDish(draft.text)
      go(`/dishes/${fresh.id}`)
    } catch (error) {
      setSentence({ words: (error as Error).message, undo: null })
    }
  }

  const { keep: keepRevision } = kept
  useKeepKey(useCallback(() => void keepRevision(), [keepRevision]))
  const news = useNews(reading.notes, of === draft.text)
  const failure = dinner.failure
    ? `The kitchen could not cook this text, and shows the last one it could. (${dinner.failure}) Nothing is lost; it tries again with the next change.`
    : dinner.late
      ? 'Still cooking this text; pot and strip show the one before it.'
      : null

  return (
    <div className="bench">
      <a className="skip" href="#moment">
        To the strip of time
      </a>
      <Head id={dish.id} title={title} place="bench" keep={keep} kept={kept}>
        <CookedIn
          draft={draft}
          plan={cooked?.plan ?? null}
          onChange={changeDraft}
          onSay={(words) => setSentence(words === null ? null : { words, undo: null })}
        />
      </Head>
      <Said
        id={dish.id}
        keep={keep}
        sentence={sentence?.words ?? kept.failure ?? failure}
        undo={sentence?.undo ? undoCure : null}
        onRead={keeper.readNotice}
        onNewDish={() => void startAnew()}
      />
      <main className="bench-main">
        <Sheet
          text={draft.text}
          aside={aside}
          onAside={onAside}
          reading={reading}
          moment={moment}
          active={active}
          open={open}
          hasMargin={hasMargin}
          hand={hand}
          onText={changeText}
          onCaret={onCaret}
          onHoverWords={setHovered}
          onHoverNote={setPointed}
          onLook={onLook}
          onCure={onCure}
          commands={{
            nextNote: () => stepNote(1),
            lastNote: () => stepNote(-1),
            cure: () => {
              const note = reading.notes.find((each) => each.key === open)
              if (note) onCure(note)
            },
            keep: () => void keepRevision(),
          }}
        />
        {run && (
          <UnderLid run={run} time_s={time_s} isWide={isWide} pace={pace} onTime={moveByHand} onWords={onWords} />
        )}
      </main>
      <p className="unseen" role="status">
        {news}
      </p>
      <footer className="foot">
        <span>
          <kbd>F8</kbd> next note, <kbd>{mod} .</kbd> do what it says, <kbd>{mod} S</kbd> keep this revision
        </span>
        <LightChoice />
      </footer>
      <PrintSheet title={title} draft={draft} dinner={dinner} kept={kept} time_s={time_s} />
    </div>
  )
}

/** That there is nothing to cook on an empty sheet goes without saying. */
const findingsOf = ({ recipe, findings }: Cooked) => (recipe.kind === 'empty' ? recipe.queries : findings)

const mod = /Mac|iP(?:hone|ad)/.test(navigator.userAgent) ? '⌘' : 'Ctrl'

/** The key for keeping works wherever the focus is; the editor has its own. */
function useKeepKey(keep: () => void): void {
  useEffect(() => {
    const key = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.key !== 's' || !(event.ctrlKey || event.metaKey)) return
      event.preventDefault()
      keep()
    }
    window.addEventListener('keydown', key)
    return () => window.removeEventListener('keydown', key)
  }, [keep])
}

/** A state that follows only when the hand has come to rest. */
function useLater<T>(first: T, ms: number): [T, (next: T) => void] {
  const [value, setValue] = useState(first)
  const clock = useRef<ReturnType<typeof setTimeout>>(undefined)
  const set = useCallback(
    (next: T) => {
      clearTimeout(clock.current)
      clock.current = setTimeout(() => setValue(next), ms)
    },
    [ms],
  )
  useEffect(() => () => clearTimeout(clock.current), [])
  return [value, set]
}

/** News of the notes for those who listen, once the hand has rested. */
function useNews(notes: readonly Note[], fresh: boolean): string {
  const told = useRef<readonly Note[]>([])
  const [news, setNews] = useState('')
  useEffect(() => {
    if (!fresh) return
    const clock = setTimeout(() => {
      const words = newsOf(told.current, notes)
      told.current = notes
      if (words) setNews(words)
    }, 1200)
    return () => clearTimeout(clock)
  }, [notes, fresh])
  return news
}
