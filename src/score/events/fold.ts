import type { Instant } from '../../kernel/index.js'
import type { Score } from '../plan/definition.js'
import { type ClockDoubt, clocksOf } from './clocks.js'
import type { EventKind, EventOf, RunEvent } from './definition.js'
import { liveOf } from './undo.js'

/** An event with its instant and its standing. */
export interface Placed<E extends RunEvent = RunEvent> {
  readonly event: E
  readonly at: Instant
  /** Not taken back. */
  readonly stands: boolean
}
type PlacedOf<K extends EventKind> = Placed<EventOf<K>>

/** What is known of one step of a tank. `more` are confirmations of the same thing that came later: shown, not counted. */
export interface StepState {
  readonly pouredIn: PlacedOf<'poured-in'> | null
  readonly pouredOut: PlacedOf<'poured-out'> | null
  readonly done: PlacedOf<'step-done'> | null
  readonly skipped: PlacedOf<'skipped'> | null
  readonly more: readonly Placed[]
}

export interface TankState {
  readonly tank: string
  readonly started: PlacedOf<'started'> | null
  /** By the place of the step in its list; steps of which nothing is known are absent. */
  readonly steps: ReadonlyMap<number, StepState>
  readonly readings: readonly PlacedOf<'reading'>[]
  readonly mishaps: readonly PlacedOf<'mishap'>[]
  readonly notes: readonly PlacedOf<'noted'>[]
  readonly abandoned: PlacedOf<'abandoned'> | null
  readonly finished: PlacedOf<'finished'> | null
}

/** The state of a run: what its events amount to. */
export interface RunState {
  /** Every event once, by instant and id; those taken back among them. */
  readonly events: readonly Placed[]
  /** In the order of the score. */
  readonly tanks: readonly TankState[]
  /** Lives whose time is not known: to be settled by a person; nothing is guessed. */
  readonly doubts: readonly ClockDoubt[]
  /** Events about tanks and steps that the score does not have. */
  readonly strangers: readonly Placed[]
}

/**
 * What a set of events amounts to under a score. Order of arrival and doubles (by id) change nothing. The pour
 * with the earliest instant that has not been taken back counts, whichever arrived first. Cost: n log n.
 */
export function fold(score: Score, events: Iterable<RunEvent>): RunState {
  const once = onlyOnce(events)
  const isLive = liveOf(once)
  const { instantOf, doubts } = clocksOf(once, isLive)
  const placed = once
    .map((event): Placed => ({ event, at: instantOf(event), stands: isLive(event) }))
    .sort((a, b) => a.at - b.at || (a.event.id < b.event.id ? -1 : 1))
  const known = new Map(score.tanks.map(({ tank }) => [tank.tank, tank.recipe.steps.length]))
  const isStranger = ({ event }: Placed): boolean => {
    const steps = known.get(event.tank)
    return steps === undefined || (event.bath !== null && !(event.bath >= 0 && event.bath < steps))
  }
  return {
    events: placed,
    tanks: score.tanks.map(({ tank }) =>
      tankState(
        tank.tank,
        placed.filter((one) => !isStranger(one)),
      ),
    ),
    doubts,
    strangers: placed.filter(isStranger),
  }
}

/** One event per id. Two different contents under one id cannot be; should they, the greater text stands. */
function onlyOnce(events: Iterable<RunEvent>): RunEvent[] {
  const byId = new Map<string, RunEvent>()
  for (const event of events) {
    const known = byId.get(event.id)
    if (known === undefined || JSON.stringify(known) < JSON.stringify(event)) byId.set(event.id, event)
  }
  return [...byId.values()]
}

const isOf =
  <K extends EventKind>(kind: K) =>
  (placed: Placed): placed is PlacedOf<K> =>
    placed.event.kind === kind

function tankState(tank: string, placed: readonly Placed[]): TankState {
  const live = placed.filter(({ event, stands }) => stands && event.tank === tank)
  const first = <K extends EventKind>(kind: K): PlacedOf<K> | null => live.find(isOf(kind)) ?? null
  return {
    tank,
    started: first('started'),
    steps: stepStates(live),
    readings: live.filter(isOf('reading')),
    mishaps: live.filter(isOf('mishap')),
    notes: live.filter(isOf('noted')),
    abandoned: first('abandoned'),
    finished: first('finished'),
  }
}

const NOTHING: StepState = { pouredIn: null, pouredOut: null, done: null, skipped: null, more: [] }

const FIELD = { 'poured-in': 'pouredIn', 'poured-out': 'pouredOut', 'step-done': 'done', skipped: 'skipped' } as const

function stepStates(live: readonly Placed[]): Map<number, StepState> {
  const steps = new Map<number, StepState>()
  for (const placed of live) {
    const { kind, bath } = placed.event
    if (bath === null || !(kind in FIELD)) continue
    const field = FIELD[kind as keyof typeof FIELD]
    const known = steps.get(bath) ?? NOTHING
    const counted = known[field] === null
    steps.set(bath, counted ? { ...known, [field]: placed } : { ...known, more: [...known.more, placed] })
  }
  return steps
}
