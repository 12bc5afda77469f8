import type { Load, Plan } from '../method/index.ts'

// A label has room for one word: the animal, or the last words of the food's name.
const animals =
  'beef veal pork bacon ham lamb mutton goat venison rabbit chicken turkey duck goose sausage salmon cod haddock trout tuna shrimp prawns'.split(
    ' ',
  )
const passing = new Set(
  'boneless skinless bone-in skin-on fresh dried dry frozen large small medium big ripe raw cooked whole lean fine finely coarsely chopped sliced diced minced peeled trimmed soaked drained rinsed and or with of the a white pale green red yellow black brown parts only stewing'.split(
    ' ',
  ),
)

/** One short name a load, different for each: "pork", "leeks"; the fuller name where two would be the same. */
export function shortNames(plan: Plan): readonly string[] {
  const short = plan.loads.map((load) => shortName(load))
  return short.map((name, i) => (short.indexOf(name) === short.lastIndexOf(name) ? name : fuller(plan.loads[i], name)))
}

function shortName(load: Load): string {
  const words = load.name.toLowerCase().split(/[^\p{L}\p{N}'’-]+/u)
  const animal = words.find((word) => animals.includes(word))
  const meat = /meat|cut|poultry|sausage|fish/.test(load.food.character)
  if (animal && meat) return animal
  const kept = words.filter((word) => word !== '' && !passing.has(word))
  if (kept.length === 0) return load.name.toLowerCase()
  return kept.slice(-2).join(' ').length <= 16 ? kept.slice(-2).join(' ') : (kept.at(-1) as string)
}

function fuller(load: Load, short: string): string {
  const name = load.name.toLowerCase()
  return name.length <= 24 ? name : short
}
