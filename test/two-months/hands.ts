// What hands do at the small bench over HTTP, each in both books; and the comparison of the two.
import { expect } from 'vitest'
import { DAY_MS } from '../../src/kernel/index.js'
import { NOON } from '../support/bench.js'
import type { Answered, Served } from '../support/server.js'
import { Bath, type Film, type Kind, silverOf } from './book.js'

let served: Served
/** The server that the hands work at. */
export const beginAt = (house: Served) => {
  served = house
}
/** Ids by what we call things. */
const ids = new Map<string, string>()
export const baths = new Map<string, Bath>()
const packages = new Map<string, number>()
export const jug = { ml: 0, rolls: 0 }
export let today = 0

export const id = (name: string): string => ids.get(name) as string
export const bath = (name: string): Bath => baths.get(name) as Bath
export const post = (url: string, body: object) => served.ask({ method: 'POST', url, body })

export async function done(asked: Promise<Answered>): Promise<Answered['json']> {
  const { status, json } = await asked
  expect([status, json?.sentence]).toEqual([200, undefined])
  return json
}

const KEEPS = { full: 60, half_full: 30 }
const KIND: Readonly<Record<'developer' | 'stop' | 'fixer', Kind>> = {
  developer: { rollsPerLitre: 40, keeps: { full: 60, half: 30 }, replenish: 30 },
  stop: { rollsPerLitre: 30, keeps: { full: 60, half: 30 } },
  fixer: { rollsPerLitre: 20, silverLimit: 4, keeps: { full: 60, half: 30 } },
}
const PRODUCTS = {
  developer: { role: 'developer', use: 'replenished', rolls_per_litre: 40, replenish_ml_per_roll: 30, keeps: KEEPS },
  replenisher: { role: 'developer', use: 'reusable', keeps: KEEPS },
  stop: { role: 'stop', use: 'reusable', rolls_per_litre: 30, keeps: KEEPS, hazards: ['acid'] },
  fixer: {
    ...{ role: 'fixer', use: 'reusable', rolls_per_litre: 20, silver_limit_g_per_l: 4, keeps: KEEPS },
    fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
  },
}
const BOTTLES = { developer: 2500, replenisher: 2000, stop: 1000, 'fixer one': 1000, 'fixer two': 1000 }

export async function furnish(): Promise<void> {
  for (const [name, said] of Object.entries(PRODUCTS))
    ids.set(`product ${name}`, (await done(post('/api/products', { name: `Bench ${name}`, ...said }))).id)
  for (const [name, holds_ml] of Object.entries(BOTTLES))
    ids.set(name, (await done(post('/api/containers', { statement: { kind: 'bottle', name, holds_ml } }))).id)
  await bought('concentrate', 'fixer', 1000)
  await bought('acid', 'stop', 250)
  const statement = { kind: 'jug', name: 'Spent fixer', holds_ml: 5000 }
  ids.set('jug', (await done(post('/api/containers', { statement }))).id)
}

async function bought(name: string, product: string, full: number): Promise<void> {
  const statement = { kind: 'package', name, product_id: id(`product ${product}`), unit: 'ml', full }
  ids.set(name, (await done(post('/api/containers', { statement }))).id)
  packages.set(name, full)
}

export async function mix(product: string, into: [string, number][], from: [string, number][] = []): Promise<void> {
  const body = {
    product_id: id(`product ${product}`),
    into: into.map(([name, ml]) => ({ container_id: id(name), ml })),
    from: from.map(([name, amount]) => ({ container_id: id(name), amount })),
  }
  const { lot } = await done(post('/api/lots', body))
  expect(lot.mixed_ml).toBe(into.reduce((sum, [, ml]) => sum + ml, 0))
  for (const [name, ml] of into) {
    const kind = product in KIND ? KIND[product as keyof typeof KIND] : { keeps: KIND.stop.keeps }
    baths.set(name, new Bath(kind, BOTTLES[name as keyof typeof BOTTLES], ml, today))
  }
  for (const [name, amount] of from) packages.set(name, (packages.get(name) as number) - amount)
}

export const asUse = (name: string, film: readonly Film[], poured: number) => ({
  container_id: id(name),
  back_into: id(name),
  film,
  poured,
})

async function use(name: string, film: readonly Film[], poured: number): Promise<string> {
  const { entry } = await done(post('/api/shelf/use', asUse(name, film, poured)))
  bath(name).develop(today, film, poured, 0.6)
  return entry.id
}

/** A tank through all its baths, and the replenisher that it asks for. */
export async function tank(film: readonly Film[], poured: number): Promise<void> {
  await use('developer', film, poured)
  for (const name of ['stop', 'fixer one', 'fixer two']) await use(name, film, poured)
  const due = bath('developer').due as number
  const { bottles } = await shelf()
  expect(find(bottles, 'developer').left.due_ml).toBeCloseTo(due, 3)
  const asked = { from_id: id('replenisher'), into_id: id('developer'), amount: due, top_up: true }
  await done(post('/api/shelf/move', asked))
  bath('replenisher').takeOut(today, due)
  bath('developer').topUp(today, due)
}

export async function clearing(name: string, clears_s: number, fresh = false): Promise<void> {
  const test = { of: 'clearing', clears_s, fresh }
  await done(post('/api/shelf/test', { container_id: id(name), test }))
  bath(name).test(clears_s)
}

export async function station(name: string, as: 'first' | 'second'): Promise<void> {
  await done(post('/api/shelf/station', { container_id: id(name), station: as }))
  bath(name).station = as
  expect(find((await shelf()).bottles, name).station).toBe(as)
}

export const get = (url: string) => served.ask({ url })
export const shelf = async () => (await get('/api/shelf')).json
// biome-ignore lint/suspicious/noExplicitAny: answers as they come over the wire.
export const find = (list: any[], name: string) => list.find(({ statement }) => statement.name === name)

/** Everything that the shelf says, against the second book. */
export async function compare(): Promise<void> {
  const { bottles, packages: held, jugs } = await shelf()
  for (const [name, ml] of packages) expect(find(held, name).held).toBeCloseTo(ml, 3)
  for (const [name, own] of baths) {
    own.stand(today)
    const shown = find(bottles, name)
    expect(shown.held, name).toBeCloseTo(own.ml, 2)
    compareLeft(name, own, shown.left)
  }
  const [{ held_ml, silver_g, rolls }] = jugs
  expect(held_ml).toBeCloseTo(jug.ml, 2)
  expect(rolls).toBeCloseTo(jug.rolls, 4)
  for (const band of ['low', 'usual', 'high'] as const) expect(silver_g[band]).toBeCloseTo(silverOf(jug.rolls)[band], 4)
}

// biome-ignore lint/suspicious/noExplicitAny: as above.
function compareLeft(name: string, own: Bath, left: any): void {
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  const limit = (by: string) => left.limits.find((one: any) => one.by === by) ?? { rolls: null, days: null }
  const close = (shown: number | null, wanted: number | null, what: string) =>
    wanted === null
      ? expect(shown, `${name}: ${what}`).toBeNull()
      : expect(shown, `${name}: ${what}`).toBeCloseTo(wanted, 3)
  close(left.met, own.rolls, 'rolls met')
  close(limit('count').rolls, own.byCount, 'count')
  close(limit('silver').rolls, own.bySilver, 'silver')
  close(limit('tests').rolls, own.byTests, 'tests')
  close(limit('volume').rolls, own.byVolume, 'volume')
  close(limit('age').days, own.daysLeft, 'days')
  close(left.due_ml, own.due, 'due')
  close(left.rolls_per_week, own.pace(today), 'pace')
  if (own.kind.silverLimit !== undefined && own.rolls > 0) close(left.silver_g_per_l.usual, own.silver, 'silver now')
  const inRolls = { count: own.byCount, silver: own.bySilver, tests: own.byTests, volume: own.byVolume }
  const known = Object.entries(inRolls).filter((one): one is [string, number] => one[1] !== null)
  const least = known.reduce<[string, number] | null>((one, other) => (one && one[1] <= other[1] ? one : other), null)
  close(left.rolls, least?.[1] ?? null, 'rolls')
  const pace = own.pace(today)
  if (least === null || pace === null) return
  const until = (least[1] / pace) * 7
  expect([left.decides, name]).toEqual([until <= own.daysLeft ? least[0] : 'age', name])
  const ends = today + Math.min(until, own.daysLeft)
  expect((Date.parse(left.ends) - NOON) / DAY_MS, `${name}: ends`).toBeCloseTo(ends, 2)
}

export const on = (day: number) => {
  served.clock.advance((day - today) * DAY_MS)
  today = day
}
