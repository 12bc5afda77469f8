// Constants of the pot that no source gives. Each is a starting value with the range it may move in; a dish or a pot
// trial may replace it. Physical laws and published figures are not here: they live in steam, heat and doneness.

export interface Assumed {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly what: string
}

const a = (value: number, low: number, high: number, unit: string, what: string): Assumed => ({
  value,
  low,
  high,
  unit,
  what,
})

export const assumptions = {
  // Films between the medium and a piece, MODEL section 5: above 500 the number barely matters.
  filmSteam_W_per_m2K: a(1500, 800, 3000, 'W/m2K', 'film on pieces in steam or a rolling boil'),
  filmSimmer_W_per_m2K: a(500, 300, 1000, 'W/m2K', 'film on pieces in a simmer'),
  filmRelease_W_per_m2K: a(400, 200, 800, 'W/m2K', 'film on pieces while the pot cools by itself'),
  filmWarming_W_per_m2K: a(300, 150, 600, 'W/m2K', 'film on pieces while the liquor comes up to the boil'),
  filmAir_W_per_m2K: a(
    18,
    8,
    40,
    'W/m2K',
    'film on pieces waiting beside the pot: still air, and their wet faces steaming',
  ),

  // Wall and lid.
  wallSealed_W_per_K: a(30, 15, 60, 'W/K', 'steam condensing on wall and lid of a sealed pot'),
  wallOpen_W_per_K: a(5, 2, 10, 'W/K', 'wall wetted by liquor in an open pot'),
  dryPanLoss_W_per_K: a(1.2, 0.6, 2.5, 'W/K', 'loss of a hot dry base to the room'),

  // Floor.
  cling_m: a(0.1e-3, 0.05e-3, 0.2e-3, 'm', 'film of liquor that clings to pieces and wall'),
  fullWetting_m: a(1.2e-3, 0.9e-3, 2.3e-3, 'm', 'depth of free liquor that wets the whole floor'),
  baseSpreading_W_per_K: a(0.8, 0.5, 1.5, 'W/K', 'conductivity times thickness of the base'),
  pulse_s: a(15, 8, 30, 's', 'length of a full-power pulse while an electric pot holds its pressure'),

  // Fond, layer, floor deposit.
  fondResistance_m2K_per_W_per_kg_m2: a(
    1.19e-2,
    0.8e-2,
    1.6e-2,
    'm2K/W per kg/m2',
    'resistance of fond: 3.5e-4 m2K/W per gram on 0.034 m2',
  ),
  fondPerMeat: a(
    3.4e-3,
    2e-3,
    5e-3,
    'kg/kg',
    'fond left by browning all over, per kg: 3 g for pieces browned as a cook browns them',
  ),
  fondSoak_s: a(1200, 600, 2400, 's', 'time in which fond under liquor soaks off'),
  layerResistance_m2K_per_W_per_kg_m2: a(
    6e-3,
    3e-3,
    9e-3,
    'm2K/W per kg/m2',
    'resistance of solids dried on the floor',
  ),
  layerHalfViscosity_Pas: a(
    0.1,
    0.04,
    0.3,
    'Pa s',
    'viscosity at which half of what boils dry at the floor stays there',
  ),
  layerWash_s: a(20, 10, 60, 's', 'time in which stirring washes a layer off'),
  mixingThin_s: a(60, 20, 120, 's', 'time in which thin liquor mixes down to the floor'),
  mixingThick_s: a(1800, 600, 3600, 's', 'time in which thick liquor mixes down to the floor'),
  mixingHalfViscosity_Pas: a(0.05, 0.02, 0.1, 'Pa s', 'viscosity halfway between the two'),
  boilViscosityCap: a(3, 2, 5, '1', 'most that thickened serum raises the viscosity seen by boiling'),
  floorResistance_m2K_per_W_per_kg_m2: a(
    6e-3,
    3e-3,
    9e-3,
    'm2K/W per kg/m2',
    'resistance of paste, starch or sugar lying on the floor',
  ),
  floorStirred: a(0.75, 0.5, 0.95, '1', 'share of what lies on the floor that stirring lifts'),

  // Open pot.
  contact_W_per_m2K: a(450, 300, 700, 'W/m2K', 'hot fatted base against a face of food'),
  contactShare: a(0.75, 0.5, 0.9, '1', 'share of a loosely filled floor that food really touches'),
  crowdFrom: a(0.55, 0.4, 0.75, '1', 'share of the floor that food may cover before its steam is trapped'),
  warmedLoose: a(1.15, 1, 2, '1', 'how far a loosely laid piece is warmed, over its one face'),
  warmedCrowded: a(8, 4, 12, '1', 'the same in a crowded pan, where steam condenses all round'),
  crustWater_kg_per_m2: a(0.25, 0.12, 0.5, 'kg/m2', 'water that has to leave a face before it crusts'),
  rewet_s: a(20, 10, 60, 's', 'time in which juice around it wets a crust again'),
  brownTime_s: a(120, 60, 200, 's', 'time in which a dry face at 180 °C browns well'),
  brownDoubling_dK: a(15, 10, 25, 'K', 'rise that doubles the rate of browning'),
  poolDepth_m: a(0.4e-3, 0.2e-3, 1e-3, 'm', 'depth of juice that spreads over the free floor'),
  simmerNet_W: a(230, 120, 400, 'W', 'net heat that goes into vapour in an open simmer'),
  lidded_W: a(45, 20, 90, 'W', 'net heat kept under a lidded simmer'),
  ajarShare: a(0.35, 0.2, 0.6, '1', "share of an open pot's vapour that a lid ajar lets go"),
  openEvaporation_kg_per_m2sPa: a(
    3.2e-8,
    1.5e-8,
    6e-8,
    'kg/(m2 s Pa)',
    'evaporation from liquor below the boil, per pascal of vapour pressure over the room',
  ),

  // Closed pot.
  ventMargin_W: a(60, 20, 150, 'W', 'heat a cook leaves on above what holds a weight valve at its rest'),
  valve_kg_per_sPa: a(
    4.5e-9,
    2.5e-9,
    8e-9,
    'kg/(s Pa)',
    'steam through an open release valve, per pascal of absolute pressure',
  ),
  lidFilm_kg: a(5e-3, 2e-3, 10e-3, 'kg', 'water that hangs under the lid when it is lifted'),
  superheatInside_dK: a(2, 1, 4, 'K', 'most that the inside of a piece stands above saturation'),
  neverAtPressure_s: a(5400, 3600, 7200, 's', 'come-up after which the run gives up'),

  // Pieces.
  meatFatMelts: a(0.3, 0.15, 0.5, '1', "share of a cut's fat that renders in a long braise"),
  meatFatRate_per_s: a(5e-4, 2e-4, 1e-3, '1/s', 'rate at which it renders above 45 °C'),
  gelatinLeaves: a(0.4, 0.2, 0.6, '1', 'share of the gelatin made that leaves the piece for the liquor'),
  firmGives: a(0.1, 0.05, 0.2, '1', 'share of its water that a firm vegetable gives up when soft'),
  softGives: a(0.35, 0.2, 0.5, '1', 'share of its water that a soft vegetable or an onion gives up'),
  leafGives: a(0.5, 0.35, 0.7, '1', 'share of its water that a leafy vegetable or a mushroom gives up'),
  saltDiffusion_m2_per_s: a(2e-9, 1e-9, 3e-9, 'm2/s', 'diffusion of salt into hot food'),
} as const satisfies Record<string, Assumed>

export type AssumptionName = keyof typeof assumptions
/** Values in use for one run. */
export type Constants = Readonly<Record<AssumptionName, number>>

/** The starting values, with some replaced. */
export function constantsWith(changed: Partial<Constants> = {}): Constants {
  const values = {} as Record<AssumptionName, number>
  for (const name of Object.keys(assumptions) as AssumptionName[])
    values[name] = changed[name] ?? assumptions[name].value
  return values
}
