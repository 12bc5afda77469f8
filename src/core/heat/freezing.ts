import { requireRange } from '../numerics/index.ts'
import { type Fractions, thermalProperties } from './mixture.ts'

/**
 * How a food freezes, as closed forms that can be run both ways. Below its initial freezing point a food is brine
 * that gets stronger as ice leaves it, so the latent heat spreads over a range: ice at t °C is a share 1 − tf/t of
 * the water that can freeze (t and tf both below zero).
 */
export interface FreezingModel {
  /** Where the first ice forms, K. */
  readonly freezing_K: number
  /** Latent heat of all water that can freeze, J per kg of food. */
  readonly latent_J_per_kg: number
  /** Heat capacity of the frozen food without latent heat. */
  readonly frozenCp_J_per_kgK: number
  /** Conductivity when all is ice that can be. */
  readonly frozenK_W_per_mK: number
}

/** Latent heat of ice at 0 °C, J/kg. Its fall of 2 J/kg per mK below is left out. */
export const iceLatent_J_per_kg = 333.6e3

/**
 * The freezing of a food by what it consists of. Water bound to protein (0.4 kg per kg) does not freeze. The initial
 * freezing point is −1.0 °C unless told: meat −0.9 to −1.7, most vegetables −0.6 to −1.4 (memory).
 */
export function freezingModel(food: Fractions, freezing_K = 272.15): FreezingModel {
  requireRange('initial freezing point', freezing_K, 263.15, 273.149, 'K')
  const free = Math.max(0, food.water - 0.4 * food.protein)
  const frozen = thermalProperties({ ...food, water: food.water - free, ice: (food.ice ?? 0) + free }, 258.15)
  return {
    freezing_K,
    latent_J_per_kg: free * iceLatent_J_per_kg,
    frozenCp_J_per_kgK: frozen.cp_J_per_kgK,
    frozenK_W_per_mK: frozen.k_W_per_mK,
  }
}

/** Share of the freezable water that is ice at a temperature. */
export function iceShare(m: FreezingModel, temperature_K: number): number {
  return temperature_K >= m.freezing_K ? 0 : 1 - (m.freezing_K - 273.15) / (temperature_K - 273.15)
}

/**
 * Enthalpy over the initial freezing point: negative when frozen.
 *
 * Shape    cp·(t − tf) above; frozen cp·(t − tf) − latent·(1 − tf/t) below, t and tf in °C
 * Range    203.15 ≤ temperature_K ≤ 473.15
 * Outside  RangeError; nothing is clamped
 * Error    of the model about 5 % (one salt for all solutes, constant heat capacities)
 * Source   schwartzberg
 * Check    check/heat/freezing.csv; round trip through frozenTemp_K; continuous at the freezing point
 */
export function freezingEnthalpy_J_per_kg(m: FreezingModel & { cp_J_per_kgK: number; temperature_K: number }): number {
  requireRange('temperature', m.temperature_K, 203.15, 473.15, 'K')
  const over = m.temperature_K - m.freezing_K
  if (over >= 0) return m.cp_J_per_kgK * over
  return m.frozenCp_J_per_kgK * over - m.latent_J_per_kg * iceShare(m, m.temperature_K)
}

/**
 * Temperature from that enthalpy.
 *
 * Shape    root of the quadratic that freezingEnthalpy_J_per_kg makes in t
 * Range    any enthalpy that the other direction gives
 * Outside  RangeError when the answer leaves 203.15–473.15 K; nothing is clamped
 * Error    rounding
 * Source   schwartzberg
 * Check    round trip through freezingEnthalpy_J_per_kg
 */
export function frozenTemp_K(m: FreezingModel & { cp_J_per_kgK: number; enthalpy_J_per_kg: number }): number {
  const T = tempFromEnthalpy(m, m.cp_J_per_kgK, m.enthalpy_J_per_kg)
  requireRange('temperature', T, 203.149, 473.151, 'K')
  return T
}

/** @internal The same without check, for the step. */
export function tempFromEnthalpy(m: FreezingModel, cp_J_per_kgK: number, enthalpy_J_per_kg: number): number {
  if (enthalpy_J_per_kg >= 0) return m.freezing_K + enthalpy_J_per_kg / cp_J_per_kgK
  const tf = m.freezing_K - 273.15
  // c t² − (c tf + L + h) t + L tf = 0; of its roots the negative one is the temperature.
  const b = m.frozenCp_J_per_kgK * tf + m.latent_J_per_kg + enthalpy_J_per_kg
  const root = Math.sqrt(b * b - 4 * m.frozenCp_J_per_kgK * m.latent_J_per_kg * tf)
  return 273.15 + (b - root) / (2 * m.frozenCp_J_per_kgK)
}

/** @internal Heat capacity with the latent heat of the moment, J/(kg K), of a layer at T that holds h. */
export function apparentCp(
  m: FreezingModel,
  cp_J_per_kgK: number,
  temperature_K: number,
  enthalpy_J_per_kg: number,
): number {
  if (enthalpy_J_per_kg >= 0) return cp_J_per_kgK
  const t = temperature_K - 273.15
  return m.frozenCp_J_per_kgK + (m.latent_J_per_kg * (273.15 - m.freezing_K)) / (t * t)
}
