// Water and steam, air, altitude.

// The saturation line

export { saturationPressure_Pa, saturationSlope_Pa_per_K, saturationTemp_K } from './saturation-line.ts'

// Boiling water and dry saturated steam

export {
  latentHeat_J_per_kg,
  saturatedLiquidDensity_kg_per_m3,
  saturatedLiquidEnergy_J_per_kg,
  saturatedLiquidEnthalpy_J_per_kg,
  saturatedLiquidExpansion_per_K,
  saturatedLiquidHeatCapacity_J_per_kgK,
  saturatedVapourDensity_kg_per_m3,
  saturatedVapourEnergy_J_per_kg,
  saturatedVapourEnthalpy_J_per_kg,
} from './saturated.ts'

// Any liquid, any steam

export {
  liquidEnthalpy_J_per_kg,
  liquidHeatCapacity_J_per_kgK,
  liquidState,
  liquidTemp_K,
  liquidVolume_m3_per_kg,
  vapourEnthalpy_J_per_kg,
  vapourHeatCapacity_J_per_kgK,
  vapourState,
  vapourVolume_m3_per_kg,
  type WaterState,
} from './regions.ts'

// How it flows, conducts and beads

export {
  saturatedLiquidConductivity_W_per_mK,
  saturatedLiquidPrandtl,
  saturatedLiquidViscosity_Pas,
  surfaceTension_N_per_m,
  viscosity_Pas,
  waterConductivity_W_per_mK,
} from './transport.ts'

// The air outside

export {
  boilingPoint_K,
  geopotentialFromHeight_m,
  heightFromGeopotential_m,
  standardAltitude_m,
  standardPressure_Pa,
} from './atmosphere.ts'

// The air inside

export {
  airMass_kg,
  airMolar_kg_per_mol,
  airPressure_Pa,
  airShare,
  headspaceTemp_K,
  waterMolar_kg_per_mol,
} from './headspace.ts'

// The same for inner loops

export { type SteamTables, steamTables } from './tables.ts'
