import type { Span } from '../findings/index.ts'
import { amountAt } from './amount.ts'
import { headingName, isEquipment, runInHeading, runInTitle, type Section, sectionOf } from './layout-headings.ts'
import type { Line } from './layout-lines.ts'
import { isRunOn } from './layout-runin.ts'
import { bareVerb } from './verbs.ts'
import { wordsIn } from './words.ts'

/** A paragraph, list entry or heading: lines that belong together. */
export interface Item extends Span {
  readonly apart: boolean
  readonly indent: number
  readonly mark: Line['mark']
  readonly sign: string
  readonly number: number | null
  readonly level: number
  /** Null when the item is text. */
  readonly heading: Section | null
  /** Name set before the text on its line: "LENTIL SOUP.--Simmer". */
  readonly title: boolean
  readonly equipment: boolean
  /** A heading whose text follows on the same line. */
  readonly runIn: boolean
  /** Column heads of a table. */
  readonly columns: boolean
}

const ends = /[.!?:…)"'”’]$/
const open = /(?:[,;/&+-]|\b(?:and|or|with|into|of|the|in|a|an|to|for|plus|from))$/i
const lowerCase = /^[\p{Ll}(]/u

const countWords = (words: string): number => words.split(/\s+/).filter((w) => /[\p{L}\p{N}]/u.test(w)).length

/** Lines broken by hand are even to within a few letters. */
const ragged = 4

/** Hard-wrapped text: its first line and nearly every other but the last is as full as the next word allows. */
function isWrapped(reading: string, lines: readonly Line[]): boolean {
  if (lines.length < 2) return false
  const lengths = lines.map((l) => l.to - l.from)
  const width = lengths.reduce((a, b) => Math.max(a, b), 0)
  if (width < 50 || width > 110) return false
  let full = 0
  let midway = 0
  for (let i = 0; i + 1 < lines.length; i += 1) {
    const next = lines[i + 1]!
    if (lowerCase.test(reading.slice(next.from, next.from + 1))) midway += 1
    let word = 0
    while (next.from + word < next.to && reading[next.from + word] !== ' ') word += 1
    if (lengths[i]! + 1 + word >= width - ragged) full += 1
    else if (i === 0) return false
  }
  // Entries of a list may be as long as each other, but they do not begin in mid sentence.
  return full >= 0.75 * (lines.length - 1) && midway >= 0.35 * (lines.length - 1)
}

/** Does `line` go on with the thought of the line before it, in the entry that begins with `head`? */
function continues(reading: string, head: Line, before: Line, line: Line): boolean {
  if (line.apart || line.mark !== null || line.level > 0 || line.stressed || before.level > 0 || before.stressed)
    return false
  const words = reading.slice(Math.max(before.from, before.to - 12), before.to)
  const starts = reading.slice(line.from, line.from + 2)
  if (open.test(words)) return true
  if (head.mark !== null) {
    if (lowerCase.test(starts)) return true
    if (ends.test(words)) return line.indent >= head.indent + 2
    return line.indent >= head.indent + 2 || before.to - before.from >= 55
  }
  return line.indent >= before.indent + 2 && lowerCase.test(starts)
}

const headWords =
  /^(?:ingredients?|items?|foods?|products?|weights?|measures?|amounts?|quantity|quantities|qty|issue|us|u\.s\.|metric|imperial|notes?|units?|volume|grams?|cups?|prep|preparation|ounces?|recipe|ap|ep|as|purchased|g|kg|oz|ml)$/i

/** "Ingredient  Weight  Measure  Issue": heads of columns and nothing else. */
function areColumnHeads(words: string): boolean {
  const all = words.split(/[\s|/]+/).filter((w) => /\p{L}/u.test(w))
  return (
    all.length >= 2 &&
    all.length <= 8 &&
    all.every((w) => headWords.test(w)) &&
    /ingredient|item|food|product/i.test(words)
  )
}

interface Context {
  readonly reading: string
  /** Most letters of the text are capitals, so capitals say nothing. */
  readonly shouted: boolean
}

/** What an unmarked short line heads, judged by its look and by its neighbours. */
function headingOf(c: Context, line: Line, before: Line | undefined, after: Line | undefined): Section | null {
  const length = line.to - line.from
  if (length > 90) return null
  const words = c.reading.slice(line.from, line.to)
  const name = headingName(words)
  if (name === '' || name.length > 80) return null
  const section = sectionOf(name)
  const plain = line.mark === null || line.sign === 'picture'
  // The names of the two parts head them even behind a list mark.
  if (section && (plain || line.level > 0 || section !== 'notes')) return section
  if (/^step\s+\d{1,2}$/.test(name)) return 'group'
  if (line.level > 0) return 'group'
  if (!plain) return line.mark === 'bullet' && line.stressed && /:\W*$/.test(words) ? 'group' : null
  const count = countWords(words)
  if (count > 8 || /[.!?;,]$/.test(words)) return null
  const tokens = wordsIn(c.reading, line)
  const amount = amountAt(c.reading, tokens, 0)
  if (amount && !amount.article) return null
  if (line.stressed) return 'group'
  if (words.endsWith(':') && !tokens.some((t) => t.kind === 'number')) return 'group'
  const shout = words === words.toUpperCase() && /\p{Lu}{2}/u.test(words)
  if (shout && !c.shouted && !tokens.some((t) => t.kind === 'number') && after && !after.apart) return 'group'
  if (
    /^for (?:the |each )?\p{L}/iu.test(words) &&
    count <= 5 &&
    !/^for (?:serving|greasing|frying|garnish|dusting|brushing)/i.test(words) &&
    after &&
    !after.apart
  ) {
    return 'group'
  }
  // A short bare line over a list of bullets names the list.
  if (
    after?.mark === 'bullet' &&
    !after.apart &&
    (line.apart || before?.mark === 'bullet') &&
    count <= 5 &&
    !/^(?:to|or|and)\b/i.test(words)
  ) {
    const verb = bareVerb(tokens[0]?.low ?? '')
    if (verb?.noun !== 'never') return 'group'
  }
  return null
}

const blank: Pick<
  Item,
  'apart' | 'indent' | 'mark' | 'sign' | 'number' | 'level' | 'title' | 'equipment' | 'runIn' | 'columns'
> = {
  apart: false,
  indent: 0,
  mark: null,
  sign: '',
  number: null,
  level: 0,
  title: false,
  equipment: false,
  runIn: false,
  columns: false,
}

/** Joins lines into items, splits off headings that share a line with their text. */
export function itemsOf(reading: string, lines: readonly Line[]): Item[] {
  const letters = reading.slice(0, 4000).replace(/[^\p{L}]/gu, '')
  const capitals = letters.replace(/[^\p{Lu}]/gu, '').length
  const context = { reading, shouted: capitals > 0.6 * letters.length }
  const items: Item[] = []
  const known: (Section | null | undefined)[] = []
  const heads = (i: number): Section | null => {
    if (known[i] === undefined) known[i] = headingOf(context, lines[i]!, lines[i - 1], lines[i + 1])
    return known[i]!
  }
  // Blocks are measured once; only the first lines of one may stand before a wrapped paragraph ("a name, then text").
  let block = { end: -1, tries: 0 }
  const blockEnd = (i: number): number => {
    let last = i
    while (last + 1 < lines.length) {
      const next = lines[last + 1]!
      if (next.apart || next.mark === 'bullet' || next.level > 0 || next.stressed) break
      if (next.mark === 'number' && !continuesNumber(reading, lines[last]!, next)) break
      if (last > i && heads(last + 1) !== null) break
      last += 1
    }
    return last
  }
  let i = 0
  while (i < lines.length) {
    const line = lines[i]!
    const words = reading.slice(line.from, Math.min(line.to, line.from + 100))
    const section = heads(i)
    const columns = line.mark === null && areColumnHeads(words)
    if (section !== null || columns) {
      const colon = /\s*:\W*$/.exec(reading.slice(line.from, line.to))
      items.push({
        ...blank,
        ...line,
        to: colon ? line.to - colon[0].length : line.to,
        heading: columns ? 'ingredients' : section,
        title: false,
        equipment: isEquipment(headingName(words)),
        columns,
      })
      i += 1
      continue
    }
    // The block of unmarked lines that starts here, taken as one paragraph when it was wrapped by hand.
    let last = i
    if (line.mark === null) {
      if (i > block.end) block = { end: blockEnd(i), tries: 0 }
      if (block.tries < 3) {
        block.tries += 1
        if (isWrapped(reading, lines.slice(i, block.end + 1))) last = block.end
      }
    }
    while (last + 1 < lines.length && continues(reading, line, lines[last]!, lines[last + 1]!)) last += 1
    let { from } = line
    const { to } = lines[last]!
    let apart = line.apart
    const named = runInHeading(reading.slice(from, Math.min(to, from + 100))) ?? runInNeed(reading, { from, to })
    if (named) {
      const at = from + named.nameFrom
      items.push({
        ...blank,
        apart,
        from: at,
        to:
          at +
          reading
            .slice(at, from + named.length)
            .trimEnd()
            .replace(/\W+$/, '').length,
        heading: sectionOf(named.name),
        runIn: true,
      })
      from += named.length
      apart = false
    } else if (items.length === 0) {
      const title = runInTitle(reading.slice(from, Math.min(to, from + 100)))
      if (title !== null) {
        const dash = reading.slice(from, from + title).search(/\.?\s*(?:-{2,}|—)?\s*$/)
        items.push({ ...blank, apart, from, to: from + dash, heading: 'group', title: true })
        from += title
        apart = false
      }
    }
    for (const place of chapters(reading, { from, to })) {
      if (place.heading) items.push({ ...blank, from: place.from, to: place.to, heading: place.heading, runIn: true })
      else items.push({ ...blank, ...line, from: place.from, to: place.to, apart, heading: null })
    }
    i = last + 1
  }
  return items
}

/** "You need about 500 g of lamb, a big onion, a tin of tomatoes": a list by its look, and no kit. */
function runInNeed(reading: string, place: Span): ReturnType<typeof runInHeading> {
  const found = /^\s*(you(?:'ll| will)? need)\s+/i.exec(reading.slice(place.from, Math.min(place.to, place.from + 30)))
  if (!found || !isRunOn(reading, { from: place.from + found[0].length, to: place.to })) return null
  return { name: 'you need', nameFrom: found[0].indexOf(found[1]!), length: found[0].length }
}

/** "Serves 4. Ingredients: 1 cup peas ... Directions: 1. Rinse": headings in the middle of a paragraph. */
function chapters(reading: string, place: Span): (Span & { readonly heading: Section | null })[] {
  const out: (Span & { heading: Section | null })[] = []
  let from = place.from
  const text = reading.slice(place.from, place.to)
  for (const found of text.matchAll(
    /(?<=[.!?;)]\s{1,3})(ingredients|method|directions|instructions|preparation|procedure|notes)\s*:\s+(?=\S)/gi,
  )) {
    const at = place.from + found.index
    const end = at + found[0].length
    const before = reading.slice(from, at).trimEnd().length
    if (before > 0) out.push({ from, to: from + before, heading: null })
    out.push({ from: at, to: at + found[1]!.length, heading: sectionOf(found[1]!.toLowerCase()) })
    from = end
  }
  out.push({ from, to: place.to, heading: null })
  return out
}

/** A wrapped line may begin with a figure and a stop ("1\npint"): no list mark when the text runs on into it. */
function continuesNumber(reading: string, before: Line, line: Line): boolean {
  return (
    !ends.test(reading.slice(Math.max(before.from, before.to - 2), before.to)) &&
    lowerCase.test(reading.slice(line.from, line.from + 1))
  )
}
