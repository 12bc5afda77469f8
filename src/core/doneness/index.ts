// How done: rates that integrate over temperature, words, and what safety rules ask.

// Rates in general

export {
  activation_J_per_mol,
  activationFromTimes_J_per_mol,
  arrheniusRate_per_s,
  cookValueRate,
  gas_J_per_molK,
  matchingTemp_K,
  rateFromReduction_per_s,
  type Spread,
  zFromActivation_dK,
  zFromTimes_dK,
  zRate_per_s,
} from './kinetics.ts'

// Meat

export {
  type Cut,
  collagenAt100,
  collagenBand,
  collagenRate_per_s,
  collagenTable,
  collagenTurned,
  collagenZ_dK,
  type MeatWord,
  meatWord,
  meatWords,
  tenderFrom,
} from './collagen.ts'
export {
  meatWaterHeld,
  meatWaterRate_per_s,
  meatWaterRateBand,
  meatWaterRaw,
  myoglobinRate_per_s,
} from './meat.ts'

// Plants

export {
  acidPace,
  fastShare,
  type PlantWord,
  plantBand,
  plantFirmness,
  plantRate_per_s,
  plantTable,
  plantWord,
  plantWords,
  slowTimes,
  type Tissue,
  type TissueKinetics,
  tissues,
  type WordFrom,
} from './plants.ts'
export {
  riceAt100,
  riceRate_per_s,
  type StarchKind,
  starchStep,
  starchSwellRate_per_s,
  starchSwells,
  swelling,
} from './starch.ts'

// Colour

export { browning, browningRate_per_s, chlorophyllRate_per_s, greenPerPH } from './colour.ts'

// Safety

export {
  type CoolingVerdict,
  coolingRule,
  coolingVerdict,
  type HoldRule,
  holdMet,
  holdRules,
  lectinRule,
  longestStay_s,
} from './food-code.ts'
export {
  type LethalityColumn,
  lethalityFrom_K,
  lethalityRate_per_s,
  lethalTime_s,
  sporeRate,
} from './lethality.ts'
