import type { HouseholdWeight } from './food.ts'

// "diced" in a manuscript and "chopped" in a table fill a cup alike.
const alike: Readonly<Record<string, string>> = {
  diced: 'chopped',
  cubed: 'chopped',
  cubes: 'chopped',
  dice: 'chopped',
  pieces: 'chopped',
  chunks: 'chopped',
  minced: 'chopped',
  'finely chopped': 'chopped',
  grated: 'shredded',
  slices: 'sliced',
  halved: 'halves',
  packed: 'packed',
}

const wordsOf = (form: string): string[] =>
  form
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter(Boolean)
    .map((word) => alike[word] ?? word)

/** Of the weights, those for the form asked; else the plain ones; else all, whose spread is then the answer's. */
export function bestForms(weights: readonly HouseholdWeight[], form: string | null): readonly HouseholdWeight[] {
  if (form !== null) {
    const asked = wordsOf(form)
    const fits = weights.filter((m) => m.form !== null && wordsOf(m.form).some((word) => asked.includes(word)))
    if (fits.length > 0) return fits
  }
  const plain = weights.filter((m) => m.form === null)
  return plain.length > 0 ? plain : weights
}
