import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'

const [USAGE, DATA] = [64, 65]
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

describe('options and JSON ask the same', () => {
  const pairs: [argv: string[], question: object, input?: string][] = [
    [
      [
        'temper',
        '--for',
        'taps',
        '--volume',
        '800mL',
        '--want',
        '68F',
        '--hot',
        '50C',
        '--cold',
        '10C',
        '-t',
        'glass 200g 30C',
      ],
      {
        ask: 'taps',
        volume_ml: 800,
        wanted_c: 20,
        hot_c: 50,
        cold_c: 10,
        vessel: { mass_g: 200, temperature_c: 30, material: 'glass' },
      },
    ],
    [
      ['temper', '--for', 'pour', '--volume', '0.5L', '--want', '20C', '--thing', '80g 26C', '-t', 'film 20g 26C'],
      {
        ask: 'pour',
        volume_ml: 500,
        wanted_c: 20,
        things: [
          { mass_g: 80, temperature_c: 26 },
          { mass_g: 20, temperature_c: 26, material: 'film' },
        ],
      },
    ],
    [
      ['temper', '--for', 'ice', '--volume', '1L', '--from', '24C', '--want', '20C'],
      { ask: 'ice', volume_ml: 1000, from_c: 24, wanted_c: 20 },
    ],
    [['temper', '--for', 'cold', '--at', '50F'], { ask: 'cold', temperature_c: 10 }],
    [
      ['temper', '-', '--for', 'standing', '--around', '18C', '--want', '20C', '--reading-error', '0.1'],
      {
        ask: 'standing',
        around_c: 18,
        wanted_c: 20,
        reading_error_c: 0.1,
        readings: [
          { at_s: 0, temperature_c: 24 },
          { at_s: 900, temperature_c: 23 },
        ],
      },
      '0:00 24C\n15:00 23C\n',
    ],
    [
      [
        'temper',
        '--for',
        'standing',
        '--around',
        '18C',
        '--material',
        'glass',
        '--in',
        'water',
        '--volume',
        '1L',
        '--from',
        '24C',
        '--after',
        '5:00',
      ],
      {
        ask: 'standing',
        around_c: 18,
        from_c: 24,
        after_s: 300,
        vessel: { volume_ml: 1000, material: 'glass', stands_in: 'water' },
      },
    ],
    [
      ['temper', '--for', 'baths', '-b', 'Developer 20C', '-b', 'Fix=21.5C'],
      {
        ask: 'baths',
        baths: [
          { name: 'Developer', temperature_c: 20, develops: true },
          { name: 'Fix', temperature_c: 21.5 },
        ],
      },
    ],
    [['dilute', '-r', '1:4', '--total', '300mL'], { ask: 'ratio', ratio: '1:4', total_ml: 300 }],
    [
      ['dilute', '-r', '1+1+100', '-s', 'enough', '-s', '5mL'],
      { ask: 'ratio', ratio: [1, 1, 100], stocks_ml: [null, 5] },
    ],
    [
      ['dilute', '--for', 'chain', '-r', '1+1', '-r', '1+4'],
      {
        ask: 'chain',
        ratios: [
          [1, 1],
          [1, 4],
        ],
      },
    ],
    [['dilute', '--for', 'into', '--amount', '50mL', '--total', '1L'], { ask: 'into', amount_ml: 50, volume_ml: 1000 }],
    [
      ['dilute', '--for', 'stock', '-r', '1+3', '-r', '1+31', '--total', '1L'],
      { ask: 'stock', stock: [1, 3], working: [1, 31], total_ml: 1000 },
    ],
    [
      ['dilute', '--for', 'blend', '--from', '28', '--weak', '5', '--want', '10', '--total', '1L'],
      { ask: 'blend', strong: 28, weak: 5, wanted: 10, total_ml: 1000 },
    ],
    [
      ['dilute', '--for', 'percent', '--want', '10', '--density', '1,03', '--total', '250mL'],
      { ask: 'percent', percent: 10, density: 1.03, total_ml: 250 },
    ],
    [
      ['dilute', '--for', 'acetic', '--from', '99.5', '--want', '28', '--total', '1L'],
      { ask: 'acetic', from: 99.5, wanted: 28, total_ml: 1000 },
    ],
    [
      [
        'dilute',
        '--for',
        'floor',
        '-r',
        '1+25',
        '-r',
        '1+15',
        '--total',
        '250mL',
        '--floor',
        '6mL',
        '--rolls',
        '2',
        '--tank',
        'two reel 600mL 2',
      ],
      {
        ask: 'floor',
        ratio: [1, 25],
        others: [[1, 15]],
        volume_ml: 250,
        floor_ml: 6,
        rolls: 2,
        tanks: [{ name: 'two reel', holds_ml: 600, rolls: 2 }],
      },
    ],
    [
      ['dilute', '--for', 'measure', '--amount', '12mL', '-g', '100mL 2mL', '-g', 'syringe 10mL 0.5mL'],
      {
        ask: 'measure',
        volume_ml: 12,
        graduates: [
          { kind: 'graduate', holds_ml: 100, marks_ml: 2 },
          { kind: 'syringe', holds_ml: 10, marks_ml: 0.5 },
        ],
      },
    ],
    [
      ['dilute', '--for', 'drops', '--amount', '5mL', '--drops-each', '25'],
      { ask: 'drops', volume_ml: 5, drops_each: 25 },
    ],
  ]
  it.each(pairs)('%j', async (argv, question, input) => {
    const typed = await command([...argv, '--explain'], input)
    expect([typed.code, typed.err]).toEqual([0, []])
    const name = argv[0] as string
    expect(typed).toEqual(await command([name, '-', '--explain'], JSON.stringify(question)))
  })
})

describe('what is typed wrongly ends with its exit code and a sentence', () => {
  const taps = ['temper', '--for', 'taps', '--volume', '1L', '--hot', '50C', '--cold', '12C']
  const standing = ['temper', '--for', 'standing', '--around', '18C']
  const cases: [what: string, argv: string[], code: number, words: RegExp, input?: string][] = [
    ['nothing', ['temper'], USAGE, /--for taps/],
    ['a question nobody answers', ['temper', '--for', 'magic'], USAGE, /taps/],
    ['no wanted temperature', taps, USAGE, /--want/],
    ['a temperature out of reach', [...taps, '--want', '10C'], DATA, /10 °C.*12 °C to 50 °C.*ice/],
    ['two vessels', [...taps, '--want', '20C', '-t', '80g 20C', '-t', '80g 20C'], USAGE, /one --thing/],
    ['a thing without warmth', [...taps, '--want', '20C', '-t', 'steel'], USAGE, /“steel”.*steel 240g 18C/],
    ['ice that warms', ['temper', '--for', 'ice', '--volume', '1L', '--from', '20C', '--want', '24C'], DATA, /24 °C/],
    ['a bath without temperature', ['temper', '--for', 'baths', '-b', 'Fix'], USAGE, /“Fix”/],
    ['standing without anything', standing, USAGE, /two readings/],
    ['a constant and no start', [...standing, '--constant', '2:00:00'], USAGE, /--from/],
    ['a constant of a second', [...standing, '--constant', '0:01', '--from', '20C'], DATA, /30/],
    ['readings that go away', [...standing, '-'], DATA, /18 °C/, '0:00 20C\n9:00 21C\n'],
    [
      'a temperature never reached',
      [...standing, '--constant', '2:00:00', '--from', '24C', '--want', '17C'],
      DATA,
      /17 °C/,
    ],
    ['JSON of another shape', ['temper', '-'], USAGE, /ask/, '{"ask":"magic"}'],
    ['no ratio', ['dilute'], USAGE, /--ratio 1\+9/],
    ['a ratio of letters', ['dilute', '-r', 'x', '--total', '1L'], DATA, /“x”/],
    ['no total and no stock', ['dilute', '-r', '1+4'], USAGE, /--total/],
    ['a colon and a stock', ['dilute', '-r', '1:4', '-s', '50mL'], USAGE, /two ways/],
    [
      'more stocks than parts',
      ['dilute', '-r', '1+4', '-s', '5mL', '-s', '5mL', '-s', '5mL'],
      DATA,
      /3 stocks.*2 parts/,
    ],
    ['an ambiguous ratio in a chain', ['dilute', '--for', 'chain', '-r', '1:4'], DATA, /1 \+ 4.*1 \+ 3/],
    [
      'a blend out of reach',
      ['dilute', '--for', 'blend', '--from', '5', '--want', '6', '--total', '1L'],
      DATA,
      /6 %.*between/,
    ],
    ['a blend without strengths', ['dilute', '--for', 'blend', '--total', '1L'], USAGE, /--from 28 --want 2/],
    ['one ratio for a stock', ['dilute', '--for', 'stock', '-r', '1+3', '--total', '1L'], USAGE, /--ratio 1\+31/],
    [
      'a bath stronger than its stock',
      ['dilute', '--for', 'stock', '-r', '1+9', '-r', '1+3', '--total', '1L'],
      DATA,
      /stock/,
    ],
    [
      'a tank without rolls',
      ['dilute', '--for', 'floor', '-r', '1+9', '--total', '1L', '--floor', '5mL', '--rolls', '1', '--tank', 'x'],
      USAGE,
      /two-reel 600mL 2/,
    ],
    [
      'a floor without rolls',
      ['dilute', '--for', 'floor', '-r', '1+9', '--total', '1L', '--floor', '5mL'],
      USAGE,
      /--rolls/,
    ],
    ['a graduate without marks', ['dilute', '--for', 'measure', '--amount', '5mL', '-g', '100mL'], USAGE, /100mL 2mL/],
    ['lines for dilute', ['dilute', '-'], USAGE, /JSON/, '1+4\n'],
  ]
  it.each(cases)('%s', async (_, argv, code, words, input) => {
    const ran = await command(argv, input)
    expect([ran.code, ran.out]).toEqual([code, []])
    const said = ran.err.join(' ')
    expect(said).toMatch(words)
    expect(said).not.toMatch(/missing\)|undefined|NaN|\[object/)
  })
})

describe('said as a person would', () => {
  const lines = async (...argv: string[]) => (await command(argv)).out
  it('a warm vessel spares hot water, a cold one takes it', async () => {
    const taps = ['temper', '--for', 'taps', '--volume', '800mL', '--want', '20C', '--hot', '50C', '--cold', '10C']
    expect((await lines(...taps, '-t', '40g 30C'))[1]).toMatch(/warm and spares 10 mL/)
    expect((await lines(...taps, '-t', '40g 10C'))[1]).toMatch(/10 mL of the hot water only warms/)
    expect(await lines(...taps, '-t', '2g 18C')).toHaveLength(1)
  })
  it('waters too far apart for the rule are said', async () => {
    const [, said] = await lines(
      'temper',
      '--for',
      'taps',
      '--volume',
      '1L',
      '--want',
      '30C',
      '--hot',
      '60C',
      '--cold',
      '5C',
    )
    expect(said).toMatch(/0\.3 °C colder/)
  })
  it('baths that lie close are said to, and a chain is', async () => {
    expect(await lines('temper', '--for', 'baths', '-b', 'Developer 20C', '-b', 'Fix 20.5C')).toEqual([
      'The baths lie close enough together.',
    ])
    const chain = ['-b', 'Soak 21.5C', '-b', 'Developer 20C', '-b', 'Fix 18.6C'].map(String)
    expect((await lines('temper', '--for', 'baths', ...chain)).at(-1)).toMatch(/From Soak to Fix it is 2\.9 °C/)
  })
  it('what is enough, what keeps its temperature, and what nothing measures', async () => {
    expect(
      await lines('dilute', '--for', 'floor', '-r', '1+9', '--total', '500mL', '--floor', '6mL', '--rolls', '2'),
    ).toEqual(['It holds 50 mL of concentrate, and the rolls need 12 mL: enough.'])
    expect(
      await lines('temper', '--for', 'standing', '--around', '20C', '--from', '20.4C', '--constant', '1:00:00'),
    ).toContain('It moves by less than half a degree however long it stands.')
    expect((await lines('dilute', '--for', 'measure', '--amount', '0.3mL', '-g', '100mL 2mL'))[0]).toMatch(
      /finer syringe/,
    )
  })
  it('in Fahrenheit and fluid ounces for who reads them', async () => {
    const [said] = await lines(
      'temper',
      '--for',
      'pour',
      '--us',
      '--volume',
      '17',
      '--want',
      '68',
      '-t',
      'steel 12oz 60F',
    )
    expect(said).toMatch(/68\.\d °F/)
  })
})
