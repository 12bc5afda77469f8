import { useMemo } from 'react'
import { compare, type Part } from './compare.ts'

/** Two texts as one: struck out what is gone, underlined what is new. */
export function Changes({ from, to }: { from: string; to: string }) {
  const lines = useMemo(() => linesOf(compare(from, to)), [from, to])
  return (
    <div className="prose changes">
      {lines.map((line, n) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
        <p key={n} className={line.every(({ text }) => text.trim() === '') ? 'l-blank' : n === 0 ? 'l-title' : ''}>
          {line.map((part, k) => {
            const Tag = part.kind === 'gone' ? 'del' : part.kind === 'new' ? 'ins' : 'span'
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the parts are made together
              <Tag key={k}>{part.text}</Tag>
            )
          })}
        </p>
      ))}
    </div>
  )
}

function linesOf(parts: readonly Part[]): Part[][] {
  const lines: Part[][] = [[]]
  for (const { kind, text } of parts)
    text.split('\n').forEach((piece, n) => {
      if (n > 0) lines.push([])
      if (piece !== '') lines.at(-1)!.push({ kind, text: piece })
    })
  return lines
}
