import { type Extension, type Range, StateEffect, StateField, type Text } from '@codemirror/state'
import { Decoration, type DecorationSet, EditorView, WidgetType } from '@codemirror/view'
import type { Span } from '../../../core/findings/index.ts'
import type { LineKind, Note, Reading } from '../reading.ts'

/** What the sheet shows around the words. */
export interface Shown {
  readonly reading: Reading
  /** Words and step of the moment the strip's cursor is at. */
  readonly moment: { readonly words: Span; readonly step: Span } | null
  /** Key of the note that is looked at. */
  readonly active: string | null
  /** Notes fold under their line where there is no margin; the page fills the places that it is handed. */
  readonly folded: Folds | null
}

export interface Folds {
  readonly opened: (key: string, place: HTMLElement) => void
  readonly closed: (key: string, place: HTMLElement) => void
}

export const show = StateEffect.define<Shown>()

const nothing: Shown = { reading: { notes: [], kinds: [] }, moment: null, active: null, folded: null }

/** Lines and words are marked anew when the page shows something else, and carried along while keys are struck. */
const shownField = StateField.define<{ shown: Shown; marks: DecorationSet }>({
  create: () => ({ shown: nothing, marks: Decoration.none }),
  update: (value, transaction) => {
    for (const effect of transaction.effects)
      if (effect.is(show)) return { shown: effect.value, marks: marksOf(transaction.state.doc, effect.value) }
    if (!transaction.docChanged) return value
    return { shown: value.shown, marks: value.marks.map(transaction.changes) }
  },
  provide: (field) => EditorView.decorations.from(field, (value) => value.marks),
})

export const shownMarks: Extension = shownField

function marksOf(doc: Text, shown: Shown): DecorationSet {
  const kinds = new Map<number, LineKind>()
  for (const { from, kind } of shown.reading.kinds) {
    const line = doc.lineAt(Math.min(from, doc.length)).from
    if (!kinds.has(line)) kinds.set(line, kind)
  }
  const ranges: Range<Decoration>[] = [...lineMarks(doc, kinds, shown), ...wordMarks(doc, shown)]
  if (shown.folded) ranges.push(...foldMarks(doc, shown.reading.notes, shown.folded))
  return Decoration.set(ranges, true)
}

function* lineMarks(doc: Text, kinds: ReadonlyMap<number, LineKind>, { moment }: Shown): Iterable<Range<Decoration>> {
  // The empty sheet's one line says what to do, and needs its full height.
  if (doc.length === 0) return
  for (let n = 1; n <= doc.lines; n++) {
    const line = doc.line(n)
    const kind = kinds.get(line.from) ?? (line.text.trim() === '' ? 'blank' : 'plain')
    const now = moment && line.from < moment.step.to && line.to > moment.step.from
    const name = `l-${kind}${now ? ' l-now' : ''}`
    if (name !== 'l-plain') yield Decoration.line({ class: name }).range(line.from)
  }
}

function* wordMarks(doc: Text, { reading, moment, active }: Shown): Iterable<Range<Decoration>> {
  const within = (from: number, to: number) => from < to && to <= doc.length
  if (moment && within(moment.words.from, moment.words.to))
    yield Decoration.mark({ class: 'w-now' }).range(moment.words.from, moment.words.to)
  for (const note of reading.notes) {
    if (note.from === null || note.to === null || !within(note.from, note.to)) continue
    const on = note.key === active ? ' w-on' : ''
    const attributes = { 'data-note': note.key }
    yield Decoration.mark({ class: `w-note w-${note.finding.severity}${on}`, attributes }).range(note.from, note.to)
  }
}

/** One place under a line for all the notes about it, in their order. */
function* foldMarks(doc: Text, notes: readonly Note[], folds: Folds): Iterable<Range<Decoration>> {
  const seen = new Set<string>()
  for (const note of notes) {
    if (seen.has(note.key)) continue
    seen.add(note.key)
    // What is about the whole manuscript stands under its first line.
    const line = doc.lineAt(Math.min(note.from ?? 0, doc.length))
    yield Decoration.widget({ widget: new Fold(note.key, folds), block: true, side: 1 }).range(line.to)
  }
}

class Fold extends WidgetType {
  readonly key: string
  readonly folds: Folds
  constructor(key: string, folds: Folds) {
    super()
    this.key = key
    this.folds = folds
  }

  override eq(other: Fold): boolean {
    return other.key === this.key && other.folds === this.folds
  }

  override get estimatedHeight(): number {
    return 64
  }

  override toDOM(): HTMLElement {
    const place = document.createElement('div')
    place.className = 'fold'
    this.folds.opened(this.key, place)
    return place
  }

  override destroy(place: HTMLElement): void {
    this.folds.closed(this.key, place)
  }

  override ignoreEvent(): boolean {
    return true
  }
}
