import type { BurnCause, Run } from '../cook/index.ts'
import { type GroupMoment, type Moment, momentOf } from './moment.ts'
import { shortNames } from './names.ts'
import { celsius, percent } from './words.ts'

/** One figure under the pot and the sentence that explains it. */
export interface Reading {
  readonly id: 'liquor' | 'coldest' | 'liquid' | 'base'
  readonly value: string
  readonly unit: string
  readonly words: string
  readonly accent: 'heat' | 'water' | 'ink'
}

const dash = '–'

/** The four figures of an instant: how hot the liquor, how far the slowest piece, how much liquid, how near to catching. */
export function readings(run: Run, time_s: number): readonly [Reading, Reading, Reading, Reading] {
  const moment = momentOf(run, time_s)
  return [liquorReading(moment), coldestReading(run, moment), liquidReading(run, moment), baseReading(run, moment)]
}

function liquorReading(moment: Moment): Reading {
  const { wet } = moment
  const over = Math.round(moment.gauge_Pa / 1000)
  const air =
    moment.lid === 'off'
      ? 'lid off'
      : moment.air_share < 0.05
        ? 'air all but gone'
        : `${percent(moment.air_share)} of the headspace is air`
  return {
    id: 'liquor',
    value: wet ? String(celsius(moment.liquor_K)) : dash,
    unit: wet ? '°C' : '',
    words: wet ? `liquor${over > 0 ? `, ${over} kPa over` : ''}; ${air}` : `no liquor yet; ${air}`,
    accent: 'heat',
  }
}

function coldestReading(run: Run, moment: Moment): Reading {
  const group = slowest(moment)
  if (!group) return { id: 'coldest', value: dash, unit: '', words: 'no pieces in the pot', accent: 'ink' }
  const name = shortNames(run.plan)[run.plan.loads.indexOf(group.load)]
  const kinetics = group.load.food.kinetics?.kind
  const done =
    kinetics === 'collagen'
      ? `, ${percent(group.done)} of its collagen melted`
      : kinetics === 'plant'
        ? `, ${percent(group.done)} of its firmness gone`
        : ''
  const place = group.where === 'beside' ? ', beside the pot' : ''
  return {
    id: 'coldest',
    value: String(celsius(group.coldest_K)),
    unit: '°C',
    words: `coldest ${name}${done}${place}`,
    accent: 'ink',
  }
}

/** The group that decides when the dish is done: meat before plants, then the coldest. */
export function slowest(moment: Moment): GroupMoment | null {
  const there = moment.groups.filter((g) => g.where !== 'away' && (g.load.pieces?.thickness_m ?? 0) >= 0.004)
  const rank = (g: GroupMoment) => (g.load.food.kinetics?.kind === 'collagen' ? 0 : g.load.food.kinetics ? 1 : 2)
  return [...there].sort((a, b) => rank(a) - rank(b) || a.coldest_K - b.coldest_K)[0] ?? null
}

/** Where the liquid of an instant came from: poured, given up by the pieces, vented or boiled away. */
function liquidReading(run: Run, moment: Moment): Reading {
  const ml = moment.liquid_m3 * 1e6
  const poured = pouredBy(run, moment.time_s)
  const given = givenUp(run, moment)
  const parts = [
    poured > 0.0005 ? `${grams(poured)} poured` : '',
    given > 0.002 ? `${grams(given)} given up` : given < -0.002 ? `${grams(-given)} soaked in` : '',
  ].filter((part) => part !== '')
  // What is missing from the books of the liquid has left as vapour; below a few grams it is rounding.
  const left = poured + given - moment.liquid_m3 * 1000
  if (left > 0.005) parts.push(`${grams(left)} gone as steam`)
  return {
    id: 'liquid',
    value: String(Math.round(ml)),
    unit: 'ml',
    words: parts.length > 0 ? `liquid: ${parts.join(', ')}` : 'liquid',
    accent: 'water',
  }
}

/** Liquids, fats and loads without pieces that have gone in by an instant, kg. */
function pouredBy(run: Run, time_s: number): number {
  const entered = new Set<number>()
  for (const phase of run.phases) {
    if (phase.operation === null || phase.start_s > time_s) continue
    const operation = run.plan.operations[phase.operation]
    if (operation && operation.kind !== 'bench' && 'loads' in operation)
      for (const id of operation.loads) entered.add(id)
  }
  return run.plan.loads
    .filter(
      (load) =>
        load.pieces === null && entered.has(load.id) && /liquid|fat|acid|alcohol|dairy/.test(load.food.character),
    )
    .reduce((sum, load) => sum + load.mass_kg, 0)
}

function givenUp(run: Run, moment: Moment): number {
  return moment.groups.reduce((sum, g) => {
    if (g.where === 'away') return sum
    const load = run.plan.loads.find((one) => one.id === g.load.id)
    return sum + (load ? load.mass_kg - g.mass_kg : 0)
  }, 0)
}

function grams(mass_kg: number): string {
  return `${Math.round(mass_kg * 1000)} g`
}

export const causeWords: Record<BurnCause, string> = {
  liquid: 'too little liquid over the floor',
  thickness: 'a thick layer drying on the floor',
  fond: 'browned bits left on the base',
  floor: 'starch, sugar or paste resting on the floor',
}

function baseReading(run: Run, moment: Moment): Reading {
  const { trip_K, scorch_K } = run.plan.pot
  const limit = trip_K ?? scorch_K
  if (!moment.closed) {
    return {
      id: 'base',
      value: String(celsius(moment.base_K)),
      unit: '°C',
      words: `base, lid ${moment.lid === 'off' ? 'off' : 'on'}, ${heatWords(run, moment)}`,
      accent: 'ink',
    }
  }
  const margin = Math.round(limit - moment.baseHot_K)
  const what = trip_K === null ? 'scorching' : 'its trip'
  const stopped = run.events.some((e) => (e.code === 'burn-stop' || e.code === 'scorch') && e.time_s <= moment.time_s)
  const cause = run.base.cause ? `; nearest cause: ${causeWords[run.base.cause]}` : ''
  return {
    id: 'base',
    value: String(Math.abs(margin)),
    unit: 'K',
    words:
      stopped && run.base.cause
        ? `base ${margin < 0 ? 'over' : 'below'} ${what}; stopped by ${causeWords[run.base.cause]}`
        : `base ${margin < 0 ? 'over' : 'below'} ${what}${cause}`,
    accent: margin < 8 || stopped ? 'heat' : 'ink',
  }
}

/** Where the heat comes from at an instant: "heat on", "heat off", "in the oven". */
export function heatWords(run: Run, moment: Moment): string {
  const operation = moment.phase?.operation == null ? null : run.plan.operations[moment.phase.operation]
  if (operation?.kind === 'bake') return 'in the oven'
  return moment.power_W > 0 ? 'heat on' : 'heat off'
}
