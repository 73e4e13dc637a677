import { type Celsius, celsius, failed, ok, type Problem, type Result } from '../../kernel/index.js'
import type { TimeBasis } from '../../science/index.js'
import type { AskedTank, FromShelf, PlannedTank, PlanRun, RunPlan, Run as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import { correctedReading, standing } from '../kit/queries.js'
import type { Rooms } from '../store.js'
import { standingTime } from '../times/answer.js'
import type { TimeRecord } from '../times/port.js'
import { basisOf } from '../times/rules.js'
import { bathsFromShelf, longerBy, type Taken } from './from-shelf.js'
import { isMixed, ownTimes, sharedDevelopment, withDepartures } from './one-tank.js'
import type { RunRecord } from './port.js'
import { runView } from './queries.js'
import { keptOf, mayBeLoaded, type Reel, reelsOf } from './reels.js'
import { scoreOf } from './standing.js'
import { vesselOf } from './vessel.js'

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
  const reels = await reelsOf(rooms, asked)
  if (!reels.ok) return reels
  // Practice is done without film, whatever it is named after.
  const films = asked.practice === null ? (await rooms.films.all()).map(({ statement }) => statement) : []
  const tanks: PlannedTank[] = []
  const taken: Taken = new Map()
  for (const [i, tank] of asked.tanks.entries()) {
    const may = mayBeLoaded(tank, reels.value[i] as Reel[], films)
    if (!may.ok) return within(may.problem, `tanks[${i}]`)
    const planned = await plannedTank(rooms, tank, reels.value[i] as Reel[], taken)
    if (!planned.ok) return within(planned.problem, `tanks[${i}]`)
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

async function plannedTank(
  rooms: Rooms,
  asked: AskedTank,
  reels: readonly Reel[],
  taken: Taken,
): Promise<Result<PlannedTank>> {
  const vessel = await vesselOf(rooms, asked, reels)
  if (!vessel.ok) return vessel
  const baths = await bathsFromShelf(rooms, asked, reels, taken)
  if (!baths.ok) return baths
  const { on_reels: _, vessel_id: _id, from_shelf: _baths, conditions: stands, ...stated } = asked
  const conditions = await withRepeatUse(rooms, asked, stands, baths.value)
  const tank = {
    ...stated,
    on_reels: reels.map(keptOf),
    ...(vessel.value === null ? {} : { vessel: vessel.value }),
    ...(baths.value.length === 0 ? {} : { from_shelf: baths.value }),
  }
  const developed = await developedBy(rooms, { ...tank, conditions }, reels)
  if (!developed.ok) return developed
  const alone = scoreOf({ tanks: [developed.value] })
  if (!alone.ok) return alone
  const development = alone.value.tanks[0]?.tank.development ?? null
  if (development === null || !isMixed(reels)) return developed
  const { developer, dilution_parts } = developed.value
  const temperature = conditions.development?.temperature ?? null
  const own = await ownTimes(rooms, reels, { developer, dilution_parts, temperature })
  if (!own.ok) return own
  const served = development.from === 'own' ? development.time : development.answer.time
  const departing = await withDepartures(rooms, own.value, served)
  return departing.ok ? ok({ ...developed.value, on_reels: departing.value }) : within(departing.problem, 'on_reels')
}

/** A developer that is used again takes longer by what it has met, where its product says so and nobody else did. */
async function withRepeatUse(
  rooms: Rooms,
  asked: AskedTank,
  conditions: AskedTank['conditions'],
  baths: readonly FromShelf[],
): Promise<AskedTank['conditions']> {
  const { development } = conditions
  if (development?.from !== 'kept' || development.modifiers?.some(({ name }) => name === 'repeat-use'))
    return conditions
  const factor = await longerBy(rooms, asked, baths)
  if (factor === 1) return conditions
  const repeat = { name: 'repeat-use' as const, factor: Math.min(5, factor), origin: 'sheet' as const }
  return { ...conditions, development: { ...development, modifiers: [...(development.modifiers ?? []), repeat] } }
}

type Undeveloped = Omit<PlannedTank, 'conditions' | 'time'> & Pick<AskedTank, 'conditions'>

/** The tank with its developing time: fixed by the list, the person's own, by a kept one, or shared by its films. */
async function developedBy(
  rooms: Rooms,
  { conditions, ...tank }: Undeveloped,
  reels: readonly Reel[],
): Promise<Result<PlannedTank>> {
  const { development } = conditions
  if (development === null || development.from === 'own')
    return ok({ ...tank, conditions: { ...conditions, development }, time: null })
  if (development.from === 'kept') {
    const record = await standingTime(rooms, development.time_id)
    if (!record.ok) return within(record.problem, 'conditions.development.time_id')
    const basis = basisOf(record.value)
    if (!basis.ok) return within(basis.problem, 'conditions.development.time_id')
    const { time_id: _, from: _from, ...asked } = development
    return ok(byKept({ conditions, ...tank }, record.value, { ...asked, basis: basis.value }))
  }
  const { temperature } = development
  const own = await ownTimes(rooms, reels, { ...tank, temperature })
  if (!own.ok) return own
  const shared = await sharedDevelopment(rooms, own.value)
  if (!shared.ok) return within(shared.problem, 'on_reels')
  if (shared.value.from === 'own') {
    const typed = { from: 'own' as const, time: shared.value.time, temperature }
    return ok({ ...tank, conditions: { ...conditions, development: typed }, time: null })
  }
  const { record, basis, modifiers } = shared.value
  return ok(byKept({ conditions, ...tank }, record, { temperature, basis, modifiers }))
}

type Development = Extract<PlannedTank['conditions']['development'], { from: 'basis' }>

/** Copies a kept time into the plan, so that what is corrected later changes nothing. */
function byKept(
  { conditions, ...tank }: Undeveloped,
  { id, revision, sourceWords, developer, dilutionParts }: TimeRecord,
  development: Omit<Development, 'from' | 'basis'> & { readonly basis: TimeBasis },
): PlannedTank {
  const basis = { ...development.basis, points: [...development.basis.points] }
  return {
    ...tank,
    developer: tank.developer === '' ? developer : tank.developer,
    dilution_parts: tank.dilution_parts ?? (dilutionParts === null ? null : [...dilutionParts]),
    conditions: { ...conditions, development: { ...development, from: 'basis', basis } },
    time: { time_id: id, revision, source_words: sourceWords },
  }
}
