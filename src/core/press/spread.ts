/**
 * Moves labels along one axis so that none overlaps: the least shift from where each wants to be, order kept.
 * Returns the centres; `size` is the room a label takes.
 */
export function spread(
  wanted: readonly { readonly at: number; readonly size: number }[],
  low: number,
  high: number,
): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a].at - wanted[b].at || a - b)
  // Blocks of touching labels, each at the mean of what its members want (pool adjacent violators).
  const blocks: { members: number[]; size: number; want: number; at: number }[] = []
  for (const i of order) {
    let block = { members: [i], size: wanted[i].size, want: wanted[i].at, at: wanted[i].at }
    for (;;) {
      block.at = Math.min(
        Math.max(block.want, low + block.size / 2),
        Math.max(high - block.size / 2, low + block.size / 2),
      )
      const before = blocks.at(-1)
      if (!before || before.at + before.size / 2 <= block.at - block.size / 2 + 1e-9) break
      blocks.pop()
      const members = [...before.members, ...block.members]
      const size = before.size + block.size
      // Where the block's middle must be for its members to sit, on average, where they want to.
      let offset = -size / 2
      let sum = 0
      for (const m of members) {
        sum += wanted[m].at - (offset + wanted[m].size / 2)
        offset += wanted[m].size
      }
      block = { members, size, want: sum / members.length, at: 0 }
    }
    blocks.push(block)
  }
  const centres = new Array<number>(wanted.length)
  for (const block of blocks) {
    let top = block.at - block.size / 2
    for (const m of block.members) {
      centres[m] = top + wanted[m].size / 2
      top += wanted[m].size
    }
  }
  return centres
}
