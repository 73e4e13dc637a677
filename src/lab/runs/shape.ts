import { instantText } from '../../kernel/index.js'
import type { Following } from '../../score/index.js'
import type { KeptEvent, RunSummary, RunVerdict } from '../../wire/index.js'
import type { Received, RunRecord, Verdict } from './port.js'

export const viewOfEvent = ({ seq, receivedAt, event }: Received): KeptEvent => ({
  seq,
  received_at: instantText(receivedAt),
  event,
})

/** Verdicts, oldest first; the newest of a tank stands. */
export const verdictViews = (verdicts: readonly Verdict[]): RunVerdict[] =>
  verdicts.map(({ id, at, by, tank, density, marks, note }, i) => ({
    id,
    at: instantText(at),
    by,
    tank,
    density,
    marks: [...marks],
    note,
    stands: !verdicts.slice(i + 1).some((later) => later.tank === tank),
  }))

export const outcomeOf = (following: Following): RunSummary['outcome'] =>
  following.tanks.map(({ tank, phase, developed }) => ({
    tank,
    phase,
    equivalent: developed && {
      done_s: developed.done,
      target_s: developed.target,
      fraction: developed.fraction,
      low: developed.low,
      high: developed.high,
    },
  }))

const textOf = (at: number | null): string | null => (at === null ? null : instantText(at))

/** What a list of runs and one run have in common. */
export const summaryOf = (run: RunRecord, verdicts: readonly Verdict[], following: Following) => ({
  id: run.id,
  planned_at: instantText(run.plannedAt),
  state: run.state,
  started_at: textOf(run.startedAt),
  ended_at: textOf(run.endedAt),
  verdicts: verdictViews(verdicts),
  outcome: outcomeOf(following),
})
