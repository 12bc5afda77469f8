import type { Finding } from '../findings/index.ts'
import type { Character, Food } from '../larder/index.ts'
import type { Ingredient, Range, Recipe } from '../manuscript/index.ts'
import { massOfUnit_kg, volumeOfUnit_m3 } from '../units/index.ts'
import { assumedAmount_kg, assumedEach_kg, assumedSpread, saltToTaste_kg_per_kg } from './assumed-amounts.ts'
import { foodOf } from './foods.ts'
import { finding, grams } from './say.ts'
import { about, mid } from './words.ts'

/** A listed line before it is shared out: its food and how much of it there is. */
export interface Stock {
  readonly ingredient: Ingredient
  readonly food: Food
  readonly mass_kg: number
  readonly band_kg: Range
  readonly assumed: boolean
  /** Liquid poured "to cover" or to a line: its mass depends on what is in the pot by then. */
  readonly until: 'covered' | 'full' | null
}

const main: readonly Character[] = [
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'fish',
  'pulse',
  'sausage',
  'starch',
  'firm vegetable',
  'grain',
  'pasta',
  'leafy vegetable',
  'soft vegetable',
  'mushroom',
  'cooked pulse',
  'fruit',
]
const poured: ReadonlySet<Character> = new Set(['thin liquid', 'thick liquid', 'dairy', 'alcohol', 'acid', 'fat'])
/** A heap of pieces fills this share of its cup (assumed). */
const heaped = 0.6

/** Enough to be weighed, and not without end: "0 g" is no amount. */
const weighs = (mass: Range): boolean => mass.low >= 0 && mass.high >= 1e-6 && mass.high < 1e3

/** Kilograms that a written amount comes to without a household weight; null when only the larder could tell. */
function roughMass_kg(ingredient: Ingredient, food: Food): { band: Range; how: string } | null {
  const { low, high, unit, pack } = ingredient
  if (low === null || high === null) return null
  const times = (kg: number, spread: number, how: string) => ({
    band: { low: low * kg * (1 - spread), high: high * kg * (1 + spread) },
    how,
  })
  for (const measure of [
    { low: 1, high: 1, unit: pack?.unit ?? null, per: pack ? mid(pack) : 0 },
    ...ingredient.also.map((m) => ({ ...m, per: 0 })),
  ]) {
    const kg = measure.unit ? massOfUnit_kg(measure.unit) : null
    if (kg !== null && measure.per > 0) return times(kg * measure.per, 0.05, 'by its pack')
    if (kg !== null) return { band: { low: measure.low * kg, high: measure.high * kg }, how: 'as written' }
  }
  if (unit) {
    const kg = massOfUnit_kg(unit)
    if (kg !== null) return times(kg, 0, 'as written')
    // A stick is butter by the wrapper; of celery or cinnamon it is a piece.
    const volume_m3 = unit === 'stick' && food.character !== 'fat' ? null : volumeOfUnit_m3(unit)
    if (volume_m3 !== null) {
      const liquid = poured.has(food.character) || food.character === 'paste'
      return times(
        volume_m3 * food.density_kg_per_m3 * (liquid ? 1 : heaped),
        liquid ? 0.05 : 0.25,
        'by volume, density guessed',
      )
    }
    const packs: Partial<Record<typeof unit, number>> = {
      can: 0.4,
      jar: 0.4,
      packet: 0.3,
      clove: 0.005,
      bunch: 0.06,
      sprig: 0.002,
      stalk: 0.05,
      rib: 0.05,
      leaf: 0.0005,
      head: 0.4,
      handful: 0.03,
      slice: 0.02,
      piece: 0.1,
      stick: 0.05,
    }
    const each = packs[unit]
    return each ? times(each, 0.4, `at about ${grams(each)} each`) : null
  }
  const each = assumedEach_kg[food.character]
  return each ? times(each, 0.4, `at about ${grams(each)} each`) : null
}

/** The lines of a recipe as stocks, with a finding for every amount that is not in the words. */
export function stocksOf(recipe: Recipe): { stocks: Stock[]; findings: Finding[]; main_kg: number } {
  const findings: Finding[] = []
  const foods = recipe.ingredients.map((ingredient) => foodOf(ingredient))
  const sure = recipe.ingredients.map((ingredient) => {
    const mass = ingredient.mass_kg
    return mass && weighs(mass) ? mass : null
  })
  const rough = recipe.ingredients.map((ingredient, i) => {
    if (sure[i] || (ingredient.toTaste && ingredient.low === null)) return null
    const found = roughMass_kg(ingredient, foods[i].food)
    return found && weighs(found.band) ? found : null
  })
  const main_kg = mainMass_kg(
    recipe.ingredients.map((_, i) => ({
      character: foods[i].food.character,
      mass_kg: sure[i] ? mid(sure[i]) : rough[i] ? mid(rough[i].band) : 0,
    })),
  )
  const stocks = recipe.ingredients.map((ingredient, i): Stock => {
    const { food, known } = foods[i]
    const place = ingredient.itemSpan ?? ingredient
    if (!known && ingredient.item !== '')
      findings.push(
        finding(
          'food-unknown',
          'hint',
          place,
          'Not in the larder.',
          `“${ingredient.item}” is taken for something like a vegetable, mostly water.`,
          'Write its everyday name, or add it to the larder.',
        ),
      )
    const line = ingredient.line.toLowerCase()
    const until = poured.has(food.character) && sure[i] === null ? untilOf(line) : null
    if (sure[i]) return { ingredient, food, mass_kg: mid(sure[i]), band_kg: sure[i], assumed: false, until: null }
    const spot = ingredient.amountSpan ?? place
    if (rough[i]) {
      const band = rough[i].band
      findings.push(
        finding(
          'amount-assumed',
          'hint',
          spot,
          `Taken for ${grams(mid(band))}.`,
          `${ingredient.item}: ${rough[i].how}.`,
          'Write the weight.',
        ),
      )
      return { ingredient, food, mass_kg: mid(band), band_kg: band, assumed: true, until: null }
    }
    const salty = food.character === 'salt' || /\bsalt\b/.test(ingredient.item)
    const mass_kg = salty && main_kg > 0 ? saltToTaste_kg_per_kg * main_kg : assumedAmount_kg[food.character]
    if (!until)
      findings.push(
        finding(
          'amount-assumed',
          'hint',
          spot,
          `Taken for ${grams(mass_kg)}.`,
          salty && main_kg > 0
            ? `No amount is written; salt to taste is taken for ${saltToTaste_kg_per_kg * 100} % of the main food.`
            : `No amount of ${ingredient.item} is written; this is what recipes of this size use.`,
          salty ? 'Write grams, or the share of the meat.' : 'Write how much.',
        ),
      )
    return { ingredient, food, mass_kg, band_kg: about(mass_kg, assumedSpread), assumed: true, until }
  })
  return { stocks, findings, main_kg }
}

/** Liquid whose amount is "to cover" or "to the line". */
export function untilOf(words: string): Stock['until'] {
  if (/\bto (just )?cover\b|\bcover(ed|ing)? (\w+ ){0,4}(with|by)\b/.test(words)) return 'covered'
  if (/\b(max(imum)?|fill) (fill )?line\b/.test(words)) return 'full'
  return null
}

/** Mass of the main food: the heaviest of the weightiest kind present. */
function mainMass_kg(foods: readonly { character: Character; mass_kg: number }[]): number {
  const solids = foods.filter((food) => main.includes(food.character))
  const meat = solids.filter((food) => main.indexOf(food.character) < 5)
  const from = meat.length > 0 ? meat : solids
  return from.reduce((best, food) => Math.max(best, food.mass_kg), 0)
}

/** Characters that stand in the pot as pieces, for covering and for carrying salt. */
export const isSolid = (character: Character): boolean =>
  main.includes(character) || character === 'aromatic' || character === 'egg'
export const isPoured = (character: Character): boolean => poured.has(character)
/** Thin enough to wash the base. */
export const isThin = (character: Character): boolean =>
  character === 'thin liquid' || character === 'alcohol' || character === 'acid' || character === 'dairy'
export const isMeat = (character: Character): boolean =>
  main.indexOf(character) >= 0 && (main.indexOf(character) < 5 || character === 'sausage')
