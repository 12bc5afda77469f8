import type { Finding, Span } from '../findings/index.ts'
import { type Food, foodById } from '../larder/index.ts'
import type { Cut, HeatWord, Range, Recipe, VerbCode } from '../manuscript/index.ts'
import type { PotCard } from '../pots/index.ts'
import { assumedAmount_kg, assumedSpread, cover_m, voids } from './assumed-amounts.ts'
import type { Placed } from './classify.ts'
import type { Draw, Draws } from './draws.ts'
import type { HandTimes } from './norms.ts'
import { piecesOf } from './pieces.ts'
import type { Load, Plan, PlanOperation } from './plan.ts'
import { finding, grams } from './say.ts'
import { soakedFood, soakedUp_kg_per_kg } from './soaked.ts'
import { startOf, startTemperatures_K } from './start.ts'
import { isPoured, type Stock } from './stocks.ts'
import { about } from './words.ts'

/** Where a load is while the plan is written. */
export type Place = 'bench' | 'side' | 'pot' | 'aside' | 'gone'

/** A food that the method uses and the list forgets. */
export interface Unlisted {
  readonly at: number
  readonly food: Food
  readonly name: string
  readonly span: Span
}

/** The writing desk of one plan: what has been written so far, and how the vessel stands at that point. */
export interface Desk {
  readonly recipe: Recipe
  readonly pot: PotCard
  readonly hands: HandTimes
  readonly placed: readonly Placed[]
  readonly draws: Draws
  readonly stocks: readonly Stock[]
  readonly unlisted: readonly Unlisted[]
  readonly cuts: ReadonlyMap<number, { cut: Pick<Cut, 'shape' | 'size_m'> | null; words: string; span: Span }>
  /** Time soaked before the pot, by ingredient. */
  readonly soaked_s: ReadonlyMap<number, number>
  readonly loads: Load[]
  readonly place: Place[]
  readonly operations: PlanOperation[]
  readonly findings: Finding[]
  /** Loads that enter with an ingredient because they were rubbed in or mixed with it. */
  readonly attached: Map<number, number[]>
  /** Lines whose cutting has been put on the clock. */
  readonly cutLines: Set<number>
  /** Short names of ingredients, found once. */
  readonly names: Map<number, string>
  /** Operations already dealt with together with an earlier one. */
  readonly done: Set<number>
  lid: 'on' | 'off' | 'ajar'
  sealed: boolean
  /** At pressure since the lid was locked. */
  held: boolean
  hot: boolean
  fond: boolean
  oven_K: number | null
  /** Heat word of a dial that was set before anything was said to be heated. */
  dial: HeatWord | null
}

export const loadsAt = (desk: Desk, place: Place): Load[] => desk.loads.filter((load) => desk.place[load.id] === place)
export const lineLoads = (desk: Desk, ingredient: number): Load[] =>
  desk.loads.filter((load) => load.ingredient === ingredient)
export const liquidInPot_kg = (desk: Desk): number =>
  loadsAt(desk, 'pot').reduce(
    (sum, load) => sum + (isPoured(load.food.character) && load.food.character !== 'fat' ? load.mass_kg : 0),
    0,
  )

/** What every operation of a plan carries. */
export function common(
  item: Placed,
  label: string,
  more: { handsOn: boolean; timed?: boolean; implied?: boolean; verb?: VerbCode },
) {
  return {
    from: item.op.from,
    to: item.op.to,
    verb: more.verb ?? item.op.verb,
    step: item.step,
    label,
    handsOn: more.handsOn,
    timed: more.timed ?? false,
    ...(more.implied ? { implied: true } : {}),
  }
}

const stem = (word: string): string => word.replace(/(es|s)$/, '').slice(0, 5)

/** The name a label uses: the manuscript's own short word for it, else the item. */
export function shortName(desk: Desk, load: Load): string {
  if (load.ingredient === null) return load.name
  const known = desk.names.get(load.ingredient)
  if (known !== undefined) return known
  const name = nameInWords(desk, load)
  desk.names.set(load.ingredient, name)
  return name
}

function nameInWords(desk: Desk, load: Load): string {
  const own = new Set(
    `${load.name} ${load.food.name}`
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .filter((word) => word.length > 2)
      .map(stem),
  )
  const words = desk.placed
    .flatMap(({ op }) => op.uses)
    .filter((use) => use.ingredient === load.ingredient)
    .map((use) => desk.recipe.text.slice(use.from, use.to).toLowerCase().replace(/\s+/g, ' ').trim())
    .map((said) =>
      said
        .replace(/^.*\b(?:of|the|remaining|all|both|more)\s+/, '')
        .replace(/^[\d\s./¼½¾⅓⅔⅛–-]+((g|kg|ml|l|cl|oz|lb|tsp|tbsp|cups?|litres?)\s+)?/, ''),
    )
    // "it" and "everything" are no names, and what two words of a sentence share belongs to only one of them.
    .filter(
      (said) =>
        said.length > 2 &&
        said.length <= 28 &&
        said.split(/[^\p{L}]+/u).every((word) => own.has(stem(word)) || word.length < 3),
    )
  return words.reduce((best, said) => (best === '' || said.length < best.length ? said : best), '') || load.name
}

/** "the pork and garlic", "the pork, garlic and 3 more". */
export function namesOf(desk: Desk, ids: readonly number[]): string {
  // Fat in the pan goes without saying beside what is fried in it.
  const solid = ids.filter((id) => desk.loads[id].food.character !== 'fat')
  const names = [...new Set((solid.length > 0 ? solid : ids).map((id) => shortName(desk, desk.loads[id])))]
  if (names.length === 0) return ''
  if (names.length === 1) return `the ${names[0]}`
  if (names.length <= 3) return `the ${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
  return `the ${names.slice(0, 2).join(', ')} and ${names.length - 2} more`
}

/** Water that covers the solids in the vessel by a finger's breadth, or fills it to its line, kg. */
function poured_kg(desk: Desk, until: 'covered' | 'full', with_: readonly Load[]): number {
  const inside = [...loadsAt(desk, 'pot'), ...with_]
  const bulk = inside
    .filter((load) => load.pieces)
    .reduce((sum, load) => sum + load.mass_kg / load.food.density_kg_per_m3, 0)
  const liquid = inside
    .filter((load) => !load.pieces)
    .reduce((sum, load) => sum + load.mass_kg / load.food.density_kg_per_m3, 0)
  const wanted_m3 =
    until === 'full'
      ? desk.pot.fillLimit * desk.pot.capacity_m3 - bulk - liquid
      : (bulk * voids) / (1 - voids) + cover_m * desk.pot.baseArea_m2 - liquid
  const room_m3 = desk.pot.fillLimit * desk.pot.capacity_m3 - bulk - liquid
  return Math.max(0.05, Math.min(wanted_m3, room_m3) * 1000)
}

/** Writes the load that a draw makes. */
export function drawLoad(desk: Desk, draw: Draw, beside: readonly Load[]): Load {
  const stock = desk.stocks[draw.ingredient]
  const { ingredient } = stock
  const uptake = soakUptake(desk, stock)
  const pressed = juiceOf(desk, stock, draw)
  const food = pressed ?? (uptake > 0 ? soakedFood(stock.food, uptake) : stock.food)
  const yields = pressed ? juice_kg_per_kg : 1 + uptake
  let mass_kg = stock.mass_kg * draw.share * yields
  let band: Range = {
    low: stock.band_kg.low * draw.share * yields,
    high: stock.band_kg.high * draw.share * yields,
  }
  if (stock.until) {
    mass_kg = poured_kg(desk, stock.until, beside)
    band = about(mass_kg, 0.3)
    desk.findings.push(
      finding(
        'to-cover-assumed',
        'hint',
        ingredient.amountSpan ?? ingredient.itemSpan ?? ingredient,
        `Taken for ${grams(mass_kg)}.`,
        stock.until === 'covered' ? 'What covers the solids in this pot by 1 cm.' : 'What fills this pot to its line.',
        'Write the volume: cover differs with the pot’s width.',
      ),
    )
  }
  const cutting = desk.cuts.get(draw.ingredient)
  const cut = ingredient.cut ?? cutting?.cut ?? null
  const words = `${ingredient.line} ${cutting?.words ?? ''}`.toLowerCase()
  const bought =
    ingredient.unit === null && ingredient.low !== null && ingredient.high !== null
      ? ((ingredient.low + ingredient.high) / 2) * draw.share
      : null
  const pieces = piecesOf({ food, mass_kg, cut, words, bought })
  if (pieces?.from === 'usual' && food.character === 'collagen cut')
    desk.findings.push(
      finding(
        'size-not-said',
        'hint',
        ingredient.itemSpan ?? ingredient,
        'Cut how large?',
        `No size is said, so ${Math.round(pieces.thickness_m * 1000) / 10}-cm pieces are taken. Time at pressure follows the thickness.`,
        'Write the size of the pieces.',
      ),
    )
  return addLoad(desk, {
    ingredient: draw.ingredient,
    name: ingredient.item || ingredient.line,
    food,
    mass_kg,
    massBand_kg: band,
    pieces,
    ...startOf(food, ingredient),
    span: { from: draw.use.from, to: draw.use.to },
    ...(uptake > 0 ? { soaked_kg: (mass_kg * uptake) / (1 + uptake) } : {}),
    ...(stock.assumed || draw.guessed ? { assumed: true } : {}),
  })
}

function addLoad(desk: Desk, load: Omit<Load, 'id'>): Load {
  const whole: Load = { id: desk.loads.length, ...load }
  desk.loads.push(whole)
  desk.place.push('bench')
  return whole
}

/** Writes the load of a food that is used but not listed. */
export function unlistedLoad(desk: Desk, { at, food, name, span }: Unlisted, drawn: readonly Load[]): Load {
  // "In a pan of cold water": as much as covers what is in it.
  const covers = food.id === 'water' && /\b(cover|pan of|pot of|fresh|plenty of)\b/.test(desk.placed[at].sentence)
  const mass_kg = covers ? poured_kg(desk, 'covered', drawn) : assumedAmount_kg[food.character]
  desk.findings.push(
    finding(
      'unlisted-assumed',
      'hint',
      span,
      `Taken for ${grams(mass_kg)}.`,
      `${name[0].toUpperCase()}${name.slice(1)} is used here but not listed.`,
      'List it with an amount.',
    ),
  )
  return addLoad(desk, {
    ingredient: null,
    name,
    food,
    mass_kg,
    massBand_kg: about(mass_kg, assumedSpread),
    pieces: piecesOf({ food, mass_kg, cut: null, words: name, bought: null }),
    ...startOf(food, null),
    span,
    assumed: true,
  })
}

/** Water that the words boil food in without listing it; null when the larder has no water. */
export function waterToCover(desk: Desk, words: Span): Load | null {
  const food = foodById('water')
  if (!food) return null
  const mass_kg = poured_kg(desk, 'covered', [])
  desk.findings.push(
    finding(
      'unlisted-assumed',
      'hint',
      words,
      `In ${grams(mass_kg)} of water.`,
      'No water is listed; what covers the food in this pot by 1 cm is taken.',
      'List the water.',
    ),
  )
  return addLoad(desk, {
    ingredient: null,
    name: 'water',
    food,
    mass_kg,
    massBand_kg: about(mass_kg, 0.3),
    pieces: null,
    ...startOf(food, null),
    span: { from: words.from, to: words.to },
    assumed: true,
  })
}

/** Juice that a squeezed fruit gives, of its edible mass (assumed). */
const juice_kg_per_kg = 0.45

/** "1 lemon, juiced", "the lemon juice": only the juice meets the pot. Null when the fruit itself does. */
function juiceOf(desk: Desk, stock: Stock, draw: Draw): Food | null {
  if (stock.food.character !== 'fruit') return null
  const use = desk.recipe.text.slice(draw.use.from, draw.use.to).toLowerCase()
  const { prep, item } = stock.ingredient
  const said =
    /\bjuice\b/.test(use) ||
    /^(juiced|juice of)\b|\bjuiced$|\bjuiced only\b/.test((prep ?? '').trim().toLowerCase()) ||
    /\bjuice\b/.test(item)
  return said && draw.share <= 1 && !/\b(slices?|zest|peel|rind)\b/.test(use)
    ? foodById(`${stock.food.id}-juice`)
    : null
}

/** Water a line has soaked up by the time it is used, kg per kg dry. */
export function soakUptake(desk: Desk, stock: Stock): number {
  if (stock.food.character !== 'pulse') return 0
  const time_s = desk.soaked_s.get(stock.ingredient.index)
  return time_s === undefined
    ? 0
    : Math.min(soakedUp_kg_per_kg(time_s), stock.food.absorbs > 0 ? stock.food.absorbs : 1)
}

/** What an operation touches: loads new to the vessel, loads that wait beside it, loads in it already. */
export interface Touched {
  readonly fresh: number[]
  readonly back: number[]
  readonly within: number[]
}

/** Draws what an operation takes and sorts what it touches. Called once for each operation. */
export function touch(desk: Desk, index: number): Touched {
  const fresh: number[] = []
  const back: number[] = []
  const within: number[] = []
  const drawn: Load[] = []
  // In the order of the words, except that what is poured "to cover" waits for what it covers.
  const said = desk.placed[index].op.uses.map((use) => use.ingredient)
  const inOrder = (a: number, b: number) => said.indexOf(a) - said.indexOf(b)
  const late = (line: number) => Number(desk.stocks[line].until !== null)
  const draws = [...desk.draws.taken[index]].sort(
    (a, b) => late(a.ingredient) - late(b.ingredient) || inOrder(a.ingredient, b.ingredient),
  )
  const lines = [
    ...new Set([...desk.draws.taken[index].map((draw) => draw.ingredient), ...desk.draws.spoken[index]]),
  ].sort(inOrder)
  for (const line of lines) {
    for (const load of lineLoads(desk, line)) {
      const at = desk.place[load.id]
      if (at === 'bench' || at === 'side') fresh.push(load.id)
      else if (at === 'aside') back.push(load.id)
      else if (at === 'pot') within.push(load.id)
    }
  }
  for (const draw of draws) {
    const load = drawLoad(desk, draw, drawn)
    drawn.push(load)
    fresh.push(load.id)
  }
  for (const unlisted of desk.unlisted) if (unlisted.at === index) fresh.push(unlistedLoad(desk, unlisted, drawn).id)
  // What was cooked together in another pan comes together.
  if (fresh.some((id) => desk.place[id] === 'side')) {
    for (const load of loadsAt(desk, 'side')) if (!fresh.includes(load.id)) fresh.push(load.id)
  }
  for (const line of lines) {
    for (const id of desk.attached.get(line) ?? [])
      if (desk.place[id] === 'bench' && !fresh.includes(id)) fresh.push(id)
  }
  return { fresh, back, within }
}

/** What a "cook for 5 minutes" without a noun speaks of: what the step has just put in. */
export function justAdded(desk: Desk, item: Placed): number[] {
  const last = desk.operations.findLast((operation) => operation.kind !== 'deglaze' && operation.kind !== 'heat')
  return last && (last.kind === 'add' || last.kind === 'return') && last.step === item.step ? [...last.loads] : []
}

/** Moves loads; a load cooked apart comes in warm. */
export function move(desk: Desk, ids: readonly number[], to: Place): void {
  for (const id of ids) {
    if (to === 'pot' && desk.place[id] === 'side')
      desk.loads[id] = { ...desk.loads[id], start_K: startTemperatures_K.cookedApart, frozen: false }
    desk.place[id] = to
  }
}

/** The plan as written so far. */
export function planOf(desk: Desk, potFrom: Plan['potFrom'], altitude_m: number): Plan {
  return { pot: desk.pot, potFrom, altitude_m, loads: desk.loads, operations: desk.operations, findings: desk.findings }
}
