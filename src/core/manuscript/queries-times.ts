import type { Finding } from '../findings/index.ts'
import { finding, timeWords, type Understood } from './queries-finding.ts'
import type { Range, Recipe } from './recipe.ts'

const unattended: ReadonlySet<string> = new Set(['soak', 'marinate', 'chill', 'pickle'])

interface Timed {
  readonly verb: string
  readonly time_s?: Range | null
  readonly time?: Range | null
  readonly batches: number | null
  readonly perBatch: boolean
  readonly perSide?: boolean
  readonly aside?: unknown
  readonly meanwhile?: boolean
}

function sum(operations: readonly Timed[], withWaiting: boolean): Range {
  let low = 0
  let high = 0
  for (const operation of operations) {
    const time = operation.time_s ?? operation.time
    if (!time || operation.aside || operation.meanwhile) continue
    if (!withWaiting && unattended.has(operation.verb)) continue
    const times = (operation.perBatch ? Math.max(1, operation.batches ?? 1) : 1) * (operation.perSide ? 2 : 1)
    low += time.low * times
    high += time.high * times
  }
  return { low, high }
}

/**
 * Sum of the times that the method itself states, in s, one after the other.
 *
 * Soaking, marinating and chilling are left out unless `withWaiting` is true. Coming up to pressure, cutting and
 * everything else without a time in the words counts nothing, so this is the least the method can take.
 */
export function statedTimes_s(recipe: Recipe, withWaiting = false): Range {
  return sum(
    recipe.steps.flatMap((step) => step.operations),
    withWaiting,
  )
}

/** Is the promised time shorter than the times in the method add up to? */
export function askAboutTime(known: Understood): Finding[] {
  const { layout, drafts, reading } = known
  const { total } = layout.stated
  if (!total) return []
  const said = reading.slice(total.from, Math.min(reading.length, total.to + 60)).split('\n')[0]!
  // "1 hour 30 minutes, plus overnight soaking" promises the waiting apart.
  const apart = /\bplus\b|\bnot (?:including|counting)\b|\bexcluding\b|\+/iu.test(said)
  // "Prep 30, cook 30" counts the cook's hours, not those in the refrigerator.
  const pieces =
    /\b(?:prep|cook)/iu.test(said) && !/\b(?:total|ready|takes|table|in all|start to finish)\b/iu.test(said)
  const busy = sum(drafts, false)
  const whole = apart || pieces ? busy : sum(drafts, true)
  const short = whole.low > total.high_s * 1.02 + 60
  if (!short) return []
  const waiting = whole.low - busy.low
  const parts = drafts
    .filter((draft) => draft.time && !draft.aside && !draft.meanwhile && (!apart || !unattended.has(draft.verb)))
    .map((draft) => {
      const times = (draft.perBatch ? Math.max(1, draft.batches ?? 1) : 1) * (draft.perSide ? 2 : 1)
      return { what: draft.verb, time_s: draft.time!.low * times }
    })
    .sort((a, b) => b.time_s - a.time_s)
    .slice(0, 3)
    .map((part) => `${timeWords(part.time_s)} ${nounOf(part.what)}`)
  return [
    finding({
      code: 'headline-time-short',
      severity: 'warning',
      span: total,
      title: `${timeWords(total.high_s)} will not do.`,
      message:
        `The times in the method alone add up to ${timeWords(whole.low)}` +
        `${waiting > 0 ? ` (${timeWords(waiting)} of it waiting)` : ''}: ${parts.join(', ')}. ` +
        'Cutting, heating and coming up to pressure are not in that sum.',
      advice: `Promise more than ${timeWords(whole.low)}, or say what the time leaves out.`,
    }),
  ]
}

const nouns: Readonly<Record<string, string>> = {
  hold: 'at pressure',
  release: 'for the release',
  brown: 'of browning',
  fry: 'of frying',
  sweat: 'of softening',
  simmer: 'of simmering',
  boil: 'of boiling',
  reduce: 'of reducing',
  bake: 'in the oven',
  rest: 'of rest',
  soak: 'of soaking',
  marinate: 'of marinating',
  chill: 'of chilling',
}
const nounOf = (verb: string): string => nouns[verb] ?? `for "${verb}"`
