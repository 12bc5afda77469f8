import { useCallback, useEffect, useRef, useState } from 'react'
import type { Run } from '../../core/cook/index.ts'
import { useMedia } from '../measure.ts'
import { endOf_s } from './cursor.ts'

/** Lets time run along the strip by itself. */
export interface Pace {
  /** False for those who asked for no motion. */
  readonly allowed: boolean
  readonly running: boolean
  readonly start: () => void
  readonly stop: () => void
}

/** The whole cook in this many seconds of looking. */
const whole_s = 24
const frame_ms = 50

export function usePace(run: Run | null, time_s: number, moveTo: (time_s: number) => void): Pace {
  const allowed = !useMedia('(prefers-reduced-motion: reduce)')
  const [running, setRunning] = useState(false)
  const latest = useRef({ run, time_s, moveTo })
  useEffect(() => {
    latest.current = { run, time_s, moveTo }
  })

  useEffect(() => {
    if (!running) return
    let last_ms = performance.now()
    const beat = setInterval(() => {
      const { run, time_s, moveTo } = latest.current
      const now_ms = performance.now()
      const end_s = run ? endOf_s(run) : 0
      // By the clock, not by the frame: a slow machine shows fewer moments, not a slower pot.
      const next_s = time_s + (end_s / whole_s) * ((now_ms - last_ms) / 1000)
      last_ms = now_ms
      moveTo(Math.min(next_s, end_s))
      if (next_s >= end_s) setRunning(false)
    }, frame_ms)
    return () => clearInterval(beat)
  }, [running])

  const start = useCallback(() => {
    const { run, time_s, moveTo } = latest.current
    // From the end there is nothing left to see: begin again.
    if (run && time_s >= endOf_s(run) - 1) moveTo(0)
    setRunning(true)
  }, [])
  const stop = useCallback(() => setRunning(false), [])
  return { allowed, running: running && allowed, start, stop }
}
