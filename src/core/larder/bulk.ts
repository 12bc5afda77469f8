import { type UnitCode, volumeOfUnit_m3 } from '../units/index.ts'
import type { Character, Food } from './food.ts'
import { foods } from './foods.ts'

/** Pour to fill their measure: a cup of them weighs what their density says. */
const pours = new Set<Character>([
  'thin liquid',
  'thick liquid',
  'paste',
  'dairy',
  'fat',
  'acid',
  'alcohol',
  'sweetener',
])

interface Share {
  readonly low: number
  readonly high: number
  readonly count: number
}

/** Share of its density that a heaped measure of a food reaches: quartiles over all household weights of its like. */
const shares = new Map<Character, Share>()

function shareOf(character: Character): Share {
  const known = shares.get(character)
  if (known) return known
  const found = foods
    .filter((food) => food.character === character)
    .flatMap((food) =>
      food.measures.flatMap((m) => {
        const volume_m3 = m.unit === 'cup' || m.unit === 'tbsp' ? volumeOfUnit_m3(m.unit as UnitCode, 'us') : null
        return volume_m3 === null ? [] : [(m.low_kg + m.high_kg) / 2 / volume_m3 / food.density_kg_per_m3]
      }),
    )
    .sort((a, b) => a - b)
  const at = (p: number) => found[Math.round(p * (found.length - 1))]
  // Half of it where a kind has next to no weights to learn from: the middle of what cut vegetables do.
  const share =
    found.length >= 4 ? { low: at(0.25), high: at(0.75), count: found.length } : { low: 0.4, high: 0.65, count: 0 }
  shares.set(character, share)
  return share
}

/** Density of a filled measure when no household weight is known; says that it is an estimate. */
export function bulkDensity(food: Food, form: string | null) {
  const own = food.density_kg_per_m3
  if (pours.has(food.character) || food.tags?.some((tag) => tag === 'sauce' || tag === 'liquid'))
    return {
      low_kg_per_m3: own,
      high_kg_per_m3: own,
      from: `by volume, density ${own} kg/m3 from its composition (no household weight known)`,
    }
  const share = shareOf(food.character)
  const basis =
    share.count > 0
      ? `${share.count} household weights of like foods (${food.character})`
      : 'assumed, half to two thirds of the measure filled'
  return {
    low_kg_per_m3: own * share.low,
    high_kg_per_m3: own * share.high,
    from: `no household weight${form ? ` ${form}` : ''}: ${Math.round(own * share.low)} to ${Math.round(own * share.high)} kg/m3, ${basis}`,
  }
}
