import { type ErrorCode, errorBody } from '../../contract/index.ts'

/** The server answered and said no, in its own words. */
export class Refused extends Error {
  readonly status: number
  readonly code: ErrorCode | 'unknown'
  readonly cure: string | null
  /** The whole answer, for those who know more of its shape. */
  readonly body: unknown
  constructor(status: number, code: ErrorCode | 'unknown', message: string, cure: string | null, body: unknown) {
    super(message)
    this.name = 'Refused'
    this.status = status
    this.code = code
    this.cure = cure
    this.body = body
  }
}

/** Nobody answered: no network, no server, or no answer in time. */
export class NoAnswer extends Error {
  constructor() {
    super('The server does not answer.')
    this.name = 'NoAnswer'
  }
}

interface Check<T> {
  parse: (value: unknown) => T
}

export interface Question {
  method?: 'GET' | 'POST' | 'PUT' | 'PATCH'
  body?: unknown
  /** Lets the request outlive the page; browsers allow 64 kB for all such requests together. */
  keepalive?: boolean
  patience_ms?: number
}

/** One question to the server; the answer has passed its check. Throws `Refused` or `NoAnswer`. */
export async function ask<T>(path: string, check: Check<T>, question: Question = {}): Promise<T> {
  const { response, body } = await answerTo(path, question)
  if (!response.ok) throw refusal(response.status, body)
  try {
    return check.parse(body)
  } catch {
    // Something else answers at this address, such as the sign-in page of a guest network.
    throw new NoAnswer()
  }
}

async function answerTo(path: string, question: Question): Promise<{ response: Response; body: unknown }> {
  try {
    const response = await fetch(path, {
      method: question.method ?? 'GET',
      headers: question.body === undefined ? {} : { 'content-type': 'application/json' },
      body: question.body === undefined ? undefined : JSON.stringify(question.body),
      keepalive: question.keepalive ?? false,
      cache: 'no-store',
      signal: AbortSignal.timeout(question.patience_ms ?? 10_000),
    })
    const text = await response.text()
    return { response, body: parsed(text) }
  } catch {
    throw new NoAnswer()
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

function refusal(status: number, body: unknown): Error {
  const told = errorBody.safeParse(body)
  if (told.success) {
    const { code, message, cure } = told.data.error
    return new Refused(status, code, message, cure, body)
  }
  // A gateway in between answers for a server that is down.
  if (status >= 502 && status <= 504) return new NoAnswer()
  return new Refused(status, 'unknown', `The server refused with ${status} and did not say why.`, null, body)
}
