import { defaultKeymap, history, historyField, historyKeymap, isolateHistory, undo } from '@codemirror/commands'
import { EditorState, type Extension, Transaction } from '@codemirror/state'
import { EditorView, keymap, placeholder } from '@codemirror/view'
import { useEffect, useLayoutEffect, useRef } from 'react'
import type { Edit, Span } from '../../../core/findings/index.ts'
import { type Shown, show, shownMarks } from './marks.ts'

/** What the bench may ask of the sheet's editor. */
export interface SheetHand {
  /** An edit that can be undone on its own. */
  readonly edit: (edits: readonly Edit[]) => void
  /** Puts another text on the sheet, as an edit that can be undone. */
  readonly replace: (text: string) => void
  /** Brings words into sight and the caret to their start. */
  readonly reveal: (span: Span, focus: boolean) => void
  readonly undo: () => void
  /** Upper edge of the line a place stands on, in the page's pixels from the top of the window. */
  readonly top: (at: number) => number
  readonly measure: () => void
  /** The sheet with its undo, to be laid aside while the bench is away. */
  readonly aside: () => Aside
}

/** An editor's state as plain data. */
export type Aside = { readonly [name: string]: unknown }

export interface EditorProps {
  readonly text: string
  /** What was laid aside on an earlier visit. */
  readonly aside: Aside | null
  readonly shown: Shown
  readonly onText: (text: string) => void
  /** `byHand` when the caret was put there, not carried along by typing. */
  readonly onCaret: (at: number, byHand: boolean) => void
  /** Something moved: lines grew, the window changed, fonts came. */
  readonly onMoved: () => void
  readonly onHover: (note: string | null) => void
  readonly onReady: (hand: SheetHand | null) => void
  readonly commands: Commands
}

export interface Commands {
  readonly nextNote: () => void
  readonly lastNote: () => void
  readonly cure: () => void
  readonly keep: () => void
}

const pasteHere = 'Paste a manuscript here, as it comes from the word processor, or begin to type.'

/** The manuscript as an editor. The text in it is the truth; the page hears of every change. */
export function Editor(props: EditorProps) {
  const place = useRef<HTMLDivElement>(null)
  const view = useRef<EditorView | null>(null)
  const latest = useRef(props)
  useLayoutEffect(() => {
    latest.current = props
  })

  useEffect(() => {
    const { text, aside } = latest.current
    const extensions = extensionsFor(latest)
    const state = aside
      ? EditorState.fromJSON(aside, { extensions }, { history: historyField })
      : EditorState.create({ doc: text, extensions })
    const editor = new EditorView({ state, parent: place.current! })
    if (editor.state.doc.toString() !== text) replaceAll(editor, text)
    view.current = editor
    latest.current.onReady(handOf(editor))
    return () => {
      latest.current.onReady(null)
      editor.destroy()
      view.current = null
    }
  }, [])

  const { shown } = props
  useEffect(() => {
    view.current?.dispatch({ effects: show.of(shown) })
  }, [shown])

  return <div className="editor" ref={place} />
}

function extensionsFor(latest: { readonly current: EditorProps }): Extension {
  const run = (name: keyof Commands) => () => {
    latest.current.commands[name]()
    return true
  }
  return [
    history(),
    shownMarks,
    keymap.of([
      { key: 'F8', run: run('nextNote'), shift: run('lastNote') },
      { key: 'Mod-.', run: run('cure') },
      { key: 'Mod-s', run: run('keep'), preventDefault: true },
      ...defaultKeymap,
      ...historyKeymap,
    ]),
    EditorView.lineWrapping,
    placeholder(pasteHere),
    EditorView.contentAttributes.of({
      'aria-label': 'Manuscript',
      spellcheck: 'true',
      autocapitalize: 'sentences',
      autocorrect: 'on',
    }),
    // The head and the strip stand before the page: what is brought into sight has to clear them.
    EditorView.scrollMargins.of(() => ({ top: 24, bottom: stripHeight() + 24 })),
    EditorView.updateListener.of((update) => {
      if (update.docChanged) latest.current.onText(update.state.doc.toString())
      if (update.selectionSet || (update.focusChanged && update.view.hasFocus)) {
        const byHand = update.transactions.some((transaction) => transaction.isUserEvent('select'))
        latest.current.onCaret(update.state.selection.main.head, byHand && !update.docChanged)
      }
      if (update.geometryChanged || update.viewportChanged || update.docChanged) latest.current.onMoved()
    }),
    EditorView.domEventHandlers({
      mouseover: (event) => latest.current.onHover(noteUnder(event.target)),
      mouseleave: () => latest.current.onHover(null),
    }),
  ]
}

function noteUnder(target: EventTarget | null): string | null {
  const words = target instanceof Element ? target.closest('[data-note]') : null
  return words?.getAttribute('data-note') ?? null
}

const stripHeight = (): number => document.querySelector('.strip')?.getBoundingClientRect().height ?? 0

function handOf(editor: EditorView): SheetHand {
  return {
    edit: (edits) => {
      editor.dispatch({
        changes: edits.map(({ from, to, insert }) => ({ from, to, insert })),
        annotations: isolateHistory.of('full'),
      })
    },
    replace: (text) => replaceAll(editor, text),
    reveal: ({ from }, focus) => {
      const anchor = Math.min(from, editor.state.doc.length)
      editor.dispatch({
        selection: { anchor },
        effects: EditorView.scrollIntoView(anchor, { y: 'nearest', yMargin: 96 }),
      })
      if (focus) editor.focus()
    },
    undo: () => {
      undo(editor)
    },
    top: (at) => {
      const place = Math.min(at, editor.state.doc.length)
      return editor.coordsAtPos(place, 1)?.top ?? editor.documentTop + editor.lineBlockAt(place).top
    },
    measure: () => editor.requestMeasure(),
    aside: () => editor.state.toJSON({ history: historyField }) as Aside,
  }
}

/** Replaces the stretch that differs, so that the caret and the undo history stay where they were. */
function replaceAll(editor: EditorView, text: string): void {
  const now = editor.state.doc.toString()
  const shorter = Math.min(now.length, text.length)
  let head = 0
  while (head < shorter && now.charCodeAt(head) === text.charCodeAt(head)) head++
  let tail = 0
  while (tail < shorter - head && now.charCodeAt(now.length - 1 - tail) === text.charCodeAt(text.length - 1 - tail))
    tail++
  if (head === now.length && head === text.length) return
  editor.dispatch({
    changes: { from: head, to: now.length - tail, insert: text.slice(head, text.length - tail) },
    annotations: [isolateHistory.of('full'), Transaction.userEvent.of('input.replace')],
  })
}
