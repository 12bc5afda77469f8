import { byPlace, type Finding } from '../findings/index.ts'
import { askAboutAmounts } from './queries-amounts.ts'
import type { Understood } from './queries-finding.ts'
import { askAboutMethod } from './queries-method.ts'
import { askAboutTime } from './queries-times.ts'
import { askAboutUses } from './queries-uses.ts'

/** Everything the careful stranger would ask the writer, in the order of the text. */
export function askAbout(known: Understood): Finding[] {
  return [...askAboutAmounts(known), ...askAboutUses(known), ...askAboutMethod(known), ...askAboutTime(known)].sort(
    byPlace,
  )
}
