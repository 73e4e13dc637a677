import type { Ids } from '../../kernel/index.js'
import type { RollEvent, RollRecord, Rooms } from '../../lab/index.js'
import type { OrderStatement } from '../../wire/index.js'

/** A roll as the suites keep it. */
export function rollOf(id: string, n: number, at: number, changes: Partial<RollRecord> = {}): RollRecord {
  return {
    id,
    number: { year: 2026, n, text: `2026-${String(n).padStart(4, '0')}` },
    twin: null,
    takenInAt: at + n,
    takenInBy: 'owner',
    revision: 1,
    orderId: null,
    statement: {
      film: 'Panchromatic 100',
      process: 'black-and-white',
      format: '135',
      frames: null,
      sheets: 1,
      whose: null,
      exposure_index: 80,
      treatment: { as: 'normal' },
      exposed: '2026-22',
      expired_since: null,
      remarks: ['found'],
      due: '2026-04-01',
      note: 'canister 100 % full_ \\ of sand',
    },
    state: 'taken-in',
    stateAt: at + n,
    runId: null,
    hook: '',
    ...changes,
  }
}

export const rollEventOf = (id: string, rollId: string, at: number, changes: Partial<RollEvent> = {}): RollEvent => ({
  id,
  rollId,
  at: at + 5000,
  by: 'owner',
  state: 'hung',
  runId: null,
  hook: '3',
  reason: '',
  batchId: null,
  retracts: null,
  ...changes,
})

export const ORDER: OrderStatement = {
  person: 'Ida',
  contact: '',
  counted_in: 2,
  due: null,
  deposit: '',
  agreed_on_loss: '',
  note: '',
}

/** One row in every table of the rolls. */
export async function furnishRolls(rooms: Rooms, ids: Ids, at: number): Promise<void> {
  const [order, roll] = [ids.next(), ids.next()]
  const stated = { revision: 1, savedAt: at, savedBy: 'owner', removed: false }
  await rooms.orders.addRevision({ ...stated, id: order, statement: ORDER })
  await rooms.orders.countOut({ orderId: order, count: 1, at, by: 'owner' })
  const times = { madeAt: at, expiresAt: at + 9, revokedAt: null }
  await rooms.orders.addLink({ ...times, id: ids.next(), orderId: order, tokenHash: `hash of ${order}` })
  await rooms.rolls.setPattern('{year}-{n4}')
  const first = await rooms.rolls.nextNumbers('roll', 2026, 10)
  const block = { device: 'owner', pattern: '{year}-{n4}', year: 2026, first, last: first + 9, reservedAt: at }
  await rooms.rolls.addBlock({ ...block, id: ids.next() })
  await rooms.rolls.add(rollOf(roll, first, at, { orderId: order, twin: 1 }))
  const hung = { state: 'hung', stateAt: at + 5000, runId: null, hook: '3' } as const
  await rooms.rolls.addEvent(rollEventOf(ids.next(), roll, at), hung)
}
