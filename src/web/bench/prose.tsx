import type { ReactNode } from 'react'
import type { LineKind } from './reading.ts'

interface ProseProps {
  readonly text: string
  /** Kinds of its lines by where they start; without it the first line is the title. */
  readonly kinds?: ReadonlyMap<number, LineKind>
  /** What stands beside or under a line. */
  readonly beside?: (from: number, to: number) => ReactNode
}

/** A manuscript to be read, set like the sheet: for revisions, for print, and while the editor is on its way. */
export function Prose({ text, kinds, beside }: ProseProps) {
  let from = 0
  return (
    <div className="prose">
      {text.split('\n').map((line, n) => {
        const start = from
        from += line.length + 1
        const kind = kinds?.get(start) ?? plainKind(line, n)
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
          <div className="prose-row" key={n}>
            <p className={`l-${kind}`}>{line}</p>
            {beside?.(start, start + line.length)}
          </div>
        )
      })}
    </div>
  )
}

const plainKind = (line: string, n: number): LineKind => (line.trim() === '' ? 'blank' : n === 0 ? 'title' : 'plain')
