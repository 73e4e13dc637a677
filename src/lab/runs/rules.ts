import { failed, type Instant, ok, problem, type Result } from '../../kernel/index.js'
import type { Following, RunEvent, RunState } from '../../score/index.js'
import type { RunPlan } from '../../wire/index.js'
import type { Progress } from './port.js'

const POURS: readonly RunEvent['kind'][] = ['poured-in', 'poured-out']
const OF_A_STEP: readonly RunEvent['kind'][] = [...POURS, 'step-done', 'skipped']

/** Whether an event can be one of this run: its tank and its step are there, and only baths are poured. */
export function fits({ tanks }: RunPlan, event: RunEvent): Result<null> {
  const { tank: name, bath, kind } = event
  const tank = tanks.find(({ conditions }) => conditions.tank === name)
  if (tank === undefined) {
    const all = tanks.map(({ conditions }) => conditions.tank).join(', ')
    return failed(problem('run.unknown-tank', { tank: name, tanks: all }, 'tank'))
  }
  if (bath === null) return OF_A_STEP.includes(kind) ? failed(problem('run.step-missing', { kind }, 'bath')) : ok(null)
  const step = tank.recipe.steps[bath]
  if (step === undefined)
    return failed(problem('run.unknown-step', { tank: name, bath, last: tank.recipe.steps.length - 1 }, 'bath'))
  return POURS.includes(kind) && step.step !== 'bath'
    ? failed(problem('run.not-a-bath', { name: step.name, kind }, 'kind'))
    : ok(null)
}

/** Whether two events say the same, whatever the order of their fields; null says as little as nothing does. */
export const sameEvent = (a: RunEvent, b: RunEvent): boolean => canonical(a) === canonical(b)

const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(
          Object.entries(part)
            .filter(([, value]) => value !== null)
            .sort(([a], [b]) => (a < b ? -1 : 1)),
        )
      : part,
  )

/** Events that say nothing of when a run ended: written any time, or about clocks and other events. */
const ASIDE: readonly RunEvent['kind'][] = ['noted', 'retracted', 'resumed', 'clock-settled']

/** How far a run has come. While a clock is in doubt it goes on. */
export function progressOf(state: RunState, following: Following): Progress {
  const standing = state.events.filter(({ event, stands }) => stands && !ASIDE.includes(event.kind))
  const startedAt = standing[0]?.at ?? null
  const phases = following.tanks.map(({ phase }) => phase)
  const over = phases.length > 0 && phases.every((phase) => phase === 'done' || phase === 'abandoned')
  if (!over) return { state: startedAt === null ? 'planned' : 'running', startedAt, endedAt: null }
  const endedAt: Instant | null = standing.at(-1)?.at ?? null
  return { state: phases.includes('done') ? 'finished' : 'abandoned', startedAt, endedAt }
}
