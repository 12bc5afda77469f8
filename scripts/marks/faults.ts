import type { Recipe } from '../../src/core/manuscript/index.ts'
import { type Labelled, overlap, placesOf } from './truth.ts'

export interface FaultMarks {
  planted: number
  found: number
  cleanTexts: number
  falseWarnings: number
  lines: string[]
}

export const noFaults = (): FaultMarks => ({ planted: 0, found: 0, cleanTexts: 0, falseWarnings: 0, lines: [] })

/** Which planted faults a query points at, and what is asked of texts that are clean. */
export function markFaults(marks: FaultMarks, { truth, text }: Labelled, recipe: Recipe): void {
  if (!truth.faults) return
  const asked = recipe.queries.filter((q) => q.severity !== 'hint')
  if (truth.faults.length === 0) {
    marks.cleanTexts += 1
    marks.falseWarnings += asked.length
    for (const q of asked) {
      const words = q.span ? text.slice(q.span.from, q.span.to).replace(/\s+/g, ' ') : ''
      marks.lines.push(`false warning: ${truth.file}: ${q.code} ${JSON.stringify(words)} ${q.title}`)
    }
    return
  }
  for (const fault of truth.faults) {
    marks.planted += 1
    const [place] = placesOf(text, [fault.words])
    const hit = recipe.queries.find((q) => q.span !== null && place && overlap(q.span, place) > 0)
    if (hit) marks.found += 1
    marks.lines.push(
      `${hit ? 'found' : 'missed'} fault: ${truth.file}: ${fault.kind} ${JSON.stringify(fault.words)}${hit ? ` by ${hit.code}` : ''}`,
    )
  }
}
