import { maxTitleUnits } from '../contract/index.ts'
import { readRecipe } from '../core/manuscript/index.ts'

/** A title stands at the top: reading on would take the time of the whole recipe at every save. */
const head = 600

/** What a dish is called until somebody names it: the title its manuscript has, or else its first line. */
export function titleOf(text: string): string {
  const top = text.slice(0, head)
  const title = readRecipe(top).title?.text ?? top.split(/[\r\n]+/).find((line) => line.trim() !== '')
  return title?.trim().slice(0, maxTitleUnits) || 'Untitled dish'
}
