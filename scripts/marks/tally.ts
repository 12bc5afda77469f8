// Counts of right answers by source and by kind of question, and their table.

export class Tally {
  private readonly counts = new Map<string, Map<string, { right: number; all: number }>>()
  readonly misses: string[] = []

  mark(source: string, kind: string, right: boolean, miss: () => string): void {
    for (const name of [source, 'all']) {
      const kinds = this.counts.get(name) ?? new Map()
      this.counts.set(name, kinds)
      const count = kinds.get(kind) ?? { right: 0, all: 0 }
      kinds.set(kind, { right: count.right + (right ? 1 : 0), all: count.all + 1 })
    }
    if (!right) this.misses.push(`${kind}: ${miss()}`)
  }

  table(kinds: readonly string[]): string {
    const width = Math.max(8, ...[...this.counts.keys()].map((name) => name.length))
    const cell = (words: string) => words.padStart(13)
    const lines = [''.padEnd(width) + kinds.map(cell).join('')]
    const names = [...this.counts.keys()].filter((name) => name !== 'all').sort()
    for (const name of [...names, 'all']) {
      const row = this.counts.get(name)
      if (!row) continue
      const cells = kinds.map((kind) => {
        const count = row.get(kind)
        return cell(count ? `${((100 * count.right) / count.all).toFixed(1)} % ${String(count.all).padStart(4)}` : '-')
      })
      lines.push(name.padEnd(width) + cells.join(''))
    }
    return lines.join('\n')
  }
}
