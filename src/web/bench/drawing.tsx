import { createElement, memo, type ReactElement } from 'react'
import { camelAttrs, drawingCss, type Mark } from '../../core/press/index.ts'

// The drawings bring their own classes. A sheet made by script is let in by a content-security-policy that refuses
// style elements.
const sheet = new CSSStyleSheet()
sheet.replaceSync(drawingCss())
document.adoptedStyleSheets.push(sheet)

/** A drawing of the core as elements of the page. */
export const Drawing = memo(function Drawing({ mark }: { mark: Mark }) {
  return elementOf(mark, 0)
})

function elementOf(mark: Mark, key: number): ReactElement {
  const inside: (string | ReactElement)[] = mark.children.map(elementOf)
  if (mark.text !== undefined) inside.unshift(mark.text)
  return createElement(mark.tag, { key, ...camelAttrs(mark.attrs) }, ...(inside.length > 0 ? inside : []))
}
