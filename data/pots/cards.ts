import type { PotCard } from '../../src/core/pots/card.ts'

// Vessels as a cook names them. Capacity is the nominal brim volume. Every figure without a published source is
// listed in `assumed`: it is a starting value, open to a pot trial. Where the figures come from, a line each:
//   baseArea_m2     inner diameter of the usual insert of that size, about 17, 21, 22 cm (assumed)
//   base_J_per_K    heating plate and floor of the insert, about 1 kg of metal (assumed, docs/models/pot.md)
//   loss_W_per_K    0.88 to 1.10 W/K fits natural releases of 15 to 20 minutes (assumed)
//   regulator       electric pots "work at about 10 to 12 psi, 115 to 118 °C" (common practice, no source);
//                   stovetop 15 psi = 103.42 kPa, the certification limit for domestic cookers (physics.md 7.2)
//   purge, leak     sealed pots lose 2 to 4 % of 1 kg in 10 minutes with a natural release (common practice, no source)
//   leastLiquid_m3  ½, 1, 2 cups by size, as makers' manuals print it: a rule of the card, several times the physical need
//   fill, foam      two thirds in general, half for what foams or swells (makers' manuals)

const cup_m3 = 236.5882365e-6
const quart_m3 = 946.352946e-6

const electricAssumed = [
  'baseArea_m2',
  'base_J_per_K',
  'wall_J_per_K',
  'power_W',
  'thermostat_K',
  'regulator',
  'trip_K',
  'tripSpread_dK',
  'scorch_K',
  'loss_W_per_K',
  'leak_kg_per_s',
  'purge_kg',
  'unpurgedAirShare',
  'floatDrop_Pa',
  'iced_W_per_K',
  'lidLeak_kg_per_s',
] as const

const electric = {
  kind: 'electric',
  thermostat_K: 463.15,
  regulator: { holds: 'gauge', high: 75_000, low: 40_000, band: 4_000, vents: false },
  trip_K: 413.15,
  tripSpread_dK: 6,
  scorch_K: 429.15,
  leak_kg_per_s: 4e-3 / 3600,
  purge_kg: 0.01,
  unpurgedAirShare: 0,
  floatDrop_Pa: 4_000,
  iced_W_per_K: 2.2,
  lidLeak_kg_per_s: 0.8e-5,
  fillLimit: 2 / 3,
  foamLimit: 1 / 2,
  assumed: electricAssumed,
} as const

const heavy = {
  capacity_m3: 5.5 * quart_m3,
  baseArea_m2: 0.0415,
  base_J_per_K: 900,
  wall_J_per_K: 1500,
  power_W: 1400,
  thermostat_K: null,
  regulator: null,
  trip_K: null,
  tripSpread_dK: 6,
  scorch_K: 429.15,
  leak_kg_per_s: 0,
  purge_kg: 0,
  unpurgedAirShare: 1,
  floatDrop_Pa: 0,
  iced_W_per_K: null,
  lidLeak_kg_per_s: 0.8e-5,
  fillLimit: 0.85,
  foamLimit: 2 / 3,
  leastLiquid_m3: 0,
  assumed: [
    'baseArea_m2',
    'base_J_per_K',
    'wall_J_per_K',
    'power_W',
    'scorch_K',
    'loss_W_per_K',
    'lidLeak_kg_per_s',
    'fillLimit',
    'foamLimit',
  ],
} as const

export const potCards: readonly PotCard[] = [
  {
    ...electric,
    id: 'electric-3qt',
    name: '3-quart electric pot',
    capacity_m3: 3 * quart_m3,
    baseArea_m2: 0.0232,
    base_J_per_K: 350,
    wall_J_per_K: 560,
    power_W: 700,
    loss_W_per_K: 0.78,
    purge_kg: 0.006,
    leastLiquid_m3: 0.5 * cup_m3,
  },
  {
    ...electric,
    id: 'electric-6qt',
    name: '6-quart electric pot',
    capacity_m3: 6 * quart_m3,
    baseArea_m2: 0.034,
    base_J_per_K: 500,
    wall_J_per_K: 800,
    power_W: 1000,
    loss_W_per_K: 1.08,
    leastLiquid_m3: 1 * cup_m3,
  },
  {
    ...electric,
    id: 'electric-8qt',
    name: '8-quart electric pot',
    capacity_m3: 8 * quart_m3,
    baseArea_m2: 0.039,
    base_J_per_K: 600,
    wall_J_per_K: 980,
    power_W: 1200,
    loss_W_per_K: 1.28,
    purge_kg: 0.013,
    leastLiquid_m3: 2 * cup_m3,
  },
  {
    id: 'stovetop-6qt',
    name: '6-quart stovetop pressure cooker',
    kind: 'stovetop',
    capacity_m3: 6 * quart_m3,
    baseArea_m2: 0.038,
    base_J_per_K: 700,
    wall_J_per_K: 900,
    power_W: 1400,
    thermostat_K: null,
    regulator: { holds: 'gauge', high: 103_421, low: 55_000, band: 3_000, vents: true },
    trip_K: null,
    tripSpread_dK: 6,
    scorch_K: 429.15,
    loss_W_per_K: 1.9,
    leak_kg_per_s: 6e-3 / 3600,
    purge_kg: 0.012,
    unpurgedAirShare: 0,
    floatDrop_Pa: 4_000,
    iced_W_per_K: 2.2,
    lidLeak_kg_per_s: 0.8e-5,
    fillLimit: 2 / 3,
    foamLimit: 1 / 2,
    leastLiquid_m3: 1 * cup_m3,
    assumed: electricAssumed.filter((name) => name !== 'thermostat_K' && name !== 'trip_K'),
  },
  {
    ...heavy,
    id: 'dutch-burner',
    name: 'heavy lidded pot on a burner',
    kind: 'burner',
    loss_W_per_K: 1.7,
  },
  {
    ...heavy,
    id: 'dutch-oven',
    name: 'heavy lidded pot in the oven',
    kind: 'oven',
    // In an oven the same conductance brings heat in: still hot air, about 8 W/m2K over 0.16 m2.
    loss_W_per_K: 1.3,
  },
]
