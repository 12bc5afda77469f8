/** A drawing as plain data: SVG elements that the page turns into its own and Node writes as text. */
export interface Mark {
  readonly tag: string
  /** Attributes by their SVG names (`stroke-width`, `class`). Numbers are pixels, already rounded. */
  readonly attrs: Readonly<Record<string, string | number>>
  readonly children: readonly Mark[]
  /** Text content, for `text`, `tspan`, `title` and `desc`. */
  readonly text?: string
}

type Child = Mark | null | false | undefined | readonly Child[]

/** One element. Empty children (null, false) are left out, so that drawings can be written with conditions inside. */
export function mark(
  tag: string,
  attrs: Readonly<Record<string, string | number | undefined>>,
  ...children: Child[]
): Mark {
  const kept: Record<string, string | number> = {}
  for (const [name, value] of Object.entries(attrs)) {
    if (value !== undefined) kept[name] = typeof value === 'number' ? round(value) : value
  }
  return { tag, attrs: kept, children: flatten(children) }
}

function flatten(children: readonly Child[]): Mark[] {
  return children.flatMap((child) => {
    if (!child) return []
    return Array.isArray(child) ? flatten(child as readonly Child[]) : [child as Mark]
  })
}

/** A tenth of a pixel is finer than any screen shows and halves the size of the file. */
export function round(x: number): number {
  return Math.round(x * 10) / 10
}

/** Every element of a tree, the root first: for tests and for tools that look for labels. */
export function* marksOf(root: Mark): Generator<Mark> {
  yield root
  for (const child of root.children) yield* marksOf(child)
}

/** Attribute names as a page framework that writes them in camel case wants them; `aria-` and `data-` stay. */
export function camelAttrs(attrs: Mark['attrs']): Record<string, string | number> {
  const named: Record<string, string | number> = {}
  for (const [name, value] of Object.entries(attrs)) {
    if (name === 'class') named.className = value
    else if (/^(aria|data)-/.test(name)) named[name] = value
    else named[name.replace(/[-:]([a-z])/g, (_, letter: string) => letter.toUpperCase())] = value
  }
  return named
}
