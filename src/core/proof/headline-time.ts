import type { Run } from '../cook/index.ts'
import type { Finding } from '../findings/index.ts'
import type { Recipe } from '../manuscript/index.ts'

/** The printed total against the clock of the run: a headline time that nobody summed costs trust. */
export function headlineTime(recipe: Recipe, run: Run): Finding | null {
  const stated = recipe.stated.total
  const [low_s, high_s] = run.clock.total_s
  if (!stated || high_s < 60 || run.base.trips) return null
  // Overnight soaking is on the printed clock only where the words put it there.
  const apart_s = stated.high_s > 5 * 3600 ? (run.clock.apart_s ?? 0) : 0
  const byHand = Math.round(run.clock.handsOn_s / 60)
  const summed = `Summed: ${spoken(low_s)} to ${spoken(high_s)}, of which ${byHand} minutes by hand.`
  const parts = [
    run.clock.comeUp_s !== null ? `${Math.round(run.clock.comeUp_s / 60)} minutes to come to pressure` : null,
    run.clock.release_s !== null ? `${Math.round(run.clock.release_s / 60)} to release it` : null,
  ].filter((part): part is string => part !== null)
  const counted = parts.length > 0 ? ` It counts ${parts.join(' and ')}.` : ''
  const where = recipe.text.slice(stated.from, stated.to)
  const amount =
    /\d[\d\s.,½¼¾⅓⅔/-]*(?:\s*(?:h|hrs?|hours?|m|mins?|minutes?)\b\.?(?:\s*(?:and\s*)?\d[\d\s½¼¾/-]*\s*(?:m|mins?|minutes?)\b\.?)?)/i.exec(
      where,
    )
  const cure = (to_s: number): Finding['cure'] =>
    amount
      ? {
          label: `Write ${spoken(to_s)}`,
          edits: [
            {
              from: stated.from + amount.index,
              to: stated.from + amount.index + amount[0].trimEnd().length,
              insert: spoken(to_s),
            },
          ],
        }
      : null
  if (stated.high_s < low_s * 0.95 + apart_s * 0.7) {
    const mid_s = roundUp((low_s + high_s) / 2)
    return {
      code: 'headline-time-short',
      severity: 'warning',
      span: { from: stated.from, to: stated.to },
      title: `${upper(spoken(stated.high_s))} will not do.`,
      message: summed + counted,
      source: 'the run; times by hand are norms',
      advice: `Write ${spoken(mid_s)}.`,
      cure: cure(mid_s),
    }
  }
  if (stated.low_s > high_s * 1.35 + apart_s * 1.3) {
    const mid_s = roundUp((low_s + high_s) / 2)
    return {
      code: 'headline-time-long',
      severity: 'hint',
      span: { from: stated.from, to: stated.to },
      title: 'It takes less than that.',
      message: summed + counted,
      source: 'the run; times by hand are norms',
      advice: `Write ${spoken(mid_s)}.`,
      cure: cure(mid_s),
    }
  }
  return null
}

/** Up to the next five minutes, as a cook would print it. */
const roundUp = (s: number): number => Math.ceil(s / 300) * 300

const upper = (text: string): string => text[0].toUpperCase() + text.slice(1)

/** "1 hour 25 minutes", to the minute. */
export function spoken(time_s: number): string {
  const all = Math.round(time_s / 60)
  const h = Math.floor(all / 60)
  const m = all % 60
  const hours = h === 0 ? '' : h === 1 ? '1 hour' : `${h} hours`
  const minutes = m === 0 ? '' : m === 1 ? '1 minute' : `${m} minutes`
  return [hours, minutes].filter(Boolean).join(' ') || '0 minutes'
}
