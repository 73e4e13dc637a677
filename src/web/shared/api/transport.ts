import type { ProblemBody } from '../../../wire/index.js'
import { freshKey } from '../platform/index.js'

/** What is asked in a query; what is undefined is left out. */
type Asked = Record<string, string | number | boolean | undefined>

/** An answer of the server that says what was wrong, in a sentence. */
export class ApiProblem extends Error {
  constructor(
    readonly status: number,
    readonly body: ProblemBody,
  ) {
    super(body.sentence)
  }
}

/** A path with what is asked of it. */
export function address(path: string, query: Asked = {}): string {
  const asked = new URLSearchParams()
  for (const [name, value] of Object.entries(query)) if (value !== undefined) asked.set(name, String(value))
  return asked.size === 0 ? path : `${path}?${asked}`
}

interface Sent {
  readonly body?: unknown
  /** Carries a fresh key, so that the server keeps a write that reaches it twice only once. */
  readonly writes?: boolean
}

/** Sends one request; gives the JSON answer or throws an {@link ApiProblem}. */
export async function send<T>(method: string, path: string, { body, writes = false }: Sent = {}): Promise<T> {
  const headers: Record<string, string> = { accept: 'application/json' }
  if (writes) headers['idempotency-key'] = freshKey()
  const file = body instanceof Blob
  if (file) headers['content-type'] = 'application/x-ndjson'
  else if (body !== undefined) headers['content-type'] = 'application/json'
  const init: RequestInit = { method, headers }
  if (body !== undefined) init.body = file ? body : JSON.stringify(body)
  const response = await reach(path, init)
  const answer: unknown = await response.json().catch(() => null)
  if (!response.ok) throw new ApiProblem(response.status, isProblem(answer) ? answer : nameless(response))
  return answer as T
}

async function reach(path: string, init: RequestInit): Promise<Response> {
  try {
    return await fetch(path, init)
  } catch {
    throw new ApiProblem(0, {
      code: 'web.unreachable',
      sentence: 'The computer that runs the bench does not answer. See that it is on and on the same network.',
      details: {},
      help: '',
    })
  }
}

const isProblem = (answer: unknown): answer is ProblemBody =>
  typeof answer === 'object' && answer !== null && 'code' in answer && 'sentence' in answer

const nameless = (response: Response): ProblemBody => ({
  code: 'web.unreadable',
  sentence: `The server answered ${response.status} without saying why. Load the page again.`,
  details: {},
  help: '',
})
