import { useEffect, useState } from 'react'
import { createPortal, flushSync } from 'react-dom'
import { strip, totalSentence } from '../../core/press/index.ts'
import type { Dinner } from '../cook/use-cook.ts'
import type { Draft } from '../server/dishes.ts'
import { altitudeWords } from './altitude.ts'
import { Drawing } from './drawing.tsx'
import { Prose } from './prose.tsx'
import { kindsOf } from './reading.ts'
import { ReadingsView } from './readings-view.tsx'
import { revisionWords } from './standing.ts'
import type { KeptRevision } from './use-revision.ts'

interface PrintSheetProps {
  readonly title: string
  readonly draft: Draft
  readonly dinner: Dinner
  readonly kept: KeptRevision
  readonly time_s: number
}

/** A page worth filing: the manuscript with its notes, and the strip. Made when the printer asks for it. */
export function PrintSheet(props: PrintSheetProps) {
  const printing = usePrinting()
  return printing ? createPortal(<Page {...props} />, document.body) : null
}

function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false)
  useEffect(() => {
    // The browser takes the page as it stands when the event returns.
    const before = () => flushSync(() => setPrinting(true))
    const after = () => setPrinting(false)
    window.addEventListener('beforeprint', before)
    window.addEventListener('afterprint', after)
    return () => {
      window.removeEventListener('beforeprint', before)
      window.removeEventListener('afterprint', after)
    }
  }, [])
  return printing
}

const width = 660

function Page({ draft, dinner, kept, time_s }: PrintSheetProps) {
  const { cooked, of } = dinner
  const fresh = cooked && of === draft.text ? cooked : null
  const findings = fresh?.findings ?? []
  const whole = findings.filter((finding) => finding.span === null)
  const note = (finding: (typeof findings)[number], key: number) => (
    <p key={key} className={`print-note note-${finding.severity}`}>
      <b>{finding.title}</b> {finding.message}
    </p>
  )
  return (
    <article className="print-sheet">
      {whole.length > 0 && <div className="print-whole">{whole.map(note)}</div>}
      <Prose
        text={draft.text}
        kinds={fresh ? kindsOf(fresh.recipe) : undefined}
        beside={(from, to) => (
          <div className="print-notes">
            {findings.filter(({ span }) => span && span.from >= from && span.from <= to).map(note)}
          </div>
        )}
      />
      {fresh && (
        <section className="print-strip">
          <Drawing mark={strip(fresh.run, { width, height: 250, cursor_s: Math.round(time_s), prefix: 'print' })} />
          <ReadingsView run={fresh.run} time_s={time_s} />
        </section>
      )}
      <footer className="print-foot">
        {revisionWords(kept.number, kept.changed)}
        {fresh && (
          <>
            , cooked in a {fresh.plan.pot.name} at {altitudeWords(fresh.plan.altitude_m)}: {totalSentence(fresh.run)}
          </>
        )}
        . Computed by Underlid, not cooked; the maker’s manual and local food codes come first.
      </footer>
    </article>
  )
}
