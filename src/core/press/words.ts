// Figures as a cook reads them aloud.

/** "34 min", "1 h 35 min", "12 h"; seconds only below a minute and a half. */
export function duration(time_s: number): string {
  if (time_s < 45) return `${Math.round(time_s)} s`
  const minutes = Math.round(time_s / 60)
  if (minutes < 60) return `${minutes} min`
  const rest = minutes % 60
  return rest === 0 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 60)} h ${rest} min`
}

/** "1 h 35 to 1 h 50", "34 to 40 min"; one figure when both ends round to the same minute. */
export function durationRange(low_s: number, high_s: number): string {
  const low = duration(low_s)
  const high = duration(high_s)
  if (low === high) return low
  if (high_s < 3570 && low_s >= 45) return `${low.replace(' min', '')} to ${high}`
  const bare = (words: string) => words.replace(/^(\d+ h \d+) min$/, '$1')
  return `${bare(low)} to ${bare(high)}`
}

/** "1 minute", "23 minutes", "9 h". */
export function minutesInFull(time_s: number): string {
  const n = Math.floor(time_s / 60 + 1e-9)
  if (n >= 120) return duration(n * 60)
  return n === 1 ? '1 minute' : `${n} minutes`
}

/** Whole degrees Celsius of a level. */
export function celsius(temperature_K: number): number {
  return Math.round(temperature_K - 273.15)
}

/** "8 ml", "318 ml", "1.2 litres". */
export function volume(volume_m3: number): string {
  const ml = volume_m3 * 1e6
  if (ml >= 1000) return `${(ml / 1000).toFixed(1)} litres`
  return `${Math.round(ml)} ml`
}

/** "0.3 g" is noise at this scale: "3 g", "186 g", "1.20 kg". */
export function mass(mass_kg: number): string {
  const g = mass_kg * 1000
  return g >= 1000 ? `${mass_kg.toFixed(2)} kg` : `${Math.round(g)} g`
}

export function percent(share: number): string {
  return `${Math.round(share * 100)} %`
}

const small =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const tens = '_ _ twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')

/** A whole number in words up to ninety-nine, in figures above. */
export function inWords(n: number): string {
  if (!(Number.isInteger(n) && n >= 0 && n < 100)) return String(n)
  if (n < 20) return small[n]
  return n % 10 === 0 ? tens[n / 10] : `${tens[Math.floor(n / 10)]}-${small[n % 10]}`
}

/** "a, b and c". */
export function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`
}

export function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}

// A label must not end on one of these.
const dangling = new Set('and or with in on of the a an to at for by into from until'.split(' '))

/**
 * A label cut to what fits: whole, else without what a comma, colon or bracket explains, else its first words, never ending on
 * a word that waits for another; null when nothing fits. Half a word in a band would read as another word.
 */
export function shortened(text: string, fits: (text: string) => boolean): string | null {
  if (fits(text)) return text
  const words = text.split(/[,(:]/)[0].trim().split(' ')
  for (let n = words.length; n > 0; n--) {
    if (dangling.has(words[n - 1])) continue
    const head = words.slice(0, n).join(' ')
    if (fits(head)) return head
  }
  return null
}
