import { describe, expect, it } from 'vitest'
import { celsius, expectOk, grams, millilitres } from '../../kernel/index.js'
import { SHIPPED_FORMULAS } from '../../science/index.js'
import type { MixAsked, MixedProduct, MixSource, MixStep } from './definition.js'
import { mixSheet } from './sheet.js'

const FIXER: MixedProduct = {
  name: 'Ammonium fixer',
  role: 'fixer',
  form: 'liquid',
  formula: null,
  hazards: ['fumes'],
  packageParts: [],
  floor: null,
}
const source = (id: string, held: number, more: Partial<MixSource> = {}): MixSource => ({
  ...{ id, name: id, unit: 'ml', held, useBy: null, opened: null, part: '', salt: null },
  ...more,
})
const salt = (id: string, held = 1000) => source(id, held, { unit: 'g', salt: id })
const asked = (product: Partial<MixedProduct>, more: Partial<MixAsked> = {}): MixAsked => ({
  product: { ...FIXER, ...product },
  volume: millilitres(1000),
  parts: [1, 4],
  sources: [source('bottle', 500)],
  today: '2026-03-01',
  ...more,
})
const sheet = (product: Partial<MixedProduct>, more: Partial<MixAsked> = {}) => expectOk(mixSheet(asked(product, more)))
const adds = (steps: readonly MixStep[]) => steps.flatMap((step) => (step.do === 'add' ? [step] : []))
const formula = (id: string) => SHIPPED_FORMULAS.find((one) => one.id === id) ?? null

describe('a mix by volume', () => {
  it('1 + 4 in a litre: water first, 200 mL of concentrate with its cautions, topped up, labelled', () => {
    const { steps, takes, doubts } = sheet({ hazards: ['acid', 'fumes'] })
    expect(steps.map((step) => step.do)).toEqual(['water', 'add', 'top-up', 'label'])
    expect(steps[0]).toMatchObject({ amount: 750, kind: 'tap' })
    expect(adds(steps)).toMatchObject([{ amount: 200, cautions: ['acid-into-water', 'fumes'] }])
    expect([takes, doubts]).toEqual([[{ id: 'bottle', amount: 200 }], []])
  })

  it('parts A and B come from packages of their own', () => {
    const sources = [source('a', 100, { part: 'A' }), source('b', 100, { part: 'B' })]
    const { takes, steps } = sheet({ packageParts: ['A', 'B'] }, { parts: [1, 2, 17], sources })
    expect(takes).toEqual([
      { id: 'a', amount: 50 },
      { id: 'b', amount: 100 },
    ])
    expect(adds(steps).map(({ name }) => name)).toEqual(['Ammonium fixer, part A', 'Ammonium fixer, part B'])
  })

  it('stock alone has no water; a cleaner says what it never meets', () => {
    const { steps } = sheet({ role: 'cleaner' }, { parts: null, sources: [source('x', 2000)] })
    expect(steps.map((step) => step.do)).toEqual(['add', 'label'])
    expect(adds(steps)[0]?.cautions).toContain('never-with-acid-or-fixer')
  })

  it('opened packages go first, then what ends first; too little and past dates are said before', () => {
    const sources = [
      source('later', 100, { useBy: '2027-01-01' }),
      source('sooner', 100, { useBy: '2026-02-01' }),
      source('opened', 50, { opened: '2026-01-01' }),
    ]
    const { takes, doubts } = sheet({}, { sources })
    expect(takes).toEqual([
      { id: 'opened', amount: 50 },
      { id: 'sooner', amount: 100 },
      { id: 'later', amount: 50 },
    ])
    expect(doubts).toEqual([{ of: 'past-date', stops: false, name: 'sooner', useBy: '2026-02-01' }])
    expect(sheet({}, { sources: [source('x', 199.9)] }).doubts).toEqual([
      { of: 'not-enough', stops: true, name: 'Ammonium fixer', wanted: 200, held: 199.9, unit: 'ml' },
    ])
    expect(sheet({}, { sources: [source('x', 0)] }).doubts).toMatchObject([{ of: 'none-on-hand', stops: true }])
  })

  it('1 + 25 in 250 mL under a floor of 6 mL a roll carries one roll, and two want 312 mL', () => {
    const floored = { floor: millilitres(6) }
    const at = (rolls: number) => sheet(floored, { parts: [1, 25], volume: millilitres(250), rolls }).doubts
    expect(at(1)).toEqual([])
    expect(at(2)).toMatchObject([{ of: 'under-floor', carries: 1, needed: 12, volumeNeeded: 312 }])
  })

  it('wetting agent goes into distilled water, and so little of it is said', () => {
    const { steps, doubts } = sheet({ role: 'wetting-agent' }, { parts: [1, 1000] })
    expect(steps[0]).toMatchObject({ kind: 'distilled' })
    expect(doubts.map(({ of }) => of)).toEqual(['too-little-to-measure'])
  })
})

describe('a mix by weight', () => {
  const HYPO = { role: 'fixer', form: 'powder', formula: formula('plain-hypo') } as const

  it('the hydrate on hand stands for the one that is called for, by molar mass', () => {
    const { steps, takes } = sheet(HYPO, {
      sources: [salt('hypo-anhydrous'), salt('sulfite-anhydrous'), salt('metabisulfite-sodium')],
    })
    const [first] = adds(steps)
    expect(first?.swap).toMatchObject({ wanted: 'hypo', have: 'hypo-anhydrous' })
    expect(first?.amount).toBeCloseTo(152.9, 1)
    expect(takes[0]?.id).toBe('hypo-anhydrous')
  })

  it('each dissolves before the next; a developer then stands', () => {
    const { steps } = sheet(
      { role: 'developer', form: 'powder', formula: formula('metol-hydroquinone-borax') },
      { sources: ['metol', 'hydroquinone', 'sulfite-anhydrous', 'borax'].map((id) => salt(id)) },
    )
    const does = steps.map((step) => step.do)
    expect(does.filter((one) => one === 'dissolve')).toHaveLength(does.filter((one) => one === 'add').length - 1)
    expect(does.slice(-3)).toEqual(['top-up', 'stand', 'label'])
    expect(adds(steps).find(({ name }) => name === 'metol')?.cautions).toContain('sensitiser')
  })

  it('what is under the scale comes from a percent solution, or stops it', () => {
    const stock = { role: 'developer', form: 'powder', formula: formula('metol-hydroquinone-borax') } as const
    const sources = ['metol', 'hydroquinone', 'sulfite-anhydrous', 'borax'].map((id) => salt(id))
    const fine = sheet(stock, { sources, volume: millilitres(500), scaleStep: grams(0.1) })
    expect(adds(fine.steps)[0]?.weighing).toMatchObject({ by: 'solution' })
    const coarse = sheet(stock, { sources, volume: millilitres(500), scaleStep: grams(5) })
    expect(coarse.doubts).toContainEqual(expect.objectContaining({ of: 'not-weighable', stops: true }))
  })

  it('blends the water from both taps, and says when they do not give it', () => {
    const hot = { hot: celsius(55), cold: celsius(12) }
    expect(sheet(HYPO, { taps: hot }).steps[0]).toMatchObject({ taps: { hot: expect.any(Number) } })
    const cold = sheet(HYPO, { taps: { hot: celsius(20), cold: celsius(12) } })
    expect(cold.doubts.map(({ of }) => of)).toContain('tap-water')
  })
})

it('a powder in packets goes in whole, part after part', () => {
  const powder = { form: 'powder', role: 'developer', packageParts: ['A', 'B'] } as const
  const packets = [source('a', 30, { unit: 'g', part: 'A' }), source('b', 90, { unit: 'g', part: 'B' })]
  const { steps, takes, doubts } = sheet(powder, { parts: null, sources: packets })
  expect(takes).toEqual([
    { id: 'a', amount: 30 },
    { id: 'b', amount: 90 },
  ])
  expect(adds(steps).map(({ cautions }) => cautions)).toEqual([
    ['fumes', 'no-dust'],
    ['fumes', 'no-dust'],
  ])
  expect(doubts).toEqual([])
  expect(sheet(powder, { parts: null, sources: packets.slice(1) }).doubts).toMatchObject([{ of: 'none-on-hand' }])
})
