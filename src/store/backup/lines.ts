import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'

/**
 * The lines of a stream as they arrive, without holding it whole. Reading begins with the first line asked for: a
 * line reader that is made earlier drops what comes in before somebody listens.
 */
export async function* linesOf(body: Readable): AsyncGenerator<string> {
  for await (const line of createInterface({ input: body, crlfDelay: Number.POSITIVE_INFINITY })) yield line
}
