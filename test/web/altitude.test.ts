import { describe, expect, it } from 'vitest'
import { altitudeOf, altitudeWords } from '../../src/web/bench/altitude.ts'

describe('altitude as written', () => {
  it.each([
    ['1600 m', 1600],
    ['120', 120],
    ['5,250 ft', 1600],
    ['7500 feet', 2286],
    ['sea level', 0],
    ['', null],
    ['-2 m', -2],
  ])('%s', (written, altitude_m) => {
    expect(altitudeOf(written)).toEqual({ ok: true, altitude_m })
  })

  it.each(['high', '12 km', '9000 m', '1e3'])('refuses %s with a sentence', (written) => {
    const answer = altitudeOf(written)
    expect(answer.ok).toBe(false)
    if (!answer.ok) expect(answer.why).toMatch(/Write .*m/)
  })

  it('reads what it writes', () => {
    for (const altitude_m of [0, 1, 120, 2300, -100])
      expect(altitudeOf(altitudeWords(altitude_m))).toEqual({ ok: true, altitude_m })
  })
})
