/** What the writer writes as its n-th text: long enough to take several pages of the database. */
export const textOf = (n: number) => `Text ${n}\n${`line of text ${n}, `.repeat(500)}`

/** Which of the writer's texts this is; null when it is none of them to the last letter. */
export function whichText(text: string | undefined): number | null {
  const n = Number(/^Text (\d+)\n/.exec(text ?? '')?.[1])
  return text === textOf(n) ? n : null
}
