// A copy of the text that is easier to read and just as long, so that every offset means the same place in both.
// Look-alike characters become plain ones one for one; markup becomes blanks. Whatever is taken out of the middle of a
// word ("jalape&ntilde;o") is made up for behind the word, so only offsets inside that word move.

const alike: Record<string, string> = {
  '\u00a0': ' ',
  '\u1680': ' ',
  '\u202f': ' ',
  '\u205f': ' ',
  '\u3000': ' ',
  '\ufeff': ' ',
  '\u200b': ' ',
  '\u2060': ' ',
  '\u2044': '/',
  '\u2215': '/',
  '\u2018': "'",
  '\u2019': "'",
  '\u201b': "'",
  '\u2032': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u201f': '"',
  '\u2033': '"',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2212': '-',
  '\ufe63': '-',
  '\uff0d': '-',
  '\u2015': '\u2014',
  '\u2028': '\n',
  '\u2029': '\n',
  '\u0085': '\n',
  '\u000b': '\n',
  '\u000c': '\n',
}

const odd =
  /[\u00a0\u1680\u2000-\u200b\u2010-\u2012\u2015\u2018\u2019\u201b-\u201d\u201f\u2028\u2029\u202f\u2032\u2033\u2044\u205f\u2060\u2212\u2215\u3000\ufe63\ufeff\uff01-\uff5e\u0085\u000b\u000c]/g

const plain = (c: string): string => {
  const code = c.charCodeAt(0)
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0)
  return alike[c] ?? ' '
}

const entities: Record<string, string> = {
  nbsp: ' ',
  ensp: ' ',
  emsp: ' ',
  thinsp: ' ',
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  lsquo: "'",
  rsquo: "'",
  ldquo: '"',
  rdquo: '"',
  ndash: '–',
  mdash: '—',
  hellip: '…',
  bull: '•',
  middot: '·',
  deg: '°',
  times: '×',
  frasl: '/',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  frac13: '⅓',
  frac23: '⅔',
  frac18: '⅛',
  frac38: '⅜',
  frac58: '⅝',
  frac78: '⅞',
  eacute: 'é',
  egrave: 'è',
  ecirc: 'ê',
  aacute: 'á',
  agrave: 'à',
  acirc: 'â',
  auml: 'ä',
  ouml: 'ö',
  uuml: 'ü',
  iacute: 'í',
  icirc: 'î',
  oacute: 'ó',
  ocirc: 'ô',
  uacute: 'ú',
  ucirc: 'û',
  ntilde: 'ñ',
  ccedil: 'ç',
}

/** The character an entity stands for; null when it is none, so that a plain ampersand stays. */
function entity(name: string): string | null {
  if (!name.startsWith('#')) return entities[name] ?? null
  const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10)
  if (!(code >= 32 && code <= 0xffff) || (code >= 0xd800 && code <= 0xdfff)) return null
  return String.fromCharCode(code)
}

// Stands where markup stood. A blank like any other, yet no gap that a writer set.
const gap = '\u2009'
const letter = /[\p{L}\p{M}]/u
const htmlSign =
  /<(?:p|div|br|li|ul|ol|h[1-6]|table|tr|td|html|body|article|section|span|strong|b|em)(?:\s[^<>]*)?\/?>/i
const block =
  /^<\/?(?:p|div|br|ul|ol|table|tr|html|body|article|section|header|footer|main|hr|blockquote|pre|dl|dt|dd|figure|h[1-6]|li)\b/i
const markup = /<(script|style|head)\b[^<>]*>[\s\S]*?<\/\1\s*>|<!--[\s\S]*?-->|<\/?[a-z][^<>]*>|&(#?\w{1,12});/gi

/** What stands in for a piece of markup, shorter than it or as long. */
function standIn(mark: string): string {
  if (/^<li\b/i.test(mark)) return '\n* '
  if (/^<h[1-6]\b/i.test(mark)) return '\n# '
  if (/^<t[dh]\b/i.test(mark)) return '\t'
  return block.test(mark) ? '\n' : ''
}

function withoutMarkup(text: string): string {
  const out: string[] = []
  let at = 0
  // Blanks owed from inside the current word, paid at its end.
  let owed = 0
  const put = (piece: string) => {
    if (owed === 0) {
      out.push(piece)
      return
    }
    const end = piece.search(/[^\p{L}\p{M}\p{N}/'-]/u)
    if (end < 0) {
      out.push(piece)
      return
    }
    out.push(piece.slice(0, end), gap.repeat(owed), piece.slice(end))
    owed = 0
  }
  for (const found of text.matchAll(markup)) {
    put(text.slice(at, found.index).replace(/[\r\n]/g, ' '))
    at = found.index + found[0].length
    const name = found[2]
    const as = name === undefined ? standIn(found[0]) : entity(name)
    if (as === null) put(found[0])
    else {
      const spare = found[0].length - as.length
      const midWord = /^\p{L}?$/u.test(as) && letter.test(text[found.index - 1] ?? ' ') && letter.test(text[at] ?? ' ')
      put(midWord ? as : as + gap.repeat(spare))
      if (midWord) owed += spare
    }
  }
  put(text.slice(at).replace(/[\r\n]/g, ' '))
  out.push(gap.repeat(owed))
  return out.join('')
}

/** The text in plain characters, without tags and entities, as long as it was. */
export function plainReading(text: string): string {
  const even = text.replace(odd, plain)
  return htmlSign.test(even) ? withoutMarkup(even) : even
}

const emphasis = [
  /(?<![\w*])(\*\*|__)(?=[^\s*_])([^\n]{0,300}?[^\s*_])\1(?!\w)/g,
  /(?<![\w*])(\*)(?=[^\s*])([^*\n]{0,300})\*(?![\w*])/g,
  /(?<![\p{L}\p{N}_])(_)(?=[^\s_])([^_\n]{0,300})_(?![\p{L}\p{N}_])/gu,
  /(`)([^`\n]{1,200})`/g,
]

/** Blanks Markdown emphasis and the addresses of links; list marks and headings stay. */
export function withoutEmphasis(reading: string): string {
  let now = reading.replace(/!?\[([^\]\n]{0,300})\]\(([^()\s]{0,500})\)/g, (all: string, words: string) => {
    const start = all.indexOf('[') + 1
    return ' '.repeat(start) + words + ' '.repeat(all.length - start - words.length)
  })
  for (const mark of emphasis) {
    now = now.replace(mark, (_: string, sign: string, words: string) => {
      const blank = ' '.repeat(sign.length)
      return blank + words + blank
    })
  }
  return now
}
