import { randomUUID } from 'node:crypto'

/** One request of a writing route. */
export interface Ask {
  readonly method: string
  readonly path: string
  readonly body: unknown
  readonly key: string
  /** A text or number that is found in what the request keeps, and nowhere else. */
  readonly marker: string | number
}
export interface Answer {
  readonly status: number
  readonly text: string
}
/** A request that was sent, and its answer when one arrived whole. */
export interface Sent extends Ask {
  answer?: Answer
}

export const ask = (method: string, path: string, body: unknown, marker: string | number = ''): Ask => ({
  method,
  path,
  body,
  key: randomUUID(),
  marker,
})

const ANSWER_WITHIN_MS = 20_000

/** Sends; no answer when the connection broke before the whole of it was there. */
export async function send(url: string, { method, path, body, key }: Ask): Promise<Answer | undefined> {
  const asText = typeof body === 'string'
  try {
    const response = await fetch(url + path, {
      method,
      headers: { 'content-type': asText ? 'application/x-ndjson' : 'application/json', 'idempotency-key': key },
      body: asText ? body : JSON.stringify(body),
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    })
    return { status: response.status, text: await response.text() }
  } catch (thrown) {
    if (thrown instanceof Error && thrown.name === 'TimeoutError')
      throw new Error(`${method} ${path}: no answer in time`)
    return undefined
  }
}

/** Sends while the server is up; anything but success is a fault of the test. */
export async function sendOk<T>(url: string, asked: Ask): Promise<T> {
  const answer = await send(url, asked)
  if (answer?.status !== 200)
    throw new Error(`${asked.method} ${asked.path}: ${answer?.status} ${answer?.text.slice(0, 500)}`)
  return JSON.parse(answer.text) as T
}
