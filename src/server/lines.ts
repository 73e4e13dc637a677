import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'

/** The lines of a body as it arrives, without holding it whole. */
export async function* linesOf(body: Readable): AsyncGenerator<string> {
  for await (const line of createInterface({ input: body, crlfDelay: Number.POSITIVE_INFINITY })) yield line
}
