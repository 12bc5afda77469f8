import { type Mark, mark, round } from './mark.ts'
import type { GroupMoment } from './moment.ts'
import type { Body } from './pile.ts'
import type { Point } from './thin.ts'

/** Where the drawing puts a point of the pile. */
export interface Placing {
  /** Pixels of a point given in metres, y upward from the floor. */
  at(x_m: number, y_m: number): Point
  readonly pixels_per_m: number
  /** Linear size now over the size when it went in. */
  readonly shrink: number
  readonly shadeId: string
}

/** How much of the heat colour a temperature gets: none for what is cool, most of it near 125 °C. */
export function heatShare(temperature_K: number): number {
  if (!Number.isFinite(temperature_K)) return 0
  const t = (temperature_K - 273.15 - 15) / 108
  return 0.68 * Math.min(1, Math.max(0, t)) ** 1.6
}

/** Core to skin as one shade, by the group's coldest, mean and surface temperatures. */
export function groupShade(group: GroupMoment, id: string): Mark {
  const stop = (offset: number, temperature_K: number) =>
    mark('stop', { offset: `${offset}%`, class: 'g-heat', 'stop-opacity': round2(heatShare(temperature_K)) })
  return mark(
    'radialGradient',
    { id, cx: '50%', cy: '50%', r: '58%' },
    stop(0, group.coldest_K),
    stop(58, group.mean_K),
    stop(100, group.surface_K),
  )
}

/** One piece, as itself: outline, paper, shade, and the few lines that tell a leek from a bean. */
export function bodyMark(body: Body, group: GroupMoment, placing: Placing): Mark {
  const centre = placing.at(body.x, body.y)
  const scale = placing.pixels_per_m * placing.shrink
  const path = closed(body.outline.points.map((p) => ({ x: centre.x + p.x * scale, y: centre.y - p.y * scale })))
  const character = group.load.food.character
  const meat = /meat|cut|poultry|sausage|fish/.test(character)
  const small = Math.min(body.face.width, body.face.height) * scale < 9
  return mark(
    'g',
    { class: 'piece', 'data-load': body.load },
    mark('path', { class: 'f-paper', d: path }),
    mark('path', { fill: `url(#${placing.shadeId})`, d: path, opacity: meat ? undefined : 0.75 }),
    group.brown > 0.05 &&
      meat &&
      mark('path', {
        class: 'line s-heat',
        d: path,
        'stroke-width': 1 + 2.2 * group.brown,
        opacity: round2(0.25 + 0.5 * group.brown),
      }),
    mark('path', { class: 'line s-ink', d: path, 'stroke-width': small ? 0.7 : 1.1, 'stroke-linejoin': 'round' }),
    !small && details(body, character, centre, scale),
    small && body.shape === 'leaf' && details(body, character, centre, scale),
  )
}

function details(body: Body, character: string, centre: Point, scale: number): Mark | null {
  const w = (body.face.width / 2) * scale
  const h = (body.face.height / 2) * scale
  const turn = `rotate(${round((-body.tilt * 180) / Math.PI)} ${round(centre.x)} ${round(centre.y)})`
  const ring = (share: number) =>
    mark('ellipse', {
      class: 'line s-ink',
      cx: centre.x,
      cy: centre.y,
      rx: w * share,
      ry: h * share,
      'stroke-width': 0.7,
    })
  const strokes = (d: string) => mark('path', { class: 'line s-ink', d, 'stroke-width': 0.7 })
  const { x, y } = centre
  const group = (...marks: Mark[]) => mark('g', { transform: turn, opacity: 0.75 }, marks)
  if (body.shape === 'round' && character === 'aromatic') return group(ring(0.72), ring(0.46), ring(0.22))
  if (body.shape === 'side' && character === 'aromatic') {
    return group(
      strokes(`M${p(x - w * 0.9)} ${p(y - h * 0.4)}h${p(1.8 * w)}M${p(x - w * 0.9)} ${p(y + h * 0.35)}h${p(1.8 * w)}`),
    )
  }
  if (body.shape === 'round' && character === 'firm vegetable') {
    const rays = [0, 1, 2, 3, 4, 5]
      .map((k) => {
        const [c, s] = [Math.cos(k * 1.047 + 0.3), Math.sin(k * 1.047 + 0.3)]
        return `M${p(x + 0.5 * w * c)} ${p(y + 0.5 * h * s)}L${p(x + 0.78 * w * c)} ${p(y + 0.78 * h * s)}`
      })
      .join('')
    return group(ring(0.42), strokes(rays))
  }
  if (body.shape === 'side') return group(strokes(`M${p(x - 0.7 * w)} ${p(y)}h${p(1.1 * w)}`))
  if (body.shape === 'leaf') {
    const veins = [-0.4, 0, 0.4].map(
      (k) =>
        `M${p(x + k * w)} ${p(y)}l${p(0.22 * w)} ${p(-0.5 * h)}M${p(x + k * w)} ${p(y)}l${p(0.22 * w)} ${p(0.5 * h)}`,
    )
    return group(strokes(`M${p(x - 0.95 * w)} ${p(y)}h${p(1.9 * w)}${veins.join('')}`))
  }
  if (body.shape === 'bean')
    return group(strokes(`M${p(x - 0.3 * w)} ${p(y + 0.55 * h)}q${p(0.3 * w)} ${p(-0.35 * h)} ${p(0.6 * w)} 0`))
  if (character === 'mushroom')
    return group(
      strokes(`M${p(x - 0.25 * w)} ${p(y)}v${p(0.8 * h)}M${p(x + 0.25 * w)} ${p(y)}v${p(0.8 * h)}`),
      strokes(`M${p(x - 0.9 * w)} ${p(y)}h${p(1.8 * w)}`),
    )
  if (character === 'starch') {
    const eyes = [
      [-0.4, -0.3],
      [0.3, 0.1],
      [-0.1, 0.45],
    ].map(([a, b]) => `M${p(x + a * w)} ${p(y + b * h)}l2 1`)
    return group(strokes(eyes.join('')))
  }
  if (character === 'fish')
    return group(
      strokes(
        [-0.4, 0, 0.4]
          .map((k) => `M${p(x + k * w)} ${p(y - 0.7 * h)}q${p(0.22 * w)} ${p(0.7 * h)} 0 ${p(1.4 * h)}`)
          .join(''),
      ),
    )
  if (character === 'soft vegetable' || character === 'fruit') return group(ring(0.7))
  return null
}

const p = round

function round2(x: number): number {
  return Math.round(x * 100) / 100
}

/** A smooth closed line through points: middles of the sides as ends, corners as handles. */
export function closed(points: readonly Point[]): string {
  const middle = (a: Point, b: Point) => `${p((a.x + b.x) / 2)} ${p((a.y + b.y) / 2)}`
  const last = points[points.length - 1]
  return `M${middle(last, points[0])}${points
    .map((corner, i) => `Q${p(corner.x)} ${p(corner.y)} ${middle(corner, points[(i + 1) % points.length])}`)
    .join('')}Z`
}
