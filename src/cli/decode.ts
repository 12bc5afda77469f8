import { CallError } from './failure.ts'

/** Above this a file is a book, not a recipe. */
export const longest_bytes = 1_000_000

const signatures: readonly { readonly bytes: readonly number[]; readonly kind: string }[] = [
  { bytes: [0x25, 0x50, 0x44, 0x46], kind: 'a PDF' },
  { bytes: [0x50, 0x4b, 0x03, 0x04], kind: 'a word processor’s file or an archive' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], kind: 'an old word processor’s file' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], kind: 'a picture' },
  { bytes: [0xff, 0xd8, 0xff], kind: 'a photograph' },
  { bytes: [0x47, 0x49, 0x46, 0x38], kind: 'a picture' },
  { bytes: [0x1f, 0x8b], kind: 'an archive' },
  { bytes: [0x7b, 0x5c, 0x72, 0x74, 0x66], kind: 'a rich text file' },
]

/**
 * The text of a manuscript, whatever wrote it: UTF-8 with or without a mark, UTF-16 with one, else Windows-1252.
 * The mark itself is not part of the text. Throws CallError, naming `name`, for what is not a manuscript's text.
 */
export function decodeText(bytes: Uint8Array, name: string): string {
  if (bytes.length === 0) throw new CallError(`${name} is empty.`, 'Give a file with the text of a recipe in it.')
  if (bytes.length > longest_bytes) {
    throw new CallError(
      `${name} has ${(bytes.length / 1e6).toFixed(1)} million bytes; a recipe has a few thousand.`,
      'Give one recipe at a time.',
    )
  }
  const known = signatures.find((one) => one.bytes.every((byte, i) => bytes[i] === byte))
  if (known) {
    throw new CallError(
      `${name} is ${known.kind}, not plain text.`,
      'Save or copy the recipe as plain text (.txt) and give that.',
    )
  }
  const text = decoded(bytes)
  if (text === null || looksBinary(text)) {
    throw new CallError(
      `${name} is not text: it holds bytes that no manuscript has.`,
      'Give the recipe as plain text (.txt).',
    )
  }
  if (text.trim() === '')
    throw new CallError(`${name} holds nothing but blanks.`, 'Give a file with the text of a recipe in it.')
  if (looksLikeHtml(text)) {
    throw new CallError(
      `${name} is the source of a web page; its tags would be read as words.`,
      'Open the page, copy the recipe’s text and give that.',
    )
  }
  return text
}

function decoded(bytes: Uint8Array): string | null {
  const [a, b, c] = bytes
  if (a === 0xef && b === 0xbb && c === 0xbf) return utf8(bytes.subarray(3)) ?? windows1252(bytes.subarray(3))
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le').decode(bytes.subarray(2))
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be').decode(bytes.subarray(2))
  // UTF-16 without its mark: every other byte of Latin text is zero.
  const zeros = [0, 0]
  const sample = bytes.subarray(0, 2000)
  sample.forEach((byte, i) => {
    if (byte === 0) zeros[i % 2]++
  })
  const half = sample.length / 2
  if (zeros[1] > 0.4 * half && zeros[0] < 0.05 * half) return new TextDecoder('utf-16le').decode(bytes)
  if (zeros[0] > 0.4 * half && zeros[1] < 0.05 * half) return new TextDecoder('utf-16be').decode(bytes)
  if (zeros[0] + zeros[1] > 0) return null
  return utf8(bytes) ?? windows1252(bytes)
}

function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return null
  }
}

// What the code page has between 0x80 and 0x9f, by the WHATWG Encoding Standard's index (five bytes stay controls).
// Written out because Node 20 decodes these bytes as Latin-1 under the name windows-1252.
const page1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

function windows1252(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) text += byte >= 0x80 && byte < 0xa0 ? page1252[byte - 0x80] : String.fromCharCode(byte)
  return text
}

/** More than one odd control character in a hundred: not something a person typed. */
function looksBinary(text: string): boolean {
  const odd = text.match(/[\u0000-\u0008\u000e-\u001b\ufffd]/g)?.length ?? 0
  return odd > 0.01 * text.length
}

function looksLikeHtml(text: string): boolean {
  if (/^\s*(<\?xml[^>]*>\s*)?(<!doctype html|<html[\s>])/i.test(text)) return true
  const tags =
    text.match(/<\/?(div|span|p|li|ul|ol|br|h[1-6]|a|td|tr|table|script|style|meta|img)(\s[^<>]*)?\/?>/gi) ?? []
  return tags.length >= 10 && tags.join('').length > 0.08 * text.length
}
