import type { Operation, Recipe } from '../../src/core/manuscript/index.ts'
import { celsiusFromKelvin } from '../../src/core/units/index.ts'
import type { Tally } from './tally.ts'
import { type Labelled, overlap, placesOf, type TruthOperation, type TruthSentence } from './truth.ts'

export const methodKinds = ['first verb', 'verbs', 'minutes', 'temperature', 'pressure', 'release', 'together'] as const

const minutesOf = (op: Operation): [number, number] | null =>
  op.time_s ? [op.time_s.low / 60, op.time_s.high / 60] : null
const degreesOf = (op: Operation): [number, number] | null =>
  op.temperature_K ? [celsiusFromKelvin(op.temperature_K.low), celsiusFromKelvin(op.temperature_K.high)] : null

const near = (a: [number, number] | null, b: [number, number] | null, by: number): boolean =>
  a !== null && b !== null && Math.abs(a[0] - b[0]) <= by && Math.abs(a[1] - b[1]) <= by

/** Every wanted operation has one of its verbs, in order; what is found besides is not counted against it. */
function verbsInOrder(got: readonly Operation[], want: readonly TruthOperation[]): boolean {
  let at = 0
  for (const op of want) {
    while (at < got.length && !op.verb.includes(got[at]!.verb)) at += 1
    if (at >= got.length) return false
    at += 1
  }
  return true
}

/** A release may be booked on any operation of its sentence; cooling under running water may have none. */
function releaseFits(got: readonly Operation[], op: TruthOperation, words: string): boolean {
  if (
    got.some(
      (g) =>
        g.release === op.release &&
        (op.release_minutes === null ||
          Math.abs((g.releaseTime_s ?? g.time_s?.low ?? -1) / 60 - op.release_minutes) < 0.01),
    )
  )
    return true
  return (
    op.release === 'vented' &&
    /running|cold water/i.test(words) &&
    got.every((g) => g.release === null || g.release === 'iced' || g.release === 'natural-then-vented')
  )
}

function words(want: TruthSentence, got: readonly Operation[]): string {
  const wanted = want.ops.map((o) =>
    [o.verb.join('|'), o.minutes, o.temp_C, o.pressure, o.release].filter((x) => x !== null).join(' '),
  )
  const found = got.map((o) =>
    [o.verb, minutesOf(o), degreesOf(o)?.map((t) => t.toFixed(1)), o.pressure, o.release]
      .filter((x) => x !== null && x !== undefined)
      .join(' '),
  )
  return `read as [${found.join('; ')}], wanted [${wanted.join('; ')}]`
}

/** Marks the labelled sentences of the method of one text. */
export function markMethod(tally: Tally, { truth, text, source }: Labelled, recipe: Recipe): void {
  const all = recipe.steps.flatMap((step) => step.operations)
  const places = placesOf(
    text,
    truth.sentences.map((s) => s.text),
  )
  for (const [i, want] of truth.sentences.entries()) {
    const place = places[i]
    const got = place ? all.filter((op) => overlap(op, place) > 0 && op.from >= place.from) : []
    const miss = (): string => `${truth.file}: ${JSON.stringify(want.text)} ${words(want, got)}`
    const first = want.ops[0]
    const parts: [string, boolean | null][] = [
      ['first verb', first ? first.verb.includes(got[0]?.verb ?? '') : null],
      ['verbs', verbsInOrder(got, want.ops)],
      [
        'minutes',
        every(
          want,
          (o) => o.minutes !== null,
          (o) => got.some((g) => near(minutesOf(g), o.minutes, 0.01)),
        ),
      ],
      [
        'temperature',
        every(
          want,
          (o) => o.temp_C !== null,
          (o) => got.some((g) => near(degreesOf(g), o.temp_C, 4)),
        ),
      ],
      [
        'pressure',
        every(
          want,
          (o) => o.pressure !== null,
          (o) => got.some((g) => g.pressure === o.pressure),
        ),
      ],
      [
        'release',
        every(
          want,
          (o) => o.release !== null,
          (o) => releaseFits(got, o, want.text),
        ),
      ],
    ]
    for (const [kind, right] of parts) if (right !== null) tally.mark(source, kind, right, miss)
    tally.mark(
      source,
      'together',
      parts.every(([kind, right]) => kind === 'first verb' || right !== false),
      miss,
    )
  }
}

/** Null when no operation of the sentence asks the question. */
function every(
  want: TruthSentence,
  asks: (o: TruthOperation) => boolean,
  right: (o: TruthOperation) => boolean,
): boolean | null {
  const asked = want.ops.filter(asks)
  return asked.length === 0 ? null : asked.every(right)
}
