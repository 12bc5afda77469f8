import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { drawn, inEveryPot } from '../../examples/library.ts'
import { potCards } from '../../src/core/index.ts'
import { dishes } from '../support/example-runs.ts'

test('the example cooks one manuscript in every pot and draws it', () => {
  const text = readFileSync(`${dishes}pork-shoulder-leeks-cider.txt`, 'utf8')
  const said = inEveryPot(text)
  for (const { name } of potCards) expect(said).toContain(`${name}\n  `)
  expect(said.match(/ in all, /g)).toHaveLength(potCards.length)
  expect(said).not.toMatch(/NaN|undefined/)
  expect(drawn(text)).toMatch(/<\/svg>\n$/)
})
