import { type KeyboardEvent, type PointerEvent, useMemo, useRef } from 'react'
import type { Run } from '../../core/cook/index.ts'
import { momentSentence, type StripOptions, strip, stripScale } from '../../core/press/index.ts'
import { useWidth } from '../measure.ts'
import { endOf_s } from './cursor.ts'
import { Drawing } from './drawing.tsx'

interface StripViewProps {
  readonly run: Run
  readonly time_s: number
  readonly height: number
  readonly compact?: boolean
  readonly prefix: string
  readonly describedBy?: string
  readonly onTime: (time_s: number) => void
  /** A band was pressed, or Enter on the cursor: show the words that ask for it. */
  readonly onWords: (time_s: number) => void
}

const bandHeight = 18

/** The strip of time with the one cursor: a slider for hand, finger and keys. */
export function StripView(props: StripViewProps) {
  const { run, time_s, height, compact = false, prefix, describedBy, onTime, onWords } = props
  const place = useRef<HTMLDivElement>(null)
  const width = useWidth(place)
  const pressed = useRef<{ x: number; y: number } | null>(null)
  const options: StripOptions | null = width > 0 ? { width, height, compact, prefix } : null
  const cursor_s = Math.round(time_s)
  // biome-ignore lint/correctness/useExhaustiveDependencies: options are made of width, height, compact and prefix
  const mark = useMemo(
    () => (options ? strip(run, { ...options, cursor_s }) : null),
    [run, cursor_s, width, height, compact, prefix],
  )
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  const scale = useMemo(() => (options ? stripScale(run, options) : null), [run, width, height, compact, prefix])
  const end_s = endOf_s(run)

  const timeUnder = (event: PointerEvent<HTMLElement>): number => {
    const left = place.current?.getBoundingClientRect().left ?? 0
    return scale ? Math.min(end_s, Math.max(0, scale.time_s(event.clientX - left))) : 0
  }

  const down = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    pressed.current = { x: event.clientX, y: event.clientY }
    onTime(timeUnder(event))
  }

  const move = (event: PointerEvent<HTMLElement>) => {
    if (pressed.current) onTime(timeUnder(event))
  }

  const up = (event: PointerEvent<HTMLElement>) => {
    const from = pressed.current
    pressed.current = null
    if (!from || Math.abs(event.clientX - from.x) > 4) return
    const top = place.current?.getBoundingClientRect().top ?? 0
    if (!compact && event.clientY - top <= bandHeight + 2) onWords(timeUnder(event))
  }

  const key = (event: KeyboardEvent<HTMLElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const to = timeByKey(event.key, run, time_s)
    if (to !== null) onTime(Math.min(end_s, Math.max(0, to)))
    else if (event.key === 'Enter') onWords(time_s)
    else return
    event.preventDefault()
  }

  return (
    <div className="strip-drawing" ref={place} style={{ minHeight: height }}>
      {mark && <Drawing mark={mark} />}
      {scale && (
        <div
          className="strip-cursor"
          style={{ left: scale.left, width: Math.max(0, scale.right - scale.left) }}
          role="slider"
          tabIndex={0}
          aria-label="Moment"
          aria-valuemin={0}
          aria-valuemax={Math.round(end_s / 60)}
          aria-valuenow={Math.round(time_s / 60)}
          aria-valuetext={momentSentence(run, cursor_s)}
          aria-describedby={describedBy}
          onPointerDown={down}
          onPointerMove={move}
          onPointerUp={up}
          onPointerCancel={() => {
            pressed.current = null
          }}
          onKeyDown={key}
        />
      )}
    </div>
  )
}

/** Arrows move a minute, pages to the next or last band of work. */
function timeByKey(key: string, run: Run, time_s: number): number | null {
  const minute = Math.round(time_s / 60)
  if (key === 'ArrowRight' || key === 'ArrowUp') return (minute + 1) * 60
  if (key === 'ArrowLeft' || key === 'ArrowDown') return (minute - 1) * 60
  if (key === 'Home') return 0
  if (key === 'End') return endOf_s(run)
  const starts = run.phases.map((phase) => phase.start_s)
  if (key === 'PageUp') return starts.find((start) => start > time_s + 1) ?? endOf_s(run)
  if (key === 'PageDown') return starts.filter((start) => start < time_s - 1).at(-1) ?? 0
  return null
}
