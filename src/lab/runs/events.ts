import { expectOk, failed, type Instant, ok, problem, type Result } from '../../kernel/index.js'
import { impossibleOnPaper, isFromPaper, type RunEvent } from '../../score/index.js'
import type { KeptEvent, Run as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { bookBathsOf } from './baths-follow.js'
import type { Received, RunRecord } from './port.js'
import { followed, runView } from './queries.js'
import { moveRollsOf } from './rolls-follow.js'
import { fits, progressOf, sameEvent } from './rules.js'
import { viewOfEvent } from './shape.js'
import { scoreOf, standingRun } from './standing.js'

/**
 * Adds what happened, all of it or none. An event whose id this run has already is there once, in whatever batch and
 * from whatever device it comes; one that says something else under a known id, or is known to another run, is
 * refused, and so is what was typed in from paper and cannot have been so. Order of arrival does not matter. Runs that are over still take events: a phone may come late.
 */
export async function addRunEvents(
  context: Context,
  rooms: Rooms,
  id: string,
  events: readonly RunEvent[],
): Promise<Result<{ events: KeptEvent[]; last_seq: number }>> {
  const run = await standingRun(rooms, id, true)
  if (!run.ok) return run
  for (const [i, event] of events.entries()) {
    const fit = fits(run.value.plan, event)
    if (!fit.ok) return failed({ ...fit.problem, field: `events[${i}].${fit.problem.field}` })
  }
  const before = await rooms.runs.events(id, 0)
  const fresh = await freshOf(rooms, id, before, events)
  if (!fresh.ok) return fresh
  const possible = await canHaveBeen(context, rooms, run.value, before, fresh.value)
  if (!possible.ok) return possible
  const added = fresh.value.length === 0 ? [] : await append(context, rooms, run.value, before, fresh.value)
  const kept = new Map([...before, ...added].map((one) => [one.event.id, one]))
  const sent = [...new Set(events.map((event) => event.id))].map((one) => viewOfEvent(kept.get(one) as Received))
  return ok({ events: sent, last_seq: run.value.lastSeq + added.length })
}

/** Of the events sent, those that this run has not got, each once. */
async function freshOf(
  rooms: Rooms,
  runId: string,
  before: readonly Received[],
  events: readonly RunEvent[],
): Promise<Result<RunEvent[]>> {
  const seen = new Map(before.map(({ event }) => [event.id, event]))
  const fresh: RunEvent[] = []
  for (const event of events) {
    const known = seen.get(event.id)
    if (known === undefined) fresh.push(event)
    else if (!sameEvent(known, event)) return failed(problem('run.event-differs', { id: event.id }))
    seen.set(event.id, event)
  }
  const elsewhere = await rooms.runs.elsewhere(
    runId,
    fresh.map(({ id }) => id),
  )
  return elsewhere === null ? ok(fresh) : failed(problem('run.event-elsewhere', { id: elsewhere }))
}

/** Refuses times from paper that cannot be; the field counts the events that are new. */
async function canHaveBeen(
  context: Context,
  rooms: Rooms,
  run: RunRecord,
  before: readonly Received[],
  fresh: readonly RunEvent[],
): Promise<Result<null>> {
  if (!fresh.some(isFromPaper)) return ok(null)
  const zone = (await rooms.house.bench(context.bench))?.zone ?? 'UTC'
  const known = before.map(({ event }) => event)
  const found = impossibleOnPaper(expectOk(scoreOf(run.plan)), known, fresh, { zone, now: context.clock.now() })
  if (found === null) return ok(null)
  const place = fresh.findIndex(({ id }) => id === found.id)
  return failed({ ...found.problem, field: place === -1 ? 'events' : `events[${place}]` })
}

async function append(
  context: Context,
  rooms: Rooms,
  run: RunRecord,
  before: readonly Received[],
  fresh: readonly RunEvent[],
): Promise<Received[]> {
  const now = context.clock.now()
  const coming = fresh.map((event) => ({ receivedAt: now, receivedBy: context.actor.id, event }))
  const all = [...before, ...coming].map(({ event }) => event)
  const going = followed({ ...run, endedAt: null }, all, now)
  const progress = progressOf(going.state, going.following)
  const added = await rooms.runs.append(run.id, coming, progress)
  await moveRollsOf(context, rooms, run, going, progress)
  await bookBathsOf(context, rooms, run, going)
  await rooms.feed.tell({ kind: 'runs', subject: run.id }, now)
  return added
}

/** Gives up every tank that is not done. */
export async function abandonRun(context: Context, rooms: Rooms, id: string, reason: string): Promise<Result<View>> {
  const run = await standingRun(rooms, id, true)
  if (!run.ok) return run
  const now = context.clock.now()
  const before = await rooms.runs.events(id, 0)
  const events = before.map(({ event }) => event)
  const open = openTanks(run.value, events, now)
  if (open.length === 0) return failed(problem('run.over'))
  const fresh = open.map((tank) => abandoned(context, tank, reason))
  await append(context, rooms, run.value, before, fresh)
  const after = await rooms.runs.run(id)
  return ok(await runView(rooms, after as RunRecord, now))
}

function openTanks(run: RunRecord, events: readonly RunEvent[], now: Instant): string[] {
  const { score, following } = followed(run, events, now)
  const over = following.tanks.filter(({ phase }) => phase === 'done' || phase === 'abandoned')
  return score.tanks.map(({ tank }) => tank.tank).filter((name) => !over.some(({ tank }) => tank === name))
}

/** Written by the server itself, whose clock is its own. */
function abandoned(context: Context, tank: string, reason: string): RunEvent {
  const now = context.clock.now()
  const clocks = { device: 'server', life: 'server', monotonicMs: 0, wallMs: now, serverOffsetMs: now, statedMs: now }
  return { kind: 'abandoned', reason, id: context.ids.next(), ...clocks, tank, bath: null, actor: context.actor.id }
}
