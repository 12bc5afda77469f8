import { findFood } from '../larder/index.ts'
import { readCut } from './cut.ts'
import { type LineRead, readLine } from './ingredient-line.ts'
import type { Layout } from './layout.ts'
import { massOf } from './mass.ts'
import type { Ingredient } from './recipe.ts'
import { measureSystemOf, sideBySide } from './system.ts'

const optional =
  /\boptional(?:ly)?\b|\bif (?:desired|liked|wished|using|wanted)\b|\bif you (?:like|wish|want|prefer)(?=\s*(?:[).,;]|$))/i
const toTaste = /\bto (?:your |suit (?:your )?)?(?:own )?(?:taste|liking)\b/i

function stateOf(read: LineRead, words: string): Ingredient['state'] {
  // Only where it is said of the food as such: "mixed with a little cold water" is about the water.
  const parts = (read.found.prep ?? '').toLowerCase().split(/,\s*/)
  const said = (test: RegExp) => parts.some((part) => test.test(part))
  if (/\b(?:thawed|defrosted)\b/.test(words)) return null
  if (/\broom[- ]temp(?:erature)?\b/.test(words)) return 'room'
  if (/(?:^|[^-])\bfrozen\b/.test(words) && !/\bif frozen\b|\bfresh or frozen\b|\bfrozen or fresh\b/.test(words))
    return 'frozen'
  if (said(/^(?:very |piping |freshly )?(?:boiling|boiled|hot|warm|warmed|simmering)$/)) return 'hot'
  if (said(/^(?:very |ice[- ]|well[- ])?(?:cold|iced|chilled|refrigerated)(?: from the (?:fridge|refrigerator))?$/))
    return 'chilled'
  return null
}

/** Every food of the list, in the order of the manuscript. Never throws. */
export function readIngredients(layout: Layout, text: string): Ingredient[] {
  const { reading } = layout
  const lines = layout.ingredients.map((line) => ({ line, reads: readLine(reading, line) }))
  const reads = lines.flatMap((l) => l.reads)
  const system = measureSystemOf(reading, sideBySide(reads))
  const ingredients: Ingredient[] = []
  for (const { line, reads } of lines) {
    const group = line.group ? reading.slice(line.group.from, line.group.to) : ''
    for (const read of reads) {
      const words = reading.slice(read.from, read.to)
      const lower = words.toLowerCase()
      const unit =
        read.unit ?? (read.low !== null && (read.unitWord === null || read.unitWord === 'each') ? null : undefined)
      const food = findFood(read.found.item, { unit })
      const { mass_kg, massFrom } = massOf({
        low: read.low,
        high: read.high,
        unit: read.unit,
        unitWord: read.unitWord,
        pack: read.pack,
        also: read.also,
        food,
        form: read.found.form,
        size: read.size,
        system,
        line: words,
        taken: read.taken,
      })
      ingredients.push({
        index: ingredients.length,
        from: read.from,
        to: read.to,
        line: text.slice(read.from, read.to),
        low: read.low,
        high: read.high,
        unit: read.unit,
        amountSpan: read.amountFrom === null ? null : { from: read.amountFrom, to: read.amountTo! },
        pack: read.pack,
        also: read.also,
        item: read.found.item,
        itemSpan: read.found.span,
        larder: food?.id ?? null,
        prep: read.found.prep,
        cut: readCut(reading, read.from, read.to),
        state: stateOf(read, lower),
        optional: optional.test(lower) || /\boptional\b/i.test(group),
        toTaste: toTaste.test(lower),
        divided: /\bdivided\b/.test(lower),
        mass_kg,
        massFrom,
        ...(read.unit === null && read.unitWord !== null && read.unitWord !== 'each' && { unitWord: read.unitWord }),
      })
    }
  }
  return ingredients
}
