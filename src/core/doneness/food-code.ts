import { requireRange } from '../numerics/index.ts'

// Rules that say "this hot for this long" and "this cold this soon". Editions differ and local codes may be stricter:
// a finding names the edition and defers to the local code.

export interface HoldRule {
  readonly code: string
  readonly applies:
    | 'intact-meat'
    | 'minced-meat'
    | 'poultry'
    | 'whole-roast'
    | 'fish'
    | 'egg'
    | 'plant-hot-holding'
    | 'reheated'
  readonly temperature_K: number
  readonly time_s: number
  readonly source: 'food-code' | 'fsis-minimum'
  readonly edition: string
}

const F = (t: number) => (t - 32) / 1.8 + 273.15
const rule = (
  code: string,
  applies: HoldRule['applies'],
  fahrenheit: number,
  time_s: number,
  edition = 'FDA Food Code 2009',
  source: HoldRule['source'] = 'food-code',
): HoldRule => ({ code, applies, temperature_K: F(fahrenheit), time_s, source, edition })

const roast2005 = [
  [130, 112],
  [133, 56],
  [135, 36],
  [136, 28],
  [138, 18],
  [140, 12],
  [142, 8],
  [144, 5],
  [145, 4],
] as const

export const holdRules: readonly HoldRule[] = [
  rule('intact-145', 'intact-meat', 145, 15),
  rule('fish-145', 'fish', 145, 15),
  rule('egg-145', 'egg', 145, 15),
  rule('minced-145', 'minced-meat', 145, 180),
  rule('minced-150', 'minced-meat', 150, 60),
  rule('minced-155', 'minced-meat', 155, 15),
  rule('minced-158', 'minced-meat', 158, 1),
  rule('poultry-165', 'poultry', 165, 15),
  rule('plant-135', 'plant-hot-holding', 135, 0),
  rule('reheat-165', 'reheated', 165, 15),
  ...roast2005.map(([f, min]) => rule(`roast-${f}`, 'whole-roast', f, min * 60, 'FDA Food Code 2005')),
  rule(
    'consumer-intact-145',
    'intact-meat',
    145,
    180,
    'FSIS advice to consumers: 145 °F and 3 min rest',
    'fsis-minimum',
  ),
  rule('consumer-minced-160', 'minced-meat', 160, 0, 'FSIS advice to consumers', 'fsis-minimum'),
  rule('consumer-poultry-165', 'poultry', 165, 0, 'FSIS advice to consumers', 'fsis-minimum'),
]

function checkHistory(time_s: ArrayLike<number>, temperature_K: ArrayLike<number>): void {
  requireRange('samples', time_s.length, 1, 1e9, '1')
  if (time_s.length !== temperature_K.length) {
    throw new RangeError(`${time_s.length} times for ${temperature_K.length} temperatures: one each`)
  }
}

/**
 * Longest unbroken stay at or above a temperature, with straight lines between samples.
 *
 * Shape    crossing times by linear interpolation; −1 when it is never reached
 * Range    one or more samples, times ascending
 * Outside  RangeError; nothing is clamped
 * Error    that of the samples
 * Source   food-code
 * Check    check/doneness/food-code.csv; never longer than the record
 */
export function longestStay_s(time_s: ArrayLike<number>, temperature_K: ArrayLike<number>, least_K: number): number {
  checkHistory(time_s, temperature_K)
  let longest = -1
  let since = temperature_K[0] >= least_K ? time_s[0] : Number.NaN
  if (temperature_K[0] >= least_K) longest = 0
  for (let i = 1; i < time_s.length; i++) {
    const a = temperature_K[i - 1]
    const b = temperature_K[i]
    const cross = () => time_s[i - 1] + ((least_K - a) / (b - a)) * (time_s[i] - time_s[i - 1])
    if (a < least_K && b >= least_K) since = cross()
    if (b >= least_K) longest = Math.max(longest, time_s[i] - since)
    else if (a >= least_K) longest = Math.max(longest, cross() - since)
  }
  return longest
}

/** True when the record stays at the rule's temperature for its time. */
export function holdMet(rule: HoldRule, time_s: ArrayLike<number>, temperature_K: ArrayLike<number>): boolean {
  const stay_s = longestStay_s(time_s, temperature_K, rule.temperature_K)
  return stay_s >= 0 && stay_s >= rule.time_s
}

/** 135 °F to 70 °F within 2 h, and to 41 °F within 6 h in all (3-501.14). */
export const coolingRule = { from_K: F(135), middle_K: F(70), to_K: F(41), middle_s: 2 * 3600, to_s: 6 * 3600 } as const

export type CoolingVerdict =
  | { readonly ok: true; readonly toMiddle_s: number; readonly toCold_s: number }
  | {
      readonly ok: false
      readonly code: 'too-slow-to-70F' | 'too-slow-to-41F' | 'record-too-short'
      /** Null when the record ends before. */
      readonly toMiddle_s: number | null
      readonly toCold_s: number | null
    }

/** Judges a cooling record, counted from the last time it falls below 135 °F (or from its start, if colder). */
export function coolingVerdict(time_s: ArrayLike<number>, temperature_K: ArrayLike<number>): CoolingVerdict {
  checkHistory(time_s, temperature_K)
  const n = time_s.length
  const lastBelow = (limit_K: number): number | null => {
    if (temperature_K[n - 1] > limit_K) return null
    let at = time_s[0]
    for (let i = 1; i < n; i++) {
      const a = temperature_K[i - 1]
      const b = temperature_K[i]
      if (a > limit_K && b <= limit_K) at = time_s[i - 1] + ((a - limit_K) / (a - b)) * (time_s[i] - time_s[i - 1])
    }
    return at
  }
  const start = lastBelow(coolingRule.from_K)
  const since = start ?? time_s[n - 1]
  const after = (at: number | null) => (at === null || start === null ? null : Math.max(0, at - since))
  const toMiddle_s = after(lastBelow(coolingRule.middle_K))
  const toCold_s = after(lastBelow(coolingRule.to_K))
  const lasted_s = time_s[n - 1] - since
  if (toMiddle_s === null) {
    const code = start !== null && lasted_s > coolingRule.middle_s ? 'too-slow-to-70F' : 'record-too-short'
    return { ok: false, code, toMiddle_s, toCold_s }
  }
  if (toMiddle_s > coolingRule.middle_s) return { ok: false, code: 'too-slow-to-70F', toMiddle_s, toCold_s }
  if (toCold_s === null) {
    const code = lasted_s > coolingRule.to_s ? 'too-slow-to-41F' : 'record-too-short'
    return { ok: false, code, toMiddle_s, toCold_s }
  }
  if (toCold_s > coolingRule.to_s) return { ok: false, code: 'too-slow-to-41F', toMiddle_s, toCold_s }
  return { ok: true, toMiddle_s, toCold_s }
}

/**
 * Dried kidney beans and their kin: soak 5 h or more, throw the water away, boil 30 min in fresh water; never in a
 * slow cooker, where partial heating can raise the toxin's activity. 20 min at 100 °C generally destroys it.
 */
export const lectinRule = {
  soak_s: 5 * 3600,
  boil_s: 30 * 60,
  boil_K: 373.15,
  source: 'bad-bug-book',
} as const
