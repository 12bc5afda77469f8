import type { Run } from '../core/cook/index.ts'
import type { Finding } from '../core/findings/index.ts'
import { celsiusFromKelvin } from '../core/units/index.ts'
import { messageOf } from './json-read.ts'
import { decimals } from './rounded.ts'

// What `cook --json` prints. Names and meanings are a contract with scripts: fields may be added, none renamed.
// Seconds, grams, millilitres, degrees Celsius, kilopascals; what is not known is null.

export function cookJson(run: Run, findings: readonly Finding[] = run.findings) {
  const { plan, clock, base, fill, sauce } = run
  return {
    pot: plan.pot.id,
    potFrom: plan.potFrom,
    altitude_m: decimals(plan.altitude_m, 1),
    clock: {
      prep_s: seconds(clock.prep_s),
      beforeLock_s: seconds(clock.beforeLock_s),
      comeUp_s: seconds(clock.comeUp_s),
      hold_s: seconds(clock.hold_s),
      release_s: seconds(clock.release_s),
      after_s: seconds(clock.after_s),
      total_s: [seconds(clock.total_s[0]), seconds(clock.total_s[1])],
      handsOn_s: seconds(clock.handsOn_s),
      apart_s: seconds(clock.apart_s ?? 0),
    },
    events: run.events.map((event) => {
      const words = event.operation === null ? undefined : plan.operations[event.operation]
      return {
        code: event.code,
        time_s: seconds(event.time_s),
        from: words?.from ?? null,
        to: words?.to ?? null,
        ingredient: event.load === null ? null : (plan.loads[event.load]?.ingredient ?? null),
      }
    }),
    base: {
      margin_K: decimals(base.margin_dK, 1),
      trips: base.trips,
      at_s: seconds(base.at_s),
      cause: base.cause,
    },
    fill: { volume_mL: ml(fill.volume_m3), fraction: decimals(fill.fraction, 4), limit: decimals(fill.limit, 4) },
    pieces: run.pieces.map((piece) => ({
      ingredient: plan.loads[piece.load]?.ingredient ?? null,
      coldest_C: degrees(piece.coldest_K),
      tender: decimals(piece.tender, 4),
      tenderBand: piece.tenderBand ? piece.tenderBand.map((share) => decimals(share, 4)) : null,
      firm: decimals(piece.firm, 4),
      word: piece.word,
      waterLost_g: grams(piece.waterLost_kg),
      waterLost_pct: percent(piece.waterLost_share, 2),
      mass_g: grams(piece.mass_kg),
    })),
    sauce: {
      mass_g: grams(sauce.mass_kg),
      volume_mL: ml(sauce.volume_m3),
      gelatin_pct: percent(sauce.gelatin_share, 3),
      starch_pct: percent(sauce.starch_share, 3),
      salt_pct: percent(sauce.salt_share, 3),
      fat_g: grams(sauce.fat_kg),
    },
    account: accountJson(run),
    series: seriesJson(run),
    findings: findings.map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      from: finding.span?.from ?? null,
      to: finding.span?.to ?? null,
      message: messageOf(finding),
      source: finding.source,
      cure: finding.cure?.label ?? finding.advice,
    })),
  }
}

function accountJson({ account }: Run) {
  const { water_kg, fat_kg, salt_kg, energy_J } = account
  return {
    water_g: {
      in: grams(water_kg.in),
      evaporated: grams(water_kg.evaporated),
      vented: grams(water_kg.vented),
      absorbed: grams(water_kg.absorbed),
      lifted: grams(water_kg.lifted),
      inPieces: grams(water_kg.inPieces),
      inLiquor: grams(water_kg.inLiquor),
      inHeadspace: grams(water_kg.inHeadspace),
      closure_pct: percent(water_kg.closure_share, 5),
    },
    fat_g: solutes(fat_kg),
    salt_g: solutes(salt_kg),
    energy_kJ: {
      in: decimals(energy_J.in / 1000, 2),
      lost: decimals(energy_J.lost / 1000, 2),
      leftWithVapour: decimals(energy_J.leftWithVapour / 1000, 2),
      leftWithFood: decimals(energy_J.leftWithFood / 1000, 2),
      stored: decimals(energy_J.stored / 1000, 2),
      closure_pct: percent(energy_J.closure_share, 5),
    },
  }
}

function solutes(kg: Run['account']['fat_kg']) {
  return {
    in: grams(kg.in),
    lifted: grams(kg.lifted),
    inPieces: grams(kg.inPieces),
    inLiquor: grams(kg.inLiquor),
    closure_pct: percent(kg.closure_share, 5),
  }
}

function seriesJson(run: Run) {
  const { series, plan } = run
  const each = <T>(values: ArrayLike<number>, of: (value: number) => T) => Array.from(values, of)
  return {
    time_s: each(series.time_s, (t) => decimals(t, 1)),
    liquor_C: each(series.liquor_K, degrees),
    base_C: each(series.base_K, degrees),
    baseHot_C: each(series.baseHot_K, degrees),
    gauge_kPa: each(series.gauge_Pa, (p) => decimals(p / 1000, 2)),
    liquid_mL: each(series.liquid_m3, ml),
    coldest_C: coldest(run),
    loads: series.groups.map((group) => plan.loads[group.load]?.name ?? null),
  }
}

/** By ingredient: the coldest of its pieces, null while none is there. A line used twice counts once, at its coldest. */
function coldest({ series, plan }: Run): Record<string, (number | null)[]> {
  const lines: Record<string, (number | null)[]> = {}
  for (const group of series.groups) {
    const ingredient = plan.loads[group.load]?.ingredient
    if (ingredient === null || ingredient === undefined) continue
    const before = lines[ingredient]
    lines[ingredient] = Array.from(group.coldest_K, (value, i) => {
      const here = group.where[i] === 0 ? null : degrees(value)
      const other = before?.[i] ?? null
      return here === null ? other : other === null ? here : Math.min(here, other)
    })
  }
  return lines
}

const seconds = (s: number | null) => decimals(s, 1)
const grams = (kg: number) => decimals(kg * 1000, 2)
const ml = (m3: number) => decimals(m3 * 1e6, 1)
const degrees = (kelvin: number) => (Number.isFinite(kelvin) ? decimals(celsiusFromKelvin(kelvin), 2) : null)
const percent = (share: number, places: number) => decimals(share * 100, places)
