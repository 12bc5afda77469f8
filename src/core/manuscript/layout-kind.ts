import type { Span } from '../findings/index.ts'
import type { Recipe } from './recipe.ts'
import { bareVerb } from './verbs.ts'
import { wordsIn } from './words.ts'

/** Looked at for what kind of thing the text is: enough to know, however long it is. */
const sample = 20_000

/** Is it writing at all? Bytes of a picture or an archive are mostly control characters and things that are no letters. */
export function isText(text: string): boolean {
  const head = text.slice(0, sample)
  let letters = 0
  let odd = 0
  let shown = 0
  for (const char of head) {
    const code = char.codePointAt(0)!
    if (code === 9 || code === 10 || code === 13 || code === 12 || code === 11 || char === ' ') continue
    shown += 1
    if (
      code < 32 ||
      (code >= 127 && code < 160) ||
      code === 0xfffd ||
      (code >= 0xd800 && code <= 0xdfff) ||
      (code >= 0xe000 && code <= 0xf8ff)
    )
      odd += 1
    else if (/[\p{L}\p{M}]/u.test(char)) letters += 1
  }
  if (shown === 0) return false
  return odd <= 0.02 * shown + 1 && letters >= 0.25 * shown
}

/** Verbs of the kitchen among the words of the steps. */
function orders(reading: string, steps: readonly Span[]): number {
  let count = 0
  for (const step of steps.slice(0, 40)) {
    const tokens = wordsIn(reading, { from: step.from, to: Math.min(step.to, step.from + 2000) })
    for (const [i, token] of tokens.entries()) {
      const verb = bareVerb(token.low)
      if (!verb?.code) continue
      const before = tokens[i - 1]
      const heads = !before || before.kind === 'mark' || /^(?:and|then|or)$/.test(before.low)
      if (heads) count += verb.noun === 'never' ? 1 : verb.noun === 'seldom' ? 0.8 : 0
    }
  }
  return count
}

/** What the text is taken for. Prose without a list is a recipe when it orders cooking and names foods. */
export function kindOf(reading: string, foods: number, steps: readonly Span[], fromProse: boolean): Recipe['kind'] {
  if (foods > 0 && !fromProse) return steps.length > 0 ? 'recipe' : 'list'
  return foods > 0 && orders(reading, steps) >= 2 ? 'recipe' : 'prose'
}
