import { Link } from 'wouter'
import type { Keep, Notice } from '../keep/keep.ts'
import { standingCure } from './standing.ts'

interface SaidProps {
  readonly id: string
  readonly keep: Keep
  /** A sentence of the moment: a refusal, a cure that was applied. */
  readonly sentence: string | null
  readonly undo: (() => void) | null
  readonly onRead: () => void
  readonly onNewDish: () => void
}

/** One line under the head for what has to be said about keeping; empty most of the time. */
export function Said({ id, keep, sentence, undo, onRead, onNewDish }: SaidProps) {
  const cure = standingCure(keep)
  const gone = keep.trouble?.kind === 'gone'
  const nothing = !cure && !gone && !keep.notice && !sentence
  return (
    <div className={nothing ? 'said said-nothing' : 'said'} role="status">
      {cure && <p className="said-trouble">{cure}</p>}
      {gone && (
        <p className="said-trouble">
          The text is safe here.{' '}
          <button type="button" className="do" onClick={onNewDish}>
            Start it as a new dish
          </button>
        </p>
      )}
      {keep.notice && (
        <p>
          <NoticeWords id={id} notice={keep.notice} />{' '}
          <button type="button" className="said-read" onClick={onRead}>
            Read
          </button>
        </p>
      )}
      {sentence && (
        <p>
          {sentence}{' '}
          {undo && (
            <button type="button" className="do" onClick={undo}>
              Undo
            </button>
          )}
        </p>
      )}
    </div>
  )
}

function NoticeWords({ id, notice }: { id: string; notice: Notice }) {
  switch (notice.kind) {
    case 'restored':
      return <>What was typed here last time had not reached the server; it is back on the sheet and being sent.</>
    case 'taken-over':
      return <>This dish was changed in another window; the sheet shows that text now.</>
    case 'theirs-kept':
      return (
        <>
          This dish was changed in another window at the same time. Your text stands; the other is kept as{' '}
          <Link className="do" href={`/dishes/${id}/revisions/${notice.revision}`}>
            revision {notice.revision}
          </Link>
          .
        </>
      )
    case 'older-kept':
      return (
        <>
          An older text of this device, never sent, is kept as{' '}
          <Link className="do" href={`/dishes/${id}/revisions/${notice.revision}`}>
            revision {notice.revision}
          </Link>
          .
        </>
      )
  }
}
