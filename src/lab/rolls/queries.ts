import { failed, nameKey, ok, problem, type Result } from '../../kernel/index.js'
import { rollNumberIn } from '../../planning/index.js'
import type { FindRolls, RollSummaries, RollRecord as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { ANY_ROLL } from './any-roll.js'
import { nextDay, startOfDay } from './days.js'
import { zoneOf } from './numbers.js'
import type { RollRecord } from './port.js'
import { summaryOf, viewOf } from './shape.js'

export async function getRoll(rooms: Rooms, id: string): Promise<Result<View>> {
  const roll = await rooms.rolls.roll(id)
  if (roll === null) return failed(problem('record.not-found', { what: 'roll', id }))
  return ok(await viewOf(rooms, roll))
}

/** A roll by the number on its sticker: typed, whatever its capitals, or the whole address that its code holds. */
export async function rollByNumber(rooms: Rooms, typed: string): Promise<Result<View>> {
  const number = rollNumberIn(typed)
  const roll = (await rooms.rolls.byNumber(number)) ?? (await likeNumber(rooms, number))
  if (roll === null) return failed(problem('roll.number-unknown', { number }))
  return ok(await viewOf(rooms, roll))
}

/** The one roll whose number differs from this by capitals alone. */
async function likeNumber(rooms: Rooms, number: string): Promise<RollRecord | null> {
  const { rolls } = await rooms.rolls.find({ ...ANY_ROLL, most: 500, words: number })
  const alike = rolls.filter((roll) => nameKey(roll.number.text) === nameKey(number))
  return alike.length === 1 ? (alike[0] ?? null) : null
}

const AFTER = /^(\d+)-(\d+)$/

/** Rolls that are looked for, newest number first, a page at a time. */
export async function findRolls(
  context: Context,
  rooms: Rooms,
  { look, after, most }: FindRolls,
): Promise<Result<RollSummaries>> {
  const place = after === null ? null : after.match(AFTER)
  if (after !== null && place === null)
    return failed(problem('request.invalid', { reason: `“${after}” is no place in a list of rolls.` }, 'after'))
  const zone = await zoneOf(context, rooms)
  const { taken_in_from, taken_in_to, ...rest } = look
  const { rolls, found } = await rooms.rolls.find({
    ...rest,
    takenInFrom: taken_in_from === null ? null : startOfDay(taken_in_from, zone),
    takenInBefore: taken_in_to === null ? null : startOfDay(nextDay(taken_in_to), zone),
    after: place === null ? null : { year: Number(place[1]), n: Number(place[2]) },
    most,
  })
  const last = rolls.length === most ? rolls.at(-1) : undefined
  return ok({ rolls: rolls.map(summaryOf), found, next: last ? `${last.number.year}-${last.number.n}` : null })
}
