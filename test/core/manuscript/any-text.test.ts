import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Span } from '../../../src/core/findings/index.ts'
import type { Ingredient } from '../../../src/core/manuscript/index.ts'
import { readIngredients } from '../../../src/core/manuscript/ingredient.ts'
import { type Layout, layOut } from '../../../src/core/manuscript/layout.ts'

interface Everything {
  readonly layout: Layout
  readonly ingredients: readonly Ingredient[]
}
const read = (text: string): Everything => {
  const layout = layOut(text)
  return { layout, ingredients: readIngredients(layout, text) }
}

/** What must hold of any text at all. */
function check(text: string): void {
  const { layout, ingredients } = read(text)
  expect(layout.text).toBe(text)
  expect(layout.reading.length).toBe(text.length)
  const inside = (span: Span | null): void => {
    if (!span) return
    expect(Number.isInteger(span.from) && Number.isInteger(span.to)).toBe(true)
    expect(span.from).toBeGreaterThanOrEqual(0)
    expect(span.to).toBeLessThanOrEqual(text.length)
    expect(span.from).toBeLessThanOrEqual(span.to)
  }
  for (const span of [layout.title, layout.yield, layout.stated.total, layout.stated.active, layout.stated.cooking])
    inside(span)
  for (const span of [...layout.notes, ...layout.headings]) inside(span)
  for (const step of layout.steps) {
    inside(step)
    expect(text.slice(step.from, step.to)).toBe(step.text)
  }
  let before = 0
  for (const line of layout.ingredients) {
    inside(line)
    inside(line.group)
    for (const cell of line.cells ?? []) inside(cell)
    expect(text.slice(line.from, line.to)).toBe(line.line)
    expect(line.from).toBeGreaterThanOrEqual(before)
    before = line.from
  }
  for (const [i, one] of ingredients.entries()) {
    expect(one.index).toBe(i)
    inside(one)
    expect(text.slice(one.from, one.to)).toBe(one.line)
    for (const span of [one.amountSpan, one.itemSpan, one.cut]) {
      inside(span)
      if (span) expect(span.from >= one.from && span.to <= one.to).toBe(true)
    }
    for (const m of [one, one.pack, ...one.also]) {
      if (!m || m.low === null || m.high === null) continue
      expect(Number.isFinite(m.low) && Number.isFinite(m.high)).toBe(true)
      expect(m.low).toBeLessThanOrEqual(m.high)
    }
    if (one.mass_kg) {
      expect(one.mass_kg.low).toBeGreaterThanOrEqual(0)
      expect(one.mass_kg.low).toBeLessThanOrEqual(one.mass_kg.high)
    }
    expect(one.massFrom).not.toBe('')
  }
  if (layout.kind === 'empty' || layout.kind === 'not-text') expect(ingredients).toEqual([])
}

// Scraps of manuscripts, put together at random: more likely to reach odd corners than random letters are.
const scraps = [
  'Ingredients', 'METHOD:', '## Notes', '**For the sauce:**', 'Serves 4–6', '1 1/2', '½', '11/2', '2-', 'to 3', '(14-oz)', '(', ')',
  'cups', 'x', '400g tin', '%', '/', ',', ';', '.', ':', '--', '—', 'plus', 'and', 'or', 'of', 'a', 'juice of', 'onion', 'salt', 'pepper',
  'finely chopped', 'to taste', 'optional', 'Brown the beef', 'simmer 2 hours', '• ', '1. ', '\t', '|', '\r\n', '\n\n', '   ', '😀', '1️⃣',
  '&frac12;', '<li>', '</p>', '_Mode_.--', 'INGREDIENTS.--', '===', '---', '\u00a0', 'e\u0301', '\ud83c', '"', "''", '#', '~', 'each', 'in.',
] // biome-ignore format: a heap

describe('any text', () => {
  it('is read without a throw, every place inside it', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), check), { numRuns: 150 })
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), check), { numRuns: 100 })
  })

  it('made of scraps of manuscripts too', () => {
    const text = fc
      .array(fc.constantFrom(...scraps), { maxLength: 60 })
      .chain((parts) =>
        fc
          .array(fc.constantFrom(' ', ' ', '\n', ''), { minLength: parts.length, maxLength: parts.length })
          .map((gaps) => parts.map((part, i) => part + gaps[i]).join('')),
      )
    fc.assert(fc.property(text, check), { numRuns: 250 })
  })

  it('reads the same with any line ends', () => {
    const line = fc.constantFrom(
      'Stew',
      'Serves 4',
      '2 onions, chopped',
      '1 kg beef (2 lb)',
      '',
      'Brown the beef well.',
      'Simmer for 2 hours.',
    )
    fc.assert(
      fc.property(fc.array(line, { maxLength: 14 }), (all) => {
        const shape = (text: string) => {
          const { layout, ingredients } = read(text)
          return [layout.kind, ingredients.map((i) => [i.line, i.low, i.unit, i.item]), layout.steps.map((s) => s.text)]
        }
        expect(shape(all.join('\r\n'))).toEqual(shape(all.join('\n')))
        expect(shape(all.join('\r'))).toEqual(shape(all.join('\n')))
      }),
      { numRuns: 60 },
    )
  })

  it('moves with what stands before it', () => {
    const text = 'Pea Soup\n\n2 onions, sliced\n500 g split peas\n\nSimmer for 1 hour.\n'
    fc.assert(
      fc.property(fc.constantFrom('\n', '\r\n\r\n', '\ufeff', '   \n', '\n\n\n'), (front) => {
        const plain = read(text).ingredients
        const moved = read(front + text).ingredients
        expect(moved.map((i) => i.from - front.length)).toEqual(plain.map((i) => i.from))
      }),
    )
  })
})
