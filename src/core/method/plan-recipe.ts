import type { Finding, Span } from '../findings/index.ts'
import type { Range, Recipe, VerbCode } from '../manuscript/index.ts'
import type { PotCard } from '../pots/index.ts'
import { bench, heatOven, listWork, side, soakInLine } from './at-bench.ts'
import { add, heat } from './at-heat.ts'
import { brown } from './browning.ts'
import { chill, cutCooked, lift, mash, mix, rest, season, serve, skim, strain, thicken } from './by-hand.ts'
import { choosePot } from './choose-pot.ts'
import { type Placed, placeOperations } from './classify.ts'
import { type Desk, drawLoad, lineLoads, planOf, type Unlisted } from './desk.ts'
import { shareOut } from './draws.ts'
import { bringIn, ensureOpen } from './enter.ts'
import { spellOutEverything, spellOutLiquor } from './everything.ts'
import { foodNamed } from './foods.ts'
import { fry } from './frying.ts'
import { bake } from './in-oven.ts'
import { type HandTimes, handTimes, potTimes } from './norms.ts'
import type { Plan } from './plan.ts'
import { finding } from './say.ts'
import { deglaze } from './scraping.ts'
import { reduce, simmer } from './simmering.ts'
import { isSolid, stocksOf } from './stocks.ts'
import { hold, lock, release, underPressure } from './under-lid.ts'
import { cutIn, mid } from './words.ts'

export interface PlanOptions {
  /** The pot to cook in, whatever the manuscript says. */
  readonly pot?: PotCard
  /** Height over the sea; the manuscript's own, else 0. */
  readonly altitude_m?: number
  /** Gauge pressure of the high setting, in place of the card's. */
  readonly gauge_Pa?: number
  /** Hand-work norms to use in place of the built-in ones. */
  readonly handTimes?: HandTimes
}

/**
 * The plan a manuscript asks for: what meets the pot, and what is done to it, in the order of the text.
 *
 * Shape    words and norms, no physics; whatever is filled in carries a finding
 * Range    any Recipe; altitude_m −500 to 6000; gauge_Pa 1 kPa to 200 kPa
 * Outside  RangeError for altitude or gauge; no text makes it throw
 * Error    masses as the words give them, with their band; hand times are norms, low to high
 * Source   docs/models/method.md
 * Check    test/core/method: the demonstration dishes line by line, arbitrary text stays finite
 */
export function planRecipe(recipe: Recipe, options: PlanOptions = {}): Plan {
  const altitude_m = options.altitude_m ?? recipe.named.altitude_m ?? 0
  if (!(altitude_m >= -500 && altitude_m <= 6000))
    throw new RangeError(`altitude_m is ${altitude_m} m; it must lie from −500 to 6000 m`)
  const { gauge_Pa } = options
  if (gauge_Pa !== undefined && !(gauge_Pa >= 1e3 && gauge_Pa <= 2e5))
    throw new RangeError(`gauge_Pa is ${gauge_Pa} Pa; it must lie from 1000 to 200000 Pa`)
  const { pot, potFrom, findings: potFindings } = choosePot(recipe, options)
  const { stocks, findings: amountFindings } = stocksOf(recipe)
  const placed = spellOutLiquor(
    spellOutEverything(recipe, placeOperations(recipe)),
    (line) => stocks[line]?.food.character === 'thin liquid',
  )
  const draws = shareOut(recipe, placed, {
    mass_kg: (line) => stocks[line].mass_kg,
    solid: (line) => isSolid(stocks[line].food.character),
  })
  const used = new Set([...draws.taken.flatMap((list) => list.map((draw) => draw.ingredient)), ...draws.spoken.flat()])
  const desk: Desk = {
    recipe,
    pot,
    hands: options.handTimes ?? handTimes,
    placed,
    draws,
    stocks,
    unlisted: unlistedIn(recipe, placed),
    cuts: cutsIn(placed),
    soaked_s: soaksIn(recipe, placed),
    loads: [],
    place: [],
    operations: [],
    findings: [...potFindings, ...amountFindings.filter((each) => concernsUsed(recipe, used, each))],
    attached: new Map(),
    names: new Map(),
    cutLines: new Set(),
    done: new Set(),
    lid: 'off',
    sealed: false,
    held: false,
    hot: false,
    fond: false,
    oven_K: null,
    dial: null,
  }
  listWork(desk, used)
  placed.forEach((item, index) => {
    if (!desk.done.has(index)) write(desk, item, index)
  })
  const last = placed.at(-1)
  // At the end of the text a pot still at pressure has to come down.
  if (last) ensureOpen(desk, last)
  if (
    desk.loads.length === 0 ||
    !desk.operations.some((operation) => operation.kind !== 'bench' && operation.kind !== 'serve')
  )
    desk.findings.push(
      finding(
        'nothing-to-cook',
        'warning',
        null,
        'Nothing to cook.',
        'No step of this text puts food into a pot.',
        'Write a method.',
        'the words',
      ),
    )
  return planOf(desk, potFrom, altitude_m)
}

type Writer = (desk: Desk, item: Placed, index: number) => void

/** What each verb does to the vessel. Bench verbs that reach this table touch cooked food. */
const writers: Record<VerbCode, Writer> = {
  heat,
  brown,
  sweat: (desk, item, index) => fry(desk, item, index, 'sweat'),
  bloom: (desk, item, index) => fry(desk, item, index, 'bloom'),
  fry: (desk, item, index) => fry(desk, item, index, 'fry'),
  deglaze,
  add,
  boil: simmer,
  simmer,
  reduce,
  lock,
  hold,
  release,
  rest,
  lift,
  strain,
  drain: strain,
  settle: skim,
  skim,
  thicken,
  season,
  chill,
  bake,
  mix,
  mash,
  cut: cutCooked,
  soak: bench,
  pickle: bench,
  marinate: bench,
  serve,
}

/** Verbs that a sealed vessel stays sealed for. */
const throughLid: ReadonlySet<VerbCode> = new Set(['lock', 'hold', 'release', 'rest'])
/** Verbs before which what was prepared apart has to be in. */
const closing: ReadonlySet<VerbCode> = new Set(['lock', 'hold', 'bake', 'simmer'])

function write(desk: Desk, item: Placed, index: number): void {
  const { verb } = item.op
  const begun = desk.operations.some((operation) => operation.kind !== 'bench')
  if (item.where === 'oven') heatOven(desk, item)
  else if (item.where === 'side') side(desk, item, index)
  else if (item.where === 'bench' && !(verb === 'cut' && begun && touchesCooked(desk, item))) bench(desk, item, index)
  else if (!underPressure(desk, item)) {
    if (!throughLid.has(verb) || (verb === 'lock' && desk.held)) ensureOpen(desk, item)
    if (closing.has(verb)) joinForgotten(desk, item, index)
    writers[verb](desk, item, index)
  }
}

/** What was browned or mixed apart and is never named again joins before the lid closes, as any cook would see to. */
function joinForgotten(desk: Desk, item: Placed, index: number): void {
  const later = new Set(desk.placed.slice(index).flatMap(({ op }) => op.uses.map((use) => use.ingredient)))
  const carried = new Set([...desk.attached.values()].flat())
  // "Combine the rice and the milk in the bowl … lower in the bowl": the mixture goes in without its name.
  const mixed = new Set(desk.placed.slice(0, index).map((_, at) => desk.draws.host[at]))
  for (const line of mixed) {
    if (line === null || later.has(line) || lineLoads(desk, line).length > 0) continue
    drawLoad(
      desk,
      {
        ingredient: line,
        share: 1,
        use: { ...wordsOf(desk, line), ingredient: line, share: 1, again: false },
        guessed: false,
      },
      [],
    )
    for (const id of desk.attached.get(line) ?? []) carried.delete(id)
  }
  const ids = desk.loads
    .filter((load) => load.ingredient !== null && !later.has(load.ingredient))
    .filter((load) => desk.place[load.id] === 'side' || (desk.place[load.id] === 'bench' && !carried.has(load.id)))
    .map((load) => load.id)
  const rack = desk.placed.some(
    (other, at) => at < index && other.step === item.step && /\b(trivet|rack|basket|sling)\b/.test(other.sentence),
  )
  if (ids.length > 0) bringIn(desk, item, { fresh: ids, back: [], within: [] }, rack ? { how: 'on-rack' } : {})
}

/** First words of the method that name a line. */
const wordsOf = (desk: Desk, line: number): Span =>
  desk.placed.flatMap(({ op }) => op.uses).find((use) => use.ingredient === line) ?? desk.stocks[line].ingredient

const touchesCooked = (desk: Desk, item: Placed): boolean =>
  item.op.uses.length === 0
    ? desk.loads.some((load) => desk.place[load.id] === 'pot')
    : item.op.uses.some((use) =>
        desk.loads.some((load) => load.ingredient === use.ingredient && desk.place[load.id] !== 'bench'),
      )

/** Foods the reader found used but not listed, at the operation whose words name them. */
function unlistedIn(recipe: Recipe, placed: readonly Placed[]): Unlisted[] {
  const found: Unlisted[] = []
  for (const query of recipe.queries) {
    if (query.code !== 'used-unlisted' || !query.span) continue
    const { span } = query
    const name = recipe.text
      .slice(span.from, span.to)
      .toLowerCase()
      .replace(/^(the|a|an|some)\s+/, '')
    const food = foodNamed(name)
    const inside = placed.findIndex(({ op, where }) => where !== 'oven' && op.from <= span.from && span.to <= op.to)
    const after = placed.findIndex(({ op, where }) => where === 'main' && op.to >= span.from)
    const at = inside >= 0 ? inside : after
    if (food && at >= 0) found.push({ at, food, name, span })
  }
  return found
}

/** Cutting said in the method before the food meets the pot, or between a scalding and the cooking, by ingredient. */
function cutsIn(placed: readonly Placed[]): Desk['cuts'] {
  const cuts = new Map<number, { cut: ReturnType<typeof cutIn>; words: string; span: Span }>()
  const cooked = new Set<number>()
  placed.forEach(({ op, where, words }, at) => {
    for (const { ingredient } of op.uses) {
      if (op.verb !== 'cut') {
        if (where !== 'bench') cooked.add(ingredient)
        continue
      }
      const cut = cutIn(words)
      if (cooked.has(ingredient) && !(cut?.size_m && cooksLong(placed, at))) continue
      if (cooked.has(ingredient) || !cuts.has(ingredient))
        cuts.set(ingredient, { cut, words, span: { from: op.from, to: op.to } })
    }
  })
  return cuts
}

/** Whether the real cooking is still to come. */
const cooksLong = (placed: readonly Placed[], after: number): boolean =>
  placed.slice(after + 1).some(({ op }) => /^(hold|simmer|bake)$/.test(op.verb) && (op.time_s?.high ?? 0) >= 900)

/** How long each pulse is soaked before the pot, from its line or from the method. */
function soaksIn(recipe: Recipe, placed: readonly Placed[]): Map<number, number> {
  const soaked = new Map<number, number>()
  const put = (line: number, time: Range) => soaked.set(line, mid(time))
  for (const ingredient of recipe.ingredients) {
    const time = soakInLine(ingredient)
    if (time) put(ingredient.index, time)
  }
  for (const { op } of placed)
    if (op.verb === 'soak') for (const use of op.uses) put(use.ingredient, op.time_s ?? potTimes.soak)
  return soaked
}

/** Findings about lines that never meet the pot would only repeat the reader's query. */
function concernsUsed(recipe: Recipe, used: ReadonlySet<number>, each: Finding): boolean {
  const { span } = each
  if (!span) return true
  const line = recipe.ingredients.find((ingredient) => ingredient.from <= span.from && span.to <= ingredient.to)
  return !line || used.has(line.index)
}
