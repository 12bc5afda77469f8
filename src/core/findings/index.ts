// One shape for everything Underlid has to say about a manuscript, whether the reader asks it (a query),
// the run meets it (a burn stop) or a proof rule raises it. One place on screen shows them all.

/** Half-open place in the manuscript, in UTF-16 code units: `text.slice(from, to)`. */
export interface Span {
  readonly from: number
  readonly to: number
}

export type Severity = 'blocking' | 'warning' | 'hint'

/** An edit that would settle the finding, ready to be applied with one keystroke. */
export interface Cure {
  /** What the link says, as an order: "Write 1½ hours". */
  readonly label: string
  readonly edits: readonly Edit[]
}

export interface Edit extends Span {
  readonly insert: string
}

export interface Finding {
  /** Stable, tested, in kebab case: `listed-unused`. Messages may be reworded, codes not. */
  readonly code: string
  readonly severity: Severity
  /** The words it is about; null when it is about the whole manuscript or about what is not there. */
  readonly span: Span | null
  /** The finding in a few words, printed bold: "55 minutes will not do." */
  readonly title: string
  /** The figures and the reason, in sentences. May be empty. */
  readonly message: string
  /** Where the claim comes from: a source key, "the pot's card", "assumed", "common practice, no source", "the words". */
  readonly source: string
  /** What to do, in words; null when it cannot be said. */
  readonly advice: string | null
  readonly cure: Cure | null
}

const weight: Record<Severity, number> = { blocking: 0, warning: 1, hint: 2 }

/** Worst first, then in the order of the manuscript; findings about no words come last within their severity. */
export function bySeverityThenPlace(a: Finding, b: Finding): number {
  return (
    weight[a.severity] - weight[b.severity] ||
    (a.span?.from ?? Number.MAX_SAFE_INTEGER) - (b.span?.from ?? Number.MAX_SAFE_INTEGER)
  )
}

/** In the order of the manuscript, worst first at the same place. */
export function byPlace(a: Finding, b: Finding): number {
  return (
    (a.span?.from ?? Number.MAX_SAFE_INTEGER) - (b.span?.from ?? Number.MAX_SAFE_INTEGER) ||
    weight[a.severity] - weight[b.severity]
  )
}

/** Applies a cure to the text. Edits are taken from the end so that earlier offsets stay true. */
export function applyCure(text: string, cure: Cure): string {
  return [...cure.edits]
    .sort((a, b) => b.from - a.from)
    .reduce((now, edit) => now.slice(0, edit.from) + edit.insert + now.slice(edit.to), text)
}
