import type { Recipe, Use, VerbCode } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'

// How each listed line is shared out among the operations that use it. A draw takes a part of the line for good and
// becomes a load; any other use only speaks of what was drawn before.

export interface Draw {
  readonly ingredient: number
  /** Part of the line taken, 0..1. */
  readonly share: number
  readonly use: Use
  /** True when the words left the share open and it was divided evenly. */
  readonly guessed: boolean
}

export interface Draws {
  /** By index of the operation, what it takes anew. */
  readonly taken: readonly (readonly Draw[])[]
  /** Ingredients of each operation that speak of what was drawn before. */
  readonly spoken: readonly (readonly number[])[]
  /** Seasoned or mixed at the bench: ingredient that carries the others, by operation. */
  readonly host: readonly (number | null)[]
}

const noDraw: ReadonlySet<VerbCode> = new Set([
  'cut',
  'soak',
  'drain',
  'serve',
  'lift',
  'release',
  'hold',
  'lock',
  'strain',
  'skim',
  'settle',
  'rest',
  'mash',
  'chill',
])
const least = 1e-3

/** `mass_kg` gives a line's mass for choosing the host of a mixture; `solid` tells what can carry salt on its surface. */
export function shareOut(
  recipe: Recipe,
  placed: readonly Placed[],
  about: { readonly mass_kg: (ingredient: number) => number; readonly solid: (ingredient: number) => boolean },
): Draws {
  const host = placed.map((item) => hostOf(item))
  const perLine = recipe.ingredients.map(() => [] as { at: number; use: Use }[])
  placed.forEach((item, at) => {
    for (const use of item.op.uses) {
      if (use.ingredient in perLine) perLine[use.ingredient].push({ at, use })
    }
  })
  const taken: Draw[][] = placed.map(() => [])
  const spoken: number[][] = placed.map(() => [])
  perLine.forEach((uses, ingredient) => {
    const draws: { at: number; use: Use; share: number | null }[] = []
    let left = 1
    for (const { at, use } of uses) {
      const item = placed[at]
      const bench = item.where === 'bench'
      const passive =
        (noDraw.has(item.op.verb) && !(item.op.verb === 'hold' && !use.again)) ||
        (bench && host[at] === ingredient) ||
        (use.again && left < 1 - least) ||
        left < least
      if (passive) {
        spoken[at].push(ingredient)
        continue
      }
      // "Half the pork … the rest of it": one batch after the other is one load, whose batches the browning counts.
      if (
        item.op.verb === 'brown' &&
        about.solid(ingredient) &&
        (use.share ?? 1) < 1 - least &&
        brownedAgain(ingredient, at)
      ) {
        draws.push({ at, use, share: left })
        left = 0
        continue
      }
      const share = use.share === null ? null : Math.min(Math.max(use.share, 0), left)
      if (share === null) draws.push({ at, use, share: null })
      else if (share >= least) {
        draws.push({ at, use, share: use.share === 1 ? left : share })
        left -= use.share === 1 ? left : share
      } else spoken[at].push(ingredient)
    }
    // "A little of the oil": with a later use that takes what is left, a third of it; else what is left, evenly.
    const open = draws.filter((draw) => draw.share === null).length
    if (open > 0) {
      const last = draws.at(-1)
      const takesRest = last?.share != null && left < least && draws.length > open
      const each = takesRest ? (last.share ?? 0) / 3 / open : left / open
      if (takesRest && last) last.share = (last.share ?? 0) - each * open
      for (const draw of draws) {
        const share = draw.share ?? each
        if (share >= least)
          taken[draw.at].push({
            ingredient,
            share,
            use: draw.use,
            guessed: draw.share === null && (open > 1 || takesRest),
          })
        else spoken[draw.at].push(ingredient)
      }
    } else
      for (const draw of draws)
        taken[draw.at].push({ ingredient, share: draw.share ?? 0, use: draw.use, guessed: false })
  })
  return { taken, spoken, host }

  function brownedAgain(ingredient: number, after: number): boolean {
    return placed
      .slice(after + 1)
      .some((item) => item.op.verb === 'brown' && item.op.uses.some((use) => use.ingredient === ingredient))
  }

  function hostOf({ op, where }: Placed): number | null {
    if (
      where !== 'bench' ||
      (op.verb !== 'season' && op.verb !== 'mix' && op.verb !== 'marinate' && op.verb !== 'add' && op.verb !== 'pickle')
    )
      return null
    const used = op.uses.map((use) => use.ingredient).filter((index) => index in recipe.ingredients)
    const solids = used.filter((index) => about.solid(index))
    const from = solids.length > 0 ? solids : used
    return from.length === 0
      ? null
      : from.reduce((best, index) => (about.mass_kg(index) > about.mass_kg(best) ? index : best))
  }
}
