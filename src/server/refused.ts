import type { ErrorCode } from '../contract/index.ts'

type Status = 400 | 403 | 404 | 413 | 415

/** A request that is not carried out; thrown by the handlers, answered in one place. */
export class Refused extends Error {
  readonly status: Status
  readonly code: ErrorCode
  readonly cure: string | null

  constructor(status: Status, code: ErrorCode, message: string, cure: string | null) {
    super(message)
    this.name = 'Refused'
    this.status = status
    this.code = code
    this.cure = cure
  }
}
