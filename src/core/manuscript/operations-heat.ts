import type { Span } from '../findings/index.ts'
import type { HeatWord, PressureWord } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { conjunctions, prepositions } from './verbs-words.ts'

export interface Said<T> extends Span {
  readonly value: T
}

const levels = new Map<string, HeatWord>(
  Object.entries<HeatWord>({
    low: 'low',
    lowest: 'low',
    gentle: 'low',
    slow: 'low',
    lo: 'low',
    medium: 'medium',
    med: 'medium',
    moderate: 'medium',
    mid: 'medium',
    normal: 'medium',
    high: 'high',
    hi: 'high',
    highest: 'high',
    fierce: 'high',
    brisk: 'high',
    strong: 'high',
    full: 'high',
    max: 'high',
    maximum: 'high',
    fast: 'high',
    sharp: 'high',
    'medium-low': 'medium-low',
    'medium-high': 'medium-high',
    'med-high': 'medium-high',
    'med-low': 'medium-low',
    'med-hi': 'medium-high',
    'med-lo': 'medium-low',
    'medium-hi': 'medium-high',
    'moderately-high': 'medium-high',
    'mid-high': 'medium-high',
  }),
)
// "gentle", "slow", "full" are heat words only beside a word for heat.
const onlyBesideHeat = new Set('gentle slow moderate fierce brisk strong full fast sharp normal lo hi'.split(' '))
const heatNouns = new Set(
  'heat flame flames fire gas setting settings burner light browning sauté saute sauteing sautéing hob position level plate'.split(
    ' ',
  ),
)
const sauteWords = new Set('sauté saute s/té s/te browning brown sautéing sear mode'.split(' '))
const notHeat = new Set(
  'speed fan pressure sided sides shelf rack oven-rack vent tide dish bowl shelf-stable fat'.split(' '),
)

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

/** "medium/high", "medium low": the level at `i` and the place behind it. */
function levelAt(tokens: readonly Token[], i: number): { level: HeatWord; next: number } | null {
  const first = levels.get(wordAt(tokens, i))
  if (first === undefined) return null
  if (first === 'medium') {
    let k = i + 1
    if (/^[-/–]$/u.test(wordAt(tokens, k)) || wordAt(tokens, k) === 'to') k += 1
    const second = wordAt(tokens, k)
    if (second === 'high' || second === 'hi') return { level: 'medium-high', next: k + 1 }
    if (second === 'low' || second === 'lo') return { level: 'medium-low', next: k + 1 }
    if (second === 'medium-high' || second === 'medium-low') return { level: second, next: k + 1 }
  }
  return { level: first, next: i + 1 }
}

/** Heat word of a clause: "over medium-high heat", "on low", "sauté, medium". Not "medium speed", not "high pressure". */
export function readHeat(
  tokens: readonly Token[],
  at: number,
  next: number,
  skip: readonly boolean[],
): Said<HeatWord> | null {
  for (let i = at; i < next; i += 1) {
    if (skip[i]) continue
    const found = levelAt(tokens, i)
    if (!found) continue
    const after = wordAt(tokens, found.next)
    const before = wordAt(tokens, i - 1)
    const place = { from: tokens[i]!.from, to: tokens[found.next - 1]!.to, value: found.level }
    if (notHeat.has(after) || /^(?:manual|pressure|hp)$/u.test(before)) {
      i = found.next - 1
      continue
    }
    // "the lowest possible flame", "low sauté", "the highest browning setting"
    const beside =
      heatNouns.has(after) ||
      (/^(?:possible|even|steady|direct|cooking|level)$/u.test(after) &&
        (heatNouns.has(wordAt(tokens, found.next + 1)) || wordAt(tokens, found.next + 1) === 'possible'))
    if (beside) {
      if (after === 'setting' && /^pressure$/u.test(before)) continue
      return place
    }
    if (onlyBesideHeat.has(wordAt(tokens, i))) continue
    const ends =
      found.next >= tokens.length ||
      tokens[found.next]!.kind !== 'word' ||
      prepositions.has(after) ||
      conjunctions.has(after) ||
      /^(?:while|so|where|that|which|when|if|before|stirring|covered|uncovered|again|once)$/u.test(after)
    if (!ends) continue
    const led =
      /^(?:on|to|at|over|with|setting|heat|temperature|flame)$/u.test(before) ||
      (/^(?:a|the|its|your|very)$/u.test(before) && /^(?:on|to|at|over)$/u.test(wordAt(tokens, i - 2))) ||
      sauteWords.has(before) ||
      ((before === ',' || before === '(' || before === ':' || before === '-') && sauteWords.has(wordAt(tokens, i - 2)))
    if (led) return place
    i = found.next - 1
  }
  return null
}

const pressureLevels = new Map<string, PressureWord>(
  Object.entries<PressureWord>({
    high: 'high',
    full: 'high',
    maximum: 'high',
    max: 'high',
    'full-on': 'high',
    low: 'low',
    lower: 'low',
    medium: 'medium',
    med: 'medium',
    moderate: 'medium',
  }),
)

/** Gauge figures to words. Common practice, no source: weights and gauges are marked 5, 10 and 15 lb; electric "high" is 10 to 12 psi. */
function levelOfPsi(psi: number): PressureWord | null {
  if (psi >= 11 && psi <= 20) return 'high'
  if (psi >= 9 && psi < 11) return 'medium'
  if (psi >= 3 && psi < 9) return 'low'
  return null
}

/** Pressure level of a clause; `cooksPressed` when its verb alone says that it happens under pressure. */
export function readPressure(
  tokens: readonly Token[],
  at: number,
  next: number,
  skip: readonly boolean[],
  cooksPressed: boolean,
): Said<PressureWord> | null {
  for (let i = at; i < next; i += 1) {
    if (skip[i]) continue
    const low = wordAt(tokens, i)
    const place = (to: number) => ({ from: tokens[i]!.from, to: tokens[Math.min(to, tokens.length) - 1]!.to })
    const level = pressureLevels.get(low)
    if (level !== undefined) {
      const after = wordAt(tokens, i + 1)
      if (after === 'pressure' || (after === '-' && wordAt(tokens, i + 2) === 'pressure'))
        return { ...place(i + 2), value: level }
      if (
        /^(?:manual|pressure)$/u.test(wordAt(tokens, i - 1)) ||
        (/^(?:,|:|\(|-)$/u.test(wordAt(tokens, i - 1)) && /^(?:manual|pressure)$/u.test(wordAt(tokens, i - 2)))
      )
        return { ...place(i + 1), value: level }
      if (cooksPressed && /^(?:on|at|to|setting|cook|,|:|\()$/u.test(wordAt(tokens, i - 1)) && !heatNouns.has(after))
        return { ...place(i + 1), value: level }
    }
    if (low === 'hp') return { ...place(i + 1), value: 'high' }
    if (low === 'lp') return { ...place(i + 1), value: 'low' }
    if (
      low === 'ring' ||
      low === 'rings' ||
      (low === 'line' && /^(?:red|white|pressure)$/u.test(wordAt(tokens, i - 1)))
    ) {
      const near = `${wordAt(tokens, i - 2)} ${wordAt(tokens, i - 1)}`
      if (/\bfirst\b|\bone\b/u.test(near)) return { ...place(i + 1), value: 'low' }
      if (/\bsecond\b|\btwo\b|\bboth\b/u.test(near)) return { ...place(i + 1), value: 'high' }
    }
    const token = tokens[i]!
    if (token.kind === 'number') {
      // "set the control at 15"
      if (
        /^(?:at|to|on)$/u.test(wordAt(tokens, i - 1)) &&
        /^(?:control|regulator|gauge|selector|weight|dial|indicator)$/u.test(wordAt(tokens, i - 2))
      ) {
        const value = levelOfPsi(token.value)
        if (value !== null) return { ...place(i + 1), value }
      }
      const unit = wordAt(tokens, i + 1)
      const led = /^(?:to|at|on|under|with|about|the|\(|of|holding|hold|reaches)$/u.test(wordAt(tokens, i - 1))
      if (
        unit === 'psi' ||
        unit === 'psig' ||
        (/^(?:lb|lbs|pound|pounds|lb's)$/u.test(unit) &&
          (wordAt(tokens, i + 2) === 'pressure' ||
            wordAt(tokens, i + 3) === 'pressure' ||
            (led &&
              wordAt(tokens, i + 2) !== 'of' &&
              tokens[i + 2]?.kind !== 'number' &&
              (tokens[i + 2]?.kind !== 'word' ||
                prepositions.has(wordAt(tokens, i + 2)) ||
                conjunctions.has(wordAt(tokens, i + 2))))))
      ) {
        const value = levelOfPsi(token.value)
        if (value !== null) return { ...place(i + 2), value }
      }
      if (unit === 'kpa' || unit === 'bar') {
        const value = levelOfPsi(unit === 'kpa' ? token.value / 6.895 : token.value * 14.5)
        if (value !== null) return { ...place(i + 2), value }
      }
    }
  }
  return null
}
