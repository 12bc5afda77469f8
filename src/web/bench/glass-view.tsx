import { useMemo, useRef } from 'react'
import type { Run } from '../../core/cook/index.ts'
import { describePot, glassPot } from '../../core/press/index.ts'
import { useWidth } from '../measure.ts'
import { Drawing } from './drawing.tsx'

interface GlassViewProps {
  readonly run: Run
  readonly time_s: number
  readonly height: number
  readonly prefix: string
}

/** The pot cut open at the cursor's moment, and the same in words. */
export function GlassView({ run, time_s, height, prefix }: GlassViewProps) {
  const place = useRef<HTMLDivElement>(null)
  const width = useWidth(place)
  const cursor_s = Math.round(time_s)
  const mark = useMemo(
    () => (width > 0 ? glassPot(run, { width, height, time_s: cursor_s, prefix }) : null),
    [run, cursor_s, width, height, prefix],
  )
  return (
    <figure className="glass-figure">
      <div className="glass-drawing" ref={place} style={{ minHeight: height }}>
        {mark && <Drawing mark={mark} />}
      </div>
      <details className="in-words">
        <summary>The pot in words</summary>
        <p>{describePot(run, cursor_s)}</p>
      </details>
    </figure>
  )
}
