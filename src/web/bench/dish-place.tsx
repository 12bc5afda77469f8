import { useEffect, useState, useSyncExternalStore } from 'react'
import { Link } from 'wouter'
import { useCook, warmKitchen } from '../cook/use-cook.ts'
import { beenHere } from '../dishes/first-visit.ts'
import { type Keeper, keeperFor } from '../keep/keeper.ts'
import { Revisions } from '../revisions/revisions.tsx'
import { Refused } from '../server/ask.ts'
import { type Dish, dishOf } from '../server/dishes.ts'
import { Sorry } from '../sorry.tsx'
import { titleOf } from '../words.ts'
import { Bench } from './bench.tsx'
import type { Aside } from './editor/editor.tsx'
import { fetchEditor } from './sheet.tsx'
import { useRevision } from './use-revision.ts'

interface DishPlaceProps {
  readonly id: string
  readonly place: 'bench' | 'revisions'
  readonly revision?: number
}

/** One dish, wherever one stands in it: read once, kept by one keeper, cooked in one kitchen. */
export function DishPlace({ id, place, revision }: DishPlaceProps) {
  const [found, setFound] = useState<{ dish: Dish; keeper: Keeper } | null>(null)
  const [fault, setFault] = useState<Error | null>(null)
  const [tries, setTries] = useState(0)

  // biome-ignore lint/correctness/useExhaustiveDependencies: `tries` asks again
  useEffect(() => {
    let left = false
    warmKitchen()
    void fetchEditor()
    dishOf(id).then(
      (dish) => {
        if (left) return
        beenHere()
        setFound({ dish, keeper: keeperFor(dish) })
        setFault(null)
      },
      (error: Error) => {
        if (!left) setFault(error)
      },
    )
    return () => {
      left = true
    }
  }, [id, tries])

  if (found) return <OpenDish dish={found.dish} keeper={found.keeper} place={place} revision={revision} />
  if (!fault) return null
  const cure = fault instanceof Refused ? fault.cure : 'Start it, or look at the network; then ask again.'
  return (
    <Sorry title={fault.message} cure={cure}>
      <button type="button" className="do" onClick={() => setTries(tries + 1)}>
        Ask again
      </button>{' '}
      or{' '}
      <Link className="do" href="/">
        go to the dishes
      </Link>
      .
    </Sorry>
  )
}

/** Editors laid aside with their undo while another place of the dish is looked at. */
const asides = new Map<string, Aside>()

interface OpenDishProps {
  readonly dish: Dish
  readonly keeper: Keeper
  readonly place: 'bench' | 'revisions'
  readonly revision?: number
}

function OpenDish({ dish, keeper, place, revision }: OpenDishProps) {
  const keep = useSyncExternalStore(keeper.listen, keeper.state)
  const dinner = useCook(keep.draft)
  const kept = useRevision(dish, keep.draft.text)
  useEffect(() => keeper.attach(), [keeper])

  const read = dinner.of === keep.draft.text ? dinner.cooked?.recipe.title?.text : undefined
  const title = dish.titleGiven ? dish.title : (read ?? titleOf(keep.draft.text))
  useEffect(() => {
    document.title = `${title} · Underlid`
  }, [title])

  if (place === 'revisions')
    return <Revisions dish={dish} title={title} keeper={keeper} keep={keep} kept={kept} shown={revision} />
  return (
    <Bench
      dish={dish}
      title={title}
      keeper={keeper}
      keep={keep}
      dinner={dinner}
      kept={kept}
      aside={asides.get(dish.id) ?? null}
      onAside={(aside) => asides.set(dish.id, aside)}
    />
  )
}
