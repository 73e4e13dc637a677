import { failed, ok, type Problem, type ProblemCode, problem, type Result, registry } from '../../kernel/index.js'
import type { ProblemBody } from '../../wire/index.js'

/** Asks the running program that holds the data; what it refuses comes back as the problem it was there. */
export async function askServer(base: string, path: string, request: RequestInit = {}): Promise<Result<Response>> {
  const answer = await fetch(`${base}${path}`, request).catch(() => null)
  if (answer?.ok) return ok(answer)
  const refused = answer === null ? null : await problemIn(answer)
  return failed(
    refused ?? problem('house.data-unreachable', { reason: `the running program at ${base} does not answer` }),
  )
}

async function problemIn(answer: Response): Promise<Problem | null> {
  const body = (await answer.json().catch(() => null)) as ProblemBody | null
  if (body === null || !(body.code in registry)) return null
  return { code: body.code as ProblemCode, details: body.details as Problem['details'], sentence: body.sentence }
}
