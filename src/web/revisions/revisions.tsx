import { useCallback, useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { Head } from '../bench/head.tsx'
import { Prose } from '../bench/prose.tsx'
import { Said } from '../bench/said.tsx'
import type { KeptRevision } from '../bench/use-revision.ts'
import type { Keep } from '../keep/keep.ts'
import type { Keeper } from '../keep/keeper.ts'
import { LightChoice } from '../light.tsx'
import { type Dish, type Revision, type RevisionLine, revisionOf, revisionsOf, startDish } from '../server/dishes.ts'
import { ago } from '../words.ts'
import { Changes } from './changes.tsx'

interface RevisionsProps {
  readonly dish: Dish
  readonly title: string
  readonly keeper: Keeper
  readonly keep: Keep
  readonly kept: KeptRevision
  /** The one that is looked at; the latest when none is named. */
  readonly shown: number | undefined
}

/** The kept states of a manuscript: to look at, to hold against the sheet, to return to. */
export function Revisions({ dish, title, keeper, keep, kept, shown }: RevisionsProps) {
  const [list, setList] = useState<readonly RevisionLine[] | null>(null)
  const [revision, setRevision] = useState<Revision | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const [compared, setCompared] = useState(false)
  const [note, setNote] = useState('')
  const [, go] = useLocation()

  // A revision kept a moment ago belongs in the list.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `kept.number` says when to read again
  useEffect(() => {
    revisionsOf(dish.id).then(setList, (error: Error) => setFault(error.message))
  }, [dish.id, kept.number])

  const number = shown ?? list?.at(0)?.number
  useEffect(() => {
    if (number === undefined) return
    let left = false
    revisionOf(dish.id, number).then(
      (found) => {
        if (!left) setRevision(found)
      },
      (error: Error) => {
        if (!left) setFault(error.message)
      },
    )
    return () => {
      left = true
    }
  }, [dish.id, number])

  const returnTo = useCallback(() => {
    if (!revision) return
    keeper.change({ ...keeper.state().draft, text: revision.text })
    go(`/dishes/${dish.id}`)
  }, [keeper, revision, go, dish.id])

  const startAnew = async () => {
    try {
      go(`/dishes/${(await startDish(keep.draft.text)).id}`)
    } catch (error) {
      setFault((error as Error).message)
    }
  }

  const sameAsSheet = revision?.text === keep.draft.text
  return (
    <>
      <Head id={dish.id} title={title} place="revisions" keep={keep} kept={kept} />
      <Said
        id={dish.id}
        keep={keep}
        sentence={fault ?? kept.failure}
        undo={null}
        onRead={keeper.readNotice}
        onNewDish={() => void startAnew()}
      />
      <main className="revisions">
        <section className="revisions-list" aria-label="Kept revisions">
          {kept.changed && (
            <form
              className="revisions-keep"
              onSubmit={(event) => {
                event.preventDefault()
                void kept.keep(note.trim() || undefined).then(() => setNote(''))
              }}
            >
              <label>
                <span className="revisions-keep-words">What has changed</span>
                <input value={note} maxLength={2000} onChange={(event) => setNote(event.target.value)} />
              </label>
              <button type="submit" className="do" disabled={kept.busy}>
                Keep this revision
              </button>
            </form>
          )}
          {list?.length === 0 && <p className="aside">No revision has been kept of this dish.</p>}
          <ol>
            {list?.map((line) => (
              <li key={line.number}>
                <Link
                  href={`/dishes/${dish.id}/revisions/${line.number}`}
                  aria-current={line.number === number ? 'true' : undefined}
                >
                  <b>{line.number}</b>
                  <span>
                    {line.note ?? (line.kind === 'automatic' ? 'Kept by itself: a save came too late.' : 'Kept.')}
                    <span className="aside"> {ago(line.savedAt, Date.now())}</span>
                  </span>
                </Link>
              </li>
            ))}
          </ol>
        </section>
        {revision && (
          <section className="sheet revisions-sheet" aria-label={`Revision ${revision.number}`}>
            <p className="revisions-acts">
              <span className="aside">
                Revision {revision.number}
                {sameAsSheet ? ', as the sheet stands' : ''}
              </span>
              {!sameAsSheet && (
                <>
                  <button type="button" className="do" onClick={returnTo}>
                    Return to this text
                  </button>
                  <label className="revisions-compare">
                    <input type="checkbox" checked={compared} onChange={() => setCompared(!compared)} />
                    <span>against the sheet</span>
                  </label>
                </>
              )}
            </p>
            {compared && !sameAsSheet ? (
              <Changes from={revision.text} to={keep.draft.text} />
            ) : (
              <Prose text={revision.text} />
            )}
          </section>
        )}
      </main>
      <footer className="foot">
        <span>A revision never changes. Returning to one is an edit like any other and can be undone.</span>
        <LightChoice />
      </footer>
    </>
  )
}
