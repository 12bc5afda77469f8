import type { Recipe } from '../core/manuscript/index.ts'

/** One honest sentence or two about how much of a text could be followed, and why not the rest. */
export function understood(recipe: Recipe): string {
  const { ingredients, steps } = recipe
  const operations = steps.reduce((sum, step) => sum + step.operations.length, 0)
  const followed = steps.filter((step) => step.operations.length > 0).length
  const known = ingredients.filter((one) => one.larder !== null).length
  const weighed = ingredients.filter((one) => one.mass_kg !== null).length
  const script = otherScript(recipe.text)
  if (ingredients.length === 0 && operations === 0) {
    const because = script ? `It is written in ${script} script; only English is read so far.` : kindWords[recipe.kind]
    return `Nothing in this text could be followed as a recipe: no ingredient line, no step with something to do. ${because}`.trim()
  }
  const lines =
    ingredients.length === 0
      ? 'No list of ingredients was found.'
      : `Ingredients: ${count(ingredients.length, 'line')}, ${known === ingredients.length ? 'all' : known} known to the larder, ${weighed === ingredients.length ? 'all' : weighed} with a weight.`
  const method =
    operations === 0
      ? 'No step says what to do with them.'
      : `Method: ${count(operations, 'operation')} in ${followed === steps.length ? count(steps.length, 'step') : `${followed} of ${count(steps.length, 'step')}`}.`
  const doubt = script ? ` Much of it is in ${script} script, and only English is read.` : ''
  return `${lines} ${method}${doubt}`
}

const kindWords: Record<Recipe['kind'], string> = {
  recipe: '',
  list: 'It looks like a list without a method.',
  prose: 'It looks like prose of another kind.',
  empty: 'It is empty.',
  'not-text': 'It does not look like text.',
}

function count(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? '' : 's'}`
}

const scripts: readonly (readonly [RegExp, string])[] = [
  [/\p{Script=Arabic}/gu, 'Arabic'],
  [/\p{Script=Hebrew}/gu, 'Hebrew'],
  [/\p{Script=Cyrillic}/gu, 'Cyrillic'],
  [/\p{Script=Greek}/gu, 'Greek'],
  [/\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}/gu, 'Chinese or Japanese'],
  [/\p{Script=Hangul}/gu, 'Korean'],
  [/\p{Script=Devanagari}/gu, 'Devanagari'],
  [/\p{Script=Thai}/gu, 'Thai'],
]

/** The script of a text, when at least a third of its letters are not Latin; null otherwise. */
export function otherScript(text: string): string | null {
  const sample = text.slice(0, 20_000)
  const letters = sample.match(/\p{L}/gu)?.length ?? 0
  const found = scripts
    .map(([pattern, name]) => ({ name, share: (sample.match(pattern)?.length ?? 0) / Math.max(1, letters) }))
    .sort((a, b) => b.share - a.share)[0]
  return found.share > 1 / 3 ? found.name : null
}

/** Why there is nothing to cook in a text: the reader's own verdict on the whole of it, and what it could follow. */
export function nothingToCook(recipe: Recipe): string {
  const verdict = recipe.queries.find((query) => query.span === null && query.severity === 'blocking')
  const why = verdict ? `${verdict.title} ${verdict.message}`.trim() : ''
  return [why, understood(recipe)].filter((part) => part !== '').join(' ')
}
