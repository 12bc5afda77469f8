import { type ReactNode, useEffect, useState } from 'react'
import { Link } from 'wouter'
import type { Plan } from '../../core/method/index.ts'
import { potCards } from '../../core/pots/index.ts'
import type { Keep } from '../keep/keep.ts'
import type { Draft } from '../server/dishes.ts'
import { altitudeOf, altitudeWords } from './altitude.ts'
import { revisionWords, standing } from './standing.ts'
import type { KeptRevision } from './use-revision.ts'

interface HeadProps {
  readonly id: string
  readonly title: string
  readonly place: 'bench' | 'revisions'
  readonly keep: Keep
  readonly kept: KeptRevision
  readonly children?: ReactNode
}

/** The running head: the dish, how it is kept, where it is cooked, and the places there are. */
export function Head({ id, title, place, keep, kept, children }: HeadProps) {
  return (
    <header className="head">
      <div className="head-dish">
        <h1>{title}</h1>
        <p className="aside head-kept">
          <span>
            {revisionWords(kept.number, kept.changed)}, {standing(keep)}
          </span>
          {kept.changed && keep.draft.text.trim() !== '' && (
            <button type="button" className="do head-keep" disabled={kept.busy} onClick={() => void kept.keep()}>
              Keep this revision
            </button>
          )}
        </p>
        {children}
      </div>
      <nav className="places" aria-label="Places">
        <Link href="/">Dishes</Link>
        <Link href={`/dishes/${id}`} aria-current={place === 'bench' ? 'page' : undefined}>
          Bench
        </Link>
        <Link href={`/dishes/${id}/revisions`} aria-current={place === 'revisions' ? 'page' : undefined}>
          Revisions
        </Link>
      </nav>
    </header>
  )
}

interface CookedInProps {
  readonly draft: Draft
  readonly plan: Plan | null
  readonly onChange: (draft: Draft) => void
  readonly onSay: (sentence: string | null) => void
}

const asWords = ''

/** "in a 6-quart electric pot at 120 m": both chosen in the sentence. */
export function CookedIn({ draft, plan, onChange, onSay }: CookedInProps) {
  const own = plan && draft.pot === null ? plan.pot.name : null
  const known = draft.pot === null || potCards.some((card) => card.id === draft.pot)
  return (
    <p className="head-pot">
      in {article(nameOf(draft.pot) ?? own ?? 'pot')}{' '}
      <select
        className="choice"
        aria-label="Pot"
        value={draft.pot ?? asWords}
        onChange={(event) => onChange({ ...draft, pot: event.target.value === asWords ? null : event.target.value })}
      >
        <optgroup label={plan?.potFrom === 'manuscript' || !own ? 'As the words say' : 'The words do not say'}>
          <option value={asWords}>{own ?? 'pot of the manuscript'}</option>
        </optgroup>
        <optgroup label="Whatever the words say">
          {!known && <option value={draft.pot!}>{draft.pot}</option>}
          {potCards.map((card) => (
            <option key={card.id} value={card.id}>
              {card.name}
            </option>
          ))}
        </optgroup>
      </select>{' '}
      at <Altitude draft={draft} plan={plan} onChange={onChange} onSay={onSay} />
    </p>
  )
}

const nameOf = (pot: string | null): string | null => potCards.find((card) => card.id === pot)?.name ?? null

const article = (name: string): string => (/^(?:[aeiou]|8|11|18)/i.test(name) ? 'an' : 'a')

function Altitude({ draft, plan, onChange, onSay }: CookedInProps) {
  const stands = altitudeWords(draft.altitude_m ?? plan?.altitude_m ?? 0)
  const [written, setWritten] = useState(stands)
  useEffect(() => setWritten(stands), [stands])

  const take = () => {
    const altitude = altitudeOf(written)
    if (!altitude.ok) {
      onSay(altitude.why)
      setWritten(stands)
      return
    }
    onSay(null)
    if (written.trim() === stands) return
    setWritten(altitudeWords(altitude.altitude_m ?? 0))
    onChange({ ...draft, altitude_m: altitude.altitude_m })
  }

  return (
    <input
      className="choice head-altitude"
      aria-label="Altitude of the kitchen, in metres or feet"
      value={written}
      size={Math.max(4, written.length)}
      onChange={(event) => setWritten(event.target.value)}
      onFocus={(event) => event.target.select()}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take()
        if (event.key === 'Escape') setWritten(stands)
      }}
    />
  )
}
