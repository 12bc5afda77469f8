/** Stable; messages may be reworded, codes not. */
export type StoreErrorCode =
  /** Another copy of the application has the data open. */
  | 'in-use'
  /** The folder or file cannot be made or written. */
  | 'not-writable'
  /** The file is not a database of ours, or pages of it are broken. */
  | 'damaged'
  /** A later version of the application has been here. */
  | 'newer'
  /** The disk is full. */
  | 'full'
  /** The PostgreSQL server does not answer, or refuses us. */
  | 'unreachable'

/** What goes wrong between the store and its disk or network, in a sentence for the person at the keyboard. */
export class StoreError extends Error {
  readonly code: StoreErrorCode
  /** What to do about it, as a sentence. */
  readonly cure: string

  constructor(code: StoreErrorCode, message: string, cure: string, cause?: unknown) {
    super(message, { cause })
    this.name = 'StoreError'
    this.code = code
    this.cure = cure
  }
}

/** The `code` of a driver's or of Node's error; '' when it has none. */
export function codeOf(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code
  return typeof code === 'string' ? code : ''
}
