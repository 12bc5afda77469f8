import { useId, useState } from 'react'
import type { Run } from '../../core/cook/index.ts'
import { describeStrip, momentSentence } from '../../core/press/index.ts'
import { useWindowHeight } from '../measure.ts'
import { GlassView } from './glass-view.tsx'
import { ReadingsView } from './readings-view.tsx'
import { StripView } from './strip-view.tsx'
import type { Pace } from './use-pace.ts'

interface UnderLidProps {
  readonly run: Run
  readonly time_s: number
  readonly isWide: boolean
  readonly pace: Pace
  readonly onTime: (time_s: number) => void
  readonly onWords: (time_s: number) => void
}

/** Pot, readings and strip: beside and below the sheet where there is room, in a bar at the foot where there is not. */
export function UnderLid(props: UnderLidProps) {
  return props.isWide ? <Beside {...props} /> : <Bar {...props} />
}

/** What head, strip and readings take of a window; the pot has the rest. */
const others_px = 556

function Beside({ run, time_s, pace, onTime, onWords }: UnderLidProps) {
  const words = useId()
  const potHeight = Math.min(470, Math.max(290, useWindowHeight() - others_px))
  return (
    <>
      <section className="glass" aria-label="Under the lid">
        <GlassView run={run} time_s={time_s} height={potHeight} prefix="pot" />
        <ReadingsView run={run} time_s={time_s} />
      </section>
      <section className="strip-place" id="moment" aria-label="Strip of time">
        <StripView
          run={run}
          time_s={time_s}
          height={244}
          prefix="strip"
          describedBy={words}
          onTime={onTime}
          onWords={onWords}
        />
        <StripWords id={words} run={run} pace={pace} />
      </section>
    </>
  )
}

function Bar({ run, time_s, pace, onTime, onWords }: UnderLidProps) {
  const [open, setOpen] = useState(false)
  const potHeight = Math.min(320, Math.max(200, useWindowHeight() - 500))
  const words = useId()
  const panel = useId()
  return (
    <section className={open ? 'bar bar-open' : 'bar'} id="moment" aria-label="Under the lid">
      {open ? (
        <div className="bar-panel" id={panel}>
          <GlassView run={run} time_s={time_s} height={potHeight} prefix="pot" />
          <ReadingsView run={run} time_s={time_s} />
          <StripView
            run={run}
            time_s={time_s}
            height={236}
            prefix="strip"
            describedBy={words}
            onTime={onTime}
            onWords={(at_s) => {
              setOpen(false)
              onWords(at_s)
            }}
          />
          <StripWords id={words} run={run} pace={pace} />
        </div>
      ) : (
        <>
          <StripView run={run} time_s={time_s} height={26} compact prefix="bar" onTime={onTime} onWords={onWords} />
          <ReadingsView run={run} time_s={time_s} bare />
        </>
      )}
      <p className="bar-foot">
        {/* Opened, the strip says it itself. */}
        <span className="aside">{open ? '' : momentSentence(run, Math.round(time_s))}</span>{' '}
        <button
          type="button"
          className="do"
          aria-expanded={open}
          aria-controls={open ? panel : undefined}
          onClick={() => setOpen(!open)}
        >
          {open ? 'Close the pot' : 'Open the pot'}
        </button>
      </p>
    </section>
  )
}

function StripWords({ id, run, pace }: { id: string; run: Run; pace: Pace }) {
  return (
    <div className="strip-acts">
      {pace.allowed && run.phases.length > 0 && (
        <button type="button" className="in-words-act" onClick={pace.running ? pace.stop : pace.start}>
          {pace.running ? 'Stop here' : 'Let it run'}
        </button>
      )}
      <details className="in-words">
        <summary>The strip in words</summary>
        <p id={id}>{describeStrip(run)}</p>
      </details>
    </div>
  )
}
