import { type Celsius, failed, ok, problem, type Result } from '../../kernel/index.js'
import { type CorrectedReading, correctionByRecord } from '../../science/index.js'
import type { ThermometerRecord as View } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { ThermometerRecord } from './port.js'
import { viewOf } from './shape.js'

/** A thermometer that is still in use. */
export async function standing(rooms: Rooms, id: string): Promise<Result<ThermometerRecord>> {
  const record = await rooms.kit.newest(id)
  if (record === null) return failed(problem('record.not-found', { what: 'thermometer', id }))
  return record.removed ? failed(problem('record.removed', { what: 'thermometer' })) : ok(record)
}

/** A reading put right by what is known of its thermometer. */
export async function correctedReading(rooms: Rooms, id: string, read: Celsius): Promise<Result<CorrectedReading>> {
  const record = await standing(rooms, id)
  if (!record.ok) return record
  const correction = correctionByRecord(await rooms.kit.checks(id))
  return correction.ok ? ok(correction.value.at(read)) : correction
}

export async function listThermometers(rooms: Rooms): Promise<{ thermometers: View[] }> {
  const checks = await rooms.kit.checks()
  const thermometers = await rooms.kit.all()
  return {
    thermometers: thermometers.map((one) =>
      viewOf(
        one,
        checks.filter((check) => check.thermometerId === one.id),
      ),
    ),
  }
}
