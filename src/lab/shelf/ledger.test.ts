import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EntryTold } from '../../wire/index.js'
import { minus, NOTHING, plus, shareOf } from './amounts.js'
import { EMPTY, foldLedger, type Shape } from './ledger.js'
import type { LedgerEntry, Leg, Portion } from './port.js'

const DAY = 86_400_000
const portion = (held: number, more: Partial<Portion> = {}): Portion => ({ ...NOTHING, basis: held, held, ...more })
const leg = (containerId: string, amounts: Portion, lotId: string | null = 'lot'): Leg => ({
  containerId,
  lotId,
  ...amounts,
})
let ids = 0
const entry = (at: number, told: EntryTold, legs: Leg[], retracts: string | null = null): LedgerEntry => ({
  id: `e${String(++ids).padStart(6, '0')}`,
  at,
  notedAt: at,
  by: 'owner',
  told,
  note: '',
  legs,
  retracts,
})
const mixed = (at: number, legs: Leg[]) => entry(at, { kind: 'mixed', parts: [1, 4] }, legs)
const used = (at: number, legs: Leg[], rolls = 1) =>
  entry(at, { kind: 'used', film: [], rolls, poured_ml: 500, lost_ml: 20, run_id: null, roll_ids: [] }, legs)
const bottle: Shape = { stands: 'stoppered', room: 1_000_000 }
const shapes = new Map<string, Shape>([
  ['a', bottle],
  ['b', bottle],
  ['soft', { stands: 'collapsible', room: 1_000_000 }],
])
const fold = (entries: LedgerEntry[]) => foldLedger(entries, shapes)

describe('a share of what a container holds', () => {
  it('takes along its part of everything, rounded down, and all of it when all is taken', () => {
    const whole = { held: 1000, basis: 1100, worked: 7, met: 5 }
    expect(shareOf(whole, 500)).toEqual({ held: 500, basis: 550, worked: 3, met: 2 })
    expect(shareOf(whole, 1000)).toEqual(whole)
  })

  it('loses and makes nothing, however often it is parted, up to the largest amounts', () => {
    const amount = fc.integer({ min: 1, max: 1_000_000_000 })
    const whole = fc.record({ held: amount, basis: amount, worked: amount, met: amount })
    fc.assert(
      fc.property(whole, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 }), (all, cuts) => {
        let [rest, taken]: [Portion, Portion] = [all, NOTHING]
        for (const cut of cuts) {
          const amountTaken = Math.floor(rest.held * cut)
          if (amountTaken < 1) continue
          const share = shareOf(rest, amountTaken)
          for (const name of ['held', 'basis', 'worked', 'met'] as const) {
            expect(Number.isInteger(share[name])).toBe(true)
            expect(share[name]).toBeGreaterThanOrEqual(0)
          }
          rest = plus(rest, minus(share))
          taken = plus(taken, share)
        }
        expect(plus(rest, taken)).toEqual(all)
      }),
      { seed: 20_261, numRuns: 300 },
    )
  })
})

describe('the ledger', () => {
  it('knows what stands in a bottle, since when, and what befell it', () => {
    const entries = [
      mixed(0, [leg('a', portion(1_000_000))]),
      used(2 * DAY, [leg('a', { ...NOTHING, held: -20_000, worked: 1_000_000, met: 1_000_000 })]),
      entry(3 * DAY, { kind: 'topped-up' }, [leg('a', { ...NOTHING, held: 15_000, basis: 15_000 })]),
      entry(4 * DAY, { kind: 'stationed', station: 'first' }, [leg('a', NOTHING)]),
    ]
    expect(fold(entries).get('a')).toMatchObject({
      held: 995_000,
      basis: 1_015_000,
      worked: 1_000_000,
      lotId: 'lot',
      since: 0,
      station: 'first',
      added: 15_000,
      carriedOut: 20_000,
      uses: [{ at: 2 * DAY, rolls: 1, lostMl: 20 }],
    })
  })

  it('takes its history along into an empty bottle, and leaves an empty one clean', () => {
    const moved = entry(5 * DAY, { kind: 'moved' }, [
      leg('a', minus(portion(980_000, { basis: 1_000_000, worked: 3, met: 3 }))),
      leg('b', portion(980_000, { basis: 1_000_000, worked: 3, met: 3 })),
    ])
    const after = fold([
      mixed(0, [leg('a', portion(1_000_000))]),
      used(DAY, [leg('a', { ...NOTHING, held: -20_000, worked: 3, met: 3 })]),
      moved,
    ])
    expect(after.get('a')).toEqual({ ...EMPTY })
    expect(after.get('b')).toMatchObject({ held: 980_000, worked: 3, lotId: 'lot', since: 0, uses: [{ at: DAY }] })
  })

  it('counts how it stood: full, then with air over it, then full again in a smaller bottle', () => {
    const half = portion(500_000)
    const stretches = fold([
      mixed(0, [leg('a', portion(1_000_000))]),
      entry(10 * DAY, { kind: 'moved' }, [leg('a', minus(half)), leg('soft', half)]),
    ])
    expect(stretches.get('a')?.stretches).toEqual([
      { state: 'full', from: 0, to: 10 * DAY },
      { state: 'half-full', from: 10 * DAY, to: null },
    ])
    expect(stretches.get('soft')?.stretches).toEqual([
      { state: 'full', from: 0, to: 10 * DAY },
      { state: 'full', from: 10 * DAY, to: null },
    ])
  })

  it('of two portions in one bottle the one that stood worse speaks for both', () => {
    const half = portion(500_000)
    const after = fold([
      mixed(0, [leg('a', half), leg('soft', half)]),
      entry(10 * DAY, { kind: 'moved' }, [leg('a', minus(half)), leg('soft', half)]),
    ])
    expect(after.get('soft')?.stretches.filter(({ state }) => state === 'half-full')).toEqual([
      { state: 'half-full', from: 0, to: 10 * DAY },
    ])
  })

  it('holds the same whatever the order of arrival, and as if never happened what was taken back', () => {
    const change = { ...NOTHING, held: -20_000, worked: 1_000_000, met: 1_000_000 }
    const wrong = used(3 * DAY, [leg('a', change)])
    const all = [
      mixed(0, [leg('a', portion(1_000_000))]),
      used(DAY, [leg('a', change)]),
      wrong,
      used(4 * DAY, [leg('a', change)], 2),
    ]
    const back = entry(5 * DAY, { kind: 'taken-back' }, [leg('a', minus(change))], wrong.id)
    const without = fold(all.filter((one) => one !== wrong))
    fc.assert(
      fc.property(fc.shuffledSubarray([...all, back], { minLength: 5 }), (shuffled) => {
        expect(fold(shuffled)).toEqual(without)
      }),
      { seed: 20_262, numRuns: 60 },
    )
  })
})
