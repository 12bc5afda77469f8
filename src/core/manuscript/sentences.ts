import type { Span } from '../findings/index.ts'

// Units and the like that take a stop and may yet end a sentence ("hold 20 min. Take off burner").
const unitsWithStop = new Set(
  (
    'min mins hr hrs h sec secs oz lb lbs tsp tbsp tbs t c f g kg ml l qt qts pt pts gal in deg temp cm mm pkg ea med ' +
    'doz fl sq wt'
  ).split(' '),
)
// Words whose stop never ends a sentence.
const neverLast = new Set('approx abt no nos v e.g i.e eg ie vs ca cf fig incl elec st dr mr mrs ms'.split(' '))

const isBlank = (char: string | undefined): boolean => char === undefined || /\s/u.test(char)
const isLower = (char: string | undefined): boolean => char !== undefined && /\p{Ll}/u.test(char)
const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9'
const isLetter = (char: string | undefined): boolean => char !== undefined && /\p{L}/u.test(char)

/** The word that ends just before a place, lower case, inner stops kept ("e.g"). At most 24 letters are looked at. */
function wordBefore(text: string, at: number, from: number): string {
  let start = at
  const floor = Math.max(from, at - 24)
  while (start > floor && /[\p{L}.]/u.test(text[start - 1]!)) start -= 1
  return text.slice(start, at).toLowerCase()
}

function nextShown(text: string, at: number, to: number): number {
  let next = at
  while (next < to && isBlank(text[next])) next += 1
  return next
}

/** Does the stop at `at` end its sentence? */
function stopEnds(text: string, at: number, from: number, to: number): boolean {
  const after = text[at + 1]
  const before = text[at - 1]
  if (at + 1 >= to) return true
  if (isDigit(before) && isDigit(after)) return false
  // "INGREDIENTS.--4 lbs.", "Time.—2 hours": the dash of old printers.
  if (after === '—' || (after === '-' && text[at + 2] === '-')) return true
  if (!isBlank(after) && !/["'”’)\]*_]/u.test(after!)) {
    // "the pan.season the meat": a stop between two whole words with the blank forgotten.
    return isLetter(after) && wordBefore(text, at, from).length >= 3 && /^\p{L}{3}/u.test(text.slice(at + 1, at + 4))
  }
  let next = at + 1
  while (next < to && /["'”’)\]*_]/u.test(text[next]!)) next += 1
  next = nextShown(text, next, to)
  if (next >= to) return true
  const word = wordBefore(text, at, from)
  if (text[at - 1] === '.') return !isLower(text[next])
  if (neverLast.has(word)) return false
  if (unitsWithStop.has(word)) return !isLower(text[next]) && !isDigit(text[next]) && !/[-–(&+,;:]/u.test(text[next]!)
  // One capital letter with a stop is an initial or a scale ("350 F."), handled above; anything else ends here,
  // also before a small letter: whole manuscripts are typed without capitals.
  return true
}

/** A line break ends a sentence where the next line starts a new thought and this one is not merely wrapped. */
function breakEnds(text: string, at: number, lineFrom: number, to: number): boolean {
  const next = nextShown(text, at, to)
  if (next >= to) return false
  const gap = text.slice(at, next)
  if ((gap.match(/\n/gu) ?? []).length > 1) return true
  if (/^(?:[-•*+]|\d{1,2}[.)])\s/u.test(text.slice(next, next + 4))) return true
  const line = text.slice(lineFrom, at).trimEnd()
  return line.length < 50 && /[\p{L}\d)]$/u.test(line) && /\p{Lu}/u.test(text[next]!)
}

/** Sentences between two places, each trimmed of blanks, end mark included. Semicolons do not end a sentence. */
export function splitSentences(text: string, from: number, to: number): Span[] {
  const sentences: Span[] = []
  let start = from
  let lineFrom = from
  const close = (end: number) => {
    let a = start
    let b = end
    while (a < b && (isBlank(text[a]) || text[a] === '-' || text[a] === '—' || text[a] === '•')) a += 1
    while (b > a && isBlank(text[b - 1])) b -= 1
    if (b > a && /[\p{L}\d]/u.test(text.slice(a, b))) sentences.push({ from: a, to: b })
    start = end
  }
  for (let at = from; at < to; at += 1) {
    const char = text[at]
    if (char === '\n') {
      if (breakEnds(text, at, lineFrom, to)) close(at)
      // On to the next shown character at once: a run of blank lines is walked one time only.
      at = nextShown(text, at, to) - 1
      lineFrom = at + 1
    } else if (char === '.' || char === '!' || char === '?') {
      if (at + 1 < to && /[.!?]/u.test(text[at + 1]!)) continue
      if (char === '.' ? !stopEnds(text, at, from, to) : !isBlank(text[at + 1]) && !/["'”’)\]*_]/u.test(text[at + 1]!))
        continue
      let end = at + 1
      while (end < to && /["'”’)\]*_]/u.test(text[end]!)) end += 1
      close(end)
    }
  }
  close(to)
  return sentences
}
