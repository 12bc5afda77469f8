import type { Ref } from 'react'
import type { Note } from './reading.ts'

export interface NoteProps {
  readonly note: Note
  /** Its words are pointed at. */
  readonly active: boolean
  /** Shows what to do and where it comes from. */
  readonly open: boolean
  readonly onLook: (note: Note) => void
  readonly onCure: (note: Note) => void
  readonly onHover?: (key: string | null) => void
  readonly place?: Ref<HTMLElement>
}

const spoken = { blocking: 'Must be settled: ', warning: 'Warning: ', hint: '' } as const

/** One finding: what it is in bold, the figures, and the cure as a link that edits the text. */
export function NoteText({ note, active, open, onLook, onCure, onHover, place }: NoteProps) {
  const { finding } = note
  const { severity, title, message, cure, advice, source } = finding
  return (
    <article
      ref={place}
      className={`note note-${severity}${active ? ' note-on' : ''}${open ? ' note-open' : ''}`}
      onMouseEnter={() => onHover?.(note.key)}
      onMouseLeave={() => onHover?.(null)}
    >
      <p>
        {spoken[severity] && <span className="unseen">{spoken[severity]}</span>}
        {note.from === null ? (
          <b>{title}</b>
        ) : (
          <button type="button" className="note-title" onClick={() => onLook(note)} title="Show the words">
            {title}
          </button>
        )}{' '}
        {message && <span className="note-words">{message}</span>}
        {cure && (
          <>
            {' '}
            <button type="button" className="do note-cure" onClick={() => onCure(note)}>
              {cure.label}
            </button>
          </>
        )}
      </p>
      {open && (
        <p className="note-more">
          {advice && <>{advice} </>}
          <span className="aside">From: {source}.</span>
        </p>
      )}
    </article>
  )
}
