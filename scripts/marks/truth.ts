// The labelled texts, as the labelling guide describes them.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

export interface TruthMeasure {
  low: number
  high: number
  unit: string | null
}

export interface TruthIngredient {
  line: string
  low: number | null
  high: number | null
  unit: string | null
  pack: TruthMeasure | null
  also: TruthMeasure[]
  item: string
  prep: string | null
  optional: boolean
  to_taste: boolean
}

export interface TruthOperation {
  verb: string[]
  minutes: [number, number] | null
  temp_C: [number, number] | null
  heat: string | null
  pressure: string | null
  release: string | null
  release_minutes: number | null
}

export interface TruthSentence {
  text: string
  ops: TruthOperation[]
}

export interface TruthFault {
  kind: string
  words: string
  why: string
}

export interface Truth {
  file: string
  yield: TruthMeasure | null
  ingredients: TruthIngredient[]
  sentences: TruthSentence[]
  faults?: TruthFault[]
}

export interface Labelled {
  readonly truth: Truth
  readonly text: string
  /** Collection the text comes from: the first part of its name. */
  readonly source: string
}

/** Texts and labels of one set in a folder: FOLDER/set.json and FOLDER/set/*.txt. */
export function loadSet(folder: string, set: string): Labelled[] {
  const labels = JSON.parse(readFileSync(join(folder, `${set}.json`), 'utf8')) as Truth[]
  return labels.map((truth) => ({
    truth,
    text: readFileSync(join(folder, set, truth.file), 'utf8'),
    source: truth.file.split('-')[0]!,
  }))
}

export interface Place {
  readonly from: number
  readonly to: number
}

/**
 * Places of labelled pieces, found one after the other; a piece that stands earlier is looked for from the start. A
 * break of the line counts as a blank.
 */
export function placesOf(given: string, wanted: readonly string[]): (Place | null)[] {
  let at = 0
  const text = given.replace(/\n/g, ' ')
  const pieces = wanted.map((piece) => piece.replace(/\n/g, ' '))
  return pieces.map((piece) => {
    let from = text.indexOf(piece, at)
    if (from < 0) from = text.indexOf(piece)
    if (from < 0) return null
    at = from + piece.length
    return { from, to: from + piece.length }
  })
}

export const overlap = (a: Place, b: Place): number => Math.max(0, Math.min(a.to, b.to) - Math.max(a.from, b.from))
