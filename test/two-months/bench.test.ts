// A small bench lives two months over HTTP; after each act all its bottles are held against the second book.
import { beforeAll, describe, expect, it } from 'vitest'
import { DAY_MS } from '../../src/kernel/index.js'
import { NOON } from '../support/bench.js'
import { type Answered, expectRefusal, houses, type Served } from '../support/server.js'
import { Bath, type Film, type Kind, silverOf } from './book.js'

const serve = houses()
let served: Served
/** Ids by what we call things. */
const ids = new Map<string, string>()
const baths = new Map<string, Bath>()
const packages = new Map<string, number>()
const jug = { ml: 0, rolls: 0 }
let today = 0

const id = (name: string): string => ids.get(name) as string
const bath = (name: string): Bath => baths.get(name) as Bath
const post = (url: string, body: object) => served.ask({ method: 'POST', url, body })

async function done(asked: Promise<Answered>): Promise<Answered['json']> {
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

async function furnish(): Promise<void> {
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

async function mix(product: string, into: [string, number][], from: [string, number][] = []): Promise<void> {
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

const asUse = (name: string, film: readonly Film[], poured: number) => ({
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
async function tank(film: readonly Film[], poured: number): Promise<void> {
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

async function clearing(name: string, clears_s: number, fresh = false): Promise<void> {
  const test = { of: 'clearing', clears_s, fresh }
  await done(post('/api/shelf/test', { container_id: id(name), test }))
  bath(name).test(clears_s)
}

async function station(name: string, as: 'first' | 'second'): Promise<void> {
  await done(post('/api/shelf/station', { container_id: id(name), station: as }))
  bath(name).station = as
  expect(find((await shelf()).bottles, name).station).toBe(as)
}

const shelf = async () => (await served.ask({ url: '/api/shelf' })).json
// biome-ignore lint/suspicious/noExplicitAny: answers as they come over the wire.
const find = (list: any[], name: string) => list.find(({ statement }) => statement.name === name)

/** Everything that the shelf says, against the second book. */
async function compare(): Promise<void> {
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

const on = (day: number) => {
  served.clock.advance((day - today) * DAY_MS)
  today = day
}

const small = (count: number, more: Partial<Film> = {}): Film => ({ format: '135', frames: 36, count, ...more })
/** Fourteen tanks: the day, the film, how much of each bath it takes. */
const TANKS: readonly (readonly [number, readonly Film[], number])[] = [
  [1, [small(2)], 600],
  [2, [{ format: '120', count: 1 }], 500],
  [5, [small(1, { frames: 24 }), small(1)], 600],
  [8, [{ format: '4x5', count: 6 }], 650],
  [9, [small(1, { family: 'tabular' }), small(1)], 600],
  [14, [{ format: '120', count: 2 }], 650],
  [16, [small(2)], 600],
  [21, [{ format: '5x7', count: 4 }], 650],
  [23, [small(1, { frames: 12 })], 300],
  [28, [{ format: '8x10', count: 2 }], 650],
  [30, [small(2)], 600],
  [37, [{ format: '120', count: 1, family: 'high-iodide' }], 500],
  [44, [small(2), { format: '120', count: 1 }], 600],
  [51, [small(1)], 300],
]

beforeAll(async () => {
  served = await serve()
})

describe('two months at a small bench', () => {
  it('begins with four lots, two of their bottles first and second fixing bath', async () => {
    await furnish()
    on(0)
    await mix('developer', [['developer', 2000]])
    await mix('replenisher', [['replenisher', 2000]])
    await mix('stop', [['stop', 1000]], [['acid', 50]])
    const fixer: [string, number][] = [
      ['fixer one', 1000],
      ['fixer two', 1000],
    ]
    await mix('fixer', fixer, [['concentrate', 400]])
    await station('fixer one', 'first')
    await station('fixer two', 'second')
    await clearing('fixer one', 35, true)
    await compare()
  })

  it('keeps count through seven tanks, a mistake that is taken back, and what is refused', async () => {
    for (const [day, film, poured] of TANKS.slice(0, 7)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    const before = JSON.stringify(await shelf())
    expectRefusal(
      await post('/api/shelf/use', { ...asUse('stop', [small(1)], 300), for_role: 'fixer' }),
      'shelf.wrong-role',
    )
    expectRefusal(
      await post('/api/shelf/use', { ...asUse('stop', [small(1)], 300), back_into: id('fixer one') }),
      'shelf.back-into-other',
    )
    expectRefusal(await post('/api/shelf/use', asUse('stop', [small(1)], 5000)), 'shelf.not-enough')
    expectRefusal(
      await post('/api/shelf/discard', { container_id: id('fixer one'), where: 'as-allowed' }),
      'shelf.into-a-jug-only',
    )
    expect(JSON.stringify(await shelf())).toBe(before)
    const wrong = await done(post('/api/shelf/use', asUse('stop', [small(3)], 300)))
    expect(JSON.stringify(await shelf())).not.toBe(before)
    await done(post(`/api/shelf-entries/${wrong.entry.id}/take-back`, { note: 'was another bottle' }))
    await compare()
  })

  it('makes room for the replenisher by pouring some of the bath away', async () => {
    on(18)
    await clearing('fixer one', 46)
    const asked = { container_id: id('developer'), amount: 300, where: 'as-allowed' }
    await done(post('/api/shelf/discard', asked))
    bath('developer').takeOut(today, 300)
    await compare()
  })

  it('finds the first fixing bath finished and rotates: the second becomes the first', async () => {
    for (const [day, film, poured] of TANKS.slice(7, 11)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    await clearing('fixer one', 55)
    const { clearing: read } = find((await shelf()).bottles, 'fixer one').left
    // 55 s now: at least 1:50, by the longer practice 2:45; the bin at 1:10.
    expect(read).toMatchObject({ fresh_s: 35, now_s: 55, finished: false })
    expect([110, 165]).toContain(read.fix_for_s)
    await compare()
    on(31)
    await clearing('fixer one', 70)
    expect(find((await shelf()).bottles, 'fixer one').left).toMatchObject({ rolls: 0, state: 'finished' })
    await done(post('/api/shelf/discard', { container_id: id('fixer one'), where: 'jug', jug_id: id('jug') }))
    const spent = bath('fixer one')
    jug.ml += spent.ml
    jug.rolls += spent.rolls
    baths.delete('fixer one')
    await station('fixer two', 'first')
    await compare()
    await mix('fixer', [['fixer one', 1000]], [['concentrate', 200]])
    await station('fixer one', 'second')
    await compare()
  })

  it('goes on to the fourteenth tank and hands the waste over', async () => {
    for (const [day, film, poured] of TANKS.slice(11)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    on(59)
    const fixer = find((await shelf()).bottles, 'fixer two')
    await done(post('/api/shelf/discard', { container_id: fixer.id, where: 'jug', jug_id: id('jug') }))
    jug.ml += bath('fixer two').ml
    jug.rolls += bath('fixer two').rolls
    baths.delete('fixer two')
    await compare()
    const [filled] = (await shelf()).jugs
    expect([filled.opened_at.slice(0, 10), filled.full]).toEqual(['2026-04-01', false])
    await done(post('/api/shelf/hand-over', { jug_id: id('jug'), to: 'Council collection point' }))
    jug.ml = 0
    jug.rolls = 0
    await compare()
  })

  it('has a history of every lot that adds up to what stands in its bottles', async () => {
    const { lots } = await done(post('/api/lots/find', {}))
    expect(lots).toHaveLength(5)
    for (const { id: lotId } of lots) {
      const { history, containers } = (await served.ask({ url: `/api/lots/${lotId}` })).json
      const sum = history
        // biome-ignore lint/suspicious/noExplicitAny: as above.
        .flatMap(({ legs }: any) => legs.filter((leg: any) => leg.lot_id === lotId))
        .reduce((total: number, { change }: { change: number }) => total + Math.round(change * 1000), 0)
      const stands = containers.reduce(
        (total: number, { held }: { held: number }) => total + Math.round(held * 1000),
        0,
      )
      expect(sum).toBe(stands)
    }
  })
})
