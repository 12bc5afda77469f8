import { airMass_kg, airPressure_Pa, steamTables as steam } from '../steam/index.ts'
import { pressure_Pa } from './recorder.ts'
import type { BurnCause } from './run.ts'
import { contentsVolume_m3, headspace_m3, mixIn, reference_K, vapourEnthalpy_J_per_kg } from './vessel.ts'
import { band, event, idle, mid, type Op, runFor, step, type Walk, wetOrder } from './walk.ts'

export function lock(w: Walk, op: Op<'lock'>): void {
  const start = w.now_s
  idle(w, mid(op.time_s), { heatOn: true })
  w.setting = null
  band(w, 'open', op.label, start, { handsOn: true, spread: op.time_s })
  w.v.lid = 1
  w.warmYet = true
  w.fill_m3 = Math.max(w.fill_m3, contentsVolume_m3(w.v))
  w.v.air_kg = airMass_kg({
    pressure_Pa: Math.max(1000, w.v.ambient_Pa - steam.saturationPressure_Pa(w.v.liquor_K)),
    volume_m3: headspace_m3(w.v),
    temperature_K: w.v.liquor_K,
  })
  event(w, 'locked')
}

/** What the regulator holds, as a liquor temperature: pressure less what the trapped air carries. */
function heldTemp_K(w: Walk, level: 'high' | 'low'): number {
  const r = w.v.card.regulator
  if (!r) return w.v.boil_K
  const setting = r[level]
  if (r.holds === 'temperature') return setting
  const total_Pa = r.holds === 'gauge' ? w.v.ambient_Pa + setting : Math.max(w.v.ambient_Pa + 2000, setting)
  const air_Pa = airPressure_Pa({ mass_kg: w.v.air_kg, volume_m3: headspace_m3(w.v), temperature_K: w.v.liquor_K })
  return steam.saturationTemp_K(Math.max(w.v.ambient_Pa * 0.5, total_Pa - air_Pa))
}

/** Saturation at the pressure in the pot: where boiling at the floor begins. */
function saturation_K(w: Walk): number {
  return w.v.lid === 2 ? steam.saturationTemp_K(Math.min(steam.high_Pa, pressure_Pa(w.v))) : w.v.boil_K
}

/** Watches the floor while the lid is on: keeps the least margin with its cause, and stops the heat at the trip. */
function watchFloor(w: Walk): boolean {
  const { card } = w.v
  const limit_K = card.trip_K ?? card.scorch_K
  const margin_dK = limit_K - w.v.hot_K
  if (margin_dK < w.margin.dK) {
    w.margin = { dK: margin_dK, at_s: w.now_s, cause: causeOf(w), trips: w.margin.trips }
  }
  if (w.step.wet < 0.98 && w.dryFloorAt_s === null) {
    w.dryFloorAt_s = w.now_s
    event(w, 'dry-floor')
  }
  if (margin_dK < 0 && !w.margin.trips) {
    w.margin = { ...w.margin, trips: true, at_s: w.now_s, cause: causeOf(w) }
    event(w, card.trip_K ? 'burn-stop' : 'scorch')
    if (card.trip_K) w.everTripped = true
    return card.trip_K !== null
  }
  return false
}

/** The largest part of what the base stands above clean boiling water, where it is worth a few kelvin. */
function causeOf(w: Walk): BurnCause | null {
  const p = w.step.parts
  const parts: [BurnCause, number][] = [
    ['liquid', p.patch],
    ['thickness', p.thickness],
    ['fond', p.fond],
    ['floor', p.floor],
  ]
  const [cause, dK] = parts.reduce((a, b) => (b[1] > a[1] ? b : a))
  return dK > 4 ? cause : null
}

export function hold(w: Walk, op: Op<'hold'>): void {
  const { v } = w
  w.stage = 'closed'
  const start = w.now_s
  if (v.lid === 0) v.lid = 1
  let purged_kg = 0
  let stopped = false
  let atPressure = false
  let lastAir = v.air_kg
  const limit_s = w.c.neverAtPressure_s
  runFor(w, limit_s, 5, (dt) => {
    if (v.lid === 1) {
      const s = step(
        w,
        dt,
        wetOrder(w, {
          control: 'full',
          lid: 'locked',
          saturation_K: v.boil_K,
          film_W_per_m2K: v.liquor_K > v.boil_K - 3 ? w.c.filmSteam_W_per_m2K : w.c.filmWarming_W_per_m2K,
        }),
      )
      const space = headspace_m3(v)
      if (!s.pinned) {
        // Air is pushed out as the steam below it grows; it takes some steam along.
        const air = airMass_kg({
          pressure_Pa: Math.max(500, v.ambient_Pa - steam.saturationPressure_Pa(v.liquor_K)),
          volume_m3: space,
          temperature_K: v.liquor_K,
        })
        v.air_kg = Math.min(lastAir, air)
        lastAir = v.air_kg
      } else {
        purged_kg += s.boiled_kg
        v.air_kg *= Math.exp(-s.boiled_kg / steam.vapourDensity_kg_per_m3(v.boil_K) / space)
      }
      if (purged_kg >= v.card.purge_kg) {
        const whole = airMass_kg({ pressure_Pa: v.ambient_Pa, volume_m3: space, temperature_K: 293.15 })
        v.air_kg = Math.max(v.air_kg, v.card.unpurgedAirShare * whole)
        v.lid = 2
        event(w, 'float-up')
      }
    } else {
      const pin_K = heldTemp_K(w, op.level)
      // 'hold' asks for what reaches the pressure and no more; until then that is all there is.
      step(
        w,
        dt,
        wetOrder(w, {
          control: 'hold',
          lid: 'sealed',
          pin_K,
          saturation_K: saturation_K(w),
          film_W_per_m2K: w.c.filmSteam_W_per_m2K,
        }),
      )
      atPressure = w.step.pinned
      // Full power would have got there earlier in the step: the clock says when.
      if (atPressure) w.now_s -= dt * Math.max(0, 1 - w.step.power_W / v.card.power_W)
    }
    stopped = watchFloor(w)
    return !(atPressure || stopped)
  })
  const comeUp_s = w.now_s - start
  band(w, 'come-up', 'come-up', start, { handsOn: false, spread: 0.12 })
  if (stopped || !atPressure) {
    if (!stopped) {
      w.neverAtPressure = true
    }
    coolAfterStop(w)
    return
  }
  event(w, 'at-pressure')
  w.clock.comeUp_s = (w.clock.comeUp_s ?? 0) + comeUp_s
  const from = w.now_s
  const weight = v.card.regulator?.vents === true
  runFor(w, mid(op.time_s), 20, (dt) => {
    const pin_K = heldTemp_K(w, op.level)
    step(
      w,
      dt,
      wetOrder(w, {
        control: 'hold',
        lid: 'sealed',
        pin_K,
        want_W: weight ? w.c.ventMargin_W : 0,
        saturation_K: saturation_K(w),
        film_W_per_m2K: w.c.filmSteam_W_per_m2K,
        pulsed: !weight,
      }),
    )
    stopped = watchFloor(w)
    return !stopped
  })
  w.clock.hold_s = (w.clock.hold_s ?? 0) + (w.now_s - from)
  band(w, 'hold', op.label, from, { handsOn: false, spread: op.time_s })
  if (stopped) coolAfterStop(w)
  else event(w, 'hold-ends')
}

/** The guard has cut the heat: the pot stands until somebody opens it; what follows in the text is done then. */
function coolAfterStop(w: Walk): void {
  w.v.power_W = 0
}

export function release(w: Walk, op: Op<'release'>): void {
  const { v } = w
  const start = w.now_s
  const natural_s =
    op.how === 'vented' ? 0 : op.how === 'natural-then-vented' ? (op.natural_s ?? 600) : Number.POSITIVE_INFINITY
  const iced = op.how === 'iced' ? (v.card.iced_W_per_K ?? 0) : 0
  const falls = (): boolean => v.lid === 2 && pressure_Pa(v) - v.ambient_Pa > v.card.floatDrop_Pa
  const loss = v.card.loss_W_per_K + iced
  // A printed wait goes on after the float has dropped only in the words, not in the pot.
  runFor(w, Math.min(natural_s, 4 * 3600), 20, (dt) => {
    if (!falls()) return false
    step(
      w,
      dt,
      wetOrder(w, {
        control: 'off',
        lid: 'sealed',
        pin_K: 432,
        saturation_K: saturation_K(w),
        loss_W_per_K: loss,
        film_W_per_m2K: w.c.filmRelease_W_per_m2K,
      }),
    )
    return falls()
  })
  if (op.how === 'natural-then-vented' && !falls() && op.natural_s !== null) {
    // The cook still waits the minutes that are printed.
    const rest = op.natural_s - (w.now_s - start)
    if (rest > 1)
      runFor(w, rest, 20, (dt) =>
        step(
          w,
          dt,
          wetOrder(w, {
            control: 'off',
            lid: 'sealed',
            pin_K: 432,
            saturation_K: saturation_K(w),
            loss_W_per_K: loss,
            film_W_per_m2K: w.c.filmRelease_W_per_m2K,
          }),
        ),
      )
  }
  if (falls()) vent(w)
  event(w, 'float-down')
  const spread = op.how === 'vented' ? 0.3 : 0.15
  w.clock.release_s = (w.clock.release_s ?? 0) + (w.now_s - start)
  band(w, 'release', op.label, start, { handsOn: op.how === 'vented', spread })
  open(w)
}

/**
 * The valve is open: steam leaves as fast as the pressure drives it, and liquor, metal and the inside of pieces boil
 * down along the saturation line.
 */
function vent(w: Walk): void {
  const { v } = w
  for (let guard = 0; guard < 400; guard++) {
    const p = pressure_Pa(v)
    const gauge = p - v.ambient_Pa
    if (gauge < 2000) break
    const dt = 2
    // Choked at first, fading as the difference goes.
    const rate = w.c.valve_kg_per_sPa * p * Math.min(1, Math.sqrt(gauge / (0.45 * p)))
    const steam_kg = rate * dt
    // Temperature that the pot falls to by giving up that steam, from its heat capacity.
    let heat = 4200 * v.liquor.water + v.card.base_J_per_K + v.card.wall_J_per_K * 0.5
    for (const g of v.groups) if (g.where === 1) heat += g.count * g.body.heatCapacity_J_per_K * 0.5
    const drop_K = (steam_kg * steam.latentHeat_J_per_kg(v.liquor_K)) / heat
    const target_K = Math.max(v.boil_K, v.liquor_K - drop_K)
    step(
      w,
      dt,
      wetOrder(w, {
        control: 'off',
        lid: 'sealed',
        pin_K: target_K,
        saturation_K: target_K,
        film_W_per_m2K: w.c.filmSteam_W_per_m2K,
      }),
    )
    flashInside(w)
    v.air_kg *= 0.96
    if (v.liquor_K <= v.boil_K + 0.05) break
  }
}

/** Water inside a piece cannot stand much above saturation: the excess heat leaves as steam. */
function flashInside(w: Walk): void {
  const { v } = w
  const most_K = v.liquor_K + w.c.superheatInside_dK
  for (const g of v.groups) {
    if (g.where !== 1 && g.where !== 3) continue
    const over_J = g.body.coolAbove(most_K)
    if (over_J <= 0) continue
    const hfg = steam.latentHeat_J_per_kg(most_K)
    const steam_kg = (over_J * g.count) / hfg
    // The steam leaves at the piece's temperature; the count shrinks by the water's heat capacity.
    const heat = g.count * g.body.heatCapacity_J_per_K
    const carried_J = 4200 * steam_kg * (g.leaving_K() - reference_K)
    g.count *= Math.max(1e-3, (heat - 4200 * steam_kg) / heat)
    g.mass_kg -= steam_kg
    for (let i = 0; i < g.water_kg.length; i++) g.water_kg[i] -= Math.min(g.water_kg[i], steam_kg * g.body.share[i])
    g.given_kg += steam_kg
    v.books.water_kg.vented += steam_kg
    v.books.energy_J.leftWithVapour += steam_kg * hfg + carried_J
  }
}

/** The lid comes off: what hangs under it and half of the steam over the food are lost, the rest falls back. */
export function open(w: Walk): void {
  const { v } = w
  const lost = v.vapour_kg / 2
  const hg = vapourEnthalpy_J_per_kg(v.liquor_K)
  v.books.water_kg.evaporated += lost
  v.books.energy_J.leftWithVapour += lost * hg
  const back = v.vapour_kg - lost
  if (back > 0) {
    // Condensing gives its latent heat to the liquor: mix it in at the temperature that carries that heat.
    mixIn(v, { water: back }, reference_K + hg / 4200)
  }
  v.vapour_kg = 0
  const film = Math.min(w.c.lidFilm_kg, v.liquor.water * 0.2)
  v.liquor.water -= film
  v.books.water_kg.evaporated += film
  v.books.energy_J.leftWithVapour += film * 4200 * (v.liquor_K - reference_K)
  v.lid = 0
  v.air_kg = 0
  v.patch_dK = 0
  w.stage = 'after'
  event(w, 'open')
}
