/** An allergen key and its place in the two lists; null when that list leaves it out. */
export interface Allergen {
  readonly key: string
  readonly name: string
  /** Number in the US nine: FALCPA (Pub. L. 108-282, 2004); sesame by the FASTER Act (Pub. L. 117-11, 2021). */
  readonly us: number | null
  /** Number in the EU fourteen: Regulation (EU) No 1169/2011, Annex II, as amended by 78/2014. */
  readonly eu: number | null
  /** How the two lists name the group. */
  readonly usGroup: string | null
  readonly euGroup: string | null
}

const nut = (key: string, name: string, us = true, eu = true): Allergen => ({
  key,
  name,
  us: us ? 5 : null,
  eu: eu ? 8 : null,
  usGroup: us ? 'Tree nuts' : null,
  euGroup: eu ? 'Nuts' : null,
})

const gluten = (key: string, name: string, us: number | null = null): Allergen => ({
  key,
  name,
  us,
  eu: 1,
  usGroup: us === null ? null : 'Wheat',
  euGroup: 'Cereals containing gluten',
})

const own = (
  key: string,
  name: string,
  us: number | null,
  usGroup: string | null,
  eu: number | null,
  euGroup: string | null,
) => ({ key, name, us, eu, usGroup, euGroup }) satisfies Allergen

// Nuts are named one by one because both laws want the species on the label. Pine nuts stand in the US guidance list
// of January 2025 (from memory) and not in Annex II; coconut and chestnut stand in neither.
export const allergens: readonly Allergen[] = [
  own('milk', 'milk', 1, 'Milk', 7, 'Milk'),
  own('egg', 'egg', 2, 'Egg', 3, 'Eggs'),
  own('fish', 'fish', 3, 'Fish', 4, 'Fish'),
  own('crustacean', 'crustaceans', 4, 'Crustacean shellfish', 2, 'Crustaceans'),
  own('mollusc', 'molluscs', null, null, 14, 'Molluscs'),
  nut('almond', 'almonds'),
  nut('hazelnut', 'hazelnuts'),
  nut('walnut', 'walnuts'),
  nut('cashew', 'cashews'),
  nut('pecan', 'pecans'),
  nut('brazil-nut', 'Brazil nuts'),
  nut('pistachio', 'pistachios'),
  nut('macadamia', 'macadamias'),
  nut('pine-nut', 'pine nuts', true, false),
  gluten('wheat', 'wheat', 6),
  gluten('rye', 'rye'),
  gluten('barley', 'barley'),
  gluten('oats', 'oats'),
  own('peanut', 'peanuts', 7, 'Peanuts', 5, 'Peanuts'),
  own('soy', 'soya', 8, 'Soybeans', 6, 'Soybeans'),
  own('sesame', 'sesame', 9, 'Sesame', 11, 'Sesame seeds'),
  own('celery', 'celery', null, null, 9, 'Celery'),
  own('mustard', 'mustard', null, null, 10, 'Mustard'),
  own('sulphite', 'sulphur dioxide and sulphites', null, null, 12, 'Sulphur dioxide and sulphites'),
  own('lupin', 'lupin', null, null, 13, 'Lupin'),
]
