import { dayAt, failed, ok, problem, type Result } from '../../kernel/index.js'
import type { NumberBlock as BlockView } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import type { NumberBlock, RollNumber } from './port.js'

/** Year and running number: sorts as it counts, and says when a roll came in. */
export const DEFAULT_PATTERN = '{year}-{n4}'

const PLACE = /\{(year|yy|n[1-9]?)\}/g

/** A pattern of words, digits and dashes around one running number. */
export function checkPattern(pattern: string): Result<string> {
  const running = [...pattern.matchAll(/\{n[1-9]?\}/g)].length
  const rest = pattern.replaceAll(PLACE, '')
  const sound = running === 1 && /^[\p{L}\p{N}._/ -]*$/u.test(rest)
  return sound ? ok(pattern) : failed(problem('roll.pattern-unusable', { pattern }, 'pattern'))
}

/** A number as its pattern writes it. Digits that a place is too narrow for are written all the same. */
export function written(pattern: string, year: number, n: number): string {
  return pattern.replaceAll(PLACE, (_, place: string) => {
    if (place === 'year') return String(year).padStart(4, '0')
    if (place === 'yy') return String(year % 100).padStart(2, '0')
    return String(n).padStart(Number(place.slice(1) || '1'), '0')
  })
}

const hasYear = (pattern: string): boolean => /\{(?:year|yy)\}/.test(pattern)

async function standingPattern(context: Context, rooms: Rooms): Promise<{ pattern: string; year: number }> {
  const pattern = (await rooms.rolls.pattern()) ?? DEFAULT_PATTERN
  return {
    pattern,
    year: hasYear(pattern) ? Number(dayAt(context.clock.now(), await zoneOf(context, rooms)).slice(0, 4)) : 0,
  }
}

export const zoneOf = async (context: Context, rooms: Rooms): Promise<string> =>
  (await rooms.house.bench(context.bench))?.zone ?? 'UTC'

/** So many fresh numbers. They are given in the same transaction as the rolls that bear them. */
export async function freshNumbers(context: Context, rooms: Rooms, count: number): Promise<RollNumber[]> {
  if (count === 0) return []
  const { pattern, year } = await standingPattern(context, rooms)
  const first = await rooms.rolls.nextNumbers('roll', year, count)
  return Array.from({ length: count }, (_, i) => ({ year, n: first + i, text: written(pattern, year, first + i) }))
}

/** Keeps numbers for this device, to give to rolls while it is away from the server. */
export async function reserveNumbers(context: Context, rooms: Rooms, count: number): Promise<Result<BlockView>> {
  const { pattern, year } = await standingPattern(context, rooms)
  const first = await rooms.rolls.nextNumbers('roll', year, count)
  const block: NumberBlock = {
    id: context.ids.next(),
    device: context.actor.id,
    pattern,
    year,
    first,
    last: first + count - 1,
    reservedAt: context.clock.now(),
  }
  await rooms.rolls.addBlock(block)
  const numbers = Array.from({ length: count }, (_, i) => written(pattern, year, first + i))
  return ok({ block_id: block.id, first: block.first, last: block.last, numbers })
}

/** The number that a device took from a block of its own. */
export async function numberFromBlock(
  context: Context,
  rooms: Rooms,
  taken: { block_id: string; n: number },
): Promise<Result<RollNumber>> {
  const block = await rooms.rolls.block(taken.block_id)
  if (block === null) return failed(problem('record.not-found', { what: 'block of numbers', id: taken.block_id }))
  if (block.device !== context.actor.id || taken.n < block.first || taken.n > block.last)
    return failed(problem('roll.number-not-reserved', { n: taken.n }))
  return ok({ year: block.year, n: taken.n, text: written(block.pattern, block.year, taken.n) })
}

/** How numbers are written here. */
export const rollNumbering = async (rooms: Rooms): Promise<{ pattern: string }> => ({
  pattern: (await rooms.rolls.pattern()) ?? DEFAULT_PATTERN,
})

/** Changes how further numbers are written; those given stay. */
export async function changePattern(
  context: Context,
  rooms: Rooms,
  pattern: string,
): Promise<Result<{ pattern: string }>> {
  const sound = checkPattern(pattern)
  if (!sound.ok) return sound
  await rooms.rolls.setPattern(pattern)
  await rooms.feed.tell({ kind: 'bench', subject: context.bench }, context.clock.now())
  return ok({ pattern })
}
