import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import { expectOk, idsFrom, SeededRandom, SetClock } from '../../src/kernel/index.js'
import {
  type Context,
  findRolls,
  listOrders,
  listThermometers,
  listTimes,
  type Rooms,
  type Store,
  type TimeRecord,
} from '../../src/lab/index.js'
import { type OrderRecord, type RollSummaries, schemas } from '../../src/wire/index.js'
import { END, START } from './calendar.js'
import { type LogEntry, OWNER } from './darkroom.js'
import { backupOf, FURNISHING_MS, onlyBench, withTwoYears } from './fixture.js'

const SEED = 2024

/**
 * Looks at the file of the data before and after those writes that a first run saw refused; a place in its log is the
 * place of a write. Whatever is committed is appended to the write-ahead log, and nothing else is: reading back all
 * rows each time says no more and takes a minute.
 */
function watched(store: Store, file: string, refusedBefore: readonly boolean[], traces: string[]): Store {
  const written = () =>
    createHash('sha1')
      .update(readFileSync(`${file}-wal`))
      .digest('hex')
  let place = 0
  const write: Store['write'] = async (context, key, work) => {
    const expected = refusedBefore[place++]
    const before = expected ? written() : ''
    const result = await store.write(context, key, work)
    if (!result.ok !== expected) traces.push(`write ${place} went otherwise than in the first run`)
    if (expected && written() !== before) traces.push(`write ${place} was refused and left something`)
    return result
  }
  return { ...store, write }
}

/** All of them, a page at a time, as the list of the web does it. */
async function everyRoll(rooms: Rooms, bench: string): Promise<RollSummaries['rolls']> {
  const clock = new SetClock(END)
  const reader: Context = { actor: OWNER, bench, clock, ids: idsFrom(clock, new SeededRandom(SEED)) }
  const found: RollSummaries['rolls'] = []
  let after: string | null = null
  do {
    const page: RollSummaries = expectOk(await findRolls(reader, rooms, schemas.FindRolls.parse({ after, most: 97 })))
    found.push(...page.rolls)
    after = page.next
  } while (after !== null)
  return found
}

describe('the two-year bench', () => {
  let log: readonly LogEntry[]
  let times: TimeRecord[]
  let lines: string[]
  let shown: Awaited<ReturnType<typeof listTimes>>
  let kit: Awaited<ReturnType<typeof listThermometers>>
  let rolls: RollSummaries['rolls']
  let orders: OrderRecord[]
  beforeAll(
    () =>
      withTwoYears(SEED, async (furnished) => {
        const { store } = furnished
        log = furnished.log
        lines = await backupOf(store)
        const bench = await onlyBench(store)
        await store.read(bench, async (rooms) => {
          times = await rooms.times.all()
          shown = await listTimes(rooms)
          kit = await listThermometers(rooms)
          rolls = await everyRoll(rooms, bench)
          orders = (await listOrders(rooms)).orders
        })
      }),
    FURNISHING_MS,
  )

  it(
    'is the same again from the same seed, row by row, and no refused attempt changed it',
    async () => {
      const refused = log.map(({ outcome }) => outcome !== 'done')
      expect(refused.filter(Boolean).length).toBeGreaterThan(40)
      const traces: string[] = []
      const again = await withTwoYears(
        SEED,
        async ({ store }) => backupOf(store),
        (store, file) => watched(store, file, refused, traces),
      )
      expect(traces).toEqual([])
      expect(again).toEqual(lines)
      // Two years are lived once more, and looked at before and after each of some 150 refusals.
    },
    FURNISHING_MS,
  )

  it('holds sixty pairs of film and developer with some 180 times of one to eight points', () => {
    expect(new Set(times.map(({ film, developer }) => `${film}\n${developer}`)).size).toBe(60)
    expect(times.length).toBeGreaterThanOrEqual(170)
    expect(times.length).toBeLessThanOrEqual(190)
    const counts = new Set(times.map(({ points }) => points.length))
    expect([...counts].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    const offQuarters = times.flatMap(({ points }) => points).filter(({ time }) => time % 15 !== 0)
    expect(offQuarters).toEqual([])
  })

  it('holds every kind, law, origin and class, own ranges and own coefficients, °C and °F', () => {
    const values = (of: (record: TimeRecord) => unknown) => [...new Set(times.map(of))].sort()
    expect(values(({ kind }) => kind)).toEqual(['fixed', 'ordinary', 'single-bath'])
    expect(values(({ law }) => law)).toEqual(['arrhenius', 'exponential'])
    expect(values(({ sourceOrigin }) => sourceOrigin)).toEqual(['measured', 'own-note', 'sheet'])
    expect(values(({ developerClass }) => developerClass)).toHaveLength(7)
    const having = (what: (record: TimeRecord) => boolean) => times.filter(what).length
    expect(having(({ usable }) => usable !== null)).toBeGreaterThan(10)
    expect(having(({ coefficient }) => coefficient !== null)).toBeGreaterThan(5)
    expect(having(({ window }) => window !== null)).toBeGreaterThan(0)
    expect(having(({ points }) => points.some(({ temperature }) => temperature % 0.5 !== 0))).toBeGreaterThan(20)
  })

  it('holds names as people type them, up to the longest that may be', () => {
    const names = new Set(times.map(({ film }) => film))
    for (const sign of ['ü', "'", '“', '--', '🏜️']) expect([...names].some((name) => name.includes(sign))).toBe(true)
    expect(Math.max(...[...names].map((name) => name.length))).toBe(120)
  })

  it('holds twelve thermometers, checked in each of six terms, and what went wrong with them', () => {
    const { thermometers } = kit
    expect(thermometers).toHaveLength(12)
    const checks = thermometers.flatMap((one) => one.checks)
    const sizes = new Map<string, number>()
    for (const { set_id } of checks) if (set_id !== null) sizes.set(set_id, (sizes.get(set_id) ?? 0) + 1)
    // Seven in each beaker; the trusted one, in every second term, gets no check of its own.
    expect([...sizes.values()].sort()).toEqual([6, 6, 6, 7, 7, 7])
    expect(checks.filter(({ withdrawn }) => withdrawn).length).toBeGreaterThan(1)
    expect(new Set(checks.map(({ method }) => method))).toEqual(new Set(['comparison', 'ice', 'boiling', 'class-set']))
    const toItself = checks.filter(({ method, read_c, true_c }) => method === 'comparison' && read_c === true_c)
    expect(toItself.some(({ withdrawn }) => withdrawn)).toBe(true)
  })

  it('holds ninety lots of three kinds, and every container what its entries come to', () => {
    const of = (table: string) =>
      lines.flatMap((line) => {
        const { t, r } = JSON.parse(line)
        return t === table ? [r] : []
      })
    const [lots, containers, legs] = [of('lots'), of('containers'), of('shelf_legs')]
    expect(lots).toHaveLength(90)
    expect(new Set(lots.map(({ code }) => code)).size).toBe(90)
    for (const container of containers) {
      const own = legs.filter((leg) => leg.container_id === container.id)
      const sum = (column: string) => own.reduce((all, leg) => all + leg[column], 0)
      for (const column of ['held', 'basis', 'worked', 'met']) expect(container[column]).toBe(sum(column))
    }
  })

  it('holds six hundred rolls, no number twice, with what became of them', () => {
    expect(rolls).toHaveLength(600)
    expect(new Set(rolls.map(({ number }) => number)).size).toBe(600)
    const count = (state: string) => rolls.filter((roll) => roll.state === state).length
    const states = ['taken-in', 'loaded', 'sleeved', 'handed-back', 'lost', 'ruined'].map((state) => [
      state,
      count(state),
    ])
    expect(Object.fromEntries(states)).toEqual({
      'taken-in': 12,
      loaded: 12,
      sleeved: 288,
      'handed-back': 278,
      lost: 5,
      ruined: 5,
    })
    expect(rolls.filter(({ film }) => film === 'Tam 100')).toHaveLength(5)
    expect(orders).toHaveLength(50)
    expect(orders.filter(({ counted_out }) => counted_out !== null)).toHaveLength(48)
    expect(orders.every((order) => order.rolls.length === order.counted_in)).toBe(true)
    expect(schemas.OrderRecords.parse({ orders })).toEqual({ orders })
  })

  it('is what the interface would take and give', () => {
    expect(schemas.TimeRecords.parse(shown)).toEqual(shown)
    expect(schemas.ThermometerRecords.parse(kit)).toEqual(kit)
  })

  it('runs forward through the two years', () => {
    const moments = log.map(({ at }) => Date.parse(at))
    expect(moments).toEqual([...moments].sort((one, other) => one - other))
    expect(moments[0]).toBeGreaterThanOrEqual(START)
    expect(moments.at(-1)).toBeLessThan(END)
    expect((moments.at(-1) ?? 0) - START).toBeGreaterThan(0.95 * (END - START))
  })

  it('has every mistake that people make, refused with its own problem', () => {
    const codes = new Set(log.map(({ outcome }) => outcome))
    expect([...codes].sort()).toEqual(
      [
        'done',
        'house.pairing-code-wrong',
        'order.count-mismatch',
        'order.has-rolls',
        'order.not-developed',
        'order.nothing-here',
        'record.changed-meanwhile',
        'record.name-taken',
        'record.not-found',
        'record.removed',
        'request.invalid',
        'roll.chromogenic-is-colour',
        'roll.ended',
        'roll.frames-of-135-only',
        'roll.not-forwards',
        'roll.nothing-to-undo',
        'roll.push-to-own-index',
        'roll.reason-missing',
        'roll.sheets-of-sheets-only',
        'roll.step-before-last',
        'roll.step-in-future',
        'roll.went-on',
        'shelf.back-where',
        'shelf.before-last',
        'shelf.carries-no-more',
        'shelf.into-a-jug-only',
        'shelf.not-empty',
        'shelf.not-enough',
        'shelf.taken-back-before',
        'shelf.wrong-role',
        'thermometer.bad-scale',
        'thermometer.check-withdrawn',
        'thermometer.class-set-too-small',
        'thermometer.error-too-large',
        'thermometer.method-out-of-scale',
        'thermometer.outside-scale',
        'thermometer.same-twice',
        'times.bad-coefficient',
        'times.bad-range',
        'times.bad-window',
        'times.fixed-needs-one-point',
        'times.impossible-temperature',
        'times.impossible-time',
        'times.no-points',
        'times.slower-when-warmer',
        'times.two-times-at-one-temperature',
      ].sort(),
    )
  })
})
