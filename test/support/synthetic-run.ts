// A run put together by hand for tests of drawings and print-outs: every field of Run filled with figures that hang
// together (a pot that heats, a piece that lags, books that close), none of them computed by the model. Not a prediction.
import type { EventCode, GroupSeries, Phase, Run } from '../../src/core/cook/index.ts'
import type { Finding } from '../../src/core/findings/index.ts'
import type { Character, Food } from '../../src/core/larder/index.ts'
import type { Load, Pieces, PlanOperation } from '../../src/core/method/index.ts'
import { potById } from '../../src/core/pots/index.ts'

const zero_K = 273.15
const minute = 60

function food(id: string, name: string, character: Character, more: Partial<Food> = {}): Food {
  return {
    id,
    name,
    also: [],
    character,
    composition: { water: 0.7, protein: 0.19, fat: 0.1, carbohydrate: 0, fibre: 0, ash: 0.01, alcohol: 0 },
    starch: 0,
    sugars: 0,
    salt: 0,
    collagen: 0,
    suspended: 0,
    kinetics: null,
    usualPiece: null,
    absorbs: 0,
    density_kg_per_m3: 1050,
    measures: [],
    edible: 1,
    allergens: [],
    checkLabel: [],
    source: 'test fixture',
    ...more,
  }
}

function load(id: number, name: string, kind: Food, mass_kg: number, pieces: Pieces | null): Load {
  return {
    id,
    ingredient: id,
    name,
    food: kind,
    mass_kg,
    massBand_kg: { low: mass_kg * 0.95, high: mass_kg * 1.05 },
    pieces,
    start_K: 278.15,
    frozen: false,
    span: { from: 10 * id, to: 10 * id + 8 },
  }
}

const cube = (size_m: number, count: number): Pieces => ({
  shape: 'brick',
  thickness_m: size_m,
  width_m: size_m,
  length_m: size_m,
  spread: 0.15,
  count,
  from: 'words',
})

const loads: readonly Load[] = [
  load(
    0,
    'boneless pork shoulder',
    food('pork-shoulder', 'pork shoulder', 'collagen cut', {
      collagen: 0.02,
      kinetics: { kind: 'collagen', cut: 'pork-shoulder' },
    }),
    1.2,
    cube(0.04, 18),
  ),
  load(
    1,
    'leeks',
    food('leek', 'leeks', 'aromatic', { kinetics: { kind: 'plant', tissue: 'fibrous' }, density_kg_per_m3: 960 }),
    0.5,
    { shape: 'cylinder', thickness_m: 0.02, width_m: 0.032, length_m: 0.032, spread: 0.2, count: 32, from: 'words' },
  ),
  load(2, 'dry cider', food('cider', 'dry cider', 'thin liquid', { density_kg_per_m3: 1000 }), 0.18, null),
  load(3, 'rapeseed oil', food('oil', 'rapeseed oil', 'fat', { density_kg_per_m3: 920 }), 0.027, null),
]

const common = (step: number, label: string, handsOn: boolean, timed: boolean) => ({
  step,
  label,
  handsOn,
  timed,
  from: 100 * step,
  to: 100 * step + 40,
})
const range = (low: number, high = low) => ({ low: low * minute, high: high * minute })

const operations: readonly PlanOperation[] = [
  { verb: 'cut', kind: 'bench', time_s: range(8, 10), loads: [0, 1], ...common(0, 'cut and pat', true, false) },
  { verb: 'heat', kind: 'heat', setting: 'high', time_s: range(3), ...common(0, 'heat the oil', false, true) },
  {
    verb: 'brown',
    kind: 'brown',
    loads: [0],
    setting: 'high',
    batches: 2,
    time_s: range(7),
    liftsOut: true,
    ...common(0, 'brown, two batches', true, true),
  },
  {
    verb: 'sweat',
    kind: 'fry',
    mode: 'sweat',
    setting: 'medium',
    time_s: range(5),
    stirred: true,
    ...common(1, 'leeks', true, true),
  },
  { verb: 'deglaze', kind: 'deglaze', scraped: 0.9, time_s: range(1), ...common(1, 'deglaze', true, false) },
  { verb: 'lock', kind: 'lock', time_s: range(0.5), ...common(2, 'lock', true, false) },
  {
    verb: 'hold',
    kind: 'hold',
    level: 'high',
    time_s: range(30),
    ...common(2, 'at pressure, 30 minutes', false, true),
  },
  {
    verb: 'release',
    kind: 'release',
    how: 'natural-then-vented',
    natural_s: 15 * minute,
    ...common(2, 'natural, 15 minutes', false, true),
  },
  {
    verb: 'reduce',
    kind: 'reduce',
    setting: 'high',
    time_s: range(6),
    toShare: null,
    toVolume_m3: null,
    stirred: true,
    ...common(3, 'boil down', true, true),
  },
]

const phases: readonly Phase[] = [
  ['bench', 'cut and pat', 0, 9, true, 0],
  ['open', 'heat the oil', 9, 12, false, 1],
  ['open', 'brown, two batches', 12, 26, true, 2],
  ['open', 'leeks', 26, 31.5, true, 3],
  ['open', 'deglaze', 31.5, 32.5, true, 4],
  ['come-up', 'come-up', 32.5, 41, false, null],
  ['hold', 'at pressure, 30 minutes', 41, 71, false, 6],
  ['release', 'natural, 15 minutes', 71, 86, false, 7],
  ['release', 'vent', 86, 87.5, true, 7],
  ['after', 'boil down', 87.5, 95, true, 8],
].map(([kind, label, start, end, handsOn, operation]) => ({
  kind: kind as Phase['kind'],
  label: label as string,
  start_s: (start as number) * minute,
  end_s: (end as number) * minute,
  handsOn: handsOn as boolean,
  operation: operation as number | null,
}))

export interface SyntheticOptions {
  /** The base dries out and the heat stops at 52 minutes. */
  readonly burns?: boolean
  /** Seconds between samples. */
  readonly step_s?: number
  readonly findings?: readonly Finding[]
}

export function syntheticRun({ burns = false, step_s = 15, findings = [] }: SyntheticOptions = {}): Run {
  const pot = potById('electric-6qt')!
  const end_s = 95 * minute
  const n = Math.round(end_s / step_s) + 1
  const blank = () => new Float64Array(n)
  const series = {
    time_s: blank(),
    liquor_K: blank(),
    base_K: blank(),
    baseHot_K: blank(),
    wall_K: blank(),
    gauge_Pa: blank(),
    liquid_m3: blank(),
    fat_kg: blank(),
    air_share: blank(),
    lid: new Uint8Array(n),
    power_W: blank(),
  }
  const group = (index: number): { -readonly [K in keyof GroupSeries]: GroupSeries[K] } => ({
    load: index,
    where: new Uint8Array(n),
    coldest_K: blank(),
    mean_K: blank(),
    surface_K: blank(),
    done: blank(),
    mass_kg: blank(),
    brown: blank(),
  })
  const pork = group(0)
  const leek = group(1)
  const lag = { core: 5, skin: 5, leek: 5, done: 0, leekDone: 0 }

  for (let i = 0; i < n; i++) {
    const t = (i * step_s) / minute
    const ramp = (from: number, to: number, low: number, high: number) =>
      low + (high - low) * Math.min(1, Math.max(0, (t - from) / (to - from)))
    const sealed = t >= 36 && t < 87
    const lid = t < 32.5 || t >= 87.5 ? 0 : sealed ? 2 : 1
    const liquor =
      t < 32.5 ? 20 : t < 41 ? ramp(32.5, 41, 60, 116) : t < 71 ? 116.3 : t < 86 ? ramp(71, 86, 116.3, 103) : 100
    const base =
      t < 9
        ? 22
        : t < 12
          ? ramp(9, 12, 22, 190)
          : t < 26
            ? 188 + 6 * Math.sin(t * 2.4)
            : t < 31.5
              ? 160
              : t < 32.5
                ? 104
                : t < 41
                  ? ramp(32.5, 41, 108, 128)
                  : t < 71
                    ? 121 + 3 * Math.sin(t * 1.7)
                    : t < 87
                      ? liquor + 0.4
                      : 112
    const hot = burns && t > 44 && t < 52 ? ramp(44, 52, base, 141) : base + (lid === 2 && t < 71 ? 2 : 0)
    const wait = t >= 19 && t < 32.5
    const inPot = t >= 12 && (t < 19 || !wait)
    const around = t < 12 ? 15 : t < 19 ? 60 : wait ? 35 : liquor
    const h = step_s / minute
    lag.skin += (around - lag.skin) * (1 - Math.exp(-h / 0.7))
    lag.core += (around - lag.core) * (1 - Math.exp(-h / (wait ? 40 : 9)))
    lag.leek += ((t < 26 ? 5 : t < 32.5 ? 85 : liquor) - lag.leek) * (1 - Math.exp(-h / 1.2))
    lag.done += (1 - lag.done) * (1 - Math.exp(-h * 0.016 * 10 ** ((lag.core - 100) / 28)))
    lag.leekDone += (1 - lag.leekDone) * (1 - Math.exp(-h * 0.09 * Math.exp((lag.leek - 100) * 0.08)))
    series.time_s[i] = i * step_s
    series.liquor_K[i] = liquor + zero_K
    series.base_K[i] = base + zero_K
    series.baseHot_K[i] = hot + zero_K
    series.wall_K[i] = (t < 32.5 ? 25 : liquor - 3) + zero_K
    series.gauge_Pa[i] = !sealed ? 0 : t < 41 ? ramp(36, 41, 0, 75_000) : t < 71 ? 75_000 : ramp(71, 86.6, 75_000, 0)
    series.liquid_m3[i] =
      1e-6 *
      (t < 31.5
        ? 8
        : t < 32.5
          ? 150
          : t < 41
            ? ramp(32.5, 41, 170, 210)
            : t < 87.5
              ? ramp(41, 71, 210, 420)
              : ramp(87.5, 95, 400, 230))
    series.fat_kg[i] = t < 10 ? 0 : ramp(41, 71, 0.02, 0.07)
    series.air_share[i] = lid === 2 ? 0.02 : lid === 1 ? ramp(32.5, 36, 0.95, 0.05) : 0.9
    series.lid[i] = lid
    series.power_W[i] = t < 9 ? 0 : t < 41 ? 1000 : t < 71 ? (i % 4 === 0 ? 1000 : 40) : t < 87.5 ? 0 : 1000
    pork.where[i] = t < 12 ? 0 : t >= 88 ? 0 : wait ? 2 : inPot ? 1 : 0
    pork.coldest_K[i] = lag.core + zero_K
    pork.surface_K[i] = lag.skin + zero_K
    pork.mean_K[i] = 0.45 * lag.core + 0.55 * lag.skin + zero_K
    pork.done[i] = lag.done
    pork.mass_kg[i] = t < 41 ? 1.16 : ramp(41, 75, 1.16, 0.84)
    pork.brown[i] = ramp(12, 26, 0, 0.8)
    leek.where[i] = t >= 26 ? 1 : 0
    leek.coldest_K[i] = lag.leek + zero_K
    leek.surface_K[i] = lag.leek + 1 + zero_K
    leek.mean_K[i] = lag.leek + 0.6 + zero_K
    leek.done[i] = lag.leekDone
    leek.mass_kg[i] = ramp(26, 45, 0.5, 0.4)
  }

  const event = (code: EventCode, at: number, operation: number | null = null, about: number | null = null) => ({
    code,
    time_s: at * minute,
    operation,
    load: about,
  })
  return {
    plan: { pot, potFrom: 'manuscript', altitude_m: 120, loads, operations, findings: [] },
    clock: {
      prep_s: 540,
      beforeLock_s: 1410,
      comeUp_s: 510,
      hold_s: 1800,
      release_s: 990,
      after_s: 450,
      total_s: [5400, 6360],
      handsOn_s: 2220,
    },
    phases,
    events: [
      event('fat-hot', 12, 1),
      event('browned', 26, 2, 0),
      event('locked', 32.5, 5),
      event('float-up', 36),
      event('at-pressure', 41),
      ...(burns ? [event('burn-stop', 52)] : [event('tender', 66, null, 0)]),
      event('hold-ends', 71, 6),
      event('float-down', 87),
      event('open', 87.5, 7),
    ],
    base: burns
      ? { margin_dK: -1, trips: true, at_s: 52 * minute, cause: 'liquid' }
      : { margin_dK: 12, trips: false, at_s: 41 * minute, cause: 'fond' },
    fill: { volume_m3: 0.0023, fraction: 0.4, limit: pot.fillLimit },
    pieces: [
      {
        load: 0,
        coldest_K: 115.8 + zero_K,
        tender: 0.76,
        tenderBand: [0.64, 0.85],
        firm: null,
        word: 'tender',
        waterLost_kg: 0.34,
        waterLost_share: 0.283,
        mass_kg: 0.84,
      },
      {
        load: 1,
        coldest_K: 116.2 + zero_K,
        tender: null,
        tenderBand: null,
        firm: 0.04,
        word: 'soft',
        waterLost_kg: 0.1,
        waterLost_share: 0.2,
        mass_kg: 0.4,
      },
    ],
    sauce: {
      mass_kg: 0.24,
      volume_m3: 0.00023,
      gelatin_share: 0.035,
      starch_share: 0,
      salt_share: 0.009,
      fat_kg: 0.07,
      viscosity_Pas: 0.002,
    },
    account: {
      water_kg: {
        in: 1.46,
        evaporated: 0.25,
        vented: 0.045,
        absorbed: 0,
        lifted: 0,
        inPieces: 0.935,
        inLiquor: 0.22,
        inHeadspace: 0.01,
        closure_share: 0,
      },
      fat_kg: { in: 0.147, lifted: 0, inPieces: 0.077, inLiquor: 0.07, closure_share: 0 },
      salt_kg: { in: 0.0075, lifted: 0, inPieces: 0.005, inLiquor: 0.0025, closure_share: 0 },
      energy_J: { in: 1.9e6, lost: 4e5, leftWithVapour: 6.4e5, leftWithFood: 3.6e5, stored: 5e5, closure_share: 0 },
    },
    series: { ...series, groups: [pork, leek] },
    findings,
  }
}
