import { type Celsius, celsius, failed, ok, type Problem, type Result } from '../../kernel/index.js'
import type { AskedTank, PlannedTank, PlanRun, RunPlan, Run as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import { correctedReading, standing } from '../kit/queries.js'
import type { Rooms } from '../store.js'
import { standingTime } from '../times/answer.js'
import { basisOf } from '../times/rules.js'
import type { RunRecord } from './port.js'
import { runView } from './queries.js'
import { scoreOf } from './standing.js'

/**
 * Plans a run. The plan holds copies of the lists, the developing times and the thermometer's name as they are now,
 * so that what is corrected on the shelf later changes no run. Refused: whatever `plan` of the score refuses, and
 * times or thermometers that are not on this bench.
 */
export async function planRun(context: Context, rooms: Rooms, asked: PlanRun): Promise<Result<View>> {
  const made = await planOf(rooms, asked)
  if (!made.ok) return made
  const run: RunRecord = {
    id: context.ids.next(),
    plannedAt: context.clock.now(),
    plannedBy: context.actor.id,
    plan: made.value,
    state: 'planned',
    startedAt: null,
    endedAt: null,
    lastSeq: 0,
  }
  await rooms.runs.add(run)
  await rooms.feed.tell({ kind: 'runs', subject: run.id }, context.clock.now())
  return ok(await runView(rooms, run, context.clock.now()))
}

async function planOf(rooms: Rooms, asked: PlanRun): Promise<Result<RunPlan>> {
  const thermometer = asked.thermometer_id === null ? ok(null) : await standing(rooms, asked.thermometer_id)
  if (!thermometer.ok) return within(thermometer.problem, 'thermometer_id')
  const tanks: PlannedTank[] = []
  for (const [i, tank] of asked.tanks.entries()) {
    const planned = await plannedTank(rooms, tank)
    if (!planned.ok) return within(planned.problem, `tanks[${i}]`)
    const alone = scoreOf({ tanks: [planned.value] })
    if (!alone.ok) return within(alone.problem, `tanks[${i}]`)
    tanks.push(planned.value)
  }
  const together = scoreOf({ tanks })
  if (!together.ok) return within(together.problem, 'tanks')
  const { practice, note } = asked
  if (thermometer.value === null) return ok({ practice, note, thermometer: null, tanks })
  const { id, name } = thermometer.value
  return ok({ practice, note, thermometer: { id, name, ...(await errorOf(rooms, id, tanks)) }, tanks })
}

/** Most developers are used at this temperature; where none is planned, a thermometer is asked about it. */
const USUAL = celsius(20)

/** What the checks make of a thermometer near the developer; nothing where they contradict each other. */
async function errorOf(rooms: Rooms, id: string, tanks: readonly PlannedTank[]) {
  const developer = tanks[0]?.conditions.development?.temperature
  const corrected = await correctedReading(rooms, id, (developer as Celsius | null | undefined) ?? USUAL)
  return corrected.ok ? { off_c: -corrected.value.correction, band_c: corrected.value.band } : {}
}

const within = (found: Problem, place: string): Result<never> =>
  failed({ ...found, field: found.field === undefined ? place : `${place}.${found.field}` })

async function plannedTank(rooms: Rooms, { conditions, ...tank }: AskedTank): Promise<Result<PlannedTank>> {
  const { development } = conditions
  if (development === null || development.from === 'own')
    return ok({ ...tank, conditions: { ...conditions, development }, time: null })
  const record = await standingTime(rooms, development.time_id)
  if (!record.ok) return within(record.problem, 'conditions.development.time_id')
  const { id, revision, sourceWords, developer, dilutionParts } = record.value
  const basis = basisOf(record.value)
  if (!basis.ok) return within(basis.problem, 'conditions.development.time_id')
  const { time_id: _, ...asked } = development
  return ok({
    ...tank,
    developer: tank.developer === '' ? developer : tank.developer,
    dilution_parts: tank.dilution_parts ?? (dilutionParts === null ? null : [...dilutionParts]),
    conditions: {
      ...conditions,
      development: { ...asked, from: 'basis', basis: { ...basis.value, points: [...basis.value.points] } },
    },
    time: { time_id: id, revision, source_words: sourceWords },
  })
}
