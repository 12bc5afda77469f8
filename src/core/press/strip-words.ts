import type { EventCode, Phase, Run } from '../cook/index.ts'
import { clockScale } from './clock-scale.ts'
import { phaseAt } from './moment.ts'
import { duration, durationRange, inWords, minutesInFull, shortened } from './words.ts'

/** "1 h 35 to 1 h 50 in all, 34 min by hand". */
export function totalSentence(run: Run): string {
  const [low, high] = run.clock.total_s
  const { handsOn_s, apart_s = 0 } = run.clock
  const waiting = apart_s >= 60 ? `, and ${duration(apart_s)} of waiting apart` : ''
  return `${durationRange(low, high)} in all, ${duration(handsOn_s)} by hand${waiting}`
}

/** Where an instant lies in the work: "64 min: 23 minutes into the thirty". */
export function momentSentence(run: Run, time_s: number): string {
  const phase = phaseAt(run, time_s)
  const clock = clockWords(time_s - clockScale(run, 0, 1).zero_s)
  if (!phase) return clock
  const into = time_s - phase.start_s
  if (time_s >= phase.end_s) return `${clock}: done`
  if (into < 60) return `${clock}: ${opening(run, phase)}`
  if (phase.kind === 'hold' || phase.kind === 'come-up')
    return `${clock}: ${minutesInFull(into)} into ${during(run, phase)}`
  return `${clock}: ${phase.label}, ${minutesInFull(into)} in`
}

/** The same in so many words as fit: first without the minutes, then with a shorter label, at least the clock. */
export function fittedMoment(run: Run, time_s: number, fits: (text: string) => boolean): string {
  const full = momentSentence(run, time_s)
  if (fits(full)) return full
  const [clock, rest] = full.split(': ')
  return shortened(rest ?? '', (part) => fits(`${clock}: ${part}`)) === null
    ? clock
    : `${clock}: ${shortened(rest, (part) => fits(`${clock}: ${part}`))}`
}

/** "64 min", or "2 h 05 before" for a wait that precedes the labelled clock. */
function clockWords(time_s: number): string {
  if (time_s < -30) return `${duration(-time_s)} before`
  return `${Math.floor(time_s / 60 + 1e-9)} min`
}

function opening(run: Run, phase: Phase): string {
  if (phase.kind === 'come-up') return 'the lid is locked, coming up to pressure'
  if (phase.kind === 'hold') return `pressure is reached, ${during(run, phase)} begin`
  return `now ${phase.label}`
}

function during(run: Run, phase: Phase): string {
  const operation = phase.operation === null ? null : run.plan.operations[phase.operation]
  if (phase.kind === 'hold') {
    const timed = operation && operation.kind === 'hold' ? operation.time_s.low : phase.end_s - phase.start_s
    return `the ${inWords(Math.round(timed / 60))}`
  }
  return 'coming up to pressure'
}

/** Words for the events worth a mark on the strip, those that matter most first. */
export const eventWords: readonly { readonly code: EventCode; readonly words: string; readonly bad?: true }[] = [
  { code: 'burn-stop', words: 'burn stop', bad: true },
  { code: 'scorch', words: 'scorches', bad: true },
  { code: 'dry-floor', words: 'floor dry', bad: true },
  { code: 'stewed', words: 'stews, no crust', bad: true },
  { code: 'float-up', words: 'float up' },
  { code: 'float-down', words: 'float down' },
  { code: 'tender', words: 'tender' },
  { code: 'boils', words: 'boils' },
  { code: 'fat-hot', words: 'fat hot' },
  { code: 'browned', words: 'browned' },
  { code: 'reduced', words: 'boiled down' },
]
