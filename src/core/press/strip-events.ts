import type { Run } from '../cook/index.ts'
import type { ClockScale } from './clock-scale.ts'
import { type Mark, mark, round } from './mark.ts'
import { shortNames } from './names.ts'
import { eventWords } from './strip-words.ts'
import { type Box, overlaps, textBox, textMark } from './text-mark.ts'

interface EventPlace {
  readonly y: number
  readonly size: number
  readonly plot: Box
}

/** Small marks under the bands with the words that fit, the gravest first; a burn stop also draws its line down. */
export function stripEvents(run: Run, clock: ClockScale, { y, size, plot }: EventPlace): Mark {
  const names = shortNames(run.plan)
  const small = size - 1
  const baseline = y + 6 + small
  const taken: Box[] = []
  const marks: Mark[] = []
  for (const { code, words, bad } of eventWords) {
    for (const event of run.events.filter((one) => one.code === code)) {
      const x = clock.x(event.time_s)
      const about =
        event.load !== null && (code === 'tender' || code === 'stewed') ? `${names[event.load]} ${words}` : words
      const style = {
        size: small,
        colour: bad ? ('heat' as const) : ('soft' as const),
        face: bad ? ('sansBold' as const) : ('sans' as const),
      }
      const places = [
        { x: x + 5, anchor: 'start' as const },
        { x: x - 5, anchor: 'end' as const },
      ]
      const tick = { x0: x - 1, x1: x + 1, y0: y, y1: baseline }
      if (taken.some((other) => overlaps(tick, other, 1))) continue
      const free = places.find((place) => {
        const box = textBox(place.x, baseline, about, { ...style, anchor: place.anchor })
        return box.x0 >= plot.x0 - 2 && box.x1 <= plot.x1 + 2 && !taken.some((other) => overlaps(box, other, 4))
      })
      if (!free) continue
      taken.push(textBox(free.x, baseline, about, { ...style, anchor: free.anchor }))
      taken.push(tick)
      marks.push(
        mark('path', {
          class: `line s-${bad ? 'heat' : 'soft'}`,
          d: `M${round(x)} ${round(y)}V${round(bad ? plot.y1 : baseline + 1)}`,
          'stroke-width': bad ? 1.2 : 1,
        }),
        textMark(free.x, baseline, about, { ...style, anchor: free.anchor }),
      )
    }
  }
  return mark('g', { class: 'events' }, marks)
}
