import { type MeasureSystem, massOfUnit_kg, measureSystems, volumeOfUnit_m3 } from '../units/index.ts'
import type { Measure, Recipe } from './recipe.ts'

/** Measures of one thing, as the manuscript gives them side by side: "1 1/2 cups (375 ml)". */
export type SideBySide = readonly Measure[]

const spoonOf20 =
  /\b20\s?ml\b[^.\n]{0,40}\btable\s?spoon|\btable\s?spoons?\b[^.\n]{0,30}\b20\s?ml\b|\baustralian (?:tablespoon|cup|measure)/i
const cupOf250 = /\b250\s?ml\b[^.\n]{0,20}\bcup\b|\bcups?\b[^.\n]{0,20}\b250\s?ml\b|\bmetric (?:cup|measure)/i
const usSaid = /\bu\.?s\.? (?:cups?|measures?|customary)|\bamerican cups?/i
const imperialSaid = /\bimperial (?:pint|measure)/i

// Words that tell where a cook writes. One alone says little; the side with more of them wins. Common usage, no source.
const britishWords =
  /\b(?:hob|gas mark|caster|plain flour|self-raising|double cream|single cream|rapeseed oil|courgettes?|aubergines?|swede|tins?|casserole dish|kitchen paper|cling film|knob of|rashers?|gammon|stewing steak|bicarbonate|cornflour|tomato purée|tomato puree|chilli|litres?|grill pan|shillings?|stewpan|3s\.|\d+d\. per)\b/gi
const australianWords =
  /\b(?:capsicums?|eschalots?|brown onions?|pumpkin|kipfler|desiree|continental parsley|english spinach|thigh cutlets|sour cream)\b/gi
const americanWords =
  /\b(?:all-purpose|kosher salt|cilantro|zucchini|eggplants?|scallions?|heavy cream|half-and-half|cornstarch|broiler?|skillet|stovetop|°\s?F|degrees F|ounces?|oz|pounds?|lbs?|quarts?|sticks? (?:of )?butter|cans?|ground beef)\b/gi

const count = (text: string, words: RegExp): number => (text.match(words) ?? []).length

/** Whose measure fits a volume that stands beside millilitres; null when they differ by too little to tell. */
function fits(pair: SideBySide): MeasureSystem | null {
  const metric = pair.find((m) => m.unit === 'ml' || m.unit === 'l')
  const household = pair.find((m) => m.unit === 'cup' || m.unit === 'pint' || m.unit === 'tbsp' || m.unit === 'quart')
  if (!metric?.unit || !household?.unit || household.low <= 0) return null
  const one_m3 = (metric.low * volumeOfUnit_m3(metric.unit)!) / household.low
  const off = (system: MeasureSystem): number => Math.abs(one_m3 / volumeOfUnit_m3(household.unit!, system)! - 1)
  const order = [...measureSystems].sort((a, b) => off(a) - off(b))
  const best = order[0]!
  // Printed pairs are rounded: 240 ml for the US cup, 15 ml for every spoon but the Australian.
  if (off(best) > 0.035) return null
  if (household.unit === 'tbsp') return best === 'australian' ? best : null
  return best === 'imperial' && household.unit !== 'cup' ? 'metric' : best
}

/**
 * Whose cups, spoons and pints the manuscript means: what it says of them, else what its own pairs of measures show,
 * else where its words come from; US when nothing tells.
 */
export function measureSystemOf(reading: string, pairs: readonly SideBySide[]): MeasureSystem {
  const head = reading.slice(0, 20_000)
  if (spoonOf20.test(head)) return 'australian'
  if (usSaid.test(head)) return 'us'
  if (cupOf250.test(head)) return 'metric'
  if (imperialSaid.test(head)) return 'imperial'
  const votes = new Map<MeasureSystem, number>()
  for (const pair of pairs) {
    const system = fits(pair)
    if (system) votes.set(system, (votes.get(system) ?? 0) + 1)
  }
  const [winner] = [...votes].sort((a, b) => b[1] - a[1])
  if (winner) return winner[0]
  const british = count(head, britishWords)
  const australian = count(head, australianWords)
  const american = count(head, americanWords)
  if (british + australian <= american) return 'us'
  return australian >= 2 && /\bcups?\b/i.test(head) ? 'australian' : 'metric'
}

/** Whose measures a recipe that has been read means. */
export const measureSystem = (recipe: Pick<Recipe, 'text' | 'ingredients'>): MeasureSystem =>
  measureSystemOf(recipe.text, sideBySide(recipe.ingredients))

/** The measures of lines that give more than one. */
export const sideBySide = (
  lines: readonly {
    readonly low: number | null
    readonly high: number | null
    readonly unit: Measure['unit']
    readonly also: readonly Measure[]
  }[],
): SideBySide[] =>
  lines.flatMap(({ low, high, unit, also }) =>
    low !== null && high !== null && also.length > 0 ? [[{ low, high, unit }, ...also]] : [],
  )

/** Does a measure say a mass? */
export const isMass = (measure: Measure): boolean => measure.unit !== null && massOfUnit_kg(measure.unit) !== null
