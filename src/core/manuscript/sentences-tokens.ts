import type { Span } from '../findings/index.ts'

/** A word, a number or a mark of the manuscript, with its place. */
export interface Token extends Span {
  readonly kind: 'word' | 'number' | 'mark'
  /** Lower case, typographic hyphens and apostrophes made plain. */
  readonly low: string
  /** Value of a number, NaN for anything else. "1½" and "2-1/2" are one number. */
  readonly value: number
  /** True when nothing stands between this token and the one before it. */
  readonly joined: boolean
}

const vulgar: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}
const vulgarMarks = Object.keys(vulgar).join('')
const vulgarCodes: ReadonlySet<number> = new Set([...vulgarMarks].map((mark) => mark.charCodeAt(0)))

// Tried at one place only (sticky) and without nested repetition. Order: mixed number, fraction, decimal.
const number = new RegExp(
  [
    `(\\d{1,4}(?:\\s|-|‑| and )?\\s?[${vulgarMarks}]|\\d{1,3}(?:[ -]|\\sand\\s)\\d{1,2}[/⁄][1-9]\\d{0,2}(?![\\d/])|[${vulgarMarks}])`,
    '(\\d{1,3}[/⁄][1-9]\\d{0,2}(?![\\d/]))',
    '(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:[.,]\\d+)?|\\.\\d+)',
  ].join('|'),
  'y',
)
// Short-hand with a slash: w/, o/n, S/té, p/c. "and/or" is three tokens.
const slashed = /[sopw]\/[a-zà-ÿ]+(?:[-'’][a-zà-ÿ]+)*|w\/o?(?=[\s\d])/iy

const isDigit = (code: number): boolean => code >= 48 && code <= 57
/** Latin letters with their accents. */
const isLetter = (code: number): boolean =>
  (code >= 97 && code <= 122) ||
  (code >= 65 && code <= 90) ||
  (code >= 0xc0 && code <= 0x17e && code !== 0xd7 && code !== 0xf7)
const isHyphen = (code: number): boolean => code === 0x2d || code === 0x2010 || code === 0x2011
const isApostrophe = (code: number): boolean => code === 0x27 || code === 0x2019
const isBlank = (code: number): boolean =>
  code <= 32 || code === 0xa0 || code === 0x202f || code === 0x2009 || code === 0x3000 || code === 0xfeff
/** Asterisk, underscore and backtick are typing marks for stress, not words. */
const isStress = (code: number): boolean => code === 0x2a || code === 0x5f || code === 0x60

function fraction(words: string): number {
  const slash = words.search(/[/⁄]/)
  const under = Number(words.slice(slash + 1))
  return under === 0 ? Number.NaN : Number(words.slice(0, slash)) / under
}

function mixed(words: string): number {
  const mark = words.at(-1)!
  if (mark in vulgar) return Number(/\d+/.exec(words)?.[0] ?? 0) + vulgar[mark]!
  const parts = words.split(/[ -]|\sand\s/).filter((part) => part !== '')
  return Number(parts[0]) + fraction(parts.at(-1)!)
}

function decimal(words: string): number {
  if (/,\d{3}(?!\d)/.test(words) && !words.startsWith('0')) return Number(words.replace(/,/g, ''))
  return Number(words.replace(',', '.'))
}

/** Place behind the word that begins at `at`; hyphens and apostrophes inside it belong to it. */
function wordEnd(text: string, at: number, to: number): number {
  let end = at + 1
  while (end < to) {
    const code = text.charCodeAt(end)
    const inside = (isHyphen(code) || isApostrophe(code)) && end + 1 < to && isLetter(text.charCodeAt(end + 1))
    if (!isLetter(code) && !inside) break
    end += 1
  }
  return end
}

function lowOf(word: string): string {
  const low = word.toLowerCase()
  return /[‐‑’‘]/.test(low) ? low.replace(/[‐‑]/g, '-').replace(/[’‘]/g, "'") : low
}

/** Words, numbers and marks between two places of a text. Blanks fall away; nothing else does. */
export function tokenise(text: string, from: number, to: number): Token[] {
  const tokens: Token[] = []
  let at = from
  let end = -1
  while (at < to) {
    const code = text.charCodeAt(at)
    // "3#" is three pounds; any other hash is a heading mark. Quotation marks are no words; behind a figure one is inches.
    const silent = isStress(code) || (code === 0x23 && end !== at) || (code === 0x22 && !isFigure(text, at - 1))
    if (isBlank(code) || silent) {
      at += 1
      continue
    }
    const token = readToken(text, at, to, code, end === at)
    tokens.push(token)
    at = token.to
    end = at
  }
  return tokens
}

function isFigure(text: string, at: number): boolean {
  const code = at < 0 ? 0 : text.charCodeAt(at)
  return isDigit(code) || vulgarCodes.has(code)
}

function readToken(text: string, at: number, to: number, code: number, joined: boolean): Token {
  if (isLetter(code)) {
    let end = wordEnd(text, at, to)
    if (text.charCodeAt(at + 1) === 0x2f && at + 1 < to) {
      slashed.lastIndex = at
      const found = slashed.exec(text)
      if (found) end = Math.min(to, at + found[0].length)
    }
    return { from: at, to: end, kind: 'word', low: lowOf(text.slice(at, end)), value: Number.NaN, joined }
  }
  if (isDigit(code) || vulgarCodes.has(code) || (code === 0x2e && isDigit(text.charCodeAt(at + 1)))) {
    number.lastIndex = at
    const found = number.exec(text)
    if (found && at + found[0].length <= to) {
      const low = found[0]
      const value = found[1] ? mixed(low) : found[2] ? fraction(low) : decimal(low)
      return { from: at, to: at + low.length, kind: 'number', low, value, joined }
    }
  }
  // Characters outside the basic plane are two code units and one mark; so is an arrow.
  const pair = code >= 0xd800 && code <= 0xdbff && at + 1 < to && (text.charCodeAt(at + 1) & 0xfc00) === 0xdc00
  const arrow = code === 0x2d && text.charCodeAt(at + 1) === 0x3e && at + 1 < to
  const end = at + (pair || arrow ? 2 : 1)
  const mark = text.slice(at, end)
  return { from: at, to: end, kind: 'mark', low: mark === '–' || mark === '‒' ? '-' : mark, value: Number.NaN, joined }
}
