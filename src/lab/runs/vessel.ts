import { failed, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { fitsTank, type KitTank, loadOf } from '../../planning/index.js'
import type { AskedTank, VesselStatement } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { Reel } from './reels.js'

/** A tank of the kit as planning sees it; null for a reel, a graduate or a syringe. */
const tankOf = (vessel: VesselStatement): KitTank | null =>
  vessel.kind === 'tank'
    ? {
        name: vessel.name,
        holds: vessel.holds.map(({ format, reels, covers_ml }) => ({
          format,
          count: reels,
          covers: millilitres(covers_ml),
        })),
      }
    : null

/**
 * The tank of the kit that a plan names. Refused when it does not hold or does not cover the rolls of the plan; the
 * refusal says which other one would. Films that only bear a label say no format, and are not judged.
 */
export async function vesselOf(
  rooms: Rooms,
  { vessel_id: id, conditions }: AskedTank,
  reels: readonly Reel[],
): Promise<Result<{ readonly id: string; readonly name: string } | null>> {
  if (id === undefined) return ok(null)
  const all = await rooms.vessels.all()
  const vessel = all.find((one) => one.id === id)
  if (vessel === undefined) return failed(problem('record.not-found', { what: 'vessel', id }, 'vessel_id'))
  const { name, kind } = vessel.statement
  const tank = tankOf(vessel.statement)
  if (tank === null) return failed(problem('run.not-a-tank', { name, kind }, 'vessel_id'))
  const films = reels.flatMap(({ roll, reel }) => (roll ? { ...roll.statement, reel: reel ?? 1 } : []))
  const shelf = all.flatMap(({ statement }) => tankOf(statement) ?? [])
  const fits = films.length === 0 ? ok(0) : fitsTank(tank, loadOf(films), conditions.volume ?? null, shelf)
  return fits.ok ? ok({ id, name }) : failed({ ...fits.problem, field: 'vessel_id' })
}
