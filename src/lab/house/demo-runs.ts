import { celsius, DAY_MS, expectOk, type Instant, ok, type Result } from '../../kernel/index.js'
import { type RunEvent, SHIPPED_RECIPES, type TankPlan } from '../../score/index.js'
import type { PlanRun, Run } from '../../wire/index.js'
import type { Context } from '../context.js'
import { addRunEvents } from '../runs/events.js'
import { planRun } from '../runs/plan.js'
import { scoreOf } from '../runs/standing.js'
import { judgeRun } from '../runs/verdicts.js'
import type { Rooms } from '../store.js'

const TWO_DAYS_MS = 2 * DAY_MS
/** The hands of the demo bench are a little late at each pour-out, seconds. */
const LATE = 4

const planned = (timeId: string, label: string, note: string): PlanRun => ({
  practice: null,
  note,
  thermometer_id: null,
  tanks: [
    {
      reels: 1,
      on_reels: [{ film: 'Corvane 400', exposure_index: 400, label }],
      developer: '',
      dilution_parts: null,
      recipe: JSON.parse(JSON.stringify(SHIPPED_RECIPES[0])) as PlanRun['tanks'][number]['recipe'],
      conditions: { tank: 'A', development: { from: 'kept', time_id: timeId, temperature: celsius(20) } },
    },
  ],
})

/** One run as it was done two days ago, with a reading and a verdict, and one that waits for its film. */
export async function furnishRuns(context: Context, rooms: Rooms, timeId: string): Promise<Result<null>> {
  const done = await planRun(context, rooms, planned(timeId, 'roll 41, mill pond', 'Room at 23 °C.'))
  if (!done.ok) return done
  const events = await addRunEvents(context, rooms, done.value.id, eventsOf(context, done.value))
  if (!events.ok) return events
  const verdict = { tank: 'A', density: 'right' as const, marks: ['drying-marks' as const], note: 'Hard water here.' }
  const judged = await judgeRun(context, rooms, done.value.id, verdict)
  if (!judged.ok) return judged
  const waiting = await planRun(context, rooms, planned(timeId, 'roll 42', ''))
  return waiting.ok ? ok(null) : waiting
}

/** What was written down of the run: every step near its second, and one reading warmer than planned. */
function eventsOf(context: Context, { plan }: Run): RunEvent[] {
  const [tank] = expectOk(scoreOf(plan)).tanks as readonly [TankPlan]
  const zero = context.clock.now() - TWO_DAYS_MS
  const written = (at: number, bath: number | null) => stamp(context, zero + Math.round(at * 1000), bath)
  const steps = tank.laid.flatMap((one): RunEvent[] => {
    const { index, step } = one
    if (step.step === 'act')
      return step.within === null ? [{ ...written(one.out + LATE, index), kind: 'step-done' }] : []
    const out: RunEvent = { ...written(one.out + LATE, index), kind: 'poured-out' }
    const poured: RunEvent[] = [{ ...written(one.in, index), kind: 'poured-in' }, out]
    if (one.development === null) return poured
    const reading = { kind: 'reading', temperature: celsius(20.4), confirmed: false } as const
    return [...poured, { ...written(one.in + 150, index), ...reading }]
  })
  return [{ ...written(0, null), kind: 'started' }, ...steps]
}

const stamp = (context: Context, at: Instant, bath: number | null) => ({
  id: context.ids.next(),
  device: 'paper',
  life: 'paper',
  monotonicMs: 0,
  wallMs: at,
  serverOffsetMs: null,
  statedMs: at,
  tank: 'A',
  bath,
  actor: context.actor.id,
})
