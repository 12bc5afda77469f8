import { glyphs, sans, sansBold, serif, serifItalic } from './glyph-widths.ts'
import { shortened } from './words.ts'

/** The faces of a drawing: sans for figures and notes, serif italic for names of curves. */
export type Face = 'sans' | 'sansBold' | 'serif' | 'serifItalic'

const tables: Record<Face, Map<string, number>> = {
  sans: tableOf(sans),
  sansBold: tableOf(sansBold),
  serif: tableOf(serif),
  serifItalic: tableOf(serifItalic),
}

function tableOf(widths: string): Map<string, number> {
  const list = widths.split(' ').map(Number)
  return new Map([...glyphs].map((glyph, i) => [glyph, list[i] / 1000]))
}

/** Width of a line of text in pixels; characters outside the tables count a little over half an em. */
export function textWidth(text: string, size: number, face: Face = 'sans'): number {
  let ems = 0
  for (const glyph of text) ems += tables[face].get(glyph) ?? 0.58
  return ems * size
}

/** The label, or as many of its first words as fit the width; null when not even one does. */
export function fitted(text: string, width: number, size: number, face: Face = 'sans'): string | null {
  return shortened(text, (part) => textWidth(part, size, face) <= width)
}
