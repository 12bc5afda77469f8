import type { Span } from '../findings/index.ts'

/** A line of the manuscript that is not blank, without its list mark. */
export interface Line extends Span {
  /** Blank lines stand before it. */
  readonly apart: boolean
  readonly indent: number
  readonly mark: 'bullet' | 'number' | null
  /** The sign of the bullet, so that two kinds of list can be told apart. */
  readonly sign: string
  readonly number: number | null
  /** Depth of a Markdown heading; 0 for none. An underlined line is 1 or 2. */
  readonly level: number
  /** The whole line is set bold or slanted. */
  readonly stressed: boolean
}

const quote = /^(?:>\s?)+(?=\S)/
const bullet = /^(?:[-–—*+•‣◦▪▫●○■□◆◇✓✔☐☑►▶→·⁃∙❖※]|\[[ xX]?\]|o(?=\t))(?=\s)\s*(?:\[[ xX]?\]\s+)?/
const numbered = /^(?:step\s+)?\(?(\d{1,2})(?:[.):](?=\s|[A-Z])|(?=\t))\s*/i
const keycap = /^(\d)\ufe0f?\u20e3\s*/
const picture = /^(?:\p{Extended_Pictographic}(?:\ufe0f|\u200d|[\u{1f3fb}-\u{1f3ff}])*\s*)+/u
/** Most lines begin with a word and carry no mark: seen at once. */
const plainHead = /^(?!o\t|step\s)[A-Za-z]/i
const underline = /^(?:={3,}|-{3,}|~{3,}|_{3,})$/
const stress = /^(?:\*\*|__|\*|_)(?=\S)(?:[^*_]{1,80})(?:\*\*|__|\*|_):?$/

interface Marked {
  from: number
  mark: Line['mark']
  sign: string
  number: number | null
}

/** Takes list mark and ornament off the head of a line that begins at `from`. */
function unmarked(body: string, from: number): Marked {
  if (plainHead.test(body)) return { from, mark: null, sign: '', number: null }
  const quoted = quote.exec(body.slice(0, 24))?.[0].length ?? 0
  const head = body.slice(quoted, quoted + 24)
  const found = bullet.exec(head)
  let at = quoted + (found ? found[0].length : 0)
  let mark: Line['mark'] = found ? 'bullet' : null
  let number: number | null = null
  const key = keycap.exec(body.slice(at, at + 24))
  const ornament = key ? null : picture.exec(body.slice(at, at + 24))
  if (ornament) {
    at += ornament[0].length
    mark ??= 'bullet'
  }
  const digits = key ?? numbered.exec(body.slice(at, at + 24))
  // "1:30" is a time, "2. chopped" the end of a sentence; both only look like numbers at the head of a line.
  if (digits && !/^\d+:\d/.test(body.slice(at))) {
    number = Number(digits[1])
    at += digits[0].length
    mark = 'number'
  }
  if (at >= body.length) return { from, mark: null, sign: '', number: null }
  return { from: from + at, mark, sign: found ? found[0].trim() : ornament ? 'picture' : '', number }
}

const breaks = /[\r\n]/g
/** Plain blanks, and the ones that stand where markup stood. */
const isBlank = (code: number): boolean => code <= 32 || code === 0x2009

/** All lines that are not blank, in order. `marked` still carries Markdown emphasis. */
export function linesOf(marked: string): Line[] {
  const lines: Line[] = []
  // Data between dashes at the very top belongs to the program the text was written in.
  let at =
    /^\s*---[ \t]*\r?\n(?:[\w-]+:[^\n]*\n|[ \t]*(?:- )[^\n]*\n){1,40}---[ \t]*(?=\r?\n)/.exec(
      marked.slice(0, 4000),
    )?.[0].length ?? 0
  let apart = true
  while (at < marked.length) {
    breaks.lastIndex = at
    const end = breaks.exec(marked)?.index ?? marked.length
    let from = at
    while (from < end && isBlank(marked.charCodeAt(from))) from += 1
    let to = end
    while (to > from && isBlank(marked.charCodeAt(to - 1))) to -= 1
    // A carriage return and the line feed behind it are one break.
    const next = marked.charCodeAt(end) === 13 && marked.charCodeAt(end + 1) === 10 ? end + 2 : end + 1
    if (from === to) apart = true
    else {
      const body = marked.slice(from, to)
      const before = lines.at(-1)
      if (underline.test(body)) {
        // An underline makes a heading of the line right above it; on its own it is a rule.
        if (before && !apart && before.mark === null)
          lines[lines.length - 1] = { ...before, level: body[0] === '=' ? 1 : 2 }
        apart = true
      } else {
        const hashes = /^(#{1,6})\s+/.exec(body)
        const inner = hashes ? body.slice(hashes[0].length) : body
        const place = unmarked(inner, from + (hashes ? hashes[0].length : 0))
        const core = marked.slice(place.from, to)
        let close = to
        if (hashes) {
          while (close > place.from && marked[close - 1] === '#') close -= 1
          while (close > place.from && isBlank(marked.charCodeAt(close - 1))) close -= 1
        }
        lines.push({
          from: place.from,
          to: close,
          mark: place.mark,
          sign: place.sign,
          number: place.number,
          apart,
          indent: from - at,
          level: hashes ? hashes[1]!.length : 0,
          stressed: (core[0] === '*' || core[0] === '_') && stress.test(core),
        })
        apart = false
      }
    }
    at = next
  }
  return lines.filter((line) => line.to > line.from)
}
