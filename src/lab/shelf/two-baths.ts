import { failed, ok, problem, type Result, seconds } from '../../kernel/index.js'
import { clearingVerdict, twoBaths } from '../../science/index.js'
import type { PairAsked, PairView, RotateBaths, Rotated } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { toRolls } from './amounts.js'
import { type Bath, carriesOf, lastClearing } from './limits.js'
import { discard } from './moving.js'
import { containersOf, holdingContainer, nameOf } from './posting.js'
import { stationBath } from './testing.js'
import { bathIn, knownOf, onShelf } from './views.js'

/** Two fixing baths that film goes through one after the other: whether the first is to go and the second to move up. */
export async function pairOfBaths(context: Context, rooms: Rooms, asked: PairAsked): Promise<Result<PairView>> {
  const pair = await fixers(rooms, asked)
  if (!pair.ok) return pair
  const [first, second] = pair.value
  const known = await knownOf(rooms, [first.container, second.container])
  const bath = bathIn(known, first.container)
  const carries = bath === null ? null : carriesOf(bath.product, bath.contents.basis)
  if (bath === null || carries === null) return failed(problem('shelf.no-count', { name: nameOf(first) }, 'first_id'))
  // Two-bath figures are for the first bath alone, and the ledger has film of every family in ordinary rolls.
  const film = [{ done: toRolls(bath.contents.worked), capacity: Math.max(1, toRolls(carries)) }]
  const clearing = clearingOf(bath)
  const found = twoBaths(film, clearing ?? undefined)
  if (!found.ok) return found
  const { used, verdict, because, left } = found.value
  const shown = [first, second].flatMap(({ container }) => onShelf(context, known, container) ?? [])
  return ok({ used, verdict, because: [...because], left_rolls: left[0] ?? 0, containers: shown })
}

function clearingOf(bath: Bath) {
  const last = lastClearing(bath.contents.tests)
  const fresh = last === null ? null : bath.fresh[last.family]
  if (last === null || fresh === null) return null
  const verdict = clearingVerdict(seconds(fresh), seconds(last.clears_s), last.family)
  return verdict.ok ? verdict.value : null
}

async function fixers(rooms: Rooms, { first_id, second_id }: PairAsked) {
  if (first_id === second_id) return failed(problem('shelf.named-twice', {}, 'second_id'))
  const first = await holdingContainer(rooms, first_id, 'first_id')
  if (!first.ok) return first
  const second = await holdingContainer(rooms, second_id, 'second_id')
  if (!second.ok) return second
  for (const [one, field] of [
    [first.value, 'first_id'],
    [second.value, 'second_id'],
  ] as const)
    if (one.product.role !== 'fixer') return failed(problem('shelf.station-of-fixers', { name: nameOf(one) }, field))
  return ok([first.value, second.value] as const)
}

/** The first bath goes to the jug, the second becomes the first, and a fresh one, where there is one, the second. */
export async function rotateBaths(context: Context, rooms: Rooms, asked: RotateBaths): Promise<Result<Rotated>> {
  const pair = await fixers(rooms, asked)
  if (!pair.ok) return pair
  const { first_id, second_id, fresh_id, jug_id, at, note } = asked
  const gone = await discard(context, rooms, { container_id: first_id, amount: null, where: 'jug', jug_id, at, note })
  if (!gone.ok) return gone
  const moved = await stationBath(context, rooms, { container_id: second_id, station: 'first', at, note })
  if (!moved.ok) return moved
  const entries = [gone.value.entry, moved.value.entry]
  if (fresh_id !== null) {
    const fresh = await stationBath(context, rooms, { container_id: fresh_id, station: 'second', at, note })
    if (!fresh.ok) return fresh
    entries.push(fresh.value.entry)
  }
  const legs = entries.flatMap((entry) => entry.legs.map(({ container_id }) => ({ containerId: container_id })))
  const containers = await containersOf(rooms, legs)
  const known = await knownOf(rooms, containers)
  return ok({ entries, containers: containers.flatMap((container) => onShelf(context, known, container) ?? []) })
}
