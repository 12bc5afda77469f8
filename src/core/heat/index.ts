// Thermal properties from composition; warming of pieces; boiling and convection at the base.

// What a food is made of

export { type Component, type ComponentProperties, componentProperties } from './components.ts'
export {
  type FreezingModel,
  freezingEnthalpy_J_per_kg,
  freezingModel,
  frozenTemp_K,
  iceLatent_J_per_kg,
  iceShare,
} from './freezing.ts'
export { type Fractions, levy, type ThermalProperties, thermalProperties } from './mixture.ts'

// Warming, exactly

export { biotNumber, fourierNumber, lumpedTemp_K } from './lumped.ts'
export {
  type Body,
  bodyCentreLeft,
  bodyMeanLeft,
  centreTime_s,
  coefficient,
  eigenvalues,
  type PlainShape,
  seriesLeft,
  seriesMeanLeft,
} from './series.ts'

// Warming, step by step

export { makePieceSolver, PieceBody, type PieceOptions, suggestedNodes } from './piece.ts'
export { firstZero, type PieceGeometry, type PieceShape, pieceGeometry } from './shape.ts'

// The floor of the pot

export {
  type BoilingProperties,
  boilingCoefficient_W_per_m2K3,
  boilingSuperheat_dK,
  boilingWater,
  criticalHeatFlux_W_per_m2,
  nucleateBoilingFlux_W_per_m2,
  rohsenow,
  stainlessSurface,
  zuber,
  zuberConstant,
} from './boiling.ts'
export { globeDropkin, hollands, layerNusseltExtrapolated, naturalConvection_W_per_m2K } from './convection.ts'

// What flows and settles

export { settlingTime_s, stokesRise_m_per_s } from './settling.ts'
export {
  type AssumedValue,
  apparentViscosity_Pas,
  serumViscosityFactor,
  starchFactor,
  type Thickeners,
  tomatoViscosity_Pas,
  viscosityAssumptions,
} from './viscosity.ts'
