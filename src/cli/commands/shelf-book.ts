import { all, ok, type Result, readDuration } from '../../kernel/index.js'
import {
  discard,
  handOver,
  measureContents,
  movePortion,
  stationBath,
  takeBack,
  testBath,
  useBath,
} from '../../lab/index.js'
import type { Posted } from '../../wire/index.js'
import { fixedFilmIn } from '../baths/film.js'
import { type Common, numberOf, type Output, refuse, typed } from '../output.js'
import { type Booking, booked, containerNamed, containersNamed, lookAtShelf, tellPosted } from '../shelf/at.js'
import { type BookOptions, ml, said } from '../shelf/options.js'

async function book<B>(booking: Result<Booking<B, Posted>>, options: Common, output: Output): Promise<number> {
  if (!booking.ok) return refuse(output, booking.problem, options)
  return tellPosted(await booked(booking.value), options, output)
}

export interface UseOptions extends BookOptions {
  readonly film?: readonly string[]
  readonly poured?: string
  readonly once?: boolean
  readonly back?: string
  readonly role?: string
  readonly lot?: string
  readonly overCount?: boolean
}

/** Books that a bath met film: it goes back into its own bottle unless it is used once. */
export async function use(bottle: string, options: UseOptions, output: Output): Promise<number> {
  return book(await usedBy(bottle, options), options, output)
}

async function usedBy(bottle: string, options: UseOptions): Promise<Result<Booking<never, Posted>>> {
  const film = all((options.film ?? []).map(fixedFilmIn))
  if (!film.ok) return film
  const poured = ml(options.poured, '--poured', options)
  if (!poured.ok) return poured
  const ids = await containersNamed([bottle, ...(options.back === undefined ? [] : [options.back])])
  if (!ids.ok) return ids
  const [id, back = id] = ids.value
  const body = {
    container_id: id,
    film: film.value.map((one) => ({ ...one })),
    ...(poured.value === null ? {} : { poured: poured.value }),
    back_into: options.once ? null : back,
    ...(options.role === undefined ? {} : { for_role: options.role }),
    ...(options.lot === undefined ? {} : { lot_id: options.lot }),
    over_count: options.overCount ?? false,
    ...said(options),
  }
  return ok({ path: '/api/shelf/use', schema: 'UseBath', body, here: useBath as never })
}

/** Notes a test: `clearing 55s`, `indicator purple`, `leader fully 60s`, `ph 5.1`, `gravity 1.08`, `residual-hypo passed`. */
export async function test(
  bottle: string,
  what: readonly string[],
  options: BookOptions & { readonly fresh?: boolean; readonly family?: string },
  output: Output,
): Promise<number> {
  const read = testIn(what, options)
  if (!read.ok) return refuse(output, read.problem, options)
  const id = await containersNamed([bottle])
  if (!id.ok) return refuse(output, id.problem, options)
  const body = { container_id: id.value[0], test: read.value, ...said(options) }
  return book(ok({ path: '/api/shelf/test', schema: 'TestBath', body, here: testBath as never }), options, output)
}

function testIn(
  [of = '', value = '', time = '']: readonly string[],
  { fresh = false, family = 'ordinary' }: { readonly fresh?: boolean; readonly family?: string },
): Result<object> {
  if (of === 'clearing') {
    const clears = typed(readDuration(/^\d+$/.test(value) ? `${value}s` : value, { what: 'the clearing time' }))
    return clears.ok ? ok({ of, clears_s: clears.value, fresh, family }) : clears
  }
  if (of === 'leader') {
    const after = typed(readDuration(time, { what: 'the time in developer' }))
    return after.ok ? ok({ of, darkens: value, after_s: after.value }) : after
  }
  if (of === 'ph' || of === 'gravity') {
    const number = numberOf(of, value)
    if (!number.ok) return number
    return ok(of === 'ph' ? { of, ph: number.value } : { of: 'specific-gravity', gravity: number.value })
  }
  return ok(of === 'indicator' ? { of, colour: value } : { of, passed: value === 'passed' })
}

export interface AmountOptions extends BookOptions {
  readonly amount?: string
}

/** Pours from one bottle into another, or tops a bath up. */
export async function pourOver(
  from: string,
  into: string,
  options: AmountOptions & { readonly topUp?: boolean },
  output: Output,
): Promise<number> {
  const amount = ml(options.amount, '--amount', options)
  if (!amount.ok) return refuse(output, amount.problem, options)
  const ids = await containersNamed([from, into])
  if (!ids.ok) return refuse(output, ids.problem, options)
  const [from_id, into_id] = ids.value
  const body = { from_id, into_id, amount: amount.value, top_up: options.topUp ?? false, ...said(options) }
  return book(ok({ path: '/api/shelf/move', schema: 'MovePortion', body, here: movePortion as never }), options, output)
}

/** Puts what was found by measuring in place of what the book says. */
export async function measure(bottle: string, found: string, options: BookOptions, output: Output): Promise<number> {
  const amount = ml(found, 'what was found', options)
  if (!amount.ok) return refuse(output, amount.problem, options)
  const shelf = await lookAtShelf()
  if (!shelf.ok) return refuse(output, shelf.problem, options)
  const id = containerNamed(shelf.value, bottle)
  if (!id.ok) return refuse(output, id.problem, options)
  const { bottles, packages, jugs } = shelf.value
  const seen =
    [...bottles, ...packages].find((one) => one.id === id.value)?.held ??
    jugs.find((one) => one.id === id.value)?.held_ml
  const body = { container_id: id.value, found: amount.value, seen, ...said(options) }
  const booking = { path: '/api/shelf/measure', schema: 'MeasureContents', body, here: measureContents } as never
  return book(ok(booking), options, output)
}

/** Discards a spent bath: into a jug, or where else it went. */
export async function discardOne(
  bottle: string,
  options: AmountOptions & { readonly jug?: string; readonly where?: string },
  output: Output,
): Promise<number> {
  const amount = ml(options.amount, '--amount', options)
  if (!amount.ok) return refuse(output, amount.problem, options)
  const ids = await containersNamed([bottle, ...(options.jug === undefined ? [] : [options.jug])])
  if (!ids.ok) return refuse(output, ids.problem, options)
  const [container_id, jug_id = null] = ids.value
  const where = options.where ?? 'jug'
  const body = { container_id, jug_id, where, amount: amount.value, ...said(options) }
  return book(ok({ path: '/api/shelf/discard', schema: 'Discard', body, here: discard as never }), options, output)
}

/** Gives the waste in a jug to whoever takes it. */
export async function giveAway(jug: string, to: string, options: AmountOptions, output: Output): Promise<number> {
  const amount = ml(options.amount, '--amount', options)
  if (!amount.ok) return refuse(output, amount.problem, options)
  const id = await containersNamed([jug])
  if (!id.ok) return refuse(output, id.problem, options)
  const body = { jug_id: id.value[0], ml: amount.value, to, ...said(options) }
  return book(ok({ path: '/api/shelf/hand-over', schema: 'HandOver', body, here: handOver as never }), options, output)
}

/** Says which of two fixing baths a bottle is. */
export async function station(bottle: string, place: string, options: BookOptions, output: Output): Promise<number> {
  const id = await containersNamed([bottle])
  if (!id.ok) return refuse(output, id.problem, options)
  const body = { container_id: id.value[0], station: place === 'none' ? null : place, ...said(options) }
  return book(
    ok({ path: '/api/shelf/station', schema: 'StationBath', body, here: stationBath as never }),
    options,
    output,
  )
}

/** Takes an entry back by a further one. */
export async function takeOneBack(entry: string, options: BookOptions, output: Output): Promise<number> {
  const note = options.note ?? ''
  const path = `/api/shelf-entries/${encodeURIComponent(entry)}/take-back`
  const here: Booking<never, Posted>['here'] = (context, rooms) => takeBack(context, rooms, entry, note)
  return book(ok({ path, schema: 'TakeBack', body: { note }, here }), options, output)
}
