import { type Layout, layOut } from '../../../src/core/manuscript/layout.ts'

const flat = (words: string): string => words.replace(/\s+/g, ' ')
const amount = (low: number, high: number): string => (low === high ? `${low}` : `${low} to ${high}`)

/** A layout in a few lines: what kind it is, title, yield, times, then every part in order with its words. */
export function outline(text: string): string[] {
  const layout: Layout = layOut(text)
  const words = (span: { from: number; to: number }): string => flat(text.slice(span.from, span.to))
  const out: string[] = [layout.kind]
  if (layout.title) out.push(`title ${words(layout.title)}`)
  if (layout.yield) out.push(`yield ${amount(layout.yield.low, layout.yield.high)} ${layout.yield.unit}`)
  for (const kind of ['total', 'active', 'cooking'] as const) {
    const time = layout.stated[kind]
    if (time) out.push(`${kind} ${amount(time.low_s / 60, time.high_s / 60)} min`)
  }
  for (const line of layout.ingredients) out.push(`i ${line.group ? `[${words(line.group)}] ` : ''}${flat(line.line)}`)
  for (const step of layout.steps) out.push(`s ${step.number === null ? '' : `${step.number} `}${flat(step.text)}`)
  for (const note of layout.notes) out.push(`${note.kind} ${words(note)}`)
  return out
}

/** The same, as lines of one string with its indent taken off, for comparing with what a test expects. */
export const lines = (expected: string): string[] =>
  expected
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
