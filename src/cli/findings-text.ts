import type { Finding } from '../core/findings/index.ts'
import { paragraph } from './layout.ts'
import { lineOf, quoted } from './places.ts'
import type { Terminal } from './terminal.ts'

const says = { blocking: 'Must be settled', warning: 'Should be settled', hint: 'Worth a look' } as const

/** Findings as a copy editor lists them: how grave, which line, whose words, what is the matter, what to do. */
export function findingLines(text: string, findings: readonly Finding[], out: Terminal, sources = false): string[] {
  return findings.flatMap((finding, i) => {
    const place = finding.span
      ? `line ${lineOf(text, finding.span.from)}, ${quoted(text, finding.span)}`
      : 'the whole text'
    const paint = finding.severity === 'hint' ? out.soft : finding.severity === 'blocking' ? out.heat : (s: string) => s
    const cure = finding.cure?.label ?? finding.advice
    const [first, ...more] = paragraph(`${says[finding.severity]}: ${place}`, out.columns, 4, 2)
    return [
      ...(i > 0 ? [''] : []),
      paint(first),
      ...more.map(paint),
      ...paragraph(`${finding.title} ${finding.message}`.trim(), out.columns, 4).map((line, k) =>
        k === 0 ? line.replace(finding.title, out.bold(finding.title)) : line,
      ),
      ...(cure ? paragraph(`To do: ${cure}`, out.columns, 4).map(out.water) : []),
      ...(sources && finding.source ? paragraph(`Source: ${finding.source}`, out.columns, 4).map(out.soft) : []),
    ]
  })
}
