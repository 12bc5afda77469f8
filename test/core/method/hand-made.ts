import type { Cut, Ingredient, Operation, Recipe, Step, Use, VerbCode } from '../../../src/core/manuscript/index.ts'

// Recipes put together by hand, for cases where the test must not depend on how the words are read. Places are found by
// the words themselves, never counted.

export interface Line {
  readonly line: string
  readonly item: string
  readonly larder: string | null
  /** kg; a single number, a pair, or null when the words do not settle it. */
  readonly kg: number | readonly [number, number] | null
  readonly count?: number
  readonly cut?: { shape: Cut['shape']; cm?: number | readonly [number, number] }
  readonly more?: Partial<Ingredient>
}

/** `[words of the use, place of the ingredient, share, 'again']` */
export type UseWords = readonly [words: string, ingredient: number, share?: number | null, again?: 'again']

export interface Op {
  readonly words: string
  readonly verb: VerbCode
  readonly min?: number | readonly [number, number]
  readonly uses?: readonly UseWords[]
  readonly more?: Partial<Operation>
}

const pair = (x: number | readonly [number, number]) =>
  typeof x === 'number' ? { low: x, high: x } : { low: x[0], high: x[1] }

export function recipeOf(p: {
  title?: string
  lines: readonly Line[]
  steps: readonly { text: string; ops: readonly Op[] }[]
  more?: Partial<Recipe>
}): Recipe {
  const title = p.title ?? 'A dish'
  const text = `${title}\n\n${p.lines.map((each) => each.line).join('\n')}\n\n${p.steps.map((each) => each.text).join('\n\n')}\n`
  const find = (words: string, from: number): { from: number; to: number } => {
    const at = text.indexOf(words, from)
    if (at < 0) throw new Error(`“${words}” does not stand after ${from} in the text`)
    return { from: at, to: at + words.length }
  }
  const ingredients = p.lines.map((each, index): Ingredient => {
    const span = find(each.line, 0)
    return {
      ...span,
      index,
      line: each.line,
      low: each.count ?? null,
      high: each.count ?? null,
      unit: null,
      amountSpan: null,
      pack: null,
      also: [],
      item: each.item,
      itemSpan: null,
      larder: each.larder,
      prep: each.line.includes(',') ? each.line.slice(each.line.indexOf(',') + 1).trim() : null,
      cut: each.cut
        ? {
            shape: each.cut.shape,
            size_m:
              each.cut.cm === undefined
                ? null
                : { low: pair(each.cut.cm).low / 100, high: pair(each.cut.cm).high / 100 },
            ...span,
          }
        : null,
      state: null,
      optional: false,
      toTaste: false,
      divided: false,
      mass_kg: each.kg === null ? null : pair(each.kg),
      massFrom: each.kg === null ? 'not known' : 'as written',
      ...each.more,
    }
  })
  let after = text.indexOf(p.steps[0]?.text ?? '', ingredients.at(-1)?.to ?? 0)
  const steps = p.steps.map((each): Step => {
    const span = find(each.text, after)
    after = span.to
    let from = span.from
    const operations = each.ops.map((op): Operation => {
      const place = find(op.words, from)
      from = place.from
      const uses = (op.uses ?? []).map(
        ([words, ingredient, share = 1, again]): Use => ({
          ...find(words, place.from),
          ingredient,
          share,
          again: again === 'again',
        }),
      )
      return {
        ...place,
        verb: op.verb,
        time_s: op.min === undefined ? null : { low: pair(op.min).low * 60, high: pair(op.min).high * 60 },
        batches: null,
        perBatch: false,
        temperature_K: null,
        heat: null,
        pressure: null,
        release: null,
        releaseTime_s: null,
        uses,
        cue: null,
        lid: null,
        scrapes: false,
        stirs: false,
        reduceTo: null,
        place: null,
        ...op.more,
      }
    })
    return { ...span, text: each.text, operations }
  })
  return {
    text,
    title: { text: title, ...find(title, 0) },
    yield: null,
    stated: { total: null, active: null },
    named: { pot: null, altitude_m: null },
    ingredients,
    steps,
    queries: [],
    kind: 'recipe',
    ...p.more,
  }
}
