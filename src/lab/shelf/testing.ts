import { failed, problem, type Result } from '../../kernel/index.js'
import type { Posted, StationBath, TestBath } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { minus, toRolls } from './amounts.js'
import { book, containersOf, happenedAt, holdingContainer, legOf, nameOf } from './posting.js'
import { posted } from './views.js'

/** Tests that say nothing of another role: an indicator is of a stop bath, clearing of a fixer, a leader of a developer. */
const ROLE_OF = { clearing: 'fixer', indicator: 'stop', leader: 'developer' } as const

/** Notes a test of what stands in a bottle, with the rolls that it had met by then. */
export async function testBath(context: Context, rooms: Rooms, asked: TestBath): Promise<Result<Posted>> {
  const found = await holdingContainer(rooms, asked.container_id, 'container_id')
  if (!found.ok) return found
  const { container, product } = found.value
  const { test } = asked
  const wanted = test.of in ROLE_OF ? ROLE_OF[test.of as keyof typeof ROLE_OF] : null
  if (wanted !== null && product.role !== wanted)
    return failed(
      problem(
        'shelf.test-of-other-role',
        { test: test.of, name: nameOf(found.value), role: product.role, wanted },
        'test',
      ),
    )
  const at = happenedAt(context, asked.at, [container])
  if (!at.ok) return at
  const told = { kind: 'tested', test, met_rolls: toRolls(container.met) } as const
  const booked = await book(context, rooms, { at: at.value, note: asked.note, told, legs: [legOf(container, {})] })
  return posted(context, rooms, booked)
}

/** Says which of two fixing baths a bottle is. */
export async function stationBath(context: Context, rooms: Rooms, asked: StationBath): Promise<Result<Posted>> {
  const found = await holdingContainer(rooms, asked.container_id, 'container_id')
  if (!found.ok) return found
  const { container, product } = found.value
  if (product.role !== 'fixer')
    return failed(problem('shelf.station-of-fixers', { name: nameOf(found.value) }, 'container_id'))
  const at = happenedAt(context, asked.at, [container])
  if (!at.ok) return at
  const told = { kind: 'stationed', station: asked.station } as const
  const booked = await book(context, rooms, { at: at.value, note: asked.note, told, legs: [legOf(container, {})] })
  return posted(context, rooms, booked)
}

/** Takes an entry back by another that books it the other way; refused where that has gone on since. */
export async function takeBack(context: Context, rooms: Rooms, id: string, note: string): Promise<Result<Posted>> {
  const entry = await rooms.shelf.entry(id)
  if (entry === null) return failed(problem('record.not-found', { what: 'entry of the shelf', id }))
  if (entry.retracts !== null) return failed(problem('shelf.no-taking-back-twice', {}))
  const ids = entry.legs.map(({ containerId }) => containerId)
  const others = await rooms.shelf.entriesOf(ids)
  if (others.some(({ retracts }) => retracts === id)) return failed(problem('shelf.taken-back-before', {}))
  const at = happenedAt(context, null, await containersOf(rooms, entry.legs))
  if (!at.ok) return at
  const legs = entry.legs.map((leg) => ({ ...leg, ...minus(leg) }))
  const booked = await book(context, rooms, { at: at.value, note, told: { kind: 'taken-back' }, legs, retracts: id })
  return posted(context, rooms, booked)
}
