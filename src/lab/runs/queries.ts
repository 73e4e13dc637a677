import { expectOk, type Instant, ok, type Result } from '../../kernel/index.js'
import { type Following, fold, follow, type RunEvent, type RunState, type Score } from '../../score/index.js'
import type { KeptEvent, RunSummary, Run as View } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { RunRecord, RunsWanted, Verdict } from './port.js'
import { summaryOf, viewOfEvent } from './shape.js'
import { scoreOf, standingRun } from './standing.js'

export interface Followed {
  readonly score: Score
  readonly state: RunState
  readonly following: Following
}

/**
 * A run as its events have it by now, or by its end. A kept plan was checked by the same function, so it has a
 * score.
 */
export function followed(run: RunRecord, events: readonly RunEvent[], now: Instant): Followed {
  const score = expectOk(scoreOf(run.plan))
  const state = fold(score, events)
  return { score, state, following: follow(score, state, run.endedAt ?? now) }
}

export async function runView(rooms: Rooms, run: RunRecord, now: Instant): Promise<View> {
  const events = await rooms.runs.events(run.id, 0)
  const { following } = followed(
    run,
    events.map(({ event }) => event),
    now,
  )
  return {
    ...summaryOf(run, await rooms.runs.verdicts([run.id]), following),
    plan: run.plan,
    events: events.map(viewOfEvent),
    last_seq: run.lastSeq,
  }
}

export async function getRun(rooms: Rooms, id: string, now: Instant): Promise<Result<View>> {
  const run = await standingRun(rooms, id)
  return run.ok ? ok(await runView(rooms, run.value, now)) : run
}

/** What came in after a number that was seen. */
export async function eventsAfter(
  rooms: Rooms,
  id: string,
  after: number,
  most?: number,
): Promise<Result<{ events: KeptEvent[]; last_seq: number }>> {
  const run = await standingRun(rooms, id)
  if (!run.ok) return run
  return ok({ events: (await rooms.runs.events(id, after, most)).map(viewOfEvent), last_seq: run.value.lastSeq })
}

/** A run with everything that a paper about it needs. */
export async function runFollowed(
  rooms: Rooms,
  id: string,
  now: Instant,
): Promise<Result<Followed & { run: RunRecord; verdicts: Verdict[] }>> {
  const run = await standingRun(rooms, id)
  if (!run.ok) return run
  const events = (await rooms.runs.events(id, 0)).map(({ event }) => event)
  return ok({ ...followed(run.value, events, now), run: run.value, verdicts: await rooms.runs.verdicts([id]) })
}

/** A page of runs, newest first. */
export async function listRuns(
  rooms: Rooms,
  wanted: RunsWanted,
  now: Instant,
): Promise<{ runs: RunSummary[]; more: boolean }> {
  const found = await rooms.runs.newest({ ...wanted, most: wanted.most + 1 })
  const runs = found.slice(0, wanted.most)
  const verdicts = await rooms.runs.verdicts(runs.map(({ id }) => id))
  const summaries: RunSummary[] = []
  for (const run of runs) {
    const own = verdicts.filter(({ runId }) => runId === run.id)
    summaries.push(await summary(rooms, run, own, now))
  }
  return { runs: summaries, more: found.length > runs.length }
}

async function summary(rooms: Rooms, run: RunRecord, verdicts: Verdict[], now: Instant): Promise<RunSummary> {
  const events = (await rooms.runs.events(run.id, 0)).map(({ event }) => event)
  const { score, following } = followed(run, events, now)
  return {
    ...summaryOf(run, verdicts, following),
    practice: run.plan.practice,
    tanks: run.plan.tanks.map(({ recipe, on_reels, developer, dilution_parts, conditions }, i) => {
      const development = score.tanks[i]?.tank.development ?? null
      return {
        tank: conditions.tank,
        recipe_name: recipe.name,
        process: recipe.process,
        on_reels,
        developer,
        dilution_parts,
        temperature_c: conditions.development?.temperature ?? null,
        time_s: development === null ? null : development.from === 'own' ? development.time : development.answer.time,
      }
    }),
  }
}
