import { failed, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { CARRIED_OUT, secondBathShare } from '../../science/index.js'
import type { Posted, ProductStatement, UseBath } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { filmTakes, fromLedger, minus, shareOf, toLedger, toRolls } from './amounts.js'
import { type Held, isUsedOnce, wrongLot, wrongRole } from './guards.js'
import { foldLedger } from './ledger.js'
import { carriesOf, rollsPerLitre } from './limits.js'
import type { Leg } from './port.js'
import { book, happenedAt, holdingContainer, legOf, nameOf, notEnough } from './posting.js'
import { posted } from './views.js'

/** A bath met film: single-use volumes are gone, what is poured back is counted. */
export async function useBath(context: Context, rooms: Rooms, asked: UseBath): Promise<Result<Posted>> {
  const found = await holdingContainer(rooms, asked.container_id, 'container_id')
  if (!found.ok) return found
  const guarded =
    wrongLot(found.value, asked.lot_id, 'lot_id') ??
    wrongRole(found.value, asked.for_role, 'for_role') ??
    pouredBack(found.value, asked)
  if (guarded !== null) return guarded
  const takes = filmTakes(asked.film, found.value.product.family_capacity)
  if (!takes.ok) return takes
  const { container, product } = found.value
  const poured = toLedger(asked.poured)
  if (poured > container.held) return failed(notEnough(found.value, poured, 'poured'))
  const at = happenedAt(context, asked.at, [container])
  if (!at.ok) return at
  const gone = isUsedOnce(found.value)
  const taken = await takenOf(rooms, found.value, takes.value)
  if (!taken.ok) return taken
  const lost = gone ? poured : lostOf(asked, product, toRolls(takes.value.met))
  const leg =
    gone || lost >= container.held
      ? legOf(container, minus(shareOf(container, lost)))
      : legOf(container, { held: -lost, ...taken.value })
  const carries = gone || asked.over_count ? null : carriesOf(product, container.basis)
  const { film, run_id, roll_ids, bath } = asked
  const rolls = toRolls(takes.value.met)
  const amounts = { rolls, poured_ml: fromLedger(poured), lost_ml: fromLedger(lost) }
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: 'used', film, ...amounts, run_id, roll_ids, ...(bath === undefined ? {} : { bath }) },
    legs: [leg],
    ...(carries === null ? {} : { demands: { [container.id]: { carries } } }),
  })
  return posted(context, rooms, booked)
}

type Takes = Pick<Leg, 'met' | 'worked'>

/** Film comes to a second fixing bath fixed: what it takes there is what it carries over from the first. */
async function takenOf(rooms: Rooms, { container, product }: Held, takes: Takes): Promise<Result<Takes>> {
  const capacity = rollsPerLitre(product)
  if (product.fixer === null || capacity === null) return ok(takes)
  const contents = foldLedger(await rooms.shelf.entriesOf([container.id]), new Map()).get(container.id)
  if (contents?.station !== 'second') return ok(takes)
  const share = secondBathShare(capacity.value, millilitres(carriedOutOf(product)))
  if (!share.ok) return share
  return ok({ met: Math.round(takes.met * share.value), worked: Math.round(takes.worked * share.value) })
}

const carriedOutOf = (product: ProductStatement): number => product.carried_out_ml_per_roll ?? CARRIED_OUT.perRoll

function lostOf(asked: UseBath, product: ProductStatement, rolls: number): number {
  return Math.min(toLedger(asked.poured), toLedger(asked.lost ?? carriedOutOf(product) * rolls))
}

function pouredBack(found: Held, { back_into, container_id }: UseBath): Result<never> | null {
  const name = nameOf(found)
  if (isUsedOnce(found))
    return back_into === null
      ? null
      : failed(problem('shelf.used-once', { name, product: found.product.name }, 'back_into'))
  if (back_into === null) return failed(problem('shelf.back-where', { name }, 'back_into'))
  return back_into === container_id ? null : failed(problem('shelf.back-into-other', { name }, 'back_into'))
}
