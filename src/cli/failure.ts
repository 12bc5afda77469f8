/** A call or a file that is wrong: what is wrong and where, then the cure. Ends the program with exit code 2. */
export class CallError extends Error {
  readonly cure: string

  constructor(message: string, cure: string) {
    super(message)
    this.name = 'CallError'
    this.cure = cure
  }

  get sentence(): string {
    return `${this.message} ${this.cure}`.trim()
  }
}
