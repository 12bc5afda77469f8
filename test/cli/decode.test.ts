import { describe, expect, test } from 'vitest'
import { decodeText } from '../../src/cli/decode.ts'
import { CallError } from '../../src/cli/failure.ts'

const words = '½ cup crème fraîche — 180 °C'
const bytes = (...parts: (number[] | Uint8Array)[]) => Uint8Array.from(parts.flatMap((part) => [...part]))
const utf8 = (text: string) => new TextEncoder().encode(text)
const utf16 = (text: string, big: boolean) =>
  Uint8Array.from(
    [...text].flatMap((letter) => {
      const unit = letter.charCodeAt(0)
      return big ? [unit >> 8, unit & 255] : [unit & 255, unit >> 8]
    }),
  )

describe('the same words, whatever wrote them', () => {
  test.each<[string, Uint8Array]>([
    ['UTF-8', utf8(words)],
    ['UTF-8 with its mark', bytes([0xef, 0xbb, 0xbf], utf8(words))],
    ['UTF-16, little end first', bytes([0xff, 0xfe], utf16(words, false))],
    ['UTF-16, big end first', bytes([0xfe, 0xff], utf16(words, true))],
    // 0xbd ½, 0xe8 è, 0xee î, 0x97 the dash, 0xb0 the degree sign
    [
      'Windows-1252',
      Uint8Array.from([
        0xbd,
        ...utf8(' cup cr'),
        0xe8,
        ...utf8('me fra'),
        0xee,
        ...utf8('che '),
        0x97,
        ...utf8(' 180 '),
        0xb0,
        ...utf8('C'),
      ]),
    ],
  ])('%s', (_, given) => expect(decodeText(given, 'dinner.txt')).toBe(words))

  test('UTF-16 without a mark is known by its zeros', () => {
    const plain = 'Serves 4. 500 g leeks, 2 carrots, 1 litre of water.'
    expect(decodeText(utf16(plain, false), 'dinner.txt')).toBe(plain)
    expect(decodeText(utf16(plain, true), 'dinner.txt')).toBe(plain)
  })
})

describe('what is not a manuscript is refused with the reason and the cure', () => {
  test.each<[string, Uint8Array, RegExp]>([
    ['nothing', new Uint8Array(0), /^dinner.txt is empty\. Give a file/],
    ['blanks', utf8(' \n\t\n'), /holds nothing but blanks/],
    ['a PDF', utf8('%PDF-1.7 …'), /is a PDF, not plain text\. Save or copy the recipe as plain text/],
    ['a word processor’s file', bytes([0x50, 0x4b, 3, 4, 20, 0]), /word processor’s file or an archive/],
    ['bytes', Uint8Array.from({ length: 400 }, (_, i) => (i * 37) % 256), /is not text/],
    [
      'a web page',
      utf8('<!DOCTYPE html><html><body><p>Stew</p></body></html>'),
      /source of a web page.*copy the recipe’s text/,
    ],
    ['a piece of a web page', utf8(`<ul>${'<li class="x">1 onion</li>'.repeat(12)}</ul>`), /source of a web page/],
    ['five megabytes', utf8('Stir the pot. '.repeat(360_000)), /has 5\.0 million bytes.*one recipe at a time/],
  ])('%s', (_, given, sentence) => {
    expect(() => decodeText(given, 'dinner.txt')).toThrow(CallError)
    try {
      decodeText(given, 'dinner.txt')
    } catch (error) {
      expect((error as CallError).sentence).toMatch(sentence)
    }
  })

  test('a recipe with an angle bracket or two stays a recipe', () => {
    expect(decodeText(utf8('Heat < 100 °C and <b>stir</b>. 1 onion'), 'dinner.txt')).toContain('<b>')
  })
})
