import { beforeEach, describe, expect, it } from 'vitest'
import { celsius, expectOk } from '../../src/kernel/index.js'
import {
  addClassSet,
  addThermometer,
  checkThermometer,
  correctedReading,
  correctThermometer,
  listThermometers,
  removeThermometer,
  undoThermometer,
  withdrawCheck,
} from '../../src/lab/index.js'
import type { AddCheck, AddClassSet } from '../../src/wire/index.js'
import { type Bench, benches, comparison, problemOf, thermometer } from '../support/bench.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(302)
})

const tryAdd = (changes = {}) => bench.write((context, rooms) => addThermometer(context, rooms, thermometer(changes)))
const add = async (changes = {}) => expectOk(await tryAdd(changes)).id
const correct = (id: string, seen: number, changes = {}) =>
  bench.write((context, rooms) => correctThermometer(context, rooms, id, seen, thermometer(changes)))
const remove = (id: string, seen: number) =>
  bench.write((context, rooms) => removeThermometer(context, rooms, id, seen))
const undo = (id: string, seen: number) => bench.write((context, rooms) => undoThermometer(context, rooms, id, seen))
const check = (id: string, one: AddCheck) => bench.write((context, rooms) => checkThermometer(context, rooms, id, one))
const withdraw = (id: string) => bench.write((context, rooms) => withdrawCheck(context, rooms, id))
const compare = (set: AddClassSet) => bench.write((context, rooms) => addClassSet(context, rooms, set))
const shelf = async () => (await bench.read(listThermometers)).thermometers

/** The work is refused with this code and nothing is changed by it. */
async function refused(code: string, work: () => Promise<Parameters<typeof problemOf>[0]>) {
  const before = await bench.everything()
  const problem = problemOf(await work())
  expect(problem.code).toBe(code)
  expect(await bench.everything()).toEqual(before)
  return problem
}

describe('the name', () => {
  it('is taken by one thermometer at a time, however it is written', async () => {
    await add({ name: 'Spirit' })
    for (const name of ['Spirit', 'spirit', '  SPIRIT '])
      expect((await refused('record.name-taken', () => tryAdd({ name }))).field).toBe('name')
  })

  it('may be kept in a correction, but not be that of another', async () => {
    const spirit = await add({ name: 'Spirit' })
    await add({ name: 'Dial' })
    expectOk(await correct(spirit, 1, { name: 'spirit', note: 'blue cap' }))
    await refused('record.name-taken', () => correct(spirit, 2, { name: 'dial' }))
  })

  it('is free once its thermometer is removed; the removed one then stays away', async () => {
    const first = await add({ name: 'Spirit' })
    expectOk(await remove(first, 1))
    await add({ name: 'Spirit' })
    await refused('record.name-taken', () => undo(first, 2))
    expect((await shelf()).map(({ name }) => name)).toEqual(['Spirit'])
  })
})

describe('the scale', () => {
  it.each([
    [50, -10],
    [20, 24],
    [20, 20],
    [-60, 50],
  ])('from %d to %d is refused', async (scale_low_c, scale_high_c) => {
    await refused('thermometer.bad-scale', () => tryAdd({ scale_low_c, scale_high_c }))
  })

  it('cannot be corrected so that a check falls outside it, unless that check is withdrawn', async () => {
    const id = await add()
    const { checks } = expectOk(await check(id, comparison(62, 61.5)))
    const problem = await refused('thermometer.scale-leaves-out', () => correct(id, 1, { scale_high_c: 50 }))
    expect(problem.sentence).toContain('62\u202f°C')
    expectOk(await withdraw(checks[0]?.id as string))
    expect(expectOk(await correct(id, 1, { scale_high_c: 50 })).scale_high_c).toBe(50)
  })

  it('cannot be undone to one that leaves out a check either', async () => {
    const id = await add({ scale_high_c: 50 })
    expectOk(await correct(id, 1, { scale_high_c: 110 }))
    expectOk(await check(id, comparison(62, 61.5)))
    await refused('thermometer.scale-leaves-out', () => undo(id, 2))
  })
})

describe('a check', () => {
  it('is kept with its method and moment', async () => {
    const id = await add()
    bench.clock.advance(1000)
    const { checks } = expectOk(await check(id, comparison(20.4, 20)))
    expect(checks).toEqual([
      {
        id: checks[0]?.id,
        at: '2026-03-01T12:00:01.000Z',
        method: 'comparison',
        read_c: 20.4,
        true_c: 20,
        set_id: null,
        withdrawn: false,
      },
    ])
  })

  it.each([-10.1, 110.1])('that read %d, off the scale, is refused', async (read_c) => {
    const id = await add()
    const problem = await refused('thermometer.outside-scale', () => check(id, comparison(read_c, read_c)))
    expect(problem.sentence).toContain('Spirit over the sink')
  })

  it.each([
    [-1, 'ice', 0.2, true],
    [0, 'ice', 0.2, true],
    [0.5, 'ice', 0.6, false],
  ] as const)('on a scale from %d by %s is possible: %s', async (scale_low_c, method, read_c, possible) => {
    const id = await add({ scale_low_c })
    if (possible) expect(expectOk(await check(id, { method, read_c })).checks[0]?.true_c).toBe(0)
    else await refused('thermometer.method-out-of-scale', () => check(id, { method, read_c }))
  })

  it.each([
    [100, false],
    [101, true],
  ])('on a scale to %d by boiling is possible: %s', async (scale_high_c, possible) => {
    const id = await add({ scale_high_c })
    const boiling: AddCheck = { method: 'boiling', read_c: 99.5, altitude_m: 300 }
    if (possible) expect(expectOk(await check(id, boiling)).checks[0]?.true_c).toBeCloseTo(99, 0)
    else await refused('thermometer.method-out-of-scale', () => check(id, boiling))
  })

  it('by comparison needs what was true', async () => {
    const id = await add()
    const problem = await refused('request.invalid', () => check(id, { method: 'comparison', read_c: 20 }))
    expect(problem.field).toBe('true_c')
  })

  it('that shows a broken thermometer is refused', async () => {
    const id = await add()
    await refused('thermometer.error-too-large', () => check(id, comparison(26, 20)))
  })

  it('that contradicts an earlier one elsewhere on the scale is refused until that one is withdrawn', async () => {
    const id = await add()
    const { checks } = expectOk(await check(id, comparison(20, 22)))
    await refused('thermometer.checks-contradict', () => check(id, comparison(23.5, 21)))
    expectOk(await withdraw(checks[0]?.id as string))
    bench.clock.advance(1000)
    expect(expectOk(await check(id, comparison(23.5, 21))).checks.map(({ withdrawn }) => withdrawn)).toEqual([
      true,
      false,
    ])
  })

  it('takes the place of an older one near it, as thermometers drift', async () => {
    const id = await add()
    expectOk(await check(id, comparison(20, 22)))
    bench.clock.advance(1000)
    expectOk(await check(id, comparison(21, 20)))
    const read = await bench.read((rooms) => correctedReading(rooms, id, celsius(21)))
    expect(expectOk(read).true).toBeCloseTo(20, 10)
  })

  it('of a removed thermometer is refused', async () => {
    const id = await add()
    expectOk(await remove(id, 1))
    await refused('record.removed', () => check(id, comparison(20, 20)))
  })

  it('is withdrawn once', async () => {
    const id = await add()
    const { checks } = expectOk(await check(id, comparison(20.4, 20)))
    expectOk(await withdraw(checks[0]?.id as string))
    await refused('thermometer.check-withdrawn', () => withdraw(checks[0]?.id as string))
    await refused('record.not-found', () => withdraw(id))
  })
})

describe('a class set', () => {
  const three = async () => [await add({ name: 'A' }), await add({ name: 'B' }), await add({ name: 'C' })] as const
  const readings = (ids: readonly string[], reads: readonly number[]) =>
    ids.map((thermometer_id, i) => ({ thermometer_id, read_c: reads[i] as number }))

  it('takes the median as true when none is trusted, and every one gets its offset', async () => {
    const ids = await three()
    const result = expectOk(await compare({ trusted_id: null, readings: readings(ids, [20, 20.4, 19.5]) }))
    expect(result).toMatchObject({ by: 'median', true_c: 20, trusted_id: null })
    expect(result.spread_c).toBeCloseTo(0.9, 9)
    const offsets = result.offsets.map(({ offset_c }) => Math.round(offset_c * 1000) / 1000)
    expect(offsets).toEqual([0, 0.4, -0.5])
    for (const { checks } of await shelf())
      expect(checks).toMatchObject([{ method: 'class-set', true_c: 20, set_id: result.set_id }])
  })

  it('with a trusted one leaves that one without a check of itself', async () => {
    const [a, b, c] = await three()
    const result = expectOk(await compare({ trusted_id: b, readings: readings([a, b, c], [20, 20.4, 19.5]) }))
    expect(result).toMatchObject({ by: 'trusted', true_c: 20.4, trusted_id: b })
    const checked = (await shelf()).filter(({ checks }) => checks.length > 0)
    expect(checked.map(({ name }) => name).sort()).toEqual(['A', 'C'])
  })

  it('believes a trusted one as its own checks put it right', async () => {
    const [a, b] = await three()
    expectOk(await check(b, comparison(20.4, 20)))
    const result = expectOk(await compare({ trusted_id: b, readings: readings([a, b], [20.2, 20.4]) }))
    expect(result.true_c).toBeCloseTo(20, 9)
    expect(result.offsets[0]?.offset_c).toBeCloseTo(0.2, 9)
  })

  it('with one bad reading keeps nothing of the others', async () => {
    const [a, b] = await three()
    const short = await add({ name: 'Short', scale_low_c: 22, scale_high_c: 40 })
    const off = await refused('thermometer.outside-scale', () =>
      compare({ trusted_id: null, readings: readings([a, b, short], [20, 20.1, 20.2]) }),
    )
    expect(off.sentence).toContain('Short')
    await refused('thermometer.error-too-large', () => compare({ trusted_id: a, readings: readings([a, b], [20, 26]) }))
  })

  it('is refused with fewer than two, one twice, one unknown, or a trusted one that was not read', async () => {
    const [a, b, c] = await three()
    await refused('thermometer.class-set-too-small', () => compare({ trusted_id: null, readings: [] }))
    await refused('thermometer.class-set-too-small', () => compare({ trusted_id: null, readings: readings([a], [20]) }))
    await refused('thermometer.same-twice', () => compare({ trusted_id: null, readings: readings([a, a], [20, 20]) }))
    const unknown = bench.context.ids.next()
    await refused('record.not-found', () => compare({ trusted_id: null, readings: readings([a, unknown], [20, 20]) }))
    const problem = await refused('record.not-found', () =>
      compare({ trusted_id: c, readings: readings([a, b], [20, 20]) }),
    )
    expect(problem.field).toBe('trusted_id')
  })

  it('that contradicts what is known of one of them keeps nothing', async () => {
    const [a, b] = await three()
    expectOk(await check(a, comparison(20, 22)))
    await refused('thermometer.checks-contradict', () =>
      compare({ trusted_id: b, readings: readings([a, b], [23.5, 20]) }),
    )
  })
})
