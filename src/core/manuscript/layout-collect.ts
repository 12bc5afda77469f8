import type { Span } from '../findings/index.ts'
import { amountAt } from './amount.ts'
import type { Cell, IngredientLine, Layout, Note, StepText } from './layout.ts'
import { noteKind } from './layout-headings.ts'
import type { Item } from './layout-items.ts'
import { isPromise } from './layout-promise.ts'
import { orderAt, type Region } from './layout-regions.ts'
import { besideEachOther, cellsOf, columnsOf, isRule, rowOf } from './layout-rows.ts'
import { isRunOn, runOnFoods } from './layout-runin.ts'
import { bareVerb, gerund, participle } from './verbs.ts'
import { wordsIn } from './words.ts'

type Parts = Pick<Layout, 'ingredients' | 'steps' | 'notes'>

const bareLine = (place: Span, cells: readonly Cell[] | null, group: Span | null): IngredientLine => ({
  from: place.from,
  to: place.to,
  line: '',
  cells,
  group,
})

/** "1 Cook beef and onions": the figure is the step's number when it is the next one and an order follows. */
function bareNumber(reading: string, item: Item, expected: number): { number: number; from: number } | null {
  const found = /^(\d{1,2})[.)]?\s+/.exec(reading.slice(item.from, item.from + 6))
  if (!found || Number(found[1]) !== expected) return null
  const from = item.from + found[0].length
  const tokens = wordsIn(reading, { from, to: Math.min(item.to, from + 60) })
  const amount = amountAt(reading, wordsIn(reading, { from: item.from, to: Math.min(item.to, item.from + 60) }), 0)
  if (amount?.unit) return null
  return tokens[0] && (orderAt(tokens, 0) > 0 || expected > 1 || /^\p{Lu}/u.test(reading[from]!))
    ? { number: expected, from }
    : null
}

/** "1. Brown the beef. 2. Add the stock.": steps numbered inside one paragraph. */
function inlineSteps(reading: string, place: Span): Span[] {
  const cuts: number[] = []
  const text = reading.slice(place.from, place.to)
  let next = 2
  for (const found of text.matchAll(/(?<=[.!?:;)])\s+\(?(\d{1,2})[.)]\s+(?=[\p{Lu}*])/gu)) {
    if (Number(found[1]) !== next) continue
    cuts.push(found.index, found.index + found[0].length)
    next += 1
  }
  if (cuts.length === 0) return [place]
  const out: Span[] = []
  let from = 0
  for (let i = 0; i < cuts.length; i += 2) {
    out.push({ from: place.from + from, to: place.from + cuts[i]! })
    from = cuts[i + 1]!
  }
  out.push({ from: place.from + from, to: place.to })
  return out
}

/** Is this bullet a part of the mix named by the entry above it, which carries the amount? */
function isPartOf(reading: string, item: Item, parent: Item | null): boolean {
  if (!parent || item.mark === null || item.indent <= parent.indent) return false
  if (!/:\s*$/.test(reading.slice(parent.from, parent.to))) return false
  const amount = amountAt(reading, wordsIn(reading, { from: item.from, to: Math.min(item.to, item.from + 80) }), 0)
  return amount === null || amount.article
}

/** Puts every item where its region says: list lines, steps, notes. */
export function collect(
  reading: string,
  items: readonly Item[],
  regions: readonly (Region | null)[],
  title: Span | null,
): Parts {
  const ingredients: IngredientLine[] = []
  const steps: StepText[] = []
  const notes: Note[] = []
  let group: Span | null = null
  let columns: Cell['column'][] | null = null
  let parent: Item | null = null
  let stepNumber: number | null = null
  let expected = 1
  let equipment = false
  let inList = false
  for (const [i, item] of items.entries()) {
    if (item.heading !== null) {
      const numbered = /^step\s+(\d{1,2})$/i.exec(reading.slice(item.from, item.to).trim())
      if (numbered) stepNumber = Number(numbered[1])
      else {
        inList = false
        group = item.heading === 'group' && i > 0 ? { from: item.from, to: item.to } : null
        equipment = item.equipment
        if (item.heading === 'ingredients') columns = item.columns ? columnsOf(reading, cellsOf(reading, item)) : null
        if (item.heading !== 'group') expected = 1
      }
      continue
    }
    const region = regions[i]
    if (region === 'list') {
      inList = true
      if (isRule(reading.slice(item.from, item.to))) continue
      if (isPartOf(reading, item, parent)) continue
      parent = item
      const beside = columns ? null : besideEachOther(reading, item)
      if (beside) {
        for (const half of beside) {
          const tokens = wordsIn(reading, half)
          const isStep = amountAt(reading, tokens, 0) === null
          if (isStep) steps.push({ ...half, text: '', number: null, group: null })
          else ingredients.push(bareLine(half, null, group))
        }
        continue
      }
      const row = rowOf(reading, item, columns)
      const runOn = row
        ? false
        : items[i - 1]?.heading === 'ingredients' &&
          !items[i - 1]!.columns &&
          hasCommaList(reading, item, regions[i + 1])
      if (row) ingredients.push(bareLine({ from: row[0]!.from, to: row.at(-1)!.to }, row, group))
      else if (runOn || isRunOn(reading, item)) {
        for (const food of runOnFoods(reading, item)) ingredients.push(bareLine(food, null, group))
      } else ingredients.push(bareLine(trimmed(reading, item), null, group))
    } else if (region === 'method') {
      // The heading of a part of the list says nothing of a method without headings of its own.
      if (inList) group = null
      inList = false
      const bare = item.mark === null && stepNumber === null ? bareNumber(reading, item, expected) : null
      const number = bare?.number ?? item.number ?? stepNumber
      if (number !== null) expected = number + 1
      stepNumber = null
      const [first, ...more] = inlineSteps(reading, { from: bare?.from ?? item.from, to: item.to })
      steps.push({ ...first!, text: '', number, group })
      for (const [k, place] of more.entries()) steps.push({ ...place, text: '', number: (number ?? 1) + k + 1, group })
      expected += more.length
    } else {
      const words = reading.slice(item.from, Math.min(item.to, item.from + 200))
      if (title && item.from <= title.from && title.from < item.to) continue
      const told = toldTime(reading, item)
      if (told) {
        steps.push({ ...told, text: '', number: null, group: null })
        continue
      }
      const kind = noteKind(words) ?? (equipment ? 'equipment' : region === 'head' ? 'headnote' : 'tip')
      if (!(region === 'head' && isPromise(words))) notes.push({ from: item.from, to: item.to, kind })
    }
  }
  return { ingredients, steps, notes }
}

/** "_Time_.--2-1/2 hours to simmer gently": the foot of an old recipe says how long what the method left open. */
function toldTime(reading: string, item: Item): Span | null {
  const words = reading.slice(item.from, Math.min(item.to, item.from + 160))
  const label = /^\s*time\s*\.?\s*(?:--+|—|–)\s*/i.exec(words)
  if (!label) return null
  const from = item.from + label[0].length
  const stop = /[.;](?=\s|$)/.exec(reading.slice(from, item.to))
  const to = stop ? from + stop.index + 1 : item.to
  const cooks = wordsIn(reading, { from, to }).some(
    (t) => bareVerb(t.low)?.code || participle(t.low)?.code || gerund(t.low)?.code,
  )
  return cooks ? { from, to } : null
}

/** A list entry without the stop that ends it. */
function trimmed(reading: string, item: Span): Span {
  let { to } = item
  while (to > item.from + 1 && /[;,\s|]/.test(reading[to - 1]!)) to -= 1
  return { from: item.from, to }
}

/** One paragraph right under the heading of the list, with nothing of the list behind it: the foods run on in it. */
function hasCommaList(reading: string, item: Item, next: Region | null | undefined): boolean {
  return item.mark === null && next !== 'list' && /[,;]/.test(reading.slice(item.from, item.to))
}
