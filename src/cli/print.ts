/** Text to standard output, whole. */
export function print(text: string): void {
  process.stdout.write(text)
}

export function printJson(value: unknown): void {
  // Series of numbers on one line each, the rest set out to be read.
  const text = JSON.stringify(value, null, 2).replace(
    /\[\s+((?:-?[\d.e+-]+|null)(?:,\s+(?:-?[\d.e+-]+|null))*)\s+\]/g,
    (_, list: string) => `[${list.replace(/\s+/g, ' ')}]`,
  )
  process.stdout.write(`${text}\n`)
}
