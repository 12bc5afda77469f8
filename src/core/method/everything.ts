import type { Recipe, Use } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'

// "Add all the ingredients", "put everything in the pot", "the remaining ingredients": the words stand for every line
// that no other words take.

const all =
  /\b(everything|all (of )?(the )?(other |remaining )?ingredients|(the )?(remaining|other|rest of the) ingredients|all in)\b/

/** The operations with those lines written out as uses. */
export function spellOutEverything(recipe: Recipe, placed: readonly Placed[]): Placed[] {
  const elsewhere = new Set(placed.flatMap(({ op }) => op.uses.map((use) => use.ingredient)))
  let free = recipe.ingredients.map((ingredient) => ingredient.index).filter((index) => !elsewhere.has(index))
  return placed.map((item) => {
    const { op } = item
    if (free.length === 0 || !all.test(item.words) || op.verb === 'serve' || op.verb === 'cut') return item
    const but = /\b(except|but|apart from)\b(.*)$/.exec(item.words)?.[2] ?? ''
    const mine = free.filter(
      (index) => !but.split(/\W+/).some((word) => word.length > 3 && recipe.ingredients[index].item.includes(word)),
    )
    free = free.filter((index) => !mine.includes(index))
    const uses: Use[] = mine.map((ingredient) => ({ ingredient, share: 1, again: false, from: op.from, to: op.to }))
    return { ...item, op: { ...op, uses: [...op.uses, ...uses] } }
  })
}

/** "The porcini and their liquor": the water that something was soaked in goes into the pot with it. */
export function spellOutLiquor(placed: readonly Placed[], isWater: (ingredient: number) => boolean): Placed[] {
  const soak = placed.findIndex(({ op }) => op.verb === 'soak')
  if (soak < 0) return [...placed]
  const step = placed[soak].step
  const water = placed
    .slice(0, soak + 1)
    .filter((item) => item.step === step && item.where === 'bench')
    .flatMap(({ op }) => op.uses.map((use) => use.ingredient).filter(isWater))
  const at = placed.findIndex(
    ({ words, where, op }, i) =>
      i > soak && where === 'main' && op.verb !== 'drain' && /\b(liquor|soaking (liquid|water))\b/.test(words),
  )
  if (water.length === 0 || at < 0) return [...placed]
  const { op } = placed[at]
  const uses: Use[] = [...new Set(water)]
    .filter((ingredient) => !op.uses.some((use) => use.ingredient === ingredient))
    .map((ingredient) => ({ ingredient, share: 1, again: false, from: op.from, to: op.to }))
  return placed.map((item, i) => (i === at ? { ...item, op: { ...op, uses: [...op.uses, ...uses] } } : item))
}
