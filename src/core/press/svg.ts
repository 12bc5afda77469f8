import type { Mark } from './mark.ts'
import { mark } from './mark.ts'
import { type ColourName, drawingCss, type Theme, themes } from './style.ts'

export interface SvgOptions {
  readonly theme?: Theme
  /** A file that stands by itself: namespace, colours and faces inside, ground painted, title from the label. */
  readonly standalone?: boolean
  readonly ground?: 'paper' | 'desk' | 'none'
}

/** The drawing as SVG text. Standalone files carry a title and a description for readers who do not see them. */
export function svgText(
  drawing: Mark,
  { theme = 'light', standalone = false, ground = 'paper' }: SvgOptions = {},
): string {
  if (!standalone) return written(drawing)
  const colours = themes[theme]
  const painted = ground === 'none' ? 'transparent' : colours[ground]
  const css = drawingCss((name: ColourName) => colours[name], painted)
  const label = String(drawing.attrs['aria-label'] ?? '')
  const { 'aria-label': _, ...attrs } = drawing.attrs
  const prefix = String(attrs['data-prefix'] ?? 'drawing')
  const desc = drawing.children.find((child) => child.tag === 'desc')
  const root: Mark = {
    tag: 'svg',
    attrs: {
      xmlns: 'http://www.w3.org/2000/svg',
      ...attrs,
      'aria-labelledby': desc ? `${prefix}-title ${prefix}-desc` : `${prefix}-title`,
    },
    children: [
      { tag: 'title', attrs: { id: `${prefix}-title` }, children: [], text: label },
      ...(desc ? [{ ...desc, attrs: { ...desc.attrs, id: `${prefix}-desc` } }] : []),
      { tag: 'style', attrs: {}, children: [], text: css },
      ...(ground === 'none' ? [] : [mark('rect', { width: '100%', height: '100%', fill: painted })]),
      ...drawing.children.filter((child) => child !== desc),
    ],
  }
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root)}\n`
}

function written(node: Mark): string {
  const attrs = Object.entries(node.attrs)
    .map(([name, value]) => ` ${name}="${escaped(String(value)).replaceAll('"', '&quot;')}"`)
    .join('')
  const inside = (node.text === undefined ? '' : escaped(node.text)) + node.children.map(written).join('')
  return inside === '' ? `<${node.tag}${attrs}/>` : `<${node.tag}${attrs}>${inside}</${node.tag}>`
}

// Control characters other than tab and line feed are not allowed in XML at all, so they go.
function escaped(text: string): string {
  return text
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
}
