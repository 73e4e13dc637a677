import type { Grams, Millilitres, UnitSystem } from '../../kernel/index.js'
import type { JugView, LotHead, OnShelf, ShelfEntry } from '../../wire/index.js'
import { say, writeDay, writerFor, writeTimeOfDay } from '../../words/index.js'

const amountOf = (amount: number, unit: 'ml' | 'g', units: UnitSystem): string =>
  unit === 'ml' ? writerFor(units).volume(amount as Millilitres) : writerFor(units).mass(amount as Grams)

const dayOf = (at: string): string => writeDay(Date.parse(at), 'UTC')
const momentOf = (at: string): string => `${dayOf(at)}, ${writeTimeOfDay(Date.parse(at), 'UTC')} UTC`

/** A bottle or a package: what is in it, what that can still do, and what decides. */
export function containerLine(one: OnShelf, units: UnitSystem): string {
  const { statement, held, unit, lot, left, product } = one
  const name = statement.name || product
  if (held <= 0) return say('shelf.line.empty', { name }, units)
  const ends = left?.ends ? dayOf(left.ends) : null
  const what = lot === null ? product : say('shelf.line.lot', { product, code: lot.code }, units)
  return say(
    'shelf.line.holds',
    {
      ...{ name, amount: amountOf(held, unit, units), what },
      ...{ whole: left?.whole?.ordinary ?? null, decides: left?.decides ?? null, ends },
      finished: left?.state === 'finished',
    },
    units,
  )
}

export const jugLine = (jug: JugView, units: UnitSystem): string =>
  say(
    'shelf.line.jug',
    {
      ...{ name: jug.name, held: jug.held_ml as Millilitres, holds: jug.holds_ml as Millilitres },
      ...{ silver: jug.silver_g, full: jug.full, fullOn: jug.full_on === null ? null : dayOf(jug.full_on) },
    },
    units,
  )

export const lotLine = (lot: LotHead, units: UnitSystem): string =>
  say(
    'shelf.line.mixed',
    { ...lot, at: dayOf(lot.mixed_at), volume: lot.mixed_ml as Millilitres, parts: lot.parts?.join(' + ') ?? null },
    units,
  )

/** One entry of a lot's history. */
export function entryLine({ at, told, note, retracted, legs }: ShelfEntry, units: UnitSystem): string {
  const changed = legs.map(({ change, unit }) => (change === 0 ? '' : amountOf(Math.abs(change), unit, units)))
  return say(
    'shelf.line.entry',
    { at: momentOf(at), kind: told.kind, changed: changed.find((one) => one !== '') ?? null, note, retracted },
    units,
  )
}
