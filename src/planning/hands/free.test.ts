import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, seconds } from '../../kernel/index.js'
import { isBath, plan, type Recipe, SHIPPED_RECIPES, type TankPlan } from '../../score/index.js'
import { HANDS_GAP, startsWithFreeHands } from './free.js'

const timed = ({ steps }: Recipe) => steps.some((step) => isBath(step) && step.time.law === 'by-developing-time')
function planned(recipe: Recipe, time: number): TankPlan {
  const development = timed(recipe) ? ({ from: 'own', time: seconds(time), temperature: null } as const) : null
  const [tank] = expectOk(plan([{ recipe, conditions: { tank: 'A', development } }])).tanks
  if (tank === undefined) throw new Error('A score has a tank.')
  return tank
}
const threeBaths = SHIPPED_RECIPES[0] as Recipe

/** Whether any two jobs of two tanks that begin so lie nearer than the gap; looked at job by job. */
function meet(tanks: readonly TankPlan[], offsets: readonly number[]): boolean {
  const busy = tanks.flatMap(({ jobs }, tank) =>
    jobs.map(({ start, end }) => ({ tank, from: start + (offsets[tank] ?? 0), to: end + (offsets[tank] ?? 0) })),
  )
  return busy.some((one) =>
    busy.some(
      (other) =>
        one.tank < other.tank && Math.min(one.to, other.to) - Math.max(one.from, other.from) > -HANDS_GAP + 1e-6,
    ),
  )
}

const aTank = fc
  .tuple(fc.constantFrom(...SHIPPED_RECIPES), fc.integer({ min: 240, max: 900 }))
  .map(([recipe, time]) => planned(recipe, time))

describe('tanks on one pair of hands', () => {
  it('begins the first at once and never needs hands at two of them', () => {
    fc.assert(
      fc.property(fc.array(aTank, { minLength: 1, maxLength: 3 }), (tanks) => {
        const starts = startsWithFreeHands(tanks)
        expect(starts).toHaveLength(tanks.length)
        expect(starts[0]).toBe(0)
        expect([...starts]).toEqual([...starts].sort((a, b) => a - b))
        expect(meet(tanks, starts)).toBe(false)
      }),
      { seed: 20261, numRuns: 60 },
    )
  })

  it('begins each as early as can be: one second sooner would need hands twice', () => {
    fc.assert(
      fc.property(aTank, aTank, (one, other) => {
        const [, second] = startsWithFreeHands([one, other])
        // Every earlier second, tried one by one.
        for (let sooner = 0; sooner < (second ?? 0); sooner++)
          if (!meet([one, other], [0, sooner])) expect.fail(`${sooner} s would do, not only ${second} s`)
      }),
      { seed: 20261, numRuns: 6 },
    )
  })

  it('puts one tank into the long rest of another', () => {
    const [standing, ordinary] = ['stand', 'three-bath-acid-stop'].map((id) =>
      planned(SHIPPED_RECIPES.find((recipe) => recipe.id === id) as Recipe, 480),
    ) as [TankPlan, TankPlan]
    const [, second] = startsWithFreeHands([standing, ordinary])
    // The stand developer is left alone for an hour after its first minute of turning.
    expect(second).toBeGreaterThan(60)
    expect(second).toBeLessThan(120)
  })

  it('has two of three baths one after the other: turns each half minute leave no room for a bath change', () => {
    const tank = planned(threeBaths, 480)
    const [, second] = startsWithFreeHands([tank, tank])
    expect(second).toBeGreaterThan(tank.length - 90)
    expect(second).toBeLessThanOrEqual(tank.length + HANDS_GAP)
  })

  it('waits for the whole of a tank that is turned without a rest', () => {
    const busy = {
      jobs: [{ ...(planned(threeBaths, 480).jobs[0] as TankPlan['jobs'][number]), start: 0, end: 1000.4 }],
    }
    expect(startsWithFreeHands([busy, busy], seconds(0))).toEqual([0, 1001])
    expect(startsWithFreeHands([busy, busy, busy])).toEqual([0, 1006, 2012])
  })
})
