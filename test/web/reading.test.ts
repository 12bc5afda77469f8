import { describe, expect, it } from 'vitest'
import { cookManuscript, type Finding } from '../../src/core/index.ts'
import { kindsOf, noteAt, readingOf } from '../../src/web/bench/reading.ts'

const text = `Pork with leeks

Serves 4

1 kg boneless pork shoulder, cut into 4-cm pieces
200 ml stock

1. Put the pork and the stock in a 6-quart electric pressure cooker. Lock the lid and cook at high pressure for 30 minutes. Let the pressure release naturally.`

const { recipe } = cookManuscript(text)
const about = (words: string, severity: Finding['severity'] = 'warning', code = 'test'): Finding => {
  const from = text.indexOf(words)
  return {
    code,
    severity,
    span: { from, to: from + words.length },
    title: words,
    message: '',
    source: '',
    advice: null,
    cure: null,
  }
}

describe('what the sheet shows of a recipe', () => {
  it('puts notes in the order of the text, the worst first at one place, the whole before all', () => {
    const findings = [
      about('200 ml stock'),
      about('1 kg', 'hint'),
      about('1 kg', 'blocking', 'worse'),
      { ...about('1 kg'), span: null, title: 'whole' },
    ]
    const { notes } = readingOf(recipe, findings, text, text)
    expect(notes.map((note) => note.finding.title)).toEqual(['whole', '1 kg', '1 kg', '200 ml stock'])
    expect(notes[1].finding.severity).toBe('blocking')
  })

  it('moves notes with the words while the next run is on its way', () => {
    const now = text.replace('1 kg', '1.25 kg')
    const { notes } = readingOf(recipe, [about('200 ml stock')], text, now)
    expect(now.slice(notes[0].from!, notes[0].to!)).toBe('200 ml stock')
  })

  it('keeps the key of a note from run to run and tells two of a kind apart', () => {
    const findings = [about('1 kg'), about('200 ml'), about('200 ml')]
    const keys = readingOf(recipe, findings, text, text).notes.map((note) => note.key)
    expect(new Set(keys).size).toBe(3)
    const now = `Best ${text}`
    expect(readingOf(recipe, findings, text, now).notes.map((note) => note.key)).toEqual(keys)
  })

  it('finds the narrowest note around a place', () => {
    const { notes } = readingOf(recipe, [about('1 kg boneless pork'), about('pork shoulder')], text, text)
    expect(noteAt(notes, text.indexOf('shoulder'))?.finding.title).toBe('pork shoulder')
    expect(noteAt(notes, text.indexOf('kg'))?.finding.title).toBe('1 kg boneless pork')
    expect(noteAt(notes, text.indexOf('Serves'))).toBeNull()
  })

  it('knows title, front matter, ingredients and steps by the starts of their lines', () => {
    const kinds = kindsOf(recipe)
    const at = (words: string) => kinds.get(text.indexOf(words))
    expect([at('Pork with'), at('Serves'), at('1 kg'), at('200 ml'), at('1. Put')]).toEqual([
      'title',
      'front',
      'ingredient',
      'ingredient',
      'step',
    ])
  })
})
