// Underlid as a library: one manuscript, every pot. Which of them would it work in?
//
//   npx tsx examples/library.ts [MANUSCRIPT] [DRAWING.svg]
//
// Outside this folder the imports read `from 'underlid'`.
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { cookManuscript, potCards } from '../src/core/index.ts'
import { outcomeSentence, strip, svgText, totalSentence } from '../src/core/press/index.ts'

const dinner = fileURLToPath(new URL('dishes/pork-shoulder-leeks-cider.txt', import.meta.url))

/** A few lines for each pot: how it comes out, how long it takes, what must be settled first. */
export function inEveryPot(text: string): string {
  return potCards
    .map((pot) => {
      const { run, findings } = cookManuscript(text, { pot })
      const blocking = findings.filter((finding) => finding.severity === 'blocking')
      return [
        pot.name,
        `  ${outcomeSentence(run)}`,
        `  ${totalSentence(run)}.`,
        ...blocking.map((finding) => `  ${finding.title} ${finding.advice ?? ''}`.trimEnd()),
      ].join('\n')
    })
    .join('\n\n')
}

/** The strip of time of the pot that the manuscript names, as a drawing that stands by itself. */
export function drawn(text: string): string {
  return svgText(strip(cookManuscript(text).run, { width: 1200, height: 280 }), { standalone: true })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [manuscript = dinner, drawing] = process.argv.slice(2)
  const text = readFileSync(manuscript, 'utf8')
  console.log(inEveryPot(text))
  if (drawing) writeFileSync(drawing, drawn(text))
}
