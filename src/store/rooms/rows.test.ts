import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, compareNames, seconds } from '../../kernel/index.js'
import type { ThermometerCheck } from '../../lab/index.js'
import { NOON, thermometerOf, timeOf } from '../suite/house.js'
import { fromMilliCelsius, fromMilliseconds, toMilliCelsius, toMilliseconds } from './amounts.js'
import { checkRecord, checkRow, thermometerRecord, thermometerRow } from './kit-rows.js'
import { pointRows, timeRecord, timeRow } from './times-rows.js'

const RUNS = { seed: 20261, numRuns: 300 }
const thousandths = (low: number, high: number) => fc.integer({ min: low * 1000, max: high * 1000 })

describe('amounts', () => {
  it('come back from whole thousandths as they went in', () => {
    fc.assert(
      fc.property(thousandths(-90, 200), (n) => toMilliCelsius(fromMilliCelsius(n)) === n),
      RUNS,
    )
    fc.assert(
      fc.property(thousandths(0, 604_800), (n) => toMilliseconds(fromMilliseconds(n)) === n),
      RUNS,
    )
  })

  it('are kept to the nearest thousandth', () => {
    expect(toMilliCelsius(celsius(20.0004))).toBe(20_000)
    expect(toMilliCelsius(celsius(-0.3336))).toBe(-334)
    expect(toMilliseconds(seconds(570.0006))).toBe(570_001)
  })
})

describe('a developing time', () => {
  const back = (record: ReturnType<typeof timeOf>) => timeRecord(timeRow('bench', record), pointRows('bench', record))

  it('comes back from its rows as it was', () => {
    const range = fc.record({ from: thousandths(-90, 200), to: thousandths(-90, 200) })
    const changes = fc.record({
      points: fc.array(fc.record({ t: thousandths(-90, 200), s: thousandths(0, 604_800) }), { maxLength: 9 }),
      usable: fc.option(range),
      window: fc.option(range),
      exposureIndex: fc.option(fc.integer({ min: 1, max: 25_600 })),
      dilutionParts: fc.option(
        fc.array(fc.double({ min: 0.001, max: 1000, noNaN: true }), { minLength: 1, maxLength: 4 }),
      ),
      coefficient: fc.option(fc.double({ min: 1, max: 10, noNaN: true })),
      removed: fc.boolean(),
      note: fc.string(),
    })
    const inCelsius = (r: { from: number; to: number } | null) =>
      r && { from: fromMilliCelsius(r.from), to: fromMilliCelsius(r.to) }
    fc.assert(
      fc.property(changes, ({ points, usable, window, ...rest }) => {
        const record = timeOf('id', 3, {
          ...rest,
          usable: inCelsius(usable),
          window: inCelsius(window),
          points: points.map(({ t, s }) => ({ temperature: fromMilliCelsius(t), time: fromMilliseconds(s) })),
        })
        expect(back(record)).toEqual(record)
      }),
      RUNS,
    )
  })

  it('is held in whole numbers under the names of the columns', () => {
    const record = timeOf('id', 2, { removed: true })
    expect(timeRow('bench', record)).toMatchObject({
      bench_id: 'bench',
      time_id: 'id',
      revision: 2,
      saved_at: NOON + 2,
      removed: 1,
      dilution_parts: '[1,4.5]',
      usable_from_mc: 16_000,
      usable_to_mc: 26_500,
      window_from_mc: null,
      window_to_mc: null,
    })
    const place = { bench_id: 'bench', time_id: 'id', revision: 2 }
    expect(pointRows('bench', record)).toEqual([
      { ...place, position: 0, temperature_mc: 20_000, duration_ms: 570_000 },
      { ...place, position: 1, temperature_mc: 18_333, duration_ms: 690_500 },
    ])
  })
})

describe('a thermometer', () => {
  it('comes back from its row as it was', () => {
    for (const removed of [true, false]) {
      const record = thermometerOf('id', 4, { removed, kind: 'dial', note: 'bent' })
      expect(thermometerRecord(thermometerRow('bench', record))).toEqual(record)
    }
    expect(thermometerRow('bench', thermometerOf('id'))).toMatchObject({ scale_low_mc: -10_250, scale_high_mc: 50_000 })
  })

  it('has checks that come back as they were, withdrawn when a row says so', () => {
    const check: ThermometerCheck = {
      id: 'check',
      thermometerId: 'id',
      at: NOON,
      by: 'owner',
      method: 'class-set',
      read: celsius(20.4),
      true: celsius(20.125),
      setId: 'set',
      withdrawn: false,
    }
    const row = checkRow('bench', check)
    expect(row).toMatchObject({ read_mc: 20_400, true_mc: 20_125, done_by: 'owner' })
    expect(checkRecord({ ...row, withdrawal_id: null })).toEqual(check)
    expect(checkRecord({ ...row, withdrawal_id: 'w' })).toEqual({ ...check, withdrawn: true })
  })
})

describe('names', () => {
  it('are ordered as people look them up, and never as equal when they differ', () => {
    const names = ['Pan 1000', 'pan 100', 'Édition', 'apo', 'Pan 100']
    expect(names.sort(compareNames)).toEqual(['apo', 'Édition', 'Pan 100', 'pan 100', 'Pan 1000'])
    expect(compareNames('Pan 400', 'Pan 1000')).toBeLessThan(0)
    expect(compareNames('a', 'A')).toBeGreaterThan(0)
    expect(compareNames('a', 'a')).toBe(0)
  })
})
