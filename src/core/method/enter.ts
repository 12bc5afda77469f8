import type { Range } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk, loadsAt, move, namesOf, type Touched, touch } from './desk.ts'
import { handTime, lifted } from './norms.ts'
import type { PlanOperation } from './plan.ts'
import { finding } from './say.ts'
import { isMeat, isThin } from './stocks.ts'
import { sumOf } from './words.ts'

// How food comes into the vessel, and how the vessel is opened for it.

type How = Extract<PlanOperation, { kind: 'add' }>['how']

/** How the words say to lay it in. */
export function howOf(item: Placed): How {
  const { sentence, words } = item
  if (item.op.place === 'rack' || /\b(trivet|rack|steamer|basket)\b/.test(words)) return 'on-rack'
  const laid = /\b(on|over) (the )?top\b|\bpile\b|\bscatter|\bsprinkle|\blay\b|\bset .* on the\b/
  if (laid.test(words) || /\b(do not stir|don't stir|without stirring)\b/.test(sentence)) return 'on-top'
  if (/\b(in|over|on) the (bottom|base|floor)\b/.test(words)) return 'on-floor'
  return 'stirred'
}

/** Opens a sealed vessel before hands go in: what was at pressure is taken to have come down by itself. */
export function ensureOpen(desk: Desk, item: Placed): void {
  if (!desk.sealed) return
  if (desk.held) {
    desk.operations.push({
      ...common(item, 'natural release', { handsOn: false, implied: true, verb: 'release' }),
      kind: 'release',
      how: 'natural',
      natural_s: null,
    })
    desk.findings.push(
      finding(
        'release-assumed',
        'warning',
        item.op,
        'How is the pressure released?',
        'The lid cannot be opened at pressure and no release is said, so it is left to fall by itself. Vented at once, the dish gets some ten minutes less of heat.',
        'Say: release naturally, or vent at once.',
        'common practice, no source',
      ),
    )
  }
  // Opened again before any pressure: the lid that was locked for nothing is not worth an operation.
  if (!desk.held) takeOffLock(desk)
  desk.sealed = false
  desk.held = false
  desk.lid = 'off'
}

function takeOffLock(desk: Desk): PlanOperation[] {
  const lid = desk.operations.findLastIndex((operation) => operation.kind === 'lock')
  return lid >= 0 ? desk.operations.splice(lid, 1) : []
}

/** Writes the operations that bring loads in: a `return` for what waited, an `add` for what is new. */
export function bringIn(
  desk: Desk,
  item: Placed,
  touched: Touched,
  options: { washes?: boolean; how?: How } = {},
): void {
  const { fresh, back } = touched
  if (fresh.length === 0 && back.length === 0) return
  if (desk.held) ensureOpen(desk, item)
  // "Lock the lid and cook the beef at high pressure": what the second phrase names goes in before the lid.
  const locked = desk.sealed ? takeOffLock(desk) : []
  if (fresh.length > 0) {
    const thin = fresh.filter((id) => isThin(desk.loads[id].food.character))
    const pour_kg = fresh
      .filter((id) => desk.loads[id].pieces === null)
      .reduce((sum, id) => sum + desk.loads[id].mass_kg, 0)
    const washes = thin.some((id) => desk.loads[id].mass_kg > 0.02)
    const thick = !washes && fresh.some((id) => desk.loads[id].food.character === 'thick liquid')
    // A knob of butter in the bottom of the pot lies nowhere else than fat does.
    const asked = options.how ?? howOf(item)
    const how = asked === 'on-floor' && fresh.every((id) => desk.loads[id].food.character === 'fat') ? 'stirred' : asked
    desk.operations.push({
      ...common(item, `${how === 'on-top' ? 'lay on' : 'add'} ${namesOf(desk, fresh)}`, {
        handsOn: true,
        ...(item.op.verb === 'add' ? {} : { verb: 'add' as const, implied: true }),
      }),
      kind: 'add',
      loads: fresh,
      how,
      time_s: addTime(desk, fresh),
    })
    move(desk, fresh, 'pot')
    if (desk.fond && pour_kg > 0 && (washes || thick) && (options.washes ?? true)) {
      desk.operations.push({
        ...common(item, 'liquid over the brown layer, not scraped', { handsOn: false, verb: 'deglaze', implied: true }),
        kind: 'deglaze',
        scraped: washes ? lifted.poured : lifted.pouredThick,
        time_s: { low: 0, high: 0 },
      })
      desk.fond = false
    }
  }
  if (back.length > 0) {
    desk.operations.push({
      ...common(item, `put back ${namesOf(desk, back)}`, { handsOn: true }),
      kind: 'return',
      loads: back,
      how: howOf(item) === 'on-top' ? 'on-top' : 'stirred',
      time_s: handTime('put', 1, desk.hands),
    })
    move(desk, back, 'pot')
  }
  desk.operations.push(...locked)
}

const addTime = (desk: Desk, ids: readonly number[]): Range =>
  sumOf([handTime('pour', Math.min(ids.length, 8), desk.hands), handTime('stir', 1, desk.hands)])

/** Heats a cold vessel before something is fried in it, when the words do not. */
export function ensureHot(desk: Desk, item: Placed): void {
  if (desk.hot || desk.operations.some((operation) => operation.kind === 'hold')) return
  const wet = loadsAt(desk, 'pot').some((load) => isThin(load.food.character) && load.mass_kg > 0.05)
  desk.hot = true
  // "Lay the legs in a cold pan": what is in it already heats with it.
  if (wet || loadsAt(desk, 'pot').some((load) => load.pieces)) return
  desk.operations.push({
    ...common(item, 'heat the pot', { handsOn: false, verb: 'heat', implied: true }),
    kind: 'heat',
    setting: item.op.heat ?? 'medium-high',
    time_s: null,
  })
}

/** Everything touched, brought in; returns the ids it is about. */
export function takeIn(
  desk: Desk,
  item: Placed,
  index: number,
  options: { washes?: boolean } = {},
): { touched: Touched; about: number[] } {
  const found = touch(desk, index)
  const touched =
    found.fresh.length + found.back.length + found.within.length > 0 ? found : { ...found, back: putBack(desk, item) }
  bringIn(desk, item, touched, options)
  return { touched, about: [...touched.fresh, ...touched.back, ...touched.within] }
}

/** "Cut the meat off the bone, chop, put back": what the step itself has lifted out, when the words name nothing. */
function putBack(desk: Desk, item: Placed): number[] {
  if (item.op.uses.length > 0 || !/\b(back|return)\b/.test(item.words)) return []
  const last = desk.operations.at(-1)
  if (!last || last.step !== item.step || (last.kind !== 'lift' && last.kind !== 'bench')) return []
  return last.loads.filter((id) => desk.place[id] === 'aside' && desk.loads[id].pieces !== null)
}

/** Pieces of meat among these loads. */
export const meatAmong = (desk: Desk, ids: readonly number[]): number[] =>
  ids.filter((id) => desk.loads[id].pieces !== null && isMeat(desk.loads[id].food.character))
