import type { Context } from 'hono'
import type { $ZodIssue, $ZodType, output } from 'zod/v4/core'
import { safeParse } from 'zod/v4/core'
import { maxTextUnits } from '../contract/index.ts'
import { Refused } from './refused.ts'

/** The body of the request, in the shape of the contract. */
export async function readBody<S extends $ZodType>(c: Context, shape: S): Promise<output<S>> {
  const type = c.req.header('content-type') ?? ''
  if (!/^application\/json\b/i.test(type)) {
    const cure = 'Send JSON, with the header Content-Type: application/json.'
    throw new Refused(415, 'not-understood', `The body is called "${type || 'nothing'}".`, cure)
  }
  let body: unknown
  try {
    body = await c.req.json()
  } catch {
    throw new Refused(400, 'not-understood', 'The body is not JSON.', 'Send one JSON object.')
  }
  const parsed = safeParse(shape, body)
  if (parsed.success) return parsed.data
  const issue = parsed.error.issues[0]!
  if (issue.code === 'too_big' && issue.path.join('.') === 'text') {
    const limit = maxTextUnits.toLocaleString('en')
    throw new Refused(413, 'too-large', `The manuscript is longer than ${limit} characters.`, 'Divide it.')
  }
  throw new Refused(400, 'not-understood', sentence(issue), 'See the contract of this address for its fields.')
}

const kinds: Partial<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'an object',
}

function sentence(issue: $ZodIssue): string {
  const where = issue.path.length > 0 ? `"${issue.path.join('.')}"` : 'The body'
  switch (issue.code) {
    case 'invalid_type':
      return `${where} is missing or is not ${kinds[issue.expected] ?? issue.expected}.`
    case 'unrecognized_keys':
      return `${issue.keys.map((key) => `"${key}"`).join(', ')} is no field of this message.`
    case 'too_big':
      return `${where} is larger than ${issue.maximum}.`
    case 'too_small':
      return `${where} is smaller than ${issue.minimum}.`
    default:
      return `${where} is not as it should be (${issue.message}).`
  }
}
