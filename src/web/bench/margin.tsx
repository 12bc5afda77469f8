import { useLayoutEffect, useRef, useState } from 'react'
import { NoteText } from './note.tsx'
import type { Note } from './reading.ts'
import { stacked } from './stack.ts'

interface MarginProps {
  readonly notes: readonly Note[]
  readonly active: string | null
  readonly open: string | null
  /** Upper edge of a note's words from the top of the sheet; null when they are not there. */
  readonly levelOf: (note: Note) => number
  /** Changes whenever the lines of the sheet may have moved. */
  readonly moved: number
  readonly onLook: (note: Note) => void
  readonly onCure: (note: Note) => void
  readonly onHover: (key: string | null) => void
}

interface Place {
  readonly level: number
  readonly top: number
}

const gap_px = 10
/** A note further than this below its words is hard to follow back: hints then say only their titles. */
const drift_px = 72

/** Notes beside their words, pushed down where they would collide, each with a thin line to the level of its words. */
export function Margin({ notes, active, open, levelOf, moved, onLook, onCure, onHover }: MarginProps) {
  const list = useRef<HTMLOListElement>(null)
  const elements = useRef(new Map<string, HTMLElement>())
  const [places, setPlaces] = useState<ReadonlyMap<string, Place>>(new Map())
  const [height, setHeight] = useState(0)

  // Heights are only known once the notes stand, so they are set, measured and moved before the screen shows them.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `moved` and `open` say that levels or heights changed
  useLayoutEffect(() => {
    const levels = notes.map(levelOf)
    const stack = (terse: boolean) => {
      list.current?.toggleAttribute('data-terse', terse)
      const wanted = notes.map((note, i) => ({
        level: levels[i],
        height: elements.current.get(note.key)?.offsetHeight ?? 0,
      }))
      return { wanted, tops: stacked(wanted, gap_px) }
    }
    const full = stack(false)
    const drift = Math.max(0, ...full.tops.map((top, i) => top - levels[i]))
    const { wanted, tops } = drift > drift_px ? stack(true) : full
    const next = new Map(notes.map((note, i) => [note.key, { level: levels[i], top: tops[i] }]))
    setPlaces((before) => (same(before, next) ? before : next))
    setHeight(notes.length === 0 ? 0 : tops[notes.length - 1] + wanted[notes.length - 1].height)
  }, [notes, levelOf, moved, open])

  return (
    <aside className="margin" aria-label="Notes" style={{ minHeight: height }}>
      <ol ref={list}>
        {notes.map((note) => {
          const place = places.get(note.key)
          return (
            <li key={note.key} style={{ transform: `translateY(${place?.top ?? 0}px)` }}>
              {place && <Leader note={note} place={place} active={note.key === active} />}
              <NoteText
                note={note}
                active={note.key === active}
                open={note.key === open}
                onLook={onLook}
                onCure={onCure}
                onHover={onHover}
                place={(element) => {
                  if (element) elements.current.set(note.key, element)
                  else elements.current.delete(note.key)
                }}
              />
            </li>
          )
        })}
      </ol>
    </aside>
  )
}

const tick = 28

/** A hairline from the level of the words to the note. */
function Leader({ note, place, active }: { note: Note; place: Place; active: boolean }) {
  const fall = place.top - place.level
  const middle = 10
  const points =
    Math.abs(fall) < 2
      ? `0,${middle} ${tick},${middle}`
      : `0,${middle - fall} 8,${middle - fall} ${tick - 8},${middle} ${tick},${middle}`
  return (
    <svg className={`leader leader-${note.finding.severity}${active ? ' leader-on' : ''}`} aria-hidden="true">
      <polyline points={points} />
    </svg>
  )
}

function same(a: ReadonlyMap<string, Place>, b: ReadonlyMap<string, Place>): boolean {
  if (a.size !== b.size) return false
  for (const [key, place] of b) {
    const old = a.get(key)
    if (!old || Math.abs(old.top - place.top) > 0.5 || Math.abs(old.level - place.level) > 0.5) return false
  }
  return true
}
