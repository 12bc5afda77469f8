import type { Phase, Run } from '../cook/index.ts'
import type { ClockScale } from './clock-scale.ts'
import { type Mark, mark } from './mark.ts'
import { fitted } from './measure.ts'
import { textMark } from './text-mark.ts'
import { duration } from './words.ts'

interface BandPlace {
  readonly y: number
  readonly height: number
  readonly size: number
  readonly labels: boolean
}

/** Bands of work: what is done by hand is underlined, what runs by itself is not. Words that do not fit are cut or left out. */
export function stripBands(run: Run, clock: ClockScale, { y, height, size, labels }: BandPlace): Mark {
  return mark(
    'g',
    { class: 'bands' },
    run.phases.map((phase) => {
      const x0 = clock.x(phase.start_s)
      const wide = clock.x(phase.end_s) - x0
      // A hair of ground between bands tells neighbours of one colour apart; slivers get less of it.
      const x1 = Math.max(x0 + wide - (wide > 8 ? 1.5 : 0.5), x0 + 0.4)
      const words = labels ? fitted(phase.label, x1 - x0 - 9, size) : null
      return mark(
        'g',
        {},
        { tag: 'title', attrs: {}, children: [], text: `${phase.label}, ${duration(phase.end_s - phase.start_s)}` },
        mark('rect', {
          class: `f-${colourOf(phase)}`,
          x: x0,
          y,
          width: x1 - x0,
          height,
        }),
        phase.handsOn && mark('rect', { class: 'f-ink', x: x0, y: y + height - 1.5, width: x1 - x0, height: 1.5 }),
        words !== null && textMark(x0 + 5, y + height / 2 + 0.35 * size, words, { size }),
      )
    }),
  )
}

function colourOf(phase: Phase): 'heat-tint' | 'water-tint' | 'rule' {
  if (phase.kind === 'hold') return 'heat-tint'
  if (phase.kind === 'open') return 'water-tint'
  return 'rule'
}
