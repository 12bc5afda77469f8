import { byPlace, type Finding } from '../findings/index.ts'
import { askAboutAmounts } from './queries-amounts.ts'
import { finding, type Understood } from './queries-finding.ts'
import { askAboutMethod } from './queries-method.ts'
import { askAboutTime } from './queries-times.ts'
import { askAboutUses } from './queries-uses.ts'

/** Everything the careful stranger would ask the writer, in the order of the text. */
export function askAbout(known: Understood): Finding[] {
  // Where no step can be followed, asking about single foods and times would only bury that.
  const lost = askAboutNothingFollowed(known)
  if (lost) return [lost]
  return [...askAboutAmounts(known), ...askAboutUses(known), ...askAboutMethod(known), ...askAboutTime(known)].sort(
    byPlace,
  )
}

/** Steps are there, but not one says anything that could be done: another language, or no method at all. */
function askAboutNothingFollowed(known: Understood): Finding | null {
  const { steps } = known.layout
  if (known.kind !== 'recipe' || steps.length === 0 || known.drafts.length > 0) return null
  return finding({
    code: 'nothing-followed',
    severity: 'blocking',
    span: { from: steps[0]!.from, to: steps.at(-1)!.to },
    title: 'No step could be followed.',
    message: 'The method holds no verb of the kitchen that is known here. Only English is read.',
    advice: 'Write what is done with the food, in English: "Brown the meat", "simmer for 20 minutes".',
  })
}
