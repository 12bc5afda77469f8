/** Kitchen character: what a food does in a pot. */
export type Character =
  | 'collagen cut'
  | 'lean meat'
  | 'poultry dark'
  | 'poultry light'
  | 'sausage'
  | 'fish'
  | 'egg'
  | 'firm vegetable'
  | 'soft vegetable'
  | 'leafy vegetable'
  | 'aromatic'
  | 'mushroom'
  | 'fruit'
  | 'starch'
  | 'grain'
  | 'pasta'
  | 'pulse'
  | 'cooked pulse'
  | 'thin liquid'
  | 'thick liquid'
  | 'paste'
  | 'dairy'
  | 'fat'
  | 'acid'
  | 'alcohol'
  | 'spice'
  | 'herb'
  | 'salt'
  | 'sweetener'
  | 'thickener'
  | 'leavening'
  | 'nut'
  | 'seasoning'
  | 'other'

/** Mass fractions of the edible portion, kg per kg wet. They sum to 1 within rounding; salt is part of ash. */
export interface Composition {
  readonly water: number
  readonly protein: number
  readonly fat: number
  /** Carbohydrate by difference, fibre not included. */
  readonly carbohydrate: number
  readonly fibre: number
  readonly ash: number
  readonly alcohol: number
}

/** Rates of doneness a food follows; see core/doneness. */
export type Kinetics =
  | {
      readonly kind: 'collagen'
      readonly cut: 'chuck' | 'short-rib' | 'pork-shoulder' | 'lamb-shoulder' | 'chicken-thigh'
    }
  | { readonly kind: 'plant'; readonly tissue: 'carrot' | 'potato' | 'onion' | 'fibrous' | 'bean' }
  | { readonly kind: 'lean' }

export interface HouseholdWeight {
  /** Unit code of the measure ("cup", "tbsp", "slice", …) or "each" for a count. */
  readonly unit: string
  /** Form the weight is for: "chopped", "sliced", "large"; null for the plain measure. */
  readonly form: string | null
  readonly low_kg: number
  readonly high_kg: number
  /** Source key. */
  readonly source: string
}

/** What is known of one ingredient. */
export interface Food {
  /** Kebab case, stable. */
  readonly id: string
  /** As a cook writes it. */
  readonly name: string
  /** Other ways to write it, lower case, singular. */
  readonly also: readonly string[]
  readonly character: Character
  readonly composition: Composition
  /** Part of carbohydrate that is starch and can thicken; 0 when none. */
  readonly starch: number
  readonly sugars: number
  /** Sodium chloride, kg per kg. */
  readonly salt: number
  /** Collagen of the wet edible mass, kg per kg; 0 for plants. */
  readonly collagen: number
  /** Suspended solids that thicken a liquor and settle on the floor (puree, paste), kg per kg. */
  readonly suspended: number
  readonly kinetics: Kinetics | null
  /** Usual piece when a manuscript says no cut: smallest dimension and shape. */
  readonly usualPiece: { readonly shape: 'slab' | 'cylinder' | 'sphere' | 'brick'; readonly size_m: number } | null
  /** Net water taken up when cooked through, kg per kg raw (rice, beans, pasta); 0 when none. */
  readonly absorbs: number
  /** Density of the food itself (not of a heaped measure), kg/m3. */
  readonly density_kg_per_m3: number
  readonly measures: readonly HouseholdWeight[]
  /** Edible part of what is bought, kg per kg. */
  readonly edible: number
  /** Allergens by the US nine and EU fourteen: keys of data/larder/allergens. "check" marks the ones to read on the label. */
  readonly allergens: readonly string[]
  readonly checkLabel: readonly string[]
  /** Source key of the composition, and the record's number in it. */
  readonly source: string
  /** Titratable acid (acetic, citric, lactic, malic), kg per kg; part of carbohydrate. Absent when none counts. */
  readonly acid?: number
  /** Rate of softening as a multiple of the tissue named in `kinetics`; 1 when absent. Red lentils soften faster than beans. */
  readonly pace?: number
  /** What rules ask about: "beef", "poultry", "ground-meat", "bone-in", "bean-toxin", "tinned", … See docs/models/larder.md. */
  readonly tags?: readonly string[]
  /** Where figures that are not the record's own come from, by field: { collagen: "assumed: …" }. */
  readonly basis?: Readonly<Record<string, string>>
}
