import { describe, expect, it } from 'vitest'
import { expectOk, grams, millilitres } from '../../../../kernel/index.js'
import { schemas } from '../../../../wire/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { mixPlan, sharedOut } from './plan.js'

const product = (said: object): ProductRecord =>
  ({
    ...schemas.ProductStatement.parse({ use: 'reusable', ...said }),
    id: 'p',
    revision: 1,
    saved_at: '',
    removed: false,
  }) as ProductRecord

const asked = (of: ProductRecord, ml: number, more: object = {}) =>
  mixPlan({
    product: of,
    parts: null,
    volume: millilitres(ml),
    scaleStep: grams(0.1),
    rolls: null,
    instead: {},
    ...more,
  })

const fixer = product({ name: 'Fixer', role: 'fixer', dilutions: [[1, 4]] })
const hypo = {
  additions: [{ salt: 'hypo', g_per_l: 240 }],
  water_first: 0.6,
  from_c: 32,
  to_c: 40,
}

describe('what goes into a mix', () => {
  it('begins with the water of a ratio and adds the concentrate', () => {
    const plan = expectOk(asked(fixer, 1000, { parts: [1, 4] }))
    expect(plan.water?.ml).toBeCloseTo(800)
    expect(plan.lines.map(({ amount }) => amount)).toEqual([200])
    expect(plan.topUpTo).toBeNull()
  })

  it('names the parts of a developer in parts A and B, in their order', () => {
    const ab = product({ name: 'AB', role: 'developer', package_parts: ['A', 'B'] })
    const plan = expectOk(asked(ab, 1020, { parts: [1, 1, 100] }))
    expect(plan.lines.map(({ name, amount }) => [name, amount])).toEqual([
      ['AB, part A', 10],
      ['AB, part B', 10],
    ])
  })

  it('weighs a formula, or the hydrate at hand in its place', () => {
    const plain = product({ name: 'Plain hypo', role: 'fixer', formula: hypo })
    const called = expectOk(asked(plain, 500))
    expect(called.lines.map(({ amount }) => amount)).toEqual([120])
    expect(called.topUpTo).toBe(500)
    const dry = expectOk(asked(plain, 500, { instead: { hypo: 'hypo-anhydrous' } }))
    // 158.11 of 248.19 g/mol, the crystals holding five waters: 120 g × 0.63706.
    expect(dry.lines[0]?.amount).toBeCloseTo(76.447, 2)
    expect(dry.lines[0]?.swap?.wanted).toBe('hypo')
  })

  it('says when the least for a roll is not met: 1 + 25 in 250 mL carries one roll at 6 mL each', () => {
    const developer = product({ name: 'D', role: 'developer', use: 'single-use', floor_ml_per_roll: 6 })
    const short = expectOk(asked(developer, 250, { parts: [1, 25], rolls: 2 }))
    expect(short.floor).toEqual({ carries: 1, wanted: 2 })
    expect(expectOk(asked(developer, 250, { parts: [1, 25], rolls: 1 })).floor).toBeNull()
  })

  it('takes a powder whole into three quarters of the water', () => {
    const plan = expectOk(asked(product({ name: 'Powder', role: 'developer', form: 'powder' }), 1000))
    expect(plan.water?.ml).toBeCloseTo(750)
    expect(plan.lines[0]?.cautions).toContain('no-dust')
  })
})

describe('bottles for a mix', () => {
  const bottle = (id: string, holds_ml: number) =>
    ({ id, statement: { kind: 'bottle', name: id, shape: 'stoppered', holds_ml, note: '' } }) as OnShelf

  it('are filled one after the other', () => {
    expect(sharedOut(1500, [bottle('a', 1000), bottle('b', 1000)])).toEqual([
      { container_id: 'a', ml: 1000 },
      { container_id: 'b', ml: 500 },
    ])
  })

  it('are too few when they do not hold it all', () => {
    expect(sharedOut(2500, [bottle('a', 1000), bottle('b', 1000)])).toBeNull()
    expect(sharedOut(10, [])).toBeNull()
  })
})
