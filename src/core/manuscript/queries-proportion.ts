import type { Finding } from '../findings/index.ts'
import type { Character, Food } from '../larder/index.ts'
import { figure, finding, type Understood, wordsAt } from './queries-finding.ts'
import { massOf_kg, volumeOf_m3 } from './queries-measures.ts'
import type { Ingredient, Measure } from './recipe.ts'
import { isMeat } from './steps-context.ts'

// Amounts out of all proportion: they find a wrong unit, not a bold cook.

interface Band {
  readonly of: (food: Food, item: string) => boolean
  /** Mass of the ingredient divided by what it is for. */
  readonly share: (mass_kg: number, sums: Sums) => number | null
  readonly most: number
  readonly words: string
}

interface Sums {
  readonly all_kg: number
  readonly dry_kg: number
  readonly servings: number | null
  readonly baked: boolean
  readonly wet: boolean
}

// Bands of plausibility, wide on purpose: they find a wrong unit, not a bold cook. Common practice, no source.
const bands: readonly Band[] = [
  {
    of: (_, item) => /\b(?:baking soda|bicarb\w*|bicarbonate)\b/u.test(item),
    share: (mass_kg, sums) => (sums.dry_kg > 0 ? mass_kg / sums.dry_kg : mass_kg / sums.all_kg),
    most: 0.025,
    words: 'A soak or a batter takes about 1 teaspoon of soda to 500 g; more tastes of soap',
  },
  {
    of: (food) => food.character === 'leavening',
    share: (mass_kg, sums) => (sums.dry_kg > 0 ? mass_kg / sums.dry_kg : mass_kg / sums.all_kg),
    most: 0.08,
    words: 'Leavening is usually less than 5 % of the flour',
  },
  {
    of: (food) => food.character === 'salt',
    share: (mass_kg, sums) => mass_kg / sums.all_kg,
    most: 0.04,
    words: 'Food is salted with 0.5 to 1.5 % of its weight',
  },
  {
    of: (food) => food.character === 'spice',
    share: (mass_kg, sums) => mass_kg / sums.all_kg,
    most: 0.06,
    words: 'Ground spices are rarely more than 2 % of a dish',
  },
  {
    of: (food) => food.character === 'thickener',
    share: (mass_kg, sums) => (sums.baked || !sums.wet ? null : mass_kg / sums.all_kg),
    most: 0.12,
    words: 'A braise takes a few spoonfuls of flour or starch to the pot',
  },
]

function massOf(ingredient: Ingredient, food: Food | null): number | null {
  if (ingredient.mass_kg) return (ingredient.mass_kg.low + ingredient.mass_kg.high) / 2
  if (ingredient.low === null) return null
  const own: Measure = { low: ingredient.low, high: ingredient.high ?? ingredient.low, unit: ingredient.unit }
  for (const measure of [own, ...ingredient.also]) {
    const kg = massOf_kg(measure)
    if (kg !== null) return kg
  }
  const space = volumeOf_m3(own)
  return space === null ? null : space * (food ? Math.min(food.density_kg_per_m3, 1100) : 1000)
}

/** Ingredients whose amount no usual dish has. */
export function outOfProportion(known: Understood): Finding[] {
  const { layout } = known
  const weighed = known.pantry.known.map(({ ingredient, food }) => ({
    ingredient,
    food,
    mass_kg: massOf(ingredient, food),
  }))
  const all_kg = weighed.reduce((all, one) => all + (one.mass_kg ?? 0), 0)
  if (!(all_kg > 0.3)) return []
  const dry: ReadonlySet<Character> = new Set(['pulse', 'grain', 'thickener'] as const)
  const unit = layout.yield?.unit ?? ''
  const sums: Sums = {
    all_kg,
    dry_kg: weighed.reduce((all, one) => all + (one.food && dry.has(one.food.character) ? (one.mass_kg ?? 0) : 0), 0),
    servings: layout.yield && /serving|portion|people|person/u.test(unit) ? layout.yield.high : null,
    baked: weighed.some(
      (one) =>
        one.food?.character === 'leavening' ||
        one.food?.character === 'egg' ||
        /\bself-rais/u.test(one.ingredient.item),
    ),
    wet: weighed.some((one) => one.food && /^(?:thin liquid|thick liquid|alcohol)$/u.test(one.food.character)),
  }
  const found: Finding[] = []
  for (const { ingredient, food, mass_kg } of weighed) {
    if (!food || mass_kg === null) continue
    const band = bands.find((one) => one.of(food, ingredient.item))
    const share = band?.share(mass_kg, sums) ?? null
    if (band && share !== null && share > band.most)
      found.push(unlikely(known, ingredient, mass_kg, `${band.words}; here it is ${figure(share * 100)} %.`))
  }
  return [...found, ...perServing(known, weighed, sums)]
}

function unlikely(known: Understood, ingredient: Ingredient, mass_kg: number, why: string): Finding {
  return finding({
    code: 'unlikely-amount',
    severity: 'warning',
    span: ingredient.amountSpan ?? ingredient,
    title: `${wordsAt(known.text, ingredient.amountSpan ?? ingredient)} of ${ingredient.item}?`,
    message: `"${wordsAt(known.text, ingredient)}" is about ${figure(mass_kg * 1000)} g. ${why}`,
    advice: 'Check the amount and its unit.',
    source: 'common practice, no source',
  })
}

/** Meat for one person, kg: less is a garnish, more a slip of the unit. Common practice, no source. */
const meatForOne_kg = { low: 0.015, high: 0.9 } as const
const stapleForOne_kg = { low: 0.005, high: 0.4 } as const

function perServing(
  known: Understood,
  weighed: readonly { ingredient: Ingredient; food: Food | null; mass_kg: number | null }[],
  sums: Sums,
): Finding[] {
  const { servings } = sums
  const { layout } = known
  if (!servings || servings < 1) return []
  const kinds = [
    { is: (food: Food) => isMeat(food.character), band: meatForOne_kg, what: 'meat or fish' },
    {
      is: (food: Food) => food.character === 'pulse' || food.character === 'grain' || food.character === 'pasta',
      band: stapleForOne_kg,
      what: 'beans, grain or pasta',
    },
  ]
  return kinds.flatMap(({ is, band, what }) => {
    const members = weighed.filter(
      (one) => one.food && is(one.food) && one.mass_kg !== null && !one.ingredient.optional,
    )
    if (members.length === 0) return []
    const each_kg = members.reduce((all, one) => all + one.mass_kg!, 0) / servings
    if (each_kg >= band.low && each_kg <= band.high) return []
    // Too little is odd only of what the dish is named for.
    const title = layout.title ? known.reading.slice(layout.title.from, layout.title.to).toLowerCase() : ''
    if (
      each_kg < band.low &&
      !members.some((one) => one.ingredient.item.split(' ').some((word) => word.length > 3 && title.includes(word)))
    )
      return []
    const main = members.reduce((a, b) => (b.mass_kg! > a.mass_kg! ? b : a))
    return [
      unlikely(
        known,
        main.ingredient,
        main.mass_kg!,
        `For ${servings} that is ${figure(each_kg * 1000)} g of ${what} each.`,
      ),
    ]
  })
}
