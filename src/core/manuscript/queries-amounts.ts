import type { Finding } from '../findings/index.ts'
import type { Character, Food } from '../larder/index.ts'
import { containing, figure, finding, type Understood, wordsAt } from './queries-finding.ts'
import { massOf_kg, middle, volumeOf_m3 } from './queries-measures.ts'
import { outOfProportion } from './queries-proportion.ts'
import type { Ingredient, Measure } from './recipe.ts'

// Amounts that are missing, double or out of all proportion.

export function askAboutAmounts(known: Understood): Finding[] {
  const found: Finding[] = []
  for (const [index, ingredient] of known.ingredients.entries()) {
    const { food } = known.pantry.known[index]!
    found.push(
      ...missing(known, ingredient, food),
      ...pairs(known, ingredient, food),
      ...uncut(known, ingredient, food),
    )
  }
  return [...found, ...outOfProportion(known)]
}

const byTheWay =
  /\b(?:to serve|for serving|for greasing|to garnish|for garnish|garnish|to taste|as needed|as required|optional|for the (?:tin|pan|dish))\b/iu
const needsAmount: ReadonlySet<Character> = new Set([
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'sausage',
  'fish',
  'thin liquid',
  'thick liquid',
  'grain',
  'pasta',
  'pulse',
  'starch',
  'thickener',
  'alcohol',
  'leavening',
  'sweetener',
] as const)
const byMeasure: ReadonlySet<Character> = new Set([
  'thin liquid',
  'fat',
  'salt',
  'sweetener',
  'thickener',
  'grain',
  'acid',
  'alcohol',
  'paste',
  'leavening',
] as const)

function missing(known: Understood, ingredient: Ingredient, food: Food | null): Finding[] {
  const character = food?.character ?? null
  const inMethod = containing(known.layout.steps, ingredient) !== undefined
  if (inMethod || ingredient.toTaste || ingredient.optional || byTheWay.test(ingredient.line)) return []
  const group = containing(known.layout.ingredients, ingredient)?.group
  if (group && byTheWay.test(known.reading.slice(group.from, group.to))) return []
  if (ingredient.low === null) {
    if (
      character === null ||
      !needsAmount.has(character) ||
      /\b(?:water|thickening)\b/u.test(ingredient.item) ||
      /\b(?:some|a little|few|handful)\b/iu.test(ingredient.line)
    )
      return []
    return [
      finding({
        code: 'amount-missing',
        severity: 'warning',
        span: ingredient.itemSpan ?? ingredient,
        title: `How much ${ingredient.item}?`,
        message: `"${wordsAt(known.text, ingredient)}" has no amount. Liquid, thickness and time all hang on it.`,
        advice: 'Give an amount, with its unit.',
      }),
    ]
  }
  const bare = ingredient.unit === null && ingredient.pack === null && ingredient.also.length === 0
  if (
    bare &&
    character !== null &&
    byMeasure.has(character) &&
    !/\b(?:cube|piece|bottle|glass|bag|box|carton|stick|knob|splash|drizzle|spoon|squeeze|shot|tub|block)/iu.test(
      ingredient.line,
    )
  ) {
    if (food?.measures.some((measure) => measure.unit === 'each')) return []
    return [
      finding({
        code: 'unit-missing',
        severity: 'warning',
        span: ingredient.amountSpan ?? ingredient,
        title: `${figure(ingredient.low)} what of ${ingredient.item}?`,
        message: `"${wordsAt(known.text, ingredient)}" has a number and no unit.`,
        advice: 'Name the unit: grams, cups, tablespoons.',
      }),
    ]
  }
  return []
}

/** Two measures of one kind may differ by the rounding of cups and of national spoons. */
const roundingOfMeasures = 1.15
/** A cup of something weighs what it weighs within heaping, cutting and packing. */
const roundingOfCups = 2.2

/** "1 lb (900 g)": one amount, printed twice, must be one amount. */
function pairs(known: Understood, ingredient: Ingredient, food: Food | null): Finding[] {
  if (ingredient.low === null) return []
  const own: Measure = { low: ingredient.low, high: ingredient.high ?? ingredient.low, unit: ingredient.unit }
  const said = [own, ...ingredient.also]
  for (let i = 0; i < said.length; i += 1) {
    for (let k = i + 1; k < said.length; k += 1) {
      const a = said[i]!
      const b = said[k]!
      const masses = [massOf_kg(a), massOf_kg(b)]
      const volumes = [volumeOf_m3(a), volumeOf_m3(b)]
      const same =
        masses[0] && masses[1] ? masses[0] / masses[1] : volumes[0] && volumes[1] ? volumes[0] / volumes[1] : null
      if (same !== null && (same > roundingOfMeasures || same < 1 / roundingOfMeasures))
        return [unequal(known, ingredient, a, b, 'warning')]
      if (same !== null || !food) continue
      const mass_kg = masses[0] ?? masses[1]
      // Cards round small weights to what a scale shows.
      if (mass_kg && mass_kg < 0.006) continue
      const cup = masses[0] ? b : a
      const perUnit = cupMass_kg(food, cup)
      if (!mass_kg || !perUnit) continue
      const ratio = mass_kg / perUnit
      if (ratio > roundingOfCups || ratio < 1 / roundingOfCups) return [unequal(known, ingredient, a, b, 'hint')]
    }
  }
  return []
}

/** What a household measure of a food weighs by the larder, kg; null where the larder has no weight for that measure. */
function cupMass_kg(food: Food, measure: Measure): number | null {
  if (volumeOf_m3(measure) === null) return null
  const rows = food.measures.filter((row) => row.unit === measure.unit)
  if (rows.length === 0) {
    const liquid = food.character === 'thin liquid' || food.character === 'fat' || food.character === 'dairy'
    const space = volumeOf_m3(measure)
    return liquid && space ? space * food.density_kg_per_m3 : null
  }
  const each = rows.reduce((all, row) => all + (row.low_kg + row.high_kg) / 2, 0) / rows.length
  return each * middle(measure)
}

const printed = (measure: Measure): string =>
  `${figure(measure.low)}${measure.high > measure.low ? ` to ${figure(measure.high)}` : ''} ${measure.unit ?? ''}`.trim()

function unequal(
  known: Understood,
  ingredient: Ingredient,
  a: Measure,
  b: Measure,
  severity: 'warning' | 'hint',
): Finding {
  return finding({
    code: 'measure-pair-mismatch',
    severity,
    span: ingredient,
    title: `${printed(a)} is not ${printed(b)}.`,
    message: `"${wordsAt(known.text, ingredient)}" gives one amount in two measures that do not agree.`,
    advice: 'Find out which one was cooked, and convert the other.',
    source: severity === 'warning' ? 'exact conversion' : 'household weights of the larder',
  })
}

// A muscle that softens by its collagen cooks by its thickness. Pieces that nature cut need no size.
const naturalPieces =
  /\b(?:thighs?|legs?|drumsticks?|wings?|shanks?|hocks?|knuckles?|trotters?|cheeks?|ribs?|ox-?tails?|tails?|bones?|necks?|feet|foot|chops?|ground|mince[ds]?|cutlets?|osso|kidneys?)\b/iu

function uncut(known: Understood, ingredient: Ingredient, food: Food | null): Finding[] {
  if (food?.character !== 'collagen cut' || !known.pressed || !known.drafts.some((draft) => draft.verb === 'hold'))
    return []
  const byCount =
    ingredient.unit === null && ingredient.low !== null && (ingredient.pack !== null || ingredient.also.length > 0)
  if (byCount || naturalPieces.test(ingredient.line) || ingredient.cut?.size_m) return []
  // "in 4 pieces", "2 kg piece": the size follows from the weight.
  const inWords = known.reading.slice(ingredient.from, ingredient.to)
  if (
    /\b(?:into|in|cut in) (?:\d+|two|three|four|six|eight|half|halves|quarters)\b|\b(?:whole|joint|roast|piece|rolled|one piece|-?inch|cm|mm|dice)\b/iu.test(
      inWords,
    )
  )
    return []
  if (
    known.drafts.some(
      (draft, index) =>
        draft.verb === 'cut' &&
        /\d/u.test(known.reading.slice(draft.from, draft.to)) &&
        known.touches.uses[index]!.some((use) => use.ingredient === ingredient.index),
    )
  )
    return []
  return [
    finding({
      code: 'cut-size-missing',
      severity: 'hint',
      span: ingredient.cut ?? ingredient.itemSpan ?? ingredient,
      title: 'Cut how large?',
      message: `The minutes at pressure are right for one size of ${ingredient.item}: twice as thick takes about four times as long to heat through.`,
      advice: 'Give the size of the pieces in cm or inches.',
      source: 'conduction: time grows with thickness squared',
    }),
  ]
}
