import type { Run } from '../cook/index.ts'
import { type Callout, calloutMarks } from './callouts.ts'
import { type Mark, mark, round } from './mark.ts'
import { fitted, textWidth } from './measure.ts'
import type { Moment } from './moment.ts'
import { shortNames } from './names.ts'
import { limitY, type Scene } from './pot-scene.ts'
import { textMark, wrapped } from './text-mark.ts'
import { floatX, floatY, type VesselFrame } from './vessel.ts'
import { celsius, duration, listed, percent, volume } from './words.ts'

export interface Sheet {
  readonly width: number
  readonly height: number
  readonly size: number
}

/** Everything written beside the pot: float, limit, level, cores, base, what the slice shows, what waits. */
export function potNotes(
  run: Run,
  moment: Moment,
  f: VesselFrame,
  scene: Scene,
  { width, height, size }: Sheet,
): Mark[] {
  const left = f.left - 26
  const right = f.right + 26
  const room = { y0: Math.min(f.crown - 20, f.rim) < 16 ? 8 : f.crown - 16, y1: f.floor + 6 }
  const limitSpot = { x: f.right, y: limitY(f, run.fill.limit) }
  const full = {
    spot: limitSpot,
    lines: ['fill limit', `${percent(moment.fill)} full`],
    bad: moment.fill > run.fill.limit + 0.005,
  }
  const rightNotes: Callout[] = [...floatNote(run, moment, f), full]
  const leftNotes = coreNotes(run, moment, scene, left - 2, size)
  if (moment.liquid_m3 > 2e-6) {
    // The plate stands where the level's note would, so the note changes sides.
    const side = scene.plate ? { notes: leftNotes, x: f.left } : { notes: rightNotes, x: f.right }
    side.notes.push({ spot: { x: side.x, y: scene.surface }, lines: [volume(moment.liquid_m3), liquidWord(moment)] })
  }
  return [
    ...calloutMarks(leftNotes, 'left', left, room, size),
    ...calloutMarks(rightNotes, 'right', right, room, size),
    ...baseNote(run, moment, f, size),
    ...slice(run, scene, f, { width, height, size }),
    ...plateNote(run, moment, scene, f, { width, height, size }),
  ]
}

function liquidWord(moment: Moment): string {
  return moment.wet ? 'liquor' : 'fat'
}

function floatNote(run: Run, moment: Moment, f: VesselFrame): Callout[] {
  const spot = { x: floatX(f), y: floatY(f, moment) }
  if (moment.lid === 'off') return []
  if (run.plan.pot.regulator === null) return []
  if (moment.lid !== 'sealed')
    return [{ spot, lines: ['float down', ...(moment.lid === 'locked' ? ['lid locked'] : [])] }]
  const up = [...run.events].reverse().find((e) => e.code === 'float-up' && e.time_s <= moment.time_s)
  return [{ spot, lines: ['float up', ...(up ? [`for ${duration(moment.time_s - up.time_s)}`] : [])] }]
}

/** Core temperatures of up to three loads: the heaviest, each at its best seen piece. */
function coreNotes(run: Run, moment: Moment, scene: Scene, room: number, size: number): Callout[] {
  const names = shortNames(run.plan)
  const notes: { mass: number; note: Callout }[] = []
  for (const [heap, onRack] of [
    [scene.pile, false],
    [scene.rack, true],
  ] as const) {
    for (const id of new Set(heap.bodies.map((body) => body.load))) {
      const group = moment.groups.find((one) => one.load.id === id)
      if (!group || (group.load.pieces?.thickness_m ?? 0) < 0.006) continue
      // The leftmost large piece: its leader crosses least.
      const body = heap.bodies
        .filter((one) => one.load === id)
        .reduce((a, b) => (b.x - 0.3 * b.outline.width < a.x - 0.3 * a.outline.width ? b : a))
      notes.push({
        mass: group.mass_kg,
        note: {
          spot: scene.spot(body, onRack),
          lines: [`${celsius(group.coldest_K)} °C`, short(names[run.plan.loads.indexOf(group.load)], room, size)],
        },
      })
    }
  }
  return notes
    .sort((a, b) => b.mass - a.mass)
    .slice(0, 3)
    .map(({ note }) => note)
}

/** The name if it fits beside the pot, else its last word: "butter beans", "beans". */
function short(name: string, room: number, size: number): string {
  return textWidth(name, size) <= room ? name : (fitted(name.split(' ').at(-1) as string, room, size) ?? '')
}

function baseNote(run: Run, moment: Moment, f: VesselFrame, size: number): Mark[] {
  const { trip_K, scorch_K, thermostat_K } = run.plan.pot
  const words = !moment.closed
    ? `base ${celsius(moment.base_K)} °C${thermostat_K !== null && moment.base_K > thermostat_K - 25 ? `, cuts out at ${celsius(thermostat_K)}` : ''}`
    : `base ${celsius(moment.baseHot_K)} °C, ${trip_K !== null ? `trips at ${celsius(trip_K)}` : `scorches at ${celsius(scorch_K)}`}`
  const x = Math.max(4, f.left - 26)
  const y = f.floor + 44 + size * 0.4
  const spot = { x: f.left + 10, y: f.floor + 9 }
  return [
    mark('path', {
      class: 'line s-soft',
      d: `M${round(x + 14)} ${round(y - size)}L${round(spot.x)} ${round(spot.y)}`,
      'stroke-width': 0.8,
    }),
    mark('circle', { class: 'f-ink', cx: spot.x, cy: spot.y, r: 1.9 }),
    textMark(x, y, words, { size }),
  ]
}

/** What share of the pieces the slice shows, in a line or two under the base. */
function slice(run: Run, scene: Scene, f: VesselFrame, { width, height, size }: Sheet): Mark[] {
  const names = shortNames(run.plan)
  const parts = [...scene.pile.drawn, ...scene.rack.drawn]
    .map(([id, drawn]) => ({ id, drawn, count: run.plan.loads.find((l) => l.id === id)?.pieces?.count ?? drawn }))
    .filter((one) => one.count > one.drawn)
    .sort((a, b) => massOf(run, b.id) - massOf(run, a.id))
    .slice(0, 2)
    .map(({ id, drawn, count }) => {
      const name = names[run.plan.loads.findIndex((l) => l.id === id)]
      const every = Math.round(count / drawn)
      return every > 12 ? `one in ${every} of the ${name}` : `${drawn} of ${count} pieces of ${name}`
    })
  if (parts.length === 0) return []
  const text = `A slice through the middle: ${listed(parts)}.`
  const x = Math.max(4, f.left - 26)
  const lines = wrapped(text, width - x - 4, size, 'serifItalic').slice(0, 3)
  const first = Math.min(f.floor + 49 + 2 * size, height - 5 - (lines.length - 1) * (size + 3))
  return lines.map((line, i) =>
    textMark(x, first + i * (size + 3), line, { size, face: 'serifItalic', colour: 'soft' }),
  )
}

function massOf(run: Run, id: number): number {
  return run.plan.loads.find((load) => load.id === id)?.mass_kg ?? 0
}

/** What waits, the heaviest by name, under the plate and right of the pot. */
function plateNote(run: Run, moment: Moment, scene: Scene, f: VesselFrame, { width, size }: Sheet): Mark[] {
  if (!scene.plate) return []
  const names = shortNames(run.plan)
  const waiting = moment.groups.filter((g) => g.where === 'beside').sort((a, b) => b.mass_kg - a.mass_kg)
  const room = width - f.right - 12
  const lines = ['the other batches']
  if (waiting.length > 0) {
    const [first] = waiting
    const name = names[run.plan.loads.indexOf(first.load)]
    const end = `, ${celsius(first.mean_K)} °C`
    const short = [name, name.split(' ').at(-1) as string].find((one) => textWidth(one + end, size) <= room)
    lines[0] = short ? short + end : `${celsius(first.mean_K)} °C`
    if (waiting.length > 1) lines.push(`and ${waiting.length - 1} more`)
  }
  const x = f.right + 8 + room / 2
  const y = scene.plate.y + size + 6
  return [
    ...lines.map((line, i) => textMark(x, y + i * (size + 3), line, { size, anchor: 'middle' })),
    textMark(x, y + lines.length * (size + 3), 'at half the scale', {
      size,
      face: 'serifItalic',
      colour: 'soft',
      anchor: 'middle',
    }),
  ]
}
