import { nameKey } from '../../kernel/index.js'
import type { Received, RunRecord, Verdict } from '../../lab/index.js'
import type { RunEventRow, RunReelRow, RunRow, RunVerdictRow } from '../schema.js'

type Event = Received['event']

export const runRow = (bench: string, run: RunRecord): RunRow => ({
  bench_id: bench,
  id: run.id,
  planned_at: run.plannedAt,
  planned_by: run.plannedBy,
  practice: run.plan.practice,
  plan: JSON.stringify(run.plan),
  state: run.state,
  started_at: run.startedAt,
  ended_at: run.endedAt,
  listed_at: run.startedAt ?? run.plannedAt,
  last_seq: run.lastSeq,
})

export const runRecord = (row: RunRow): RunRecord => ({
  id: row.id,
  plannedAt: row.planned_at,
  plannedBy: row.planned_by,
  plan: JSON.parse(row.plan) as RunRecord['plan'],
  state: row.state as RunRecord['state'],
  startedAt: row.started_at,
  endedAt: row.ended_at,
  lastSeq: row.last_seq,
})

export const reelRows = (bench: string, run: RunRecord): RunReelRow[] =>
  run.plan.tanks.flatMap(({ conditions, on_reels }) =>
    on_reels.map(({ film, exposure_index, label }, position) => ({
      bench_id: bench,
      run_id: run.id,
      tank: conditions.tank,
      position,
      film,
      film_key: nameKey(film),
      exposure_index,
      label,
    })),
  )

export function eventRow(bench: string, runId: string, { seq, receivedAt, receivedBy, event }: Received): RunEventRow {
  const { id, device, life, monotonicMs, wallMs, serverOffsetMs, statedMs, tank, bath, actor, kind, ...own } = event
  return {
    bench_id: bench,
    run_id: runId,
    seq,
    id,
    received_at: receivedAt,
    received_by: receivedBy,
    kind,
    tank,
    bath,
    device,
    life,
    monotonic_ms: monotonicMs,
    wall_ms: wallMs,
    server_offset_ms: serverOffsetMs,
    stated_ms: statedMs ?? null,
    actor,
    happening: JSON.stringify(own),
  }
}

/** The event comes back as it was sent; what was null and could be left out is left out. */
export const received = (row: RunEventRow): Received => ({
  seq: row.seq,
  receivedAt: row.received_at,
  receivedBy: row.received_by,
  event: {
    id: row.id,
    device: row.device,
    life: row.life,
    monotonicMs: row.monotonic_ms,
    wallMs: row.wall_ms,
    serverOffsetMs: row.server_offset_ms,
    ...(row.stated_ms === null ? {} : { statedMs: row.stated_ms }),
    tank: row.tank,
    bath: row.bath,
    actor: row.actor,
    kind: row.kind,
    ...(JSON.parse(row.happening) as object),
  } as Event,
})

export const verdictRow = (bench: string, verdict: Verdict, position: number): RunVerdictRow => ({
  bench_id: bench,
  run_id: verdict.runId,
  position,
  id: verdict.id,
  at: verdict.at,
  said_by: verdict.by,
  tank: verdict.tank,
  density: verdict.density,
  marks: JSON.stringify(verdict.marks),
  note: verdict.note,
})

export const verdictRecord = (row: RunVerdictRow): Verdict => ({
  id: row.id,
  runId: row.run_id,
  at: row.at,
  by: row.said_by,
  tank: row.tank,
  density: row.density as Verdict['density'],
  marks: JSON.parse(row.marks) as Verdict['marks'],
  note: row.note,
})
