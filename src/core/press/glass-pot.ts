import type { Run } from '../cook/index.ts'
import { groupShade } from './body-marks.ts'
import { describePot } from './describe.ts'
import { type Mark, mark } from './mark.ts'
import { momentOf } from './moment.ts'
import { potNotes } from './pot-notes.ts'
import { sceneOf } from './pot-scene.ts'
import { vesselFrame } from './vessel.ts'

export interface PotOptions {
  readonly width: number
  readonly height: number
  readonly time_s: number
  /** Keeps ids apart when a page holds two pots. */
  readonly prefix?: string
}

/** The pot cut open at an instant of a run: every level, count, size and shade is read from the run. */
export function glassPot(run: Run, { width, height, time_s, prefix = 'pot' }: PotOptions): Mark {
  const moment = momentOf(run, time_s)
  const size = width < 480 ? 11.5 : 12.5
  const sides = width < 480 ? { left: 66, right: 90 } : { left: 80, right: 118 }
  const f = vesselFrame(run.plan.pot, { x0: sides.left, x1: width - sides.right, y0: 6, y1: height - 2 * size - 22 })
  const scene = sceneOf(run, moment, f, prefix)
  return mark(
    'svg',
    {
      class: 'drawing glass-pot',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-label': `The ${run.plan.pot.name}, cut open`,
      'data-prefix': prefix,
    },
    { tag: 'desc', attrs: {}, children: [], text: describePot(run, time_s) },
    mark(
      'defs',
      {},
      moment.groups
        .filter((group) => group.where !== 'away')
        .map((group) => groupShade(group, `${prefix}-shade-${group.load.id}`)),
    ),
    scene.marks,
    potNotes(run, moment, f, scene, { width, height, size }),
  )
}
