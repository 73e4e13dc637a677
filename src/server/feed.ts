import type { FastifyReply, FastifyRequest } from 'fastify'
import { instantText } from '../kernel/index.js'
import type { House } from './house.js'

const BATCH = 200
const KEEPALIVE_MS = 20_000

/**
 * The number after which to begin. One that has not been given yet comes from data that a restore has replaced:
 * such a client is told of everything.
 */
function startOf(request: FastifyRequest, newest: number): number {
  const last = request.headers['last-event-id']
  if (typeof last !== 'string' || !/^\d{1,15}$/.test(last)) return newest
  return Number(last) <= newest ? Number(last) : 0
}

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
  let sent = startOf(request, await house.store.read(bench, (rooms) => rooms.feed.last()))
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
  house.feeds.add(out)
  const stop = house.store.listen(bench, heard)
  const keepalive = setInterval(() => out.write(': still here\n\n'), KEEPALIVE_MS)
  out.on('close', () => {
    stop()
    house.feeds.delete(out)
    clearInterval(keepalive)
  })
  heard()
}
