import type { Run } from '../cook/index.ts'
import { clockScale } from './clock-scale.ts'
import { isWet, momentOf } from './moment.ts'
import { shortNames } from './names.ts'
import { causeWords, heatWords } from './readings.ts'
import { eventWords, momentSentence, totalSentence } from './strip-words.ts'
import { capitalised, celsius, duration, listed, percent, volume } from './words.ts'

// What a drawing shows, for those who hear it and for the terminal: plain sentences, the same figures.

/** The strip in sentences: the bands in order, the temperatures that matter, what is done, the total. */
export function describeStrip(run: Run): string {
  const names = shortNames(run.plan)
  const zero_s = clockScale(run, 0, 1).zero_s
  const bands = run.phases.map((phase) => `${phase.label}, ${duration(phase.end_s - phase.start_s)}`)
  const peak = run.series.gauge_Pa.reduce((a, b) => Math.max(a, b), 0)
  const hottest = run.series.liquor_K.reduce(
    (a, b, i) => (isWet(run.series.liquid_m3[i], run.series.fat_kg[i]) ? Math.max(a, b) : a),
    0,
  )
  const happened = run.events
    .flatMap((event) => {
      const known = eventWords.find((one) => one.code === event.code)
      return known ? [{ ...event, words: known.words }] : []
    })
    .sort((a, b) => a.time_s - b.time_s)
    .map((event) => {
      const about =
        event.load !== null && (event.code === 'tender' || event.code === 'stewed') ? `${names[event.load]} ` : ''
      return `${about}${event.words} at ${Math.round((event.time_s - zero_s) / 60)} min`
    })
  const done = run.pieces.map((piece) => `${names[piece.load]} ${piece.word}`)
  return [
    `${capitalised(totalSentence(run))}.`,
    bands.length > 0 ? `The work in order: ${bands.join('; ')}.` : '',
    hottest > 0
      ? `The liquor reaches ${celsius(hottest)} °C${peak > 3000 ? ` at ${Math.round(peak / 1000)} kPa over the air outside` : ''}.`
      : '',
    happened.length > 0 ? `${capitalised(listed(happened))}.` : '',
    baseSentence(run),
    done.length > 0 ? `In the end: ${listed(done)}.` : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

/** How near the base came to catching, and to what. */
export function baseSentence(run: Run): string {
  const { margin_dK, trips, at_s, cause } = run.base
  const { trip_K } = run.plan.pot
  const because = cause ? `, because of ${causeWords[cause]}` : ''
  const zero_s = clockScale(run, 0, 1).zero_s
  const at = `${Math.round((at_s - zero_s) / 60)} min`
  // Only under a locked lid is there a margin to speak of.
  if (!Number.isFinite(margin_dK) || (run.clock.comeUp_s === null && !trips)) return ''
  if (trips) {
    return trip_K === null
      ? `Food scorches on the base at ${at}${because}.`
      : `The pot stops with a burn warning at ${at}${because}.`
  }
  const what = trip_K === null ? 'scorching' : 'its trip'
  return `The base stays ${Math.round(margin_dK)} K below ${what}, nearest at ${at}${cause ? `; the nearest cause is ${causeWords[cause]}` : ''}.`
}

/** How it comes out, in a sentence: what stopped it, or what is on the plate. */
export function outcomeSentence(run: Run): string {
  const stop = run.base.trips ? `${baseSentence(run)} ` : ''
  const names = shortNames(run.plan)
  const done = run.pieces.map((piece) => `${names[piece.load]} ${piece.word}`)
  const sauce = run.sauce.volume_m3 > 5e-6 ? `${volume(run.sauce.volume_m3)} of sauce` : 'no sauce'
  const rest = done.length > 0 ? `${listed(done)}, with ${sauce}` : sauce
  return `${stop}${stop ? 'As it stands it comes' : 'It comes'} out ${rest}.`
}

/** The pot at an instant in sentences. */
export function describePot(run: Run, time_s: number): string {
  const moment = momentOf(run, time_s)
  const names = shortNames(run.plan)
  const pot = run.plan.pot
  const lid =
    moment.lid === 'off'
      ? 'the lid is off'
      : moment.lid === 'on'
        ? 'the lid is on'
        : moment.lid === 'locked'
          ? 'the lid is locked and the float down'
          : pot.regulator
            ? `the lid is locked and the float up, ${Math.round(moment.gauge_Pa / 1000)} kPa over the air outside`
            : 'the lid is on and tight'
  const inside = moment.groups.filter((g) => g.where === 'in' || g.where === 'rack')
  const beside = moment.groups.filter((g) => g.where === 'beside')
  const name = (g: (typeof inside)[number]) => names[run.plan.loads.indexOf(g.load)]
  const said = (g: (typeof inside)[number]) => {
    const n = g.load.pieces?.count
    const pieces = n === undefined ? '' : n === 1 ? ', one piece' : `, ${n} pieces`
    return `${name(g)}${pieces}, ${celsius(g.coldest_K)} °C in the middle and ${celsius(g.surface_K)} °C at the surface${g.where === 'rack' ? ', on the rack' : ''}`
  }
  const limit = pot.trip_K ?? pot.scorch_K
  const parts = [
    `${momentSentence(run, time_s)}.`,
    `In the ${pot.name} ${lid}.`,
    moment.liquid_m3 > 2e-6
      ? `${capitalised(volume(moment.liquid_m3))} of ${moment.wet ? 'liquid' : 'fat'} at ${celsius(moment.liquor_K)} °C; the pot is ${percent(moment.fill)} full, its limit is ${percent(run.fill.limit)}.`
      : `No liquid; the pot is ${percent(moment.fill)} full, its limit is ${percent(run.fill.limit)}.`,
    inside.length > 0 ? `In it: ${inside.map(said).join('; ')}.` : 'No pieces in it.',
    beside.length > 0
      ? `Waiting beside it: ${listed(beside.map((g) => `${name(g)} at ${celsius(g.mean_K)} °C`))}.`
      : '',
    `The base is at ${celsius(moment.baseHot_K)} °C${!moment.closed ? '' : pot.trip_K === null ? `, scorching at ${celsius(limit)}` : `, its trip at ${celsius(limit)}`}, ${heatWords(run, moment)}.`,
  ]
  return parts.filter((sentence) => sentence !== '').join(' ')
}
