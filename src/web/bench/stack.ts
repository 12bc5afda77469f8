export interface Wanted {
  readonly level: number
  readonly height: number
}

/**
 * Tops for notes that each want to stand at their level, in order, at least `gap` apart. Only ever down: a note that
 * moved up would stand beside words it is not about.
 */
export function stacked(wanted: readonly Wanted[], gap: number): number[] {
  let free = 0
  return wanted.map(({ level, height }) => {
    const top = Math.max(level, free)
    free = top + height + gap
    return top
  })
}
