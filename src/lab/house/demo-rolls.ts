import { ok, type Result } from '../../kernel/index.js'
import type { RollStatement } from '../../wire/index.js'
import type { Context } from '../context.js'
import { takeInRolls } from '../rolls/commands.js'
import { moveRolls } from '../rolls/many.js'
import { addOrder } from '../rolls/orders.js'
import type { RollState } from '../rolls/port.js'
import type { Rooms } from '../store.js'

type DemoRoll = Pick<RollStatement, 'film'> & Partial<RollStatement>

const roll = (given: DemoRoll): RollStatement => ({
  process: 'black-and-white',
  format: '135',
  frames: null,
  sheets: 1,
  whose: null,
  exposure_index: null,
  treatment: { as: 'normal' },
  exposed: null,
  expired_since: null,
  remarks: [],
  due: null,
  note: '',
  ...given,
})

/** Film of the house and of two invented people, with how far each roll has come. */
const OWN: readonly RollStatement[] = [
  roll({ film: 'Corvane 400', exposure_index: 400, note: 'Mill pond.' }),
  roll({ film: 'Tarn 100', exposure_index: 100, format: '120', exposed: '2026-22' }),
  roll({ film: 'Fell 25', remarks: ['found', 'expired'], expired_since: '1998', note: 'From the loft.' }),
  roll({ film: 'Tarn 100', exposure_index: 100, format: '4x5', sheets: 6 }),
]
const OF_PEOPLE: readonly { readonly person: string; readonly rolls: readonly RollStatement[] }[] = [
  {
    person: 'Ida',
    rolls: [
      roll({ film: 'Corvane 400', exposure_index: 400, treatment: { as: 'index', index: 800 } }),
      roll({ film: 'Corvane 400', exposure_index: 400, frames: 24 }),
      roll({ film: 'Weir colour 200', process: 'colour-negative', exposure_index: 200 }),
    ],
  },
  { person: 'Jon', rolls: [roll({ film: 'Tarn 100', format: '120' }), roll({ film: 'Tarn 100', format: '120' })] },
]
/** By the order in which they are taken in: own film first. */
const STEPS: readonly (readonly [RollState, readonly number[], string])[] = [
  ['developed', [0, 1, 7, 8], ''],
  ['hung', [0, 7, 8], 'line 1'],
  ['sleeved', [7, 8], ''],
]

/** Puts invented rolls on a bench and brings some of them on their way, by the commands that people use. */
export async function furnishRolls(context: Context, rooms: Rooms): Promise<Result<null>> {
  const own = await takeInRolls(context, rooms, { order_id: null, rolls: listed(OWN) })
  if (!own.ok) return own
  const ids = own.value.rolls.map(({ id }) => id)
  for (const { person, rolls } of OF_PEOPLE) {
    const agreed_on_loss = 'A fresh roll of the same kind.'
    const counted = { person, contact: '', counted_in: rolls.length, due: null, deposit: '', agreed_on_loss, note: '' }
    const order = await addOrder(context, rooms, counted)
    if (!order.ok) return order
    const theirs = rolls.map((one) => ({ ...one, whose: person }))
    const taken = await takeInRolls(context, rooms, { order_id: order.value.id, rolls: listed(theirs) })
    if (!taken.ok) return taken
    ids.push(...taken.value.rolls.map(({ id }) => id))
  }
  for (const [state, places, hook] of STEPS) {
    const roll_ids = places.map((place) => ids[place] as string)
    const moved = await moveRolls(context, rooms, { roll_ids, state, run_id: null, hook, reason: '', at: null })
    if (!moved.ok) return moved
  }
  return ok(null)
}

const listed = (rolls: readonly RollStatement[]) => rolls.map((statement) => ({ statement, number: null }))
