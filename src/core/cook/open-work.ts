import { type Group, mergeGroups, splitGroup } from './group.ts'
import { mash, takePlateJuice } from './hand-work.ts'
import { liquorVolume_m3 } from './vessel.ts'
import {
  band,
  dry,
  enter,
  event,
  groupsOf,
  heatShare,
  idle,
  inPot,
  isWet,
  mid,
  type Op,
  runFor,
  step,
  stir,
  thermostat_K,
  type Walk,
  wetOrder,
} from './walk.ts'

export function loadsIn(w: Walk, loads: readonly number[], how: 'stirred' | 'on-top' | 'on-floor' | 'on-rack'): void {
  for (const id of loads) enter(w, w.plan.loads[id], how)
}

/** Heats what is in the pot: the dry floor until it is hot, liquor for the time said. */
export function heat(w: Walk, op: Op<'heat'>): void {
  const start = w.now_s
  w.warmYet = true
  w.setting = op.setting
  const most_s = op.time_s ? mid(op.time_s) : 600
  const hot_K = Math.min(thermostat_K(w, op.setting) - 4, 458.15)
  runFor(w, most_s, 5, (dt) => {
    if (isWet(w)) {
      step(
        w,
        dt,
        wetOrder(w, {
          control: 'full',
          most_W: w.v.card.power_W * heatShare[op.setting],
          film_W_per_m2K: w.c.filmWarming_W_per_m2K,
        }),
      )
      return op.time_s !== null || w.v.liquor_K < w.v.boil_K - 0.1
    }
    dry(w, dt, op.setting, inPot(w), false)
    return op.time_s !== null || w.v.base_K < hot_K
  })
  if (!isWet(w) && w.v.base_K >= hot_K - 30) event(w, 'fat-hot')
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s ?? 0.2 })
}

export function brown(w: Walk, op: Op<'brown'>): void {
  const start = w.now_s
  w.warmYet = true
  w.setting = op.setting
  loadsIn(w, op.loads, 'on-floor')
  const groups = groupsOf(w, op.loads).filter((g) => g.load.pieces)
  const each_s = mid(op.time_s)
  if (isWet(w)) stewInLiquor(w, op, each_s * op.batches)
  else {
    let widest = 0
    for (const g of groups) g.where = 0
    const split = groups.map((g) => splitGroup(g, op.batches))
    w.v.groups = w.v.groups.filter((g) => !groups.includes(g)).concat(split.flat())
    const count = Math.max(...split.map((parts) => parts.length), 0)
    for (let b = 0; b < count; b++) {
      const now = split.map((parts) => parts[b]).filter((g): g is Group => g !== undefined)
      for (const g of now) g.where = 1
      // A piece is turned once; its second side starts wet.
      for (let half = 0; half < 2; half++) {
        const on = now.map((group) => ({ group, side: { crust: 0, brown: 0 } }))
        runFor(w, ((each_s / 2) * op.batches) / count, 5, (dt) => {
          widest = Math.max(widest, dry(w, dt, op.setting, on, false).coverage)
        })
        for (const { group, side } of on) group.brown += side.brown / 2
      }
      for (const g of now) g.where = 2
    }
    w.v.groups = w.v.groups.filter((g) => !split.flat().includes(g)).concat(groups)
    groups.forEach((g, i) => {
      mergeGroups(g, split[i])
      g.where = 1
      event(w, g.brown > 0.5 ? 'browned' : 'stewed', g.load.id)
      w.crowded.push({ load: g.load.id, coverage: widest, brown: g.brown })
      // What ran out beside the pot while the next batch browned goes back in unless the pieces stay out.
      if (!op.liftsOut) takePlateJuice(w, g)
    })
  }
  if (op.liftsOut) for (const g of groups) g.where = 2
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: times(op.time_s, op.batches) })
}

/** "Brown" in a pot that holds liquor: it can only stew. */
function stewInLiquor(w: Walk, op: Op<'brown'>, time_s: number): void {
  runFor(w, time_s, 10, (dt) =>
    step(w, dt, wetOrder(w, { control: 'full', most_W: w.v.card.power_W * heatShare[op.setting], stirred: true })),
  )
  for (const id of op.loads) event(w, 'stewed', id)
}

const times = (r: { low: number; high: number }, by: number) => ({ low: r.low * by, high: r.high * by })

export function fry(w: Walk, op: Op<'fry'>): void {
  const start = w.now_s
  w.warmYet = true
  w.setting = op.setting
  runFor(w, mid(op.time_s), 5, (dt) => {
    if (isWet(w))
      step(
        w,
        dt,
        wetOrder(w, { control: 'full', most_W: w.v.card.power_W * heatShare[op.setting], stirred: op.stirred }),
      )
    else dry(w, dt, op.setting, inPot(w), op.stirred)
  })
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function deglaze(w: Walk, op: Op<'deglaze'>): void {
  const start = w.now_s
  w.v.fond_kg *= 1 - op.scraped
  w.v.deposit_kg *= 1 - op.scraped
  if (isWet(w)) {
    stir(w)
    runFor(w, mid(op.time_s), 5, (dt) =>
      step(
        w,
        dt,
        wetOrder(w, {
          control: w.warmYet ? 'full' : 'off',
          most_W: w.v.card.power_W * heatShare[w.setting ?? 'high'],
          stirred: true,
        }),
      ),
    )
  } else {
    runFor(w, mid(op.time_s), 5, (dt) => dry(w, dt, 'medium', inPot(w), true))
  }
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function add(w: Walk, op: Op<'add'> | Op<'season'>): void {
  const start = w.now_s
  loadsIn(w, op.loads, op.kind === 'add' ? op.how : 'stirred')
  idle(w, mid(op.time_s), { heatOn: true })
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function simmer(w: Walk, op: Op<'simmer'>): void {
  const start = w.now_s
  w.warmYet = true
  w.setting = op.setting
  const { card, boil_K } = w.v
  // Coming to the boil a cook turns up; a gentle setting is for keeping it there.
  const toBoil_W = card.power_W * Math.max(0.6, heatShare[op.setting])
  let boils = false
  const lid = op.lid
  runFor(w, 5400, 10, (dt) => {
    if (!isWet(w)) return false
    step(
      w,
      dt,
      wetOrder(w, {
        control: 'hold',
        most_W: toBoil_W,
        lid,
        stirred: op.stirred,
        film_W_per_m2K: w.c.filmWarming_W_per_m2K,
      }),
    )
    boils = w.step.pinned
    if (boils) w.now_s -= dt * Math.max(0, 1 - w.step.power_W / toBoil_W)
    return !boils
  })
  if (boils) event(w, w.stage === 'after' ? 'at-boil-again' : 'boils')
  const comingUp = w.now_s - start
  if (comingUp > 0)
    band(w, 'open', op.time_s ? `${op.label}: to the boil` : op.label, start, {
      handsOn: op.stirred || comingUp < 300,
      spread: 0.15,
    })
  if (!op.time_s) return
  const from = w.now_s
  const want_W = netVapour_W(w, op)
  runFor(w, mid(op.time_s), 10, (dt) => {
    if (!isWet(w)) return boiledDry(w, dt, op.setting)
    step(
      w,
      dt,
      wetOrder(w, {
        control: 'hold',
        most_W: card.power_W,
        pin_K: boil_K,
        want_W,
        lid,
        stirred: op.stirred,
        film_W_per_m2K: op.vigour === 'boil' ? w.c.filmSteam_W_per_m2K : w.c.filmSimmer_W_per_m2K,
      }),
    )
  })
  band(w, 'open', op.label, from, { handsOn: op.handsOn, spread: op.time_s })
}

/** Liquor has boiled away under an open simmer: the floor is a frying floor again. */
function boiledDry(w: Walk, dt: number, setting: keyof typeof heatShare): void {
  if (w.dryFloorAt_s === null) {
    w.dryFloorAt_s = w.now_s
    event(w, 'dry-floor')
  }
  dry(w, dt, setting, inPot(w), false)
}

/** Vapour a cook leaves standing over the pot, as heat. */
function netVapour_W(w: Walk, op: Op<'simmer'>): number {
  const { card } = w.v
  const area = card.baseArea_m2 / 0.034
  const loss = card.loss_W_per_K * 60
  if (op.vigour === 'boil') {
    const rolling = Math.max(0, card.power_W * heatShare[op.setting] - loss)
    return op.lid === 'on' ? w.c.lidded_W : op.lid === 'ajar' ? rolling * w.c.ajarShare : rolling
  }
  const gentle = w.c.simmerNet_W * area * (0.6 + 0.4 * (heatShare[op.setting] / 0.6))
  return op.lid === 'on' ? w.c.lidded_W : op.lid === 'ajar' ? gentle * w.c.ajarShare : gentle
}

export function reduce(w: Walk, op: Op<'reduce'>): void {
  const start = w.now_s
  w.warmYet = true
  w.setting = op.setting
  const { card } = w.v
  const from_m3 = liquorVolume_m3(w.v)
  const to_m3 = op.toVolume_m3 ?? (op.toShare !== null ? from_m3 * op.toShare : null)
  const most_s = op.time_s ? mid(op.time_s) : to_m3 !== null ? 5400 : 600
  let reached = false
  runFor(w, most_s, 10, (dt) => {
    if (!isWet(w)) {
      boiledDry(w, dt, op.setting)
      // Nothing is left to boil down: only a printed time keeps a cook standing there.
      return op.time_s !== null
    }
    step(w, dt, wetOrder(w, { control: 'full', most_W: card.power_W * heatShare[op.setting], stirred: op.stirred }))
    // A printed time rules over a printed share: the words say how long to boil.
    reached = to_m3 !== null && liquorVolume_m3(w.v) <= to_m3
    return op.time_s !== null || !reached
  })
  if (reached) event(w, 'reduced')
  band(w, w.stage === 'after' ? 'after' : 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s ?? 0.2 })
}

export function bake(w: Walk, op: Op<'bake'>): void {
  const start = w.now_s
  w.setting = null
  w.warmYet = true
  w.inOven_K = op.oven_K
  const lid = op.lid
  w.v.lid = lid === 'on' ? 1 : 0
  runFor(w, mid(op.time_s), 20, (dt) => {
    step(w, dt, wetOrder(w, { control: 'off', lid, film_W_per_m2K: w.c.filmSimmer_W_per_m2K }))
  })
  w.inOven_K = null
  w.v.lid = 0
  band(w, 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function bench(w: Walk, op: Op<'bench'>): void {
  const start = w.now_s
  const time_s = mid(op.time_s)
  if (op.apart) {
    w.clock.apart_s += time_s
    return
  }
  if (op.beside) {
    // Done while something else works: it is hand time, not clock time.
    w.handsOn_s += op.handsOn ? time_s : 0
    return
  }
  idle(w, time_s)
  band(w, 'bench', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function rest(w: Walk, op: Op<'rest'> | Op<'mash'>): void {
  const start = w.now_s
  if (op.kind === 'mash') mash(w, op)
  w.setting = null
  // Chilling is after the dish is done: it is not on the clock of the cook.
  if (op.kind === 'chill') {
    w.clock.apart_s += mid(op.time_s)
    return
  }
  idle(w, mid(op.time_s), { lid: op.kind === 'rest' && w.v.lid === 1 ? 'on' : 'off' })
  band(w, w.stage === 'after' ? 'after' : 'rest', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}
