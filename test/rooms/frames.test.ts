import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import { correctRoll, getRoll, planRun, takeInRolls } from '../../src/lab/index.js'
import { readFormat, readRollList, writeFormat } from '../../src/planning/index.js'
import { rollsOf } from '../../src/science/index.js'
import { schemas } from '../../src/wire/index.js'
import { benches, problemOf } from '../support/bench.js'
import { runPlan, tank } from '../support/runs.js'

const open = benches()

/** Cassettes as they come: full, one frame more or less, bulk ends, half-frame cameras, a leader of stranded frames. */
const COUNTS = [1, 5, 12, 24, 35, 36, 37, 38, 48, 72, 73, 76, 100]

describe('frames of a cassette', () => {
  it('are read back as they are written, whatever their number', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (frames) => {
        const cut = expectOk(readFormat(`135-${frames}`))
        expect(cut.frames ?? 36).toBe(frames)
        expect(expectOk(readFormat(writeFormat(cut)))).toEqual(cut)
      }),
      { seed: 20261, numRuns: 100 },
    )
  })

  it('count as their part of a roll: 37 are a little more than one, 72 half frames are as long as two', () => {
    const exact = (frames: number) => expectOk(rollsOf([{ format: '135', frames, count: 1 }])).exact
    expect(exact(36)).toBe(1)
    expect(exact(37)).toBeCloseTo(37 / 36, 12)
    expect(exact(72)).toBe(2)
    for (const [i, frames] of COUNTS.slice(1).entries())
      expect(exact(frames)).toBeGreaterThan(exact(COUNTS[i] as number))
  })

  it('go through the register and a plan without being changed', async () => {
    const bench = await open(504)
    const pasted = readRollList(COUNTS.map((frames) => `Tarn 100, 135-${frames}`).join('\n'), {
      today: '2026-03-01',
      processOf: () => undefined,
    }).flatMap(({ rolls }) => rolls)
    expect(pasted.map(({ frames }) => frames ?? 36)).toEqual(COUNTS)
    const statements = COUNTS.map((frames) => ({ film: 'Tarn 100', process: 'black-and-white', format: '135', frames }))
    const asked = schemas.TakeInRolls.parse({ rolls: statements.map((statement) => ({ statement })) })
    const { rolls } = expectOk(await bench.write((context, rooms) => takeInRolls(context, rooms, asked)))
    const ids = rolls.map(({ id }) => id)
    const on_reels = ids.map((roll_id) => ({ roll_id, exposure_index: null, label: '' }))
    const plan = runPlan({ tanks: [tank('A', '', { reels: ids.length, on_reels })] })
    const run = expectOk(await bench.write((context, rooms) => planRun(context, rooms, plan)))
    expect(run.plan.tanks[0]?.on_reels.map(({ reel }) => reel)).toEqual(COUNTS.map((_, i) => i + 1))
    const kept = await Promise.all(ids.map((id) => bench.read((rooms) => getRoll(rooms, id))))
    expect(kept.map((roll) => expectOk(roll).frames)).toEqual(COUNTS)
  })

  it('are corrected when the counter lied, and refused on film that has none', async () => {
    const bench = await open(505)
    const statement = { film: 'Tarn 100', process: 'black-and-white', format: '135', frames: 36 }
    const asked = schemas.TakeInRolls.parse({ rolls: [{ statement }] })
    const [roll] = expectOk(await bench.write((context, rooms) => takeInRolls(context, rooms, asked))).rolls
    const correct = (changes: object) =>
      bench.write((context, rooms) =>
        correctRoll(context, rooms, roll?.id ?? '', 1, schemas.RollStatement.parse({ ...statement, ...changes })),
      )
    expect(problemOf(await correct({ format: '120', frames: 12 })).code).toBe('roll.frames-of-135-only')
    expect(expectOk(await correct({ frames: 37, note: 'frame 0 and a stranded half' })).frames).toBe(37)
    expect(schemas.RollStatement.safeParse({ ...statement, frames: 101 }).success).toBe(false)
  })
})
