import type { Span } from '../findings/index.ts'
import type { Layout } from './layout.ts'
import { headingName, sectionOf } from './layout-headings.ts'
import type { Item } from './layout-items.ts'
import { isPromise } from './layout-promise.ts'
import type { Region } from './layout-regions.ts'
import { type Promises, promisedTimes, withSum } from './layout-times.ts'
import { yieldIn } from './layout-yield.ts'

const potNote =
  /\s*\([^()]*(?:serves|makes|yields?|portions|servings|pressure|cooker|p\/c|pot|pan|slow|stove|oven)[^()]*\)!?\s*$/i
// What may share the line of the title: a gap, a bar or a dash, and then a yield or a time.
const gap = /[ ]{3,}|\t|\s*\|\s*|\s+--+\s*|\s+[–—]\s+/

/** A card number above the name ("MEAT, FISH, AND POULTRY No. L 021 00"). */
const isCardNumber = (words: string): boolean => /\bno\.?\s*[a-z]?[\s-]?\d/i.test(words)

function trimTitle(reading: string, item: Span): Span {
  let to = item.to
  const cut = (test: RegExp) => {
    const found = test.exec(reading.slice(item.from, to))
    if (found && found.index > 0) to = item.from + found.index
  }
  const parts = gap.exec(reading.slice(item.from, to))
  if (parts) {
    const rest = reading.slice(item.from + parts.index + parts[0].length, to)
    if (isPromise(rest) || /^\W*(?:yields?|makes|serves)\b|^\d/i.test(rest) || /^[ ]{3,}|\t/.test(parts[0])) cut(gap)
  }
  cut(/\.\s+(?=(?:serves|makes|yields?|for \d)\b)/i)
  cut(potNote)
  cut(/(?:[\s.:]|\p{Extended_Pictographic}|\ufe0f)+$/u)
  let { from } = item
  while (from < to && /[\s#]/.test(reading[from]!)) from += 1
  return { from, to }
}

const fits = (reading: string, span: Span): boolean => {
  const words = reading.slice(span.from, span.to)
  if (words.length > 120 || words === '') return false
  const count = words.split(/\s+/).length
  return count <= 14 && !(/[.!?]$/.test(words) && count > 6) && /\p{L}/u.test(words)
}

/** Title, yield and promised times, from the head of the text and, for old recipes, from its foot. */
export function headOf(
  reading: string,
  items: readonly Item[],
  regions: readonly (Region | null)[],
): Pick<Layout, 'title' | 'yield' | 'stated'> {
  let title: Span | null = null
  let titleItem = -1
  const marked = items.findIndex((i) => i.level === 1 && i.heading === 'group')
  for (const [i, item] of items.entries()) {
    if (i > 6 && marked < 0) break
    const words = reading.slice(item.from, Math.min(item.to, item.from + 200))
    if (item.heading !== null && item.heading !== 'group') break
    const region = regions[i]
    if (region === 'list' || region === 'method') break
    if (isCardNumber(words)) continue
    if (marked >= 0 && i !== marked) continue
    const name = /^[#+\s]*(?:title|recipe|name)\s*:\s*/i.exec(words)
    const place = trimTitle(reading, { from: item.from + (name ? name[0].length : 0), to: item.to })
    if (isPromise(reading.slice(place.from, place.to))) continue
    if (fits(reading, place) && sectionOf(headingName(words)) === null) {
      title = place
      titleItem = i
    }
    break
  }
  let made: Layout['yield'] = null
  const times: Promises = { total: null, active: null, cooking: null }
  for (const [i, item] of items.entries()) {
    const region = regions[i]
    if (item.heading === 'ingredients') made ??= yieldIn(reading, item)
    const isHead = region === 'head' || (item.heading === 'group' && i <= 3)
    const foot = region === 'note' || region === 'method' || region === 'list'
    const words = reading.slice(item.from, Math.min(item.to, item.from + 200))
    if (isHead || i === titleItem) {
      made ??= yieldIn(reading, item)
      promisedTimes(reading, i === titleItem && title ? { from: title.to, to: item.to } : item, times)
    } else if (region === 'note' && /^\W*(?:sufficient|time)\b[\s_]*(?:\.?\s*(?:--|—)|for)/i.test(words)) {
      made ??= yieldIn(reading, item)
      almanacTime(reading, item, times)
    } else if (foot && isPromise(words)) {
      made ??= yieldIn(reading, item)
      promisedTimes(reading, item, times)
    } else if (region === 'note') made ??= sufficientIn(reading, item)
    else if (region === 'method') made ??= closingYield(reading, item)
  }
  // "For six people, put 25 g dried porcini": said in passing by the first sentence of the method.
  if (made === null) {
    const first = items.findIndex((_, i) => regions[i] === 'method')
    const lead =
      first < 0
        ? null
        : /^\W*(?:for|to serve|to feed)\s[^,.]{1,30},/i.exec(reading.slice(items[first]!.from, items[first]!.from + 50))
    if (lead) made = yieldIn(reading, { from: items[first]!.from, to: items[first]!.from + lead[0].length })
  }
  return { title, yield: made, stated: withSum(times) }
}

/** "_Time_.--2-1/2 hours to simmer": the old books give the time of cooking at the foot. */
function almanacTime(reading: string, item: Item, times: Promises): void {
  const found: Promises = { total: null, active: null, cooking: null }
  promisedTimes(reading, item, found)
  times.cooking ??= found.cooking ?? found.total
}

/** "... bake four hours. Serves eight.": said in the last words of a paragraph. */
function closingYield(reading: string, item: Item): Layout['yield'] {
  const from = Math.max(item.from, item.to - 60)
  const found = /[.;]\s+(?=(?:serves|makes|feeds|yields|enough for|sufficient for)\b[^.]{1,40}\.?$)/i.exec(
    reading.slice(from, item.to),
  )
  return found ? yieldIn(reading, { from: from + found.index + found[0].length, to: item.to }) : null
}

function sufficientIn(reading: string, item: Item): Layout['yield'] {
  const at = reading.slice(item.from, item.to).search(/\bsufficient\b/i)
  return at < 0 ? null : yieldIn(reading, { from: item.from + at, to: item.to })
}
