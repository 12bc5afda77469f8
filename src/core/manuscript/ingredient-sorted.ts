import { isSizeWord } from './amount.ts'
import { unitOfWord } from './amount-units.ts'
import type { ItemFound } from './ingredient-item.ts'
import { lineParts, placeOf, word, written } from './ingredient-parts.ts'
import { isHandWork, isTemperature, isWarmable } from './ingredient-words.ts'
import type { Token } from './sentences-tokens.ts'

/**
 * A name as lists and cards sort it, the kind behind the food: "PEPPER,BLACK,GROUND", "Chickpeas, dried". Null when the
 * words are not such a name.
 */
export function invertedName(text: string, tokens: readonly Token[], from: number, to: number): ItemFound | null {
  const { segments, brackets } = lineParts(tokens, from, to)
  const first = segments[0]
  const tight = tokens.slice(from, to).some((t, k) => t.low === ',' && tokens[from + k + 1]?.joined)
  if (!first || segments.length < 2 || brackets.length > 0 || !tight) return null
  return sortedName(text, segments)
}

/** The same for segments already cut. */
export function sortedName(text: string, segments: readonly (readonly Token[])[]): ItemFound {
  const food = [...segments[0]!]
  const kind: Token[] = []
  const prep: Token[][] = []
  let size: string | null = null
  const liquid = isWarmable(food.at(-1)?.low ?? '')
  for (const segment of segments.slice(1)) {
    const low = word(segment, 0)
    const unit = unitOfWord(low)
    if (segment.every((t) => isSizeWord(t.low))) size ??= low
    else if (unit && segment.length === 1) continue
    else if (/^(?:incl|for|to|with|without|as|in|or|if|divided|plus)$/.test(low)) prep.push([...segment])
    else if (segment[0]!.kind === 'number' && word(segment, 1) !== '%') prep.push([...segment])
    else if (segment.length > 1 && /^(?:removed|reserved|discarded|on|off)$/.test(word(segment, segment.length - 1)))
      prep.push([...segment])
    else if (segment.some((t) => isHandWork(t.low)) || (liquid && isTemperature(low))) prep.push([...segment])
    else kind.unshift(...segment)
  }
  const name = [...kind, ...food]
  return {
    item: name
      .map((t) => t.low)
      .join(' ')
      .replace(/ %/g, '%'),
    span: placeOf(name),
    prep: prep.map((p) => written(text, p)).join(', ') || null,
    measures: [],
    part: null,
    size,
    form: prep.map((p) => written(text, p)).join(', ') || null,
  }
}
