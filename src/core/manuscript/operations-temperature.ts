import type { Span } from '../findings/index.ts'
import { celsiusFromFahrenheit, celsiusFromKelvin, gasMark_K, kelvinFromCelsius } from '../units/index.ts'
import type { Token } from './sentences-tokens.ts'

/** One temperature as printed. Two next to each other are meant to be the same. */
export interface SaidTemperature extends Span {
  readonly scale: 'C' | 'F' | 'gas' | 'none'
  readonly fan: boolean
  readonly low: number
  readonly high: number
  readonly low_K: number
  readonly high_K: number
}

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''
const led =
  /^(?:to|at|of|below|under|above|reaches|reach|registers|reads|hits|about|around|hold|or|approximately|oven|-|\/|\(|,)$/u

interface Scale {
  scale: SaidTemperature['scale']
  next: number
}

/** Scale behind a number: "°F", "C", "degrees", "deg. C"; null when the number is no temperature. */
function scaleAt(tokens: readonly Token[], i: number, value: number, before: string): Scale | null {
  let k = i
  let degree = false
  if (wordAt(tokens, k) === '°' || wordAt(tokens, k) === 'º' || wordAt(tokens, k) === '˚') {
    degree = true
    k += 1
  } else if (/^(?:degrees?|deg)$/u.test(wordAt(tokens, k))) {
    degree = true
    k += 1
    if (wordAt(tokens, k - 1) === 'deg' && wordAt(tokens, k) === '.' && tokens[k]!.joined) k += 1
  }
  const word = wordAt(tokens, k)
  const joined = tokens[k]?.joined ?? false
  if (word === 'celsius' || word === 'centigrade') return { scale: 'C', next: k + 1 }
  if (word === 'fahrenheit') return { scale: 'F', next: k + 1 }
  if (word === 'c' || word === 'ºc' || word === 'f' || word === 'ºf') {
    const isC = word.endsWith('c')
    // "3 C of wine" is cups, "63C" a temperature.
    const cups = isC && !degree && (wordAt(tokens, k + 1) === 'of' || !(value >= 40 || (joined && led.test(before))))
    if (!cups && (degree || isC || value >= 90 || led.test(before))) return { scale: isC ? 'C' : 'F', next: k + 1 }
  }
  return degree ? { scale: 'none', next: k } : null
}

const celsiusOf = (scale: SaidTemperature['scale'], value: number): number | null => {
  if (scale === 'C') return value
  if (scale === 'F') return celsiusFromFahrenheit(value)
  if (scale === 'gas') {
    const mark_K = gasMark_K(value)
    return mark_K === null ? null : celsiusFromKelvin(mark_K)
  }
  // Bare degrees: ovens marked in Celsius stop at 250. Common practice, no source.
  return value > 250 ? celsiusFromFahrenheit(value) : value
}

/** Temperatures among tokens `at` to `next`, as printed, in order. */
export function readTemperatures(tokens: readonly Token[], at: number, next: number): SaidTemperature[] {
  const found: SaidTemperature[] = []
  for (let i = at; i < next; i += 1) {
    const token = tokens[i]!
    if (token.low === 'gas' || token.low === 'c/gas' || token.low === 'f/gas') {
      const k = wordAt(tokens, i + 1) === 'mark' ? i + 2 : i + 1
      const mark = tokens[k]
      if (mark?.kind === 'number' && k < next) push('gas', i, k, mark.value, mark.value, k + 1, false)
      continue
    }
    if (token.kind !== 'number') continue
    let high = token.value
    let k = i + 1
    let scale = scaleAt(tokens, k, token.value, wordAt(tokens, i - 1))
    // "300 to 325°F", "180-200 C", "300°-325°"
    const link = scale?.scale === 'none' ? scale.next : k
    if ((wordAt(tokens, link) === '-' || wordAt(tokens, link) === 'to') && tokens[link + 1]?.kind === 'number') {
      const second = scaleAt(tokens, link + 2, tokens[link + 1]!.value, 'to')
      if (second && tokens[link + 1]!.value > token.value) {
        high = tokens[link + 1]!.value
        scale = second
        k = link + 2
      }
    }
    if (!scale || scale.next > next) continue
    const fan =
      /^(?:fan|convection)$/u.test(wordAt(tokens, scale.next)) && !/^oven$/u.test(wordAt(tokens, scale.next + 1))
    push(scale.scale, i, scale.next - 1, token.value, high, scale.next, fan)
    i = scale.next - 1
  }
  return found

  function push(
    scale: SaidTemperature['scale'],
    first: number,
    last: number,
    low: number,
    high: number,
    _next: number,
    fan: boolean,
  ): void {
    const low_C = celsiusOf(scale, low)
    const high_C = celsiusOf(scale, high)
    if (low_C === null || high_C === null || !(low_C > -60 && high_C < 600)) return
    found.push({
      scale,
      fan,
      low,
      high,
      low_K: kelvinFromCelsius(low_C),
      high_K: kelvinFromCelsius(high_C),
      from: tokens[first]!.from,
      to: tokens[last]!.to,
    })
  }
}

/** The one a cook would set: Celsius before Fahrenheit before gas, a plain oven before a fan oven. */
export function chosenTemperature(said: readonly SaidTemperature[]): SaidTemperature | null {
  const order = ['C', 'F', 'none', 'gas'] as const
  for (const fan of [false, true]) {
    for (const scale of order) {
      const found = said.find((one) => one.scale === scale && one.fan === fan)
      if (found) return found
    }
  }
  return null
}
