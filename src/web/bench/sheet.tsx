import { lazy, type RefObject, Suspense, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { createPortal } from 'react-dom'
import type { Span } from '../../core/findings/index.ts'
import type { Aside, Commands, SheetHand } from './editor/editor.tsx'
import type { Folds, Shown } from './editor/marks.ts'
import { Margin } from './margin.tsx'
import { NoteText } from './note.tsx'
import { Prose } from './prose.tsx'
import type { Note, Reading } from './reading.ts'

// The editor is the heaviest part of the page and is fetched apart; until it stands the same words can be read.
export const fetchEditor = () => import('./editor/editor.tsx')
const Editor = lazy(() => fetchEditor().then(({ Editor }) => ({ default: Editor })))

interface SheetProps {
  readonly text: string
  readonly aside: Aside | null
  readonly onAside: (aside: Aside) => void
  readonly reading: Reading
  readonly moment: { readonly words: Span; readonly step: Span } | null
  readonly active: string | null
  readonly open: string | null
  readonly hasMargin: boolean
  readonly hand: RefObject<SheetHand | null>
  readonly onText: (text: string) => void
  readonly onCaret: (at: number, byHand: boolean) => void
  readonly onHoverWords: (key: string | null) => void
  readonly onHoverNote: (key: string | null) => void
  readonly onLook: (note: Note) => void
  readonly onCure: (note: Note) => void
  readonly commands: Commands
}

/** The manuscript's sheet: words on the left, what is to be said about them on the right, or under them. */
export function Sheet(props: SheetProps) {
  const { text, aside, onAside, reading, moment, active, open, hasMargin, hand, onLook, onCure } = props
  const sheet = useRef<HTMLElement>(null)
  const [moved, setMoved] = useState(0)
  const [ready, setReady] = useState(false)
  const { folds, places } = useFolds()

  const onMoved = useMoved(setMoved)
  const onReady = useCallback(
    (ready: SheetHand | null) => {
      if (!ready && hand.current) onAside(hand.current.aside())
      hand.current = ready
      setReady(ready !== null)
    },
    [hand, onAside],
  )

  const shown: Shown = useMemo(
    () => ({ reading, moment, active, folded: hasMargin ? null : folds }),
    [reading, moment, active, hasMargin, folds],
  )

  const levelOf = useCallback(
    (note: Note): number => {
      const top = sheet.current?.getBoundingClientRect().top ?? 0
      if (!hand.current) return 0
      return Math.max(0, hand.current.top(note.from ?? 0) - top - paddingOf(sheet.current))
    },
    [hand],
  )

  // A folded note that grows or shrinks moves the lines under it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are what makes it grow
  useEffect(() => {
    if (!hasMargin) hand.current?.measure()
  }, [hand, places, reading, open, hasMargin])

  return (
    <section className={`sheet${hasMargin ? '' : ' sheet-narrow'}`} aria-label="Manuscript" ref={sheet}>
      <Suspense fallback={<Prose text={text} />}>
        <Editor
          text={text}
          aside={aside}
          shown={shown}
          onText={props.onText}
          onCaret={props.onCaret}
          onMoved={onMoved}
          onHover={props.onHoverWords}
          onReady={onReady}
          commands={props.commands}
        />
      </Suspense>
      {hasMargin && ready && (
        <Margin
          notes={reading.notes}
          active={active}
          open={open}
          levelOf={levelOf}
          moved={moved}
          onLook={onLook}
          onCure={onCure}
          onHover={props.onHoverNote}
        />
      )}
      {!hasMargin &&
        reading.notes.map((note) => {
          const place = places.get(note.key)
          return (
            place &&
            createPortal(
              <NoteText
                note={note}
                active={note.key === active}
                open={note.key === open}
                onLook={onLook}
                onCure={onCure}
              />,
              place,
              note.key,
            )
          )
        })}
    </section>
  )
}

const paddingOf = (element: HTMLElement | null): number =>
  element ? Number.parseFloat(getComputedStyle(element).paddingTop) || 0 : 0

/** Many small moves a frame become one. */
function useMoved(setMoved: (next: (moved: number) => number) => void): () => void {
  const frame = useRef(0)
  useEffect(() => () => cancelAnimationFrame(frame.current), [])
  return useCallback(() => {
    cancelAnimationFrame(frame.current)
    frame.current = requestAnimationFrame(() => setMoved((moved) => moved + 1))
  }, [setMoved])
}

/** The places under the lines that the editor hands out for folded notes. */
function useFolds(): { folds: Folds; places: ReadonlyMap<string, HTMLElement> } {
  const [places, setPlaces] = useState<ReadonlyMap<string, HTMLElement>>(new Map())
  const folds = useMemo<Folds>(
    () => ({
      // The editor calls in the middle of its own update: the page follows in a moment of its own.
      opened: (key, place) => queueMicrotask(() => setPlaces((now) => new Map(now).set(key, place))),
      closed: (key, place) =>
        queueMicrotask(() =>
          setPlaces((now) => {
            if (now.get(key) !== place) return now
            const next = new Map(now)
            next.delete(key)
            return next
          }),
        ),
    }),
    [],
  )
  return { folds, places }
}
