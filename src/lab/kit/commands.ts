import { all, type Celsius, celsius, failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { boilingPoint, checkIsPossible, classSet, correctionByRecord, methodOf } from '../../science/index.js'
import type {
  AddCheck,
  AddClassSet,
  ClassSetResult,
  ThermometerRecord as View,
  ThermometerStatement as Wire,
} from '../../wire/index.js'
import type { Context } from '../context.js'
import { nameTaken } from '../names.js'
import { correct, keepFirst, remove, revise, undo } from '../revisions.js'
import type { Rooms } from '../store.js'
import type { ThermometerCheck, ThermometerRecord, ThermometerStatement } from './port.js'
import { correctedReading, standing } from './queries.js'
import { statementOf, viewOf } from './shape.js'

const WHAT = 'thermometer'

async function told(context: Context, rooms: Rooms, done: Result<ThermometerRecord>): Promise<Result<View>> {
  if (!done.ok) return done
  await rooms.feed.tell({ kind: 'thermometers', subject: done.value.id }, context.clock.now())
  return ok(viewOf(done.value, await rooms.kit.checks(done.value.id)))
}

/** A scale that makes sense and a name no other thermometer here has: in a class they are told apart by name. */
async function checked(rooms: Rooms, wire: Wire, except: string | null): Promise<Result<ThermometerStatement>> {
  const scale = checkIsPossible('entered', wire.scale_low_c, wire.scale_high_c)
  if (!scale.ok) return scale
  const taken = await takenByAnother(rooms, wire.name, except)
  if (taken !== null) return failed(taken)
  const statement = statementOf(wire)
  const left = except === null ? null : await leftOut(rooms, except, statement)
  return left === null ? ok(statement) : failed(left)
}

/** A check that stands was read on the scale, so the scale cannot end short of it. */
async function leftOut(rooms: Rooms, id: string, { scaleLow, scaleHigh }: Scale): Promise<Problem | null> {
  const checks = (await rooms.kit.checks(id)).filter((check) => !check.withdrawn)
  const out = checks.find(({ read }) => read < scaleLow || read > scaleHigh)
  if (out === undefined) return null
  const [low, high, read] = [{ celsius: scaleLow }, { celsius: scaleHigh }, { celsius: out.read }]
  return problem('thermometer.scale-leaves-out', { low, high, read }, 'scale')
}

type Scale = Pick<ThermometerStatement, 'scaleLow' | 'scaleHigh'>

async function takenByAnother(rooms: Rooms, name: string, except: string | null): Promise<Problem | null> {
  const others = (await rooms.kit.all()).filter(({ id }) => id !== except)
  return nameTaken(
    WHAT,
    name,
    others.map((other) => other.name),
    'name',
  )
}

export async function addThermometer(context: Context, rooms: Rooms, wire: Wire): Promise<Result<View>> {
  const statement = await checked(rooms, wire, null)
  return statement.ok ? told(context, rooms, ok(await keepFirst(context, rooms.kit, statement.value))) : statement
}

export async function correctThermometer(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  wire: Wire,
): Promise<Result<View>> {
  const statement = await checked(rooms, wire, id)
  if (!statement.ok) return statement
  return told(context, rooms, await revise(context, rooms.kit, WHAT, id, seen, correct(WHAT, statement.value)))
}

export const removeThermometer = async (
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
): Promise<Result<View>> => told(context, rooms, await revise(context, rooms.kit, WHAT, id, seen, remove(WHAT)))

/** Takes the last change back. A removal cannot come back under a name that was given away meanwhile. */
export async function undoThermometer(context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<View>> {
  const done = await revise(context, rooms.kit, WHAT, id, seen, undo(rooms.kit))
  if (done.ok && !done.value.removed) {
    const left = await leftOut(rooms, id, done.value)
    if (left !== null) return failed(left)
    const taken = await takenByAnother(rooms, done.value.name, id)
    if (taken !== null) return failed(taken)
  }
  return told(context, rooms, done)
}

/** What was true when the thermometer was checked. */
function truthOf(check: AddCheck): Result<Celsius> {
  if (check.method === 'ice') return ok(celsius(0))
  if (check.method === 'boiling') {
    if (check.pressure_hpa !== undefined) return boilingPoint({ pressure_hPa: check.pressure_hpa })
    return boilingPoint({ altitude_m: check.altitude_m ?? 0 })
  }
  if (check.true_c === undefined)
    return failed(
      problem('request.invalid', { reason: 'This check needs the true temperature beside the reading.' }, 'true_c'),
    )
  return ok(celsius(check.true_c))
}

/** Adds a check if the thermometer can be checked so, and if all its checks together still make sense. */
async function addCheckTo(
  context: Context,
  rooms: Rooms,
  record: ThermometerRecord,
  found: Pick<ThermometerCheck, 'method' | 'read' | 'true' | 'setId'>,
): Promise<Result<null>> {
  if (found.read < record.scaleLow || found.read > record.scaleHigh)
    return failed(problem('thermometer.outside-scale', scaleOf(record, found.read), 'read_c'))
  const possible = checkIsPossible(methodOf(found.method), record.scaleLow, record.scaleHigh)
  if (!possible.ok) return possible
  const sound = correctionByRecord([...(await rooms.kit.checks(record.id)), { ...found, withdrawn: false }])
  if (!sound.ok) return sound
  await rooms.kit.addCheck({
    ...found,
    id: context.ids.next(),
    thermometerId: record.id,
    at: context.clock.now(),
    by: context.actor.id,
    withdrawn: false,
  })
  return ok(null)
}

const scaleOf = (record: ThermometerRecord, read: number) => ({
  read: { celsius: read },
  name: record.name,
  low: { celsius: record.scaleLow },
  high: { celsius: record.scaleHigh },
})

export async function checkThermometer(
  context: Context,
  rooms: Rooms,
  id: string,
  check: AddCheck,
): Promise<Result<View>> {
  const record = await standing(rooms, id)
  if (!record.ok) return record
  const truth = truthOf(check)
  if (!truth.ok) return truth
  const found = { method: check.method, read: celsius(check.read_c), true: truth.value, setId: null }
  const added = await addCheckTo(context, rooms, record.value, found)
  return added.ok ? told(context, rooms, record) : added
}

export async function withdrawCheck(context: Context, rooms: Rooms, id: string): Promise<Result<View>> {
  const check = await rooms.kit.check(id)
  if (check === null) return failed(problem('record.not-found', { what: 'thermometer check', id }))
  if (check.withdrawn) return failed(problem('thermometer.check-withdrawn'))
  await rooms.kit.withdrawCheck(id, context.ids.next(), context.clock.now(), context.actor.id)
  const record = await rooms.kit.newest(check.thermometerId)
  if (record === null) throw new Error(`Check ${id} belongs to thermometer ${check.thermometerId}, which is not there.`)
  return told(context, rooms, ok(record))
}

/** Several thermometers in one beaker: one truth, an offset for each. Nothing is kept unless all of it can be. */
export async function addClassSet(context: Context, rooms: Rooms, set: AddClassSet): Promise<Result<ClassSetResult>> {
  const records: Result<ThermometerRecord>[] = []
  for (const reading of set.readings) records.push(await standing(rooms, reading.thermometer_id))
  const known = all(records)
  if (!known.ok) return known
  const trusted =
    set.trusted_id === null ? null : set.readings.findIndex((reading) => reading.thermometer_id === set.trusted_id)
  if (trusted === -1)
    return failed(
      problem(
        'record.not-found',
        { what: 'trusted thermometer among the readings', id: set.trusted_id ?? '' },
        'trusted_id',
      ),
    )
  const readings = set.readings.map((reading, i) => ({
    name: (known.value[i] as ThermometerRecord).name,
    read: celsius(reading.read_c),
  }))
  // The trusted one is believed as it is believed everywhere: put right by its own checks.
  const truth = trusted === null ? null : readings[trusted]
  if (truth) {
    const corrected = await correctedReading(rooms, set.trusted_id as string, truth.read)
    if (!corrected.ok) return corrected
    truth.read = corrected.value.true
  }
  const result = classSet(readings, trusted)
  if (!result.ok) return result
  const setId = context.ids.next()
  for (const [i, reading] of readings.entries()) {
    // Checking the trusted one against itself would say nothing.
    if (i === trusted) continue
    const found = { method: 'class-set' as const, read: reading.read, true: result.value.temperature, setId }
    const added = await addCheckTo(context, rooms, known.value[i] as ThermometerRecord, found)
    if (!added.ok) return added
    await rooms.feed.tell(
      { kind: 'thermometers', subject: (known.value[i] as ThermometerRecord).id },
      context.clock.now(),
    )
  }
  return ok({
    set_id: setId,
    true_c: result.value.temperature,
    by: trusted === null ? 'median' : 'trusted',
    trusted_id: set.trusted_id,
    spread_c: result.value.spread,
    offsets: set.readings.map((reading) => ({ ...reading, offset_c: reading.read_c - result.value.temperature })),
  })
}
