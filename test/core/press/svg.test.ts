import { describe, expect, test } from 'vitest'
import { camelAttrs, drawingCss, glassPot, mark, strip, svgText, themes } from '../../../src/core/press/index.ts'
import { syntheticRun } from '../../support/synthetic-run.ts'

/** A reader of XML small enough to trust: tags nest, attributes are quoted, nothing unescaped in between. */
function wellFormed(xml: string): void {
  const open: string[] = []
  const rest = xml
    .replace(/^<\?xml[^>]*\?>/, '')
    .replace(/<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g, (_, close, name, __, self) => {
      if (close) expect(open.pop(), `closing ${name}`).toBe(name)
      else if (!self) open.push(name)
      return ''
    })
  expect(open).toEqual([])
  expect(rest).not.toMatch(/[<]/)
  expect(rest).not.toMatch(/&(?!amp;|lt;|gt;|quot;)/)
}

describe('a drawing as a file', () => {
  const run = syntheticRun()
  const drawing = strip(run, { width: 1200, height: 280, cursor_s: 64 * 60 })

  test.each(['light', 'dark'] as const)('stands by itself in %s: colours, title and description inside', (theme) => {
    const xml = svgText(drawing, { theme, standalone: true })
    wellFormed(xml)
    expect(xml).toContain('xmlns="http://www.w3.org/2000/svg"')
    expect(xml).toContain(themes[theme].heat)
    expect(xml).not.toContain('var(')
    expect(xml).toMatch(/<title id="strip-title">Time: 1 h 30 to 1 h 46 in all/)
    expect(xml).toMatch(/<desc id="strip-desc">1 h 30 to 1 h 46 in all/)
    expect(xml).toContain('aria-labelledby="strip-title strip-desc"')
  })

  test('escapes what a manuscript may hold', () => {
    const odd = mark(
      'svg',
      { class: 'drawing', 'aria-label': 'Salt & "pepper" <b>' },
      { tag: 'text', attrs: {}, children: [], text: 'a < b & c\u0007' },
    )
    const xml = svgText(odd, { standalone: true })
    wellFormed(xml)
    expect(xml).toContain('Salt &amp; "pepper" &lt;b&gt;')
    expect(xml).toContain('a &lt; b &amp; c<')
  })

  test('takes its colours from the page when it is not standalone', () => {
    expect(svgText(drawing)).not.toMatch(/#[0-9a-f]{6}/)
    expect(drawingCss()).toContain('.drawing .f-heat{fill:var(--heat)}')
  })

  test('keeps ids apart by prefix', () => {
    const ids = (prefix: string) =>
      svgText(glassPot(run, { width: 400, height: 400, time_s: 3600, prefix })).match(/id="[^"]+"/g)
    expect(ids('a')!.some((id) => ids('b')!.includes(id))).toBe(false)
  })
})

test('attribute names for a page framework', () => {
  expect(camelAttrs({ class: 'a', 'stroke-width': 2, 'aria-label': 'x', 'data-load': 1 })).toEqual({
    className: 'a',
    strokeWidth: 2,
    'aria-label': 'x',
    'data-load': 1,
  })
})

test('numbers keep a tenth of a pixel and empty children vanish', () => {
  const made = mark('g', { x: 1.23456, y: undefined }, null, false, [mark('path', {}), [mark('rect', {})]])
  expect(made.attrs).toEqual({ x: 1.2 })
  expect(made.children.map((child) => child.tag)).toEqual(['path', 'rect'])
})
