import { type Celsius, failed, ok, problem, type Result } from '../../kernel/index.js'
import { type CorrectedReading, type Correction, correctionOf, newestChecks } from '../../science/index.js'
import type { ThermometerRecord as View } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { ThermometerCheck, ThermometerRecord } from './port.js'
import { viewOf } from './shape.js'

/** A thermometer that is still in use. */
export async function standing(rooms: Rooms, id: string): Promise<Result<ThermometerRecord>> {
  const record = await rooms.kit.newest(id)
  if (record === null) return failed(problem('record.not-found', { what: 'thermometer', id }))
  return record.removed ? failed(problem('record.removed', { what: 'thermometer' })) : ok(record)
}

/** What the checks that stand, oldest first, say of a thermometer; newer ones take the place of older ones near them. */
export const correctionFrom = (
  checks: readonly Pick<ThermometerCheck, 'method' | 'read' | 'true' | 'withdrawn'>[],
): Result<Correction> =>
  correctionOf(
    newestChecks(
      checks
        .filter((check) => !check.withdrawn)
        .map((check) => ({
          read: check.read,
          true: check.true,
          method: check.method === 'class-set' ? 'comparison' : check.method,
        })),
    ),
  )

/** A reading put right by what is known of its thermometer. */
export async function correctedReading(rooms: Rooms, id: string, read: Celsius): Promise<Result<CorrectedReading>> {
  const record = await standing(rooms, id)
  if (!record.ok) return record
  const correction = correctionFrom(await rooms.kit.checks(id))
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
