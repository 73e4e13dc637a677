import type { Problem } from '../../src/kernel/index.js'
import { addClassSet, checkThermometer, withdrawCheck } from '../../src/lab/index.js'
import type { AddCheck } from '../../src/wire/index.js'
import { evening } from './calendar.js'
import type { Chance } from './chance.js'
import type { Darkroom } from './darkroom.js'
import { type Instrument, showsAt } from './thermometers.js'

const MISREAD_BY = 3

/** Ids of the checks of one thermometer that count. */
async function standingChecks(darkroom: Darkroom, { statement }: Instrument): Promise<string[]> {
  const { id } = darkroom.of(statement.name)
  const checks = await darkroom.store.read(darkroom.bench, (rooms) => rooms.kit.checks(id))
  return checks.filter((check) => !check.withdrawn).map((check) => check.id)
}

const withdraws = (darkroom: Darkroom, what: string, id: string) =>
  darkroom.does(what, (context, rooms) => withdrawCheck(context, rooms, id))

async function startsAfresh(darkroom: Darkroom, instrument: Instrument): Promise<void> {
  for (const id of await standingChecks(darkroom, instrument))
    await withdraws(darkroom, `withdraws an old check of ${instrument.statement.name}`, id)
}

/** A check; one of a thermometer that has drifted takes the place of what was found two terms ago. */
const checks = (darkroom: Darkroom, { statement: { name } }: Instrument, check: AddCheck) =>
  darkroom.does(`checks ${name}: ${check.method}`, (context, rooms) =>
    checkThermometer(context, rooms, darkroom.of(name).id, check),
  )

export const compares = (darkroom: Darkroom, one: Instrument, chance: Chance, around = 20) => {
  const truth = Number((around + chance.number(-0.6, 0.6)).toFixed(1))
  const read = showsAt(one, truth, darkroom.clock.now())
  return checks(darkroom, one, { method: 'comparison', read_c: read, true_c: truth })
}

export const standsInIce = (darkroom: Darkroom, one: Instrument, chance: Chance) => {
  const melting = chance.number(0, 0.1)
  return checks(darkroom, one, { method: 'ice', read_c: showsAt(one, melting, darkroom.clock.now()) })
}

/** Sluice Street lies 40 m up: water boils there 0.13 °C below 100. */
export const standsInSteam = (darkroom: Darkroom, one: Instrument) =>
  checks(darkroom, one, { method: 'boiling', read_c: showsAt(one, 99.87, darkroom.clock.now()), altitude_m: 40 })

/** Seven in one beaker. */
export async function readsSet(
  darkroom: Darkroom,
  set: readonly Instrument[],
  { trusted, misread, chance }: { trusted: Instrument | null; misread: Instrument | null; chance: Chance },
): Promise<void> {
  const truth = 20 + chance.number(-0.5, 0.5)
  const idOf = ({ statement }: Instrument) => darkroom.of(statement.name).id
  const readings = set.map((one) => ({
    thermometer_id: idOf(one),
    read_c: showsAt(one, truth, darkroom.clock.now()) + (one === misread ? MISREAD_BY : 0),
  }))
  const given = { trusted_id: trusted && idOf(trusted), readings }
  await darkroom.does(`reads ${set.length} in one beaker`, (context, rooms) => addClassSet(context, rooms, given))
  if (misread) await findsMisreading(darkroom, misread)
}

async function findsMisreading(darkroom: Darkroom, misread: Instrument): Promise<void> {
  const [id] = await standingChecks(darkroom, misread)
  if (id === undefined) throw new Error(`${misread.statement.name} has no check to withdraw.`)
  darkroom.waitUntil(evening(3))
  await withdraws(darkroom, `withdraws the misread ${misread.statement.name}`, id)
  await darkroom.isRefused('withdraws it once more', 'thermometer.check-withdrawn', (context, rooms) =>
    withdrawCheck(context, rooms, id),
  )
}

/** Its own reading taken for the truth: says that it has no error. Found out in the same week. */
export async function againstItself(darkroom: Darkroom, one: Instrument, chance: Chance): Promise<void> {
  await startsAfresh(darkroom, one)
  const read = showsAt(one, 20 + chance.number(-1, 1), darkroom.clock.now())
  await checks(darkroom, one, { method: 'comparison', read_c: read, true_c: read })
  const [id] = await standingChecks(darkroom, one)
  darkroom.waitUntil(darkroom.clock.now() + 3 * 24 * 3_600_000)
  await withdraws(darkroom, `withdraws the check of ${one.statement.name} against itself`, id as string)
}

/** What a first evening brings: checks that a thermometer cannot have, and sets that are none. */
export async function refusedChecks(darkroom: Darkroom, instruments: readonly Instrument[]): Promise<void> {
  const [reference, spirit, , , , dial] = instruments as readonly Instrument[] as Instrument[]
  if (!reference || !spirit || !dial) throw new Error('There are fewer thermometers than there should be.')
  const check = (what: string, code: Problem['code'], { statement }: Instrument, given: AddCheck) =>
    darkroom.isRefused(what, code, (context, rooms) =>
      checkThermometer(context, rooms, darkroom.of(statement.name).id, given),
    )
  await check('puts a dial from 10 °C into ice', 'thermometer.outside-scale', dial, { method: 'ice', read_c: 0.5 })
  await check('reads 12.5 °C off a dial in ice', 'thermometer.method-out-of-scale', dial, {
    method: 'ice',
    read_c: 12.5,
  })
  const steam: AddCheck = { method: 'boiling', read_c: 49, altitude_m: 40 }
  await check('puts a spirit thermometer into steam', 'thermometer.method-out-of-scale', spirit, steam)
  const far: AddCheck = { method: 'comparison', read_c: 26, true_c: 20 }
  await check('reads 26 °C for 20 °C', 'thermometer.error-too-large', spirit, far)
  await check('leaves the truth out', 'request.invalid', spirit, { method: 'comparison', read_c: 20 })
  await refusedSets(darkroom, reference, spirit)
  await setOffTheScale(darkroom, [reference, spirit, dial])
}

async function refusedSets(darkroom: Darkroom, reference: Instrument, spirit: Instrument): Promise<void> {
  const [first, second] = [reference, spirit].map((one) => darkroom.of(one.statement.name).id) as [string, string]
  const set = (what: string, code: Problem['code'], trusted: string | null, ids: readonly string[]) =>
    darkroom.isRefused(what, code, (context, rooms) =>
      addClassSet(context, rooms, {
        trusted_id: trusted,
        readings: ids.map((id) => ({ thermometer_id: id, read_c: 20 })),
      }),
    )
  await set('compares one thermometer with itself alone', 'thermometer.class-set-too-small', first, [first])
  await set('puts one thermometer into a set twice', 'thermometer.same-twice', null, [first, second, second])
  await set('trusts one that is not in the beaker', 'record.not-found', first, [second, second])
}

/** A cold beaker: the first two read it, the dial cannot. By then one check is written, which must go again. */
const setOffTheScale = (darkroom: Darkroom, set: readonly Instrument[]): Promise<void> => {
  const readings = set.map(({ statement, division }) => ({
    thermometer_id: darkroom.of(statement.name).id,
    read_c: statement.kind === 'dial' ? statement.scale_low_c - division : 12,
  }))
  const trusted_id = readings[0]?.thermometer_id ?? null
  const what = 'reads a beaker too cold for the dial'
  return darkroom.isRefused(what, 'thermometer.outside-scale', (context, rooms) =>
    addClassSet(context, rooms, { trusted_id, readings }),
  )
}
