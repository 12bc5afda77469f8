import type { Character } from '../../../src/core/larder/food.ts'

/** Unit, form ('' when plain), grams low, grams high, where from. The source is printed with the weight. */
export type Weight = readonly [unit: string, form: string, low_g: number, high_g: number, from: string]

/** A figure that is not the record's own, and where it comes from. */
export type Stated = readonly [value: number, from: string]

/** One line of the hand-kept selection: what the tables cannot say about an ingredient. */
export interface Entry {
  readonly id: string
  /** As a cook writes it; the id with spaces when absent. */
  readonly name?: string
  /** Other names, parted by commas, singular. A leading "=" matches the whole phrase only ("=peppers"). */
  readonly also?: string
  readonly character: Character
  /** NDB number in USDA SR28, or F and the number in Foundation Foods. */
  readonly record: string
  /** Further records whose household weights count, for the spread between forms. */
  readonly more?: readonly string[]
  readonly kinetics?: string
  /** 'brick 40': shape and smallest dimension in mm of the usual piece, assumed. */
  readonly piece?: string
  /** kg per kg of the wet FAT-FREE mass, as papers print it; the script turns it into the wet edible mass. */
  readonly collagen?: Stated
  /** 'solids': total solids less fat and salt; 'solids-less-sugars': less sugars too. */
  readonly suspended?: 'solids' | 'solids-less-sugars' | Stated
  /** Used where the record has no figure; 'rest' is carbohydrate less fibre and sugars. */
  readonly starch?: 'rest' | Stated
  /** Used where the record has no figure. */
  readonly sugars?: Stated
  readonly fibre?: Stated
  /** Instead of sodium x 2.54, where the sodium is not common salt or the cure is ours. */
  readonly salt?: Stated
  readonly acid?: Stated
  /** Share of water stirred into what the record describes. */
  readonly dilute?: Stated
  /** Where a proximate sum far from 100 g has to go; without it the script refuses the record. */
  readonly remainder?: 'carbohydrate' | 'ash' | 'water'
  /** NDB number of the raw food in the boiled yields, 'raw/boiled' for a pair of records, or a stated figure.
   * Pulses, grains and pasta need one. */
  readonly absorbs?: string | Stated
  readonly edible?: Stated
  /** Weights beside or instead of the record's own; the same unit and form replaces. */
  readonly weights?: readonly Weight[]
  /** The record's own household weights do not fit this food. */
  readonly ownWeights?: false
  readonly allergens?: string
  readonly checkLabel?: string
  readonly tags?: string
  readonly note?: string
}

export const common = 'common practice, no source'
export const assumed = (why: string): string => `assumed: ${why}`
