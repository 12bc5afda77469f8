/** Line of the manuscript that an offset falls in, counted from 1, whatever ends the lines. */
export function lineOf(text: string, offset: number): number {
  return text.slice(0, offset).split(/\r\n|\n|\r|\u2028/).length
}

/** The words of a place, on one line and not longer than a line of print. */
export function quoted(text: string, { from, to }: { readonly from: number; readonly to: number }, most = 60): string {
  const words = text.slice(from, to).replace(/\s+/g, ' ').trim()
  const letters = [...words]
  return letters.length <= most
    ? `“${words}”`
    : `“${letters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…”`
}
