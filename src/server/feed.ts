import type { FastifyReply, FastifyRequest } from 'fastify'
import { instantText } from '../kernel/index.js'
import type { House } from './house.js'

const BATCH = 200
const KEEPALIVE_MS = 20_000

/**
 * Sends the bench's changes as server-sent events, each with its number as id. A client that comes back with
 * Last-Event-ID gets what it missed; a new one starts from now.
 */
export async function streamFeed(
  house: House,
  bench: string,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  const last = request.headers['last-event-id']
  let sent =
    typeof last === 'string' && /^\d{1,15}$/.test(last)
      ? Number(last)
      : await house.store.read(bench, (rooms) => rooms.feed.last())
  reply.hijack()
  const out = reply.raw
  out.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store', 'x-accel-buffering': 'no' })
  out.write(`retry: 1000\nid: ${sent}\nevent: here\ndata: {}\n\n`)

  let pumping = Promise.resolve()
  const pump = async () => {
    for (;;) {
      const entries = await house.store.read(bench, (rooms) => rooms.feed.after(sent, BATCH))
      for (const entry of entries) {
        out.write(
          `id: ${entry.seq}\nevent: change\ndata: ${JSON.stringify({ kind: entry.kind, subject: entry.subject, at: instantText(entry.at) })}\n\n`,
        )
        sent = entry.seq
      }
      if (entries.length < BATCH) return
    }
  }
  const heard = () => {
    pumping = pumping.then(pump).catch(() => void out.destroy())
  }
  const stop = house.store.listen(bench, heard)
  const keepalive = setInterval(() => out.write(': still here\n\n'), KEEPALIVE_MS)
  out.on('close', () => {
    stop()
    clearInterval(keepalive)
  })
  heard()
}
