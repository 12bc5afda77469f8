import { useCallback, useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { LightChoice } from '../light.tsx'
import { NoAnswer, Refused } from '../server/ask.ts'
import { type DishLine, dishes as dishesOfServer, dishesPutAway, putAway, startDish } from '../server/dishes.ts'
import { Sorry } from '../sorry.tsx'
import { ago, capital, count } from '../words.ts'
import { beenHere, firstDemonstration, firstVisit } from './first-visit.ts'

interface Lists {
  readonly here: readonly DishLine[]
  readonly away: readonly DishLine[]
}

/** The dishes, set like a book's contents. */
export function Dishes() {
  const [lists, setLists] = useState<Lists | null>(null)
  const [fault, setFault] = useState<Error | null>(null)
  const [said, setSaid] = useState<{ words: string; back: DishLine | null } | null>(null)
  const [, go] = useLocation()

  const read = useCallback(async () => {
    try {
      const [here, away] = await Promise.all([dishesOfServer(), dishesPutAway()])
      const first = firstVisit() ? firstDemonstration(here) : null
      if (first) return go(`/dishes/${first.id}`, { replace: true })
      beenHere()
      setLists({ here, away })
      setFault(null)
    } catch (error) {
      setFault(error as Error)
    }
  }, [go])

  useEffect(() => {
    document.title = 'Dishes · Underlid'
    void read()
  }, [read])

  const doing = async (work: () => Promise<void>) => {
    try {
      await work()
    } catch (error) {
      setSaid({ words: sentenceOf(error), back: null })
    }
  }

  const begin = () => doing(async () => go(`/dishes/${(await startDish('')).id}`))

  const move = (line: DishLine, away: boolean) =>
    doing(async () => {
      await putAway(line.id, away)
      await read()
      setSaid(away ? { words: `“${line.title}” is put away.`, back: line } : null)
    })

  if (fault && !lists)
    return (
      <Sorry title={fault.message} cure={fault instanceof Refused ? fault.cure : 'Start it, or look at the network.'}>
        <button type="button" className="do" onClick={() => void read()}>
          Ask again
        </button>
      </Sorry>
    )
  if (!lists) return null

  return (
    <>
      <header className="head">
        <h1>Underlid</h1>
        <nav className="places" aria-label="Places">
          <Link href="/" aria-current="page">
            Dishes
          </Link>
        </nav>
      </header>
      <main className="contents">
        <h2>Dishes</h2>
        <p className="contents-said" role="status">
          {said?.words}{' '}
          {said?.back && (
            <button type="button" className="do" onClick={() => void move(said.back!, false)}>
              Take it out again
            </button>
          )}
        </p>
        <ol className="contents-list">
          {lists.here.map((line) => (
            <Line key={line.id} line={line} verb="put away" act={() => void move(line, true)} />
          ))}
        </ol>
        <p className="contents-begin">
          {lists.here.length === 0 && <span className="aside">There is no dish on the bench. </span>}
          <button type="button" className="do" onClick={() => void begin()}>
            Begin a new dish
          </button>{' '}
          <span className="aside">on an empty sheet; paste the manuscript as it comes from the word processor.</span>
        </p>
        {lists.away.length > 0 && (
          <details className="contents-away">
            <summary>{capital(count(lists.away.length, 'dish', 'dishes'))} put away</summary>
            <ol className="contents-list">
              {lists.away.map((line) => (
                <Line key={line.id} line={line} verb="take out" act={() => void move(line, false)} />
              ))}
            </ol>
          </details>
        )}
      </main>
      <footer className="foot">
        <span>Underlid cooks a recipe as its words stand and shows what happens under the lid.</span>
        <LightChoice />
      </footer>
    </>
  )
}

function Line({ line, verb, act }: { line: DishLine; verb: string; act: () => void }) {
  return (
    <li className="contents-line">
      <Link className="contents-title" href={`/dishes/${line.id}`}>
        {line.title}
      </Link>
      <span className="contents-dots" aria-hidden="true" />
      <span className="contents-when">
        {line.revision === null ? 'no revision kept' : `revision ${line.revision}`}, {ago(line.updatedAt, Date.now())}
      </span>
      <button type="button" className="contents-act" onClick={act} aria-label={`${capital(verb)}: ${line.title}`}>
        {verb}
      </button>
    </li>
  )
}

function sentenceOf(error: unknown): string {
  if (error instanceof NoAnswer) return 'The server does not answer, so nothing was changed. Try again when it does.'
  if (error instanceof Refused) return `${error.message} ${error.cure ?? ''}`
  return String(error)
}
