import { type Instant, instantText } from '../../kernel/index.js'
import { schemas } from '../../wire/index.js'
import type { Context } from '../context.js'
import { fromLedger } from '../shelf/amounts.js'
import { isUsedOnce } from '../shelf/guards.js'
import { holdingContainer } from '../shelf/posting.js'
import { takeBack } from '../shelf/testing.js'
import { useBath } from '../shelf/use.js'
import type { Rooms } from '../store.js'
import type { RunRecord } from './port.js'
import type { Followed } from './queries.js'

const keyOf = (tank: string, step: number): string => `${step}\n${tank}`

/**
 * Books what a run took of its bottles, in the same write as its events: a bath when it was poured out, and back again
 * when that was a mistake. What is booked depends on all events alone, so what comes late or twice books nothing twice.
 * What the shelf will not have (emptied since, another lot in the bottle) is left for a person: what happened at the
 * sink is never refused for it.
 */
export async function bookBathsOf(context: Context, rooms: Rooms, run: RunRecord, { state }: Followed): Promise<void> {
  if (run.plan.practice !== null || run.plan.tanks.every(({ from_shelf = [] }) => from_shelf.length === 0)) return
  const uses = await rooms.shelf.usesOfRun(run.id)
  const booked = new Map(
    uses.flatMap(({ id, told }) =>
      told.kind === 'used' && told.bath !== undefined ? [[keyOf(told.bath.tank, told.bath.step), id] as const] : [],
    ),
  )
  for (const tank of run.plan.tanks) {
    const name = tank.conditions.tank
    const steps = state.tanks.find((one) => one.tank === name)?.steps
    for (const bath of tank.from_shelf ?? []) {
      const [entry, out] = [booked.get(keyOf(name, bath.step)), steps?.get(bath.step)?.pouredOut ?? null]
      if (out === null && entry !== undefined) await takeBack(context, rooms, entry, '')
      if (out !== null && entry === undefined) await bookBath(context, rooms, run, tank, bath, out.at)
    }
  }
}

type Tank = RunRecord['plan']['tanks'][number]

async function bookBath(
  context: Context,
  rooms: Rooms,
  run: RunRecord,
  { conditions, on_reels }: Tank,
  bath: NonNullable<Tank['from_shelf']>[number],
  at: Instant,
): Promise<void> {
  const found = await holdingContainer(rooms, bath.container_id, 'container_id')
  if (!found.ok) return
  const { container } = found.value
  // Said to the moment where nothing was booked since, else as it comes.
  const when = at > container.changedAt && at <= context.clock.now() ? instantText(at) : null
  const asked = schemas.UseBath.parse({
    container_id: bath.container_id,
    lot_id: bath.lot_id,
    film: bath.film,
    poured: Math.min(bath.poured_ml, fromLedger(container.held)),
    back_into: isUsedOnce(found.value) ? null : bath.container_id,
    run_id: run.id,
    roll_ids: on_reels.flatMap(({ roll }) => roll?.roll_id ?? []),
    // It has happened; whether it should have was asked when the run was planned.
    over_count: true,
    bath: { tank: conditions.tank, step: bath.step },
    at: when,
  })
  await useBath(context, rooms, asked)
}
