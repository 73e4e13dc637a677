import { beforeEach, describe, expect, it } from 'vitest'
import { celsius, expectOk } from '../../src/kernel/index.js'
import {
  addThermometer,
  answerTime,
  checkThermometer,
  correctTime,
  keepTimes,
  listTimes,
  removeThermometer,
  removeTime,
  undoTime,
} from '../../src/lab/index.js'
import { writerFor } from '../../src/words/index.js'
import { type Bench, benches, comparison, problemOf, thermometer, time } from '../support/bench.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(301)
})

const keep = async (changes = {}) =>
  expectOk(await bench.write((context, rooms) => keepTimes(context, rooms, [time(changes)]))).times[0] as {
    id: string
    revision: number
  }
const correct = (id: string, seen: number, changes: object) =>
  bench.write((context, rooms) => correctTime(context, rooms, id, seen, time(changes)))
const remove = (id: string, seen: number) => bench.write((context, rooms) => removeTime(context, rooms, id, seen))
const undo = (id: string, seen: number) => bench.write((context, rooms) => undoTime(context, rooms, id, seen))
const films = async () => (await bench.read(listTimes)).times.map(({ film }) => film)
const feed = () => bench.read((rooms) => rooms.feed.after(0, 100))

describe('keeping', () => {
  it('gives what is kept together one instant, however long it takes', async () => {
    let now = bench.clock.now()
    const ticking = { now: () => ++now }
    const kept = expectOk(
      await bench.write((context, rooms) =>
        keepTimes({ ...context, clock: ticking }, rooms, [time(), time({ film: 'B' })]),
      ),
    )
    expect(new Set(kept.times.map(({ saved_at }) => saved_at)).size).toBe(1)
  })

  it('gives back what was stated, and tells the feed of each', async () => {
    const stated = time({ film: 'Tarn 100', note: 'cold tap' })
    const kept = expectOk(await bench.write((context, rooms) => keepTimes(context, rooms, [stated, time()])))
    expect(kept.times[0]).toEqual({
      ...stated,
      id: kept.times[0]?.id,
      revision: 1,
      saved_at: '2026-03-01T12:00:00.000Z',
      removed: false,
    })
    expect((await bench.read(listTimes)).times).toHaveLength(2)
    expect((await feed()).map(({ kind, subject }) => [kind, subject])).toEqual(
      kept.times.map(({ id }) => ['times', id]),
    )
  })

  it('keeps all of a list or none, and names the one that is wrong', async () => {
    const before = await bench.everything()
    const wrong = time({
      points: [
        { temperature_c: 20, time_s: 570 },
        { temperature_c: 24, time_s: 700 },
      ],
    })
    const result = await bench.write((context, rooms) => keepTimes(context, rooms, [time(), wrong, time()]))
    const problem = problemOf(result)
    expect([problem.code, problem.field]).toEqual(['times.slower-when-warmer', 'times[1].points[1]'])
    expect(await bench.everything()).toEqual(before)
  })

  it('takes a single bath that is slower when warmer, and a colour developer with one time only', async () => {
    const cold = [
      { temperature_c: 24, time_s: 360 },
      { temperature_c: 27, time_s: 420 },
    ]
    await keep({ kind: 'single-bath', points: cold })
    const colour = { kind: 'fixed', points: [{ temperature_c: 37.8, time_s: 195 }] }
    await keep(colour)
    expect(await films()).toHaveLength(2)
    const twice = time({ kind: 'fixed', points: cold })
    expect(problemOf(await bench.write((context, rooms) => keepTimes(context, rooms, [twice]))).code).toBe(
      'times.fixed-needs-one-point',
    )
  })

  it('keeps figures to the last bit', async () => {
    const points = [{ temperature_c: 20.123, time_s: 570.001 }]
    const { id } = await keep({ points, coefficient: 2.414213562373095 })
    expect(await bench.read((rooms) => rooms.times.newest(id))).toMatchObject({
      coefficient: 2.414213562373095,
      points: [{ temperature: 20.123, time: 570.001 }],
    })
  })
})

describe('changing', () => {
  it('is a new revision; the old one stays as it was', async () => {
    const { id } = await keep()
    bench.clock.advance(60_000)
    expect(expectOk(await correct(id, 1, { note: 'second look' }))).toMatchObject({ revision: 2, note: 'second look' })
    const [first, second] = await bench.read(async (rooms) => [
      await rooms.times.revision(id, 1),
      await rooms.times.revision(id, 2),
    ])
    expect(first?.note).toBe('')
    expect((second?.savedAt ?? 0) - (first?.savedAt ?? 0)).toBe(60_000)
  })

  it('against an older revision is refused, says both, and changes nothing', async () => {
    const { id } = await keep()
    expectOk(await correct(id, 1, { note: 'mine' }))
    const before = await bench.everything()
    for (const result of [await correct(id, 1, { note: 'yours' }), await remove(id, 1), await undo(id, 1)]) {
      const { code, details } = problemOf(result)
      expect([code, details.current, details.seen]).toEqual(['record.changed-meanwhile', 2, 1])
    }
    expect(problemOf(await correct(id, 3, {})).code).toBe('record.changed-meanwhile')
    expect(await bench.everything()).toEqual(before)
  })

  it('takes a removed time from the list; it cannot be corrected, asked or removed again until it is back', async () => {
    const { id } = await keep()
    expectOk(await remove(id, 1))
    expect(await films()).toEqual([])
    const asked = await bench.read((rooms) =>
      answerTime(rooms, id, { at: celsius(20), modifiers: [] }, writerFor('metric')),
    )
    for (const result of [await correct(id, 2, {}), await remove(id, 2)])
      expect(problemOf(result).code).toBe('record.removed')
    expect(problemOf(asked).code).toBe('record.removed')
    expect(expectOk(await undo(id, 2))).toMatchObject({ revision: 3, removed: false })
    expect(await films()).toEqual(['Corvane 400'])
  })

  it('undone twice is as if it had not been undone', async () => {
    const { id } = await keep({ film: 'Before' })
    expectOk(await correct(id, 1, { film: 'After' }))
    expect(expectOk(await undo(id, 2)).film).toBe('Before')
    expect(expectOk(await undo(id, 3)).film).toBe('After')
    expect(expectOk(await undo(id, 4))).toMatchObject({ film: 'Before', revision: 5 })
  })

  it('undone right after the record was made takes it away, and undone again brings it back', async () => {
    const { id } = await keep()
    expect(expectOk(await undo(id, 1)).removed).toBe(true)
    expect(await films()).toEqual([])
    expect(expectOk(await undo(id, 2)).removed).toBe(false)
    expect(await films()).toEqual(['Corvane 400'])
  })

  it('at another bench does not reach this one', async () => {
    const { id } = await keep()
    const elsewhere = { ...bench.context, bench: bench.context.ids.next() }
    const result = await bench.store.write(elsewhere, null, (rooms) => removeTime(elsewhere, rooms, id, 1))
    expect(problemOf(result).code).toBe('record.not-found')
    expect(await films()).toEqual(['Corvane 400'])
  })
})

describe('asking', () => {
  const metric = writerFor('metric')
  const add = async (name: string) =>
    expectOk(await bench.write((context, rooms) => addThermometer(context, rooms, thermometer({ name })))).id
  const ask = (id: string, at: number, thermometerId?: string) =>
    bench.read((rooms) =>
      answerTime(
        rooms,
        id,
        { at: celsius(at), modifiers: [], ...(thermometerId === undefined ? {} : { thermometerId }) },
        metric,
      ),
    )

  it('at a point of the sheet gives the time of the sheet', async () => {
    const { id } = await keep()
    expect(expectOk(await ask(id, 24))).toMatchObject({ time_s: 405, position: 'sheet-point' })
  })

  it('with a thermometer corrects the reading: one that reads 0.5 high means a cooler bath and a longer time', async () => {
    const { id } = await keep()
    const spirit = await add('Spirit')
    expectOk(await bench.write((context, rooms) => checkThermometer(context, rooms, spirit, comparison(20.5, 20))))
    const [plain, corrected] = [expectOk(await ask(id, 20.5)), expectOk(await ask(id, 20.5, spirit))]
    expect(corrected.temperature_c).toBeCloseTo(20, 9)
    expect(corrected.time_s).toBe(570)
    expect(corrected.time_s).toBeGreaterThan(plain.time_s)
  })

  it('with a thermometer that was removed or never was is refused', async () => {
    const { id } = await keep()
    const gone = await add('Gone')
    expectOk(await bench.write((context, rooms) => removeThermometer(context, rooms, gone, 1)))
    expect(problemOf(await ask(id, 20, gone)).code).toBe('record.removed')
    expect(problemOf(await ask(id, 20, id)).code).toBe('record.not-found')
  })
})
