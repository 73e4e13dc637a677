import { describe, expect, it } from 'vitest'
import { celsius, seconds } from '../../kernel/index.js'
import { score } from '../events/bench.test-support.js'
import type { Happening, MishapKind, RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { follow } from '../follow/follow.js'
import { threeBathAcid } from '../recipe/lists/black-and-white.js'
import { mishapCard, stageOf } from './card.js'

const ZERO = 1_800_000_000_000
type Told = readonly [second: number, bath: number | null, happening: Happening]

const events = (told: readonly Told[]): RunEvent[] =>
  told.map(([second, bath, happening], i) => ({
    ...happening,
    id: `e${i}`,
    device: 'phone',
    life: 'one',
    monotonicMs: second * 1000,
    wallMs: ZERO + second * 1000,
    serverOffsetMs: ZERO,
    tank: 'A',
    bath,
    actor: 'someone',
  }))
function followed(now: number, ...told: Told[]) {
  const [tank] = follow(score, fold(score, events(told)), ZERO + now * 1000).tanks
  if (tank === undefined) throw new Error('No tank is followed.')
  return tank
}
const pourOut = (tank: ReturnType<typeof followed>) => ((tank.pourOut?.at ?? Number.NaN) - ZERO) / 1000
const poured: Told = [15, 0, { kind: 'poured-in' }]
const mishap = (second: number, kind: MishapKind, more: object = {}): Told => [
  second,
  0,
  { kind: 'mishap', mishap: kind, ...more },
]

describe('what a mishap makes of the score', () => {
  it('fixer first: the developer waits for its own pour, and its time starts there', () => {
    const before = followed(60, poured, mishap(30, 'fixer-first'))
    expect(before.awaited).toMatchObject({ kind: 'poured-in', index: 0 })
    const again = followed(400, poured, mishap(30, 'fixer-first'), [300, 0, { kind: 'poured-in' }])
    expect(pourOut(again)).toBeCloseTo(300 + 470, 1)
    const reading: Told = [20, 0, { kind: 'reading', temperature: celsius(20.9), confirmed: true }]
    expect(
      pourOut(followed(400, poured, reading, mishap(30, 'fixer-first'), [300, 0, { kind: 'poured-in' }])),
    ).toBeCloseTo(770, 1)
  })

  it('developer short: turned from then on without a stop, the time as it was', () => {
    const tank = followed(120, poured, mishap(100, 'developer-short'))
    const turns = tank.plan.jobs.filter(({ kind, index }) => kind === 'turn' && index === 0)
    expect(turns.map(({ start, end }) => [start, end])).toEqual([
      [75, 80],
      [100, 485],
    ])
    expect(pourOut(tank)).toBeCloseTo(485, 1)
  })

  it('wrong dilution: the time of the dilution that is in the tank, where one is given', () => {
    expect(pourOut(followed(60, poured, mishap(50, 'wrong-dilution', { referenceTime: seconds(360) })))).toBeCloseTo(
      365,
      1,
    )
    expect(pourOut(followed(60, poured, mishap(50, 'wrong-dilution')))).toBeCloseTo(485, 1)
  })

  it('stop skipped: the fixer follows and holds the film half a minute longer', () => {
    const tank = followed(520, poured, [485, 0, { kind: 'poured-out' }], mishap(515, 'stop-skipped'))
    expect(tank.plan.baths.map(({ id }) => id)).toEqual(['developer', 'fix', 'wash'])
    const fix = tank.plan.baths[1]
    expect((fix?.clockEnd ?? 0) - (fix?.clockStart ?? 0)).toBeCloseTo(330, 6)
  })

  it('is undone with its event', () => {
    const undone = followed(60, poured, mishap(30, 'fixer-first'), [40, null, { kind: 'retracted', of: 'e1' }])
    expect(undone.plan).toEqual(followed(60, poured).plan)
  })

  it.each(['lid-came-off', 'tank-leaks', 'power-or-phone-dead'] as const)('%s moves nothing and is kept', (kind) => {
    const tank = followed(60, poured, mishap(30, kind))
    expect(tank.plan).toEqual(followed(60, poured).plan)
    expect(tank.deviations).toEqual([{ code: 'mishap', mishap: kind, at: ZERO + 30_000 }])
  })
})

describe('the card', () => {
  it('knows how far the film has come', () => {
    const at = (id: string) =>
      stageOf(
        threeBathAcid,
        threeBathAcid.steps.findIndex((step) => step.id === id),
      )
    expect([stageOf(threeBathAcid, null), at('developer'), at('stop'), at('fix'), at('look'), at('wash-1')]).toEqual([
      'before-developer',
      'developing',
      'between',
      'fixing',
      'fixing',
      'fixed',
    ])
  })

  it('does not frighten over a lid that comes off in the fixer', () => {
    expect(mishapCard('lid-came-off', 'fixing').means).toBe('mishap.lid-came-off.safe.means')
    expect(mishapCard('lid-came-off', 'developing').todo).toHaveLength(3)
  })
})
