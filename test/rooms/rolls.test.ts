import fc from 'fast-check'
import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import {
  addOrder,
  changePattern,
  changeRolls,
  correctRoll,
  findRolls,
  getOrder,
  getRoll,
  handBack,
  moveRolls,
  type RollEvent,
  type RollState,
  reserveNumbers,
  rollByNumber,
  takeInRolls,
  undoBatch,
  undoRoll,
} from '../../src/lab/index.js'
import { schemas, type TakeInRolls } from '../../src/wire/index.js'
import { type Bench, benches, problemOf } from '../support/bench.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(501)
})

const roll = (changes: object = {}) => ({
  statement: { film: 'Tarn 100', process: 'black-and-white', format: '135', exposure_index: 100, ...changes },
})
const asked = (rolls: object[], order_id: string | null = null): TakeInRolls =>
  schemas.TakeInRolls.parse({ rolls, order_id })
const takeIn = (rolls: object[], order: string | null = null) =>
  bench.write((context, rooms) => takeInRolls(context, rooms, asked(rolls, order)))
const taken = async (rolls: object[], order: string | null = null) => expectOk(await takeIn(rolls, order)).rolls
const one = async () => (await taken([roll()]))[0]?.id as string
const move = (ids: string[], state: RollState, more: object = {}) =>
  bench.write((context, rooms) => moveRolls(context, rooms, schemas.MoveRolls.parse({ roll_ids: ids, state, ...more })))
const look = async (id: string) => expectOk(await bench.read((rooms) => getRoll(rooms, id)))

describe('taking in', () => {
  it('numbers rolls in order, and gives twin numbers to film of somebody else alone', async () => {
    const rolls = await taken([roll(), roll({ whose: 'Ida' }), roll(), roll({ whose: 'Jon' })])
    expect(rolls.map(({ number }) => number)).toEqual(['2026-0001', '2026-0002', '2026-0003', '2026-0004'])
    expect(rolls.map(({ twin }) => twin)).toEqual([null, 1, null, 2])
    expect((await taken([roll()]))[0]?.number).toBe('2026-0005')
  })

  it('takes all or none, and a number that was not used is given to the next', async () => {
    const refused = await takeIn([roll(), roll({ format: '120', frames: 36 })])
    expect(problemOf(refused)).toMatchObject({ code: 'roll.frames-of-135-only', field: 'rolls[1].statement.frames' })
    expect((await taken([roll()]))[0]?.number).toBe('2026-0001')
  })

  it.each([
    ['sheets of a roll', { format: '120', sheets: 3 }, 'roll.sheets-of-sheets-only'],
    ['a push to its own index', { treatment: { as: 'index', index: 100 } }, 'roll.push-to-own-index'],
    ['chromogenic film as black-and-white', { remarks: ['chromogenic'] }, 'roll.chromogenic-is-colour'],
  ])('refuses %s', async (_, changes, code) => {
    expect(problemOf(await takeIn([roll(changes)])).code).toBe(code)
  })

  it('takes half frames, 37 exposures and stranded ends as they are', async () => {
    const rolls = await taken([
      roll({ frames: 72 }),
      roll({ frames: 37 }),
      roll({ frames: 1 }),
      roll({ format: '4x5', sheets: 12 }),
    ])
    expect(rolls.map(({ frames, sheets }) => [frames, sheets])).toEqual([
      [72, 1],
      [37, 1],
      [1, 1],
      [null, 12],
    ])
  })

  it('refuses an order that is not there', async () => {
    const refused = await takeIn([roll()], '0190d1c2-0000-7000-8000-000000000000')
    expect(problemOf(refused)).toMatchObject({ code: 'record.not-found', field: 'order_id' })
  })
})

describe('numbers', () => {
  it('are written by the pattern of the bench from its change on', async () => {
    await taken([roll()])
    expectOk(await bench.write((context, rooms) => changePattern(context, rooms, 'K{yy}.{n2}')))
    expect((await taken([roll()]))[0]?.number).toBe('K26.02')
    expectOk(await bench.write((context, rooms) => changePattern(context, rooms, '{n6}')))
    expect((await taken([roll()]))[0]?.number).toBe('000001')
  })

  it.each(['', '{year}', '{n}{n}', '{n4}-{month}', '<{n}>', '{n0}'])('refuses the pattern “%s”', async (pattern) => {
    const refused = await bench.write((context, rooms) => changePattern(context, rooms, pattern))
    expect(problemOf(refused).code).toBe('roll.pattern-unusable')
  })

  it('reserved for a device are given by nobody else, and each once', async () => {
    const block = expectOk(await bench.write((context, rooms) => reserveNumbers(context, rooms, 3)))
    expect(block).toMatchObject({ first: 1, last: 3, numbers: ['2026-0001', '2026-0002', '2026-0003'] })
    expect((await taken([roll()]))[0]?.number).toBe('2026-0004')
    const away = (n: number) => ({ ...roll(), number: { block_id: block.block_id, n } })
    expect((await taken([away(2)]))[0]?.number).toBe('2026-0002')
    expect(problemOf(await takeIn([away(2)]))).toMatchObject({ code: 'roll.number-taken', field: 'rolls[0].number' })
    expect(problemOf(await takeIn([away(4)])).code).toBe('roll.number-not-reserved')
  })
})

describe('words of a roll', () => {
  it('are corrected on top of what was seen, and undone', async () => {
    const id = await one()
    const correct = (seen: number, film: string) =>
      bench.write((context, rooms) =>
        correctRoll(context, rooms, id, seen, schemas.RollStatement.parse(roll({ film }).statement)),
      )
    expect(expectOk(await correct(1, 'Fell 25'))).toMatchObject({ film: 'Fell 25', revision: 2 })
    expect(problemOf(await correct(1, 'Corvane 400')).code).toBe('record.changed-meanwhile')
    const undone = await bench.write((context, rooms) => undoRoll(context, rooms, id, 2))
    expect(expectOk(undone)).toMatchObject({ film: 'Tarn 100', revision: 3 })
  })

  it('are changed on many at once, and all of it is taken back', async () => {
    const rolls = await taken([roll(), roll({ film: 'Fell 25' })])
    const change = schemas.ChangeRolls.parse({ roll_ids: rolls.map(({ id }) => id), change: { whose: 'Ida' } })
    const batch = expectOk(await bench.write((context, rooms) => changeRolls(context, rooms, change)))
    expect(batch.rolls.map(({ film, whose }) => [film, whose])).toEqual([
      ['Tarn 100', 'Ida'],
      ['Fell 25', 'Ida'],
    ])
    const back = expectOk(await bench.write((context, rooms) => undoBatch(context, rooms, batch.batch_id)))
    expect(back.rolls.map(({ film, whose }) => [film, whose])).toEqual([
      ['Tarn 100', null],
      ['Fell 25', null],
    ])
  })
})

describe('the way of a roll', () => {
  it('goes forwards, and ends', async () => {
    const id = await one()
    expectOk(await move([id], 'developed'))
    expect(problemOf(await move([id], 'loaded')).code).toBe('roll.not-forwards')
    expect(problemOf(await move([id], 'ruined')).code).toBe('roll.reason-missing')
    expectOk(await move([id], 'hung', { hook: '7' }))
    expect(await look(id)).toMatchObject({ state: 'hung', hook: '7' })
    expectOk(await move([id], 'lost', { reason: 'not on its hook' }))
    expect(problemOf(await move([id], 'sleeved')).code).toBe('roll.ended')
    expect((await look(id)).history.map(({ state }) => state)).toEqual(['developed', 'hung', 'lost'])
  })

  it('of many is taken back at once, unless one of them has gone on', async () => {
    const ids = (await taken([roll(), roll()])).map(({ id }) => id)
    const first = expectOk(await move(ids, 'developed'))
    const back = expectOk(await bench.write((context, rooms) => undoBatch(context, rooms, first.batch_id)))
    expect(back.rolls.map(({ state }) => state)).toEqual(['taken-in', 'taken-in'])
    const again = expectOk(await move(ids, 'developed'))
    expectOk(await move([ids[1] as string], 'hung'))
    const refused = await bench.write((context, rooms) => undoBatch(context, rooms, again.batch_id))
    expect(problemOf(refused)).toMatchObject({ code: 'roll.went-on' })
    expect((await look(ids[0] as string)).state).toBe('developed')
  })

  it('is the same in whatever order its steps are written down', async () => {
    const { whereabouts } = await import('../../src/lab/rolls/states.js')
    const states: RollState[] = ['loaded', 'developed', 'hung', 'sleeved', 'ruined']
    const event = fc.record({
      at: fc.integer({ min: 0, max: 50 }),
      state: fc.constantFrom(...states),
      retracted: fc.boolean(),
      hook: fc.constantFrom('', '1'),
    })
    fc.assert(
      fc.property(fc.array(event, { maxLength: 8 }), fc.infiniteStream(fc.nat()), (drawn, order) => {
        const events: RollEvent[] = drawn.flatMap(({ at, state, retracted, hook }, i) => {
          const base = { rollId: 'r', by: 'owner', runId: null, reason: '', batchId: null }
          const taken = { ...base, id: `${i}a`, at, state, hook, retracts: null }
          return retracted
            ? [taken, { ...base, id: `${i}b`, at: at + 1, state: null, hook: '', retracts: `${i}a` }]
            : [taken]
        })
        const shuffled = events.map((one) => [order.next().value as number, one] as const).sort(([a], [b]) => a - b)
        expect(
          whereabouts(
            0,
            shuffled.map(([, one]) => one),
          ),
        ).toEqual(whereabouts(0, events))
      }),
      { seed: 20_261, numRuns: 500 },
    )
  })

  it('refuses a step before the last one, or in the future', async () => {
    const id = await one()
    expect(problemOf(await move([id], 'hung', { at: '2020-01-01T00:00:00.000Z' })).code).toBe('roll.step-before-last')
    expect(problemOf(await move([id], 'hung', { at: '2999-01-01T00:00:00.000Z' })).code).toBe('roll.step-in-future')
  })
})

describe('orders', () => {
  const order = async () =>
    expectOk(
      await bench.write((context, rooms) =>
        addOrder(context, rooms, schemas.AddOrder.parse({ person: 'Ida', counted_in: 2 })),
      ),
    )
  const back = (id: string, counted: number) => bench.write((context, rooms) => handBack(context, rooms, id, counted))

  it('are handed back when the count is right, and only once', async () => {
    const { id } = await order()
    const ids = (await taken([roll({ whose: 'Ida' }), roll({ whose: 'Ida' }), roll({ whose: 'Ida' })], id)).map(
      (one) => one.id,
    )
    expect(problemOf(await back(id, 3)).code).toBe('order.not-developed')
    expectOk(await move(ids, 'sleeved'))
    expectOk(await move([ids[2] as string], 'lost', { reason: 'fell behind the sink' }))
    expect(problemOf(await back(id, 3)).sentence).toContain('3 rolls were counted and 2 should be here')
    expect((await look(ids[0] as string)).state).toBe('sleeved')
    expect(expectOk(await back(id, 2))).toMatchObject({ counted_out: 2 })
    expect(problemOf(await back(id, 2)).code).toBe('order.nothing-here')
    const { rolls } = expectOk(await bench.read((rooms) => getOrder(rooms, id)))
    expect(rolls.map(({ state }) => state)).toEqual(['handed-back', 'handed-back', 'lost'])
  })
})

describe('looking for rolls', () => {
  it('pages through all of them, each once', async () => {
    await taken(Array.from({ length: 23 }, (_, i) => roll({ note: i % 2 ? 'odd' : 'even' })))
    const seen: string[] = []
    let after: string | null = null
    do {
      const wanted = schemas.FindRolls.parse({ most: 5, after })
      const page = expectOk(await bench.read((rooms) => findRolls({ ...bench.context }, rooms, wanted)))
      expect(page.found).toBe(23)
      seen.push(...page.rolls.map(({ number }) => number))
      after = page.next
    } while (after !== null)
    expect(seen).toHaveLength(23)
    expect([...new Set(seen)]).toEqual([...seen].sort().reverse())
    const odd = schemas.FindRolls.parse({ look: { words: 'ODD tarn' } })
    expect(expectOk(await bench.read((rooms) => findRolls(bench.context, rooms, odd))).found).toBe(11)
  })

  it('finds one by the number on its sticker', async () => {
    await taken([roll()])
    expect(expectOk(await bench.read((rooms) => rollByNumber(rooms, ' 2026-0001 '))).film).toBe('Tarn 100')
    expect(problemOf(await bench.read((rooms) => rollByNumber(rooms, '2026-0009'))).code).toBe('roll.number-unknown')
  })
})
