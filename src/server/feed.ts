import type { FastifyReply, FastifyRequest } from 'fastify'
import { instantText, ok, type Result } from '../kernel/index.js'
import { eventsAfter, type Rooms } from '../lab/index.js'
import type { House } from './house.js'

const BATCH = 200
const KEEPALIVE_MS = 20_000

/** Something numbered without gaps that can be followed. */
interface Source {
  /** The newest number. */
  readonly newest: number
  /** Where a client begins that does not say what it has seen. */
  readonly begin: number
  /** What came after a number, oldest first, a batch at a time. */
  after(seq: number): Promise<readonly { readonly seq: number; readonly event: string; readonly data: unknown }[]>
}

/**
 * The number after which to begin. One that has not been given yet comes from data that a restore has replaced:
 * such a client is told of everything.
 */
function startOf(request: FastifyRequest, { newest, begin }: Source): number {
  const last = request.headers['last-event-id']
  if (typeof last !== 'string' || !/^\d{1,15}$/.test(last)) return begin <= newest ? begin : 0
  return Number(last) <= newest ? Number(last) : 0
}

/** The bench's changes. A client that comes back with Last-Event-ID gets what it missed; a new one starts from now. */
export async function streamFeed(
  house: House,
  bench: string,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  const read = <T>(work: (rooms: Rooms) => Promise<T>) => house.store.read(bench, work)
  const newest = await read((rooms) => rooms.feed.last())
  const after = async (seq: number) =>
    (await read((rooms) => rooms.feed.after(seq, BATCH))).map((entry) => ({
      seq: entry.seq,
      event: 'change',
      data: { kind: entry.kind, subject: entry.subject, at: instantText(entry.at) },
    }))
  stream(house, bench, request, reply, { newest, begin: newest, after })
}

/** What happens in a run, from the number the client has seen. */
export async function streamRun(
  house: House,
  bench: string,
  run: { readonly id: string; readonly seen: number },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<Result<null>> {
  const read = (seq: number) => house.store.read(bench, (rooms) => eventsAfter(rooms, run.id, seq, BATCH))
  const found = await read(run.seen)
  if (!found.ok) return found
  const after = async (seq: number) => {
    const come = await read(seq)
    return come.ok ? come.value.events.map((kept) => ({ seq: kept.seq, event: 'happened', data: kept })) : []
  }
  stream(house, bench, request, reply, { newest: found.value.last_seq, begin: run.seen, after })
  return ok(null)
}

/** Sends a source as server-sent events, each with its number as id. */
function stream(house: House, bench: string, request: FastifyRequest, reply: FastifyReply, source: Source): void {
  let sent = startOf(request, source)
  reply.hijack()
  const out = reply.raw
  out.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store', 'x-accel-buffering': 'no' })
  out.write(`retry: 1000\nid: ${sent}\nevent: here\ndata: {}\n\n`)

  let pumping = Promise.resolve()
  const pump = async () => {
    for (;;) {
      const entries = await source.after(sent)
      for (const { seq, event, data } of entries) {
        out.write(`id: ${seq}\nevent: ${event}\ndata: ${JSON.stringify(data)}\n\n`)
        sent = seq
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
