import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'

type Case = [
  name: 'temper' | 'dilute',
  question: { readonly ask: string; readonly [more: string]: unknown },
  answer: object,
]

const CASES: readonly Case[] = [
  ['temper', { ask: 'taps', volume_ml: 800, wanted_c: 20, hot_c: 50, cold_c: 10 }, { hot_ml: 200, cold_ml: 600 }],
  [
    'temper',
    { ask: 'taps', volume_ml: 800, wanted_c: 20, hot_c: 50, cold_c: 10, vessel: { mass_g: 40, temperature_c: 30 } },
    { hot_ml: 190, for_vessel_ml: -10 },
  ],
  [
    'temper',
    {
      ask: 'together',
      things: [
        { mass_g: 100, temperature_c: 50 },
        { mass_g: 300, temperature_c: 10 },
      ],
    },
    { temperature_c: 20 },
  ],
  [
    'temper',
    { ask: 'pour', volume_ml: 500, wanted_c: 20, things: [{ mass_g: 250, temperature_c: 10, material: 'glass' }] },
    { pour_c: 21, taken_c: [1] },
  ],
  ['temper', { ask: 'ice', volume_ml: 1000, from_c: 20, wanted_c: 20 }, { ice_g: 0, place: 'outside-the-bath' }],
  [
    'temper',
    { ask: 'standing', around_c: 18, from_c: 24, constant_s: 3600, wanted_c: 18.5 },
    { then_c: null, start_for_mean_c: null, constant: { value_s: 3600, origin: 'sheet' } },
  ],
  [
    'temper',
    { ask: 'standing', around_c: 18, vessel: { volume_ml: 500, material: 'steel' }, after_s: 480, wanted_c: 20 },
    { from_c: null, read_again_after_s: null, constant: { origin: 'assumption' } },
  ],
  [
    'temper',
    {
      ask: 'standing',
      around_c: 18,
      after_s: 600,
      readings: [
        { at_s: 0, temperature_c: 24 },
        { at_s: 900, temperature_c: 21 },
      ],
    },
    { from_c: 21, constant: { origin: 'measured' }, reached_after_s: null },
  ],
  ['temper', { ask: 'cold', temperature_c: 10 }, { fixing: { factor: 2 }, washing: { factor: 2 } }],
  [
    'temper',
    {
      ask: 'baths',
      baths: [
        { name: 'Bleach', temperature_c: 20, window: { from_c: 24, to_c: 41 } },
        { name: 'Dev', temperature_c: 20, develops: true },
        { name: 'Wash', temperature_c: 23 },
      ],
    },
    { refused: true, outside: [0], pairs: [{ bath: 2, other: 1, by_c: 3, verdict: 'refused' }] },
  ],
  ['dilute', { ask: 'ratio', ratio: '1:9', total_ml: 500 }, { readings: [{ parts: [1, 9] }, { parts: [1, 8] }] }],
  ['dilute', { ask: 'ratio', ratio: [2, 3, 7], stocks_ml: [25, 30] }, { limited_by: 1, left_ml: [5, 0] }],
  [
    'dilute',
    {
      ask: 'chain',
      ratios: [
        [1, 2],
        [1, 2],
      ],
      total_ml: 900,
    },
    { parts: [1, 8], mixed: { volumes_ml: [100, 800] } },
  ],
  [
    'dilute',
    { ask: 'into', amount_ml: 20, volume_ml: 200 },
    { made_up_to: { parts: [1, 9] }, poured_into: { parts: [1, 10] } },
  ],
  [
    'dilute',
    { ask: 'stock', stock: [1, 3], working: [1, 7], total_ml: 800 },
    { factor: 4, from_stock: { parts: [1, 1] } },
  ],
  ['dilute', { ask: 'blend', strong: 60, wanted: 15, total_ml: 400 }, { strong_ml: 100, weak_ml: 300 }],
  ['dilute', { ask: 'percent', percent: 5, total_ml: 400 }, { by: 'weight-in-volume', dissolved_g: 20, water_g: null }],
  [
    'dilute',
    { ask: 'percent', percent: 20, total_ml: 200, density: 1.1 },
    { by: 'weight', dissolved_g: 44, water_g: 176 },
  ],
  ['dilute', { ask: 'acetic', from: 28, wanted: 28, total_ml: 100 }, { acid_ml: 100, water_g: 0 }],
  [
    'dilute',
    {
      ask: 'floor',
      ratio: [1, 49],
      volume_ml: 500,
      floor_ml: 8,
      rolls: 2,
      tanks: [{ name: 'large', holds_ml: 900, rolls: 2 }],
      others: [[1, 24]],
    },
    { enough: false, rolls: 1, tank: 'large', other: [1, 24], fills: 2 },
  ],
  [
    'dilute',
    { ask: 'measure', volume_ml: 10, graduates: [{ kind: 'graduate', holds_ml: 100, marks_ml: 2 }] },
    { by: [{ fills: 1, error: 0.1, too_coarse: true }] },
  ],
  ['dilute', { ask: 'drops', volume_ml: 2.5, drops_each: 30 }, { drops: 75, volume_ml: 2.5 }],
]

/** Numbers of an expectation to a billionth. */
const near = (value: unknown): unknown => {
  if (typeof value === 'number') return expect.closeTo(value, 9)
  if (Array.isArray(value)) return value.map((one) => (typeof one === 'object' ? matching(one) : near(one)))
  return value !== null && typeof value === 'object' ? matching(value) : value
}
const matching = (value: object): unknown =>
  Array.isArray(value)
    ? near(value)
    : expect.objectContaining(Object.fromEntries(Object.entries(value).map(([key, one]) => [key, near(one)])))

describe('a question as JSON is answered as its schema says', () => {
  it.each(CASES.map(([name, question, answer]) => ({ name, ask: question.ask, question, answer })))(
    '$name about $ask',
    async ({ name, question, answer }) => {
      const { code, out, err } = await command([name, '-', '--json'], JSON.stringify(question))
      expect([code, err]).toEqual([0, []])
      const parsed = published[`${name}-answer`].safeParse(JSON.parse(out.join('\n')))
      expect(parsed.error?.issues ?? []).toEqual([])
      expect(parsed.data).toEqual(matching({ ask: question.ask, ...answer }))
      expect(parsed.data?.sentences.length).toBeGreaterThan(0)
      for (const { line, source } of parsed.data?.working ?? []) {
        expect(`${line} ${source}`).not.toMatch(/undefined|NaN|\[object/)
        expect(source).not.toBe('')
      }
    },
  )

  it('every kind of question is asked here', () => {
    const asked = (name: string) => new Set(CASES.filter(([one]) => one === name).map(([, { ask }]) => ask))
    for (const name of ['temper', 'dilute'] as const)
      expect(asked(name)).toEqual(new Set(published[`${name}-question`].options.map((one) => one.shape.ask.value)))
  })
})
