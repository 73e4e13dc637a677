import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'

const POINTS = ['--point', '18C 11:30', '--point', '20C 9:30', '--point', '24C 6:45']
const READINGS = 's temperature\n0:00 20.0C\n8:00 24.0C\n'
/** Twenty-one steps that gain 0.80 over 1.30, in the order of the tablet. */
const DENSITIES = [
  1.64, 1.54, 1.44, 1.34, 1.25, 1.15, 1.05, 0.96, 0.86, 0.76, 0.67, 0.57, 0.48, 0.39, 0.32, 0.27, 0.24, 0.23, 0.22,
  0.22, 0.22,
]
const STRIP = DENSITIES.join('\n')
/** The same film for three times: density over base and fog grows with the contrast. */
const FAMILY = [
  ['4:00', 0.7],
  ['6:00', 0.9],
  ['10:00', 1.1],
]
  .map(([time, part]) => [time, ...DENSITIES.map((d) => (0.22 + (d - 0.22) * Number(part)).toFixed(3))].join(' '))
  .join('\n')

/** The same readings against 8:00 at 20 °C, as a program asks. */
const DOSE = JSON.stringify({
  time: { points: [{ temperature_c: 20, time_s: 480 }] },
  readings: [
    { at_s: 0, temperature_c: 20 },
    { at_s: 480, temperature_c: 24 },
  ],
})

describe('--json prints what its published schema says', () => {
  const cases: [schema: keyof typeof published, argv: string[], input?: string][] = [
    ['time-answer', ['time', '--at', '21.6C', ...POINTS, '--json']],
    ['time-answer', ['time', '--at', '70.9F', '--us', '--factor', '1,1', ...POINTS, '--json', '--explain']],
    ['time-answer', ['time', '--at', '37.8C', '--kind', 'fixed', '--point', '37.8C 3:15', '--json']],
    ['time-answer', ['time', '--at', '30C', '--law', 'arrhenius', ...POINTS, '--json']],
    ['dose-answer', ['dose', '--point', '20C 8:00', '--json'], READINGS],
    ['dose-answer', ['dose', '--json'], DOSE],
    ['strip-answer', ['strip', '--tablet', '21-step', '--lamp', '0.05', '--base', '0.22', '--json'], STRIP],
    ['strip-answer', ['strip', '--json'], 'tablet film\n0.05 1.21\n0.35 0.90\n0.64 0.55\n0.95 0.31\n1.25 0.20\n'],
    ['index-answer', ['index', '--iso', '400', '--meter', 'f/11 1/15', '--json'], 'f/8 1/15\nf/11 1/15\n'],
    ['index-answer', ['index', '--iso', '400', '--meter', 'f/11 1/15', '--json'], 'f/8 1/15 0.2\nf/16 1/15 0.01\n'],
    ['density-answer', ['density', '--enlarger', '10=13', '--read', '0.085', '--known', '0.085=0.1', '--json']],
    ['contrast-answer', ['contrast', '--wanted', '0.62', '--json'], '4:00 0.50\n8:00 0.75\n'],
    ['contrast-answer', ['contrast', '--wanted', '0.6', '--tablet', '21-step', '--lamp', '0', '--json'], FAMILY],
    ['zones-answer', ['zones', '--json']],
    ['zones-answer', ['zones', '-', '--json'], '0.02 0.11 0.21 0.34 0.48 0.62 0.76 0.97 1.18\n'],
    ['range-answer', ['range', '--subject', '160', '--gradient', '0.5', '--json']],
    ['control-answer', ['control', '--json'], 'mon 0.12 0.60 0.61\ntue 0.13 0.62 0.60\n'],
    [
      'control-answer',
      ['control', '--steps', 'film', '--json'],
      '0.12 0.14 0.23 0.61 1.20\n0.12 0.15 0.24 0.60 1.22\n',
    ],
    ['fit-answer', ['fit', 'line', '--json'], '0 1\n1 3\n2 5.1\n'],
    ['thermometer-answer', ['thermometer', '--read', '21C', '--json']],
    ['thermometer-answer', ['thermometer', '--read', '40C', '-c', '20.4=20.0', '-c', '30.1=30', '--json']],
    ['score-answer', ['score', 'colour-negative', '--json']],
    ['score-answer', ['score', 'three-bath-acid-stop', '--at', '19C', ...POINTS, '--json']],
    ['pasted-reading', ['table', '--json'], 'Tarn 100 18C 20C\n100 10:15 1o\n'],
  ]
  it.each(cases)('%s: %j', async (schema, argv, input) => {
    const { code, out, err } = await command(argv, input)
    expect([code, err]).toEqual([0, []])
    const parsed = published[schema].safeParse(JSON.parse(out.join('\n')))
    expect(parsed.error?.issues ?? []).toEqual([])
  })

  it('a problem is JSON too, with its code, sentence and values', async () => {
    const { code, out, err } = await command([
      'time',
      '--at',
      '21C',
      '--point',
      '20C 9:30',
      '--point',
      '24C 11:00',
      '--json',
    ])
    expect([code, err]).toEqual([65, []])
    expect(JSON.parse(out.join('\n'))).toMatchObject({
      problem: {
        code: 'times.slower-when-warmer',
        sentence: expect.stringContaining('11:00'),
        details: { first: '9:30' },
      },
    })
  })
})

describe('asked in JSON or by options it is one answer', () => {
  const ZONES = '0.02 0.11 0.21 0.34 0.48 0.62 0.76 0.97 1.18'
  const cases: [argv: string[], input: string, question: object][] = [
    [
      ['density', '--enlarger', '10=13', '--read', '0.085', '--read', '0.12', '--known', '0.085=0.10'],
      '',
      {
        enlarger: [{ blank_s: 10, matched_s: 13 }],
        read: [0.085, 0.12],
        known: [{ read: 0.085, true: 0.1 }],
      },
    ],
    [['zones'], '', {}],
    [['zones', '--model', 'flare', '--range', '0.8'], '', { model: 'flare', density_range: 0.8 }],
    [['zones', '--gradient', '0.5'], '', { gradient: 0.5 }],
    [
      ['zones', '-', '--from', '2', '--to', '7'],
      ZONES,
      { densities: ZONES.split(' ').map(Number), from_zone: 2, to_zone: 7 },
    ],
    [
      ['range', '--subject', '160', '--flare', '1.5', '--gradient', '0.6', '--from', '0.4', '--to', '1.4'],
      '',
      { subject: 160, flare: 1.5, gradient: 0.6, from_density: 0.4, to_density: 1.4 },
    ],
    [['range', '--gradient', '0.6', '--paper', '2.5'], '', { gradient: 0.6, paper_gradient: 2.5 }],
  ]
  it.each(cases)('%j', async (argv, input, question) => {
    const [name = ''] = argv
    for (const way of [['--json'], ['--explain']]) {
      const asked = await command([...argv, ...way], input)
      expect(asked.code).toBe(0)
      expect(await command([name, '-', ...way], JSON.stringify(question))).toEqual(asked)
    }
  })
})

describe('times, scores and thermometers asked in JSON', () => {
  const points = [
    { temperature_c: 18, time_s: 690 },
    { temperature_c: 20, time_s: 570 },
    { temperature_c: 24, time_s: 405 },
  ]
  const cases: [what: string, argv: string[], question: object][] = [
    ['a time', ['time', '--at', '21.6C', ...POINTS], { time: { points }, at_c: 21.6 }],
    [
      'a time with every factor',
      [
        ...['time', '--at', '22C', '--point', '20C 8:00', '--coefficient', '2.2', '--law', 'arrhenius'],
        ...['--of-index', '400', '--exposed-at', '800', '--agitation', 'rotary', '--use', '2', '--pre-wet', '1.05'],
        ...['--factor', '0.95', '--thermometer-error', '0.3C', '--source', 'page 2'],
      ],
      {
        time: {
          ...{ points: [{ temperature_c: 20, time_s: 480 }], coefficient: 2.2, law: 'arrhenius' },
          ...{ exposure_index: 400, source_words: 'page 2' },
        },
        ...{ at_c: 22, exposed_at: 800, agitation: 'rotary', use: 2, pre_wet: 1.05, factor: 0.95 },
        thermometer_error_c: 0.3,
      },
    ],
    [
      'a push by one’s own factor',
      ['time', '--at', '20C', '--point', '20C 8:00', '--push', '1.4'],
      { time: { points: [{ temperature_c: 20, time_s: 480 }] }, at_c: 20, push: 1.4 },
    ],
    ['an unchecked thermometer', ['thermometer', '--read', '21C'], { read_c: 21 }],
    [
      'a checked thermometer',
      ['thermometer', '--read', '25C', '-c', '20.4=20.0', '-c', '30.1=30'],
      {
        read_c: 25,
        checks: [
          { read_c: 20.4, true_c: 20 },
          { read_c: 30.1, true_c: 30 },
        ],
      },
    ],
    [
      'a score by one’s own time',
      ['score', 'three-bath-water-stop', '--developer-time', '8:00'],
      { recipe: 'three-bath-water-stop', developer_time_s: 480 },
    ],
    ['a score without a time', ['score', 'colour-negative'], { recipe: 'colour-negative' }],
    [
      'a score by times of a sheet',
      ['score', 'three-bath-acid-stop', '--at', '19C', ...POINTS],
      { recipe: 'three-bath-acid-stop', time: { points }, at_c: 19 },
    ],
  ]
  it.each(cases)('%s is the same answer, and its working names a source for every line', async (_, argv, question) => {
    const [name = ''] = argv
    const by = (way: string) => command([...argv, way])
    for (const way of ['--json', '--explain']) {
      const asked = await by(way)
      expect([asked.code, asked.err]).toEqual([0, []])
      expect(await command([name, '-', way], JSON.stringify(question))).toEqual(asked)
    }
    const { working } = JSON.parse((await by('--json')).out.join('\n'))
    expect(working.length).toBeGreaterThan(0)
    for (const { line, source } of working) expect(Math.min(line.length, source.length)).toBeGreaterThan(3)
  })

  it.each([
    ['a list that is not there', { recipe: 'four-baths' }, /no list of baths called four-baths/],
    ['two times', { recipe: 'colour-negative', developer_time_s: 60, time: { points }, at_c: 20 }, /but not both/],
    ['no temperature', { recipe: 'colour-negative', time: { points } }, /at what temperature/],
    ['no shape of ours', { list: 1 }, /the question: recipe/],
  ])('a score is refused for %s', async (_, question, says) => {
    const ran = await command(['score', '-'], JSON.stringify(question))
    expect([ran.code, ran.out]).toEqual([64, []])
    expect(ran.err.join(' ')).toMatch(says)
  })

  it('a dose names a source for every line of its working', async () => {
    const { out } = await command(['dose', '--point', '20C 8:00', '--json'], READINGS)
    const { working } = JSON.parse(out.join('\n'))
    expect(working).toHaveLength(5)
    for (const { line, source } of working) expect(Math.min(line.length, source.length)).toBeGreaterThan(3)
  })
})

describe('the answers agree with each other', () => {
  it('a time in either unit is the same', async () => {
    const seconds = async (...argv: string[]) =>
      JSON.parse((await command(['time', ...argv, ...POINTS, '--json'])).out.join('\n')).time_s
    expect(await seconds('--at', '71.6F')).toBeCloseTo(await seconds('--at', '22C'), 6)
    expect(await seconds('--at', '71.6', '--us')).toBeCloseTo(await seconds('--at', '22'), 6)
  })

  it('a question in JSON has the answer of the same in words', async () => {
    const said = await command(['dose', '--point', '20C 8:00', '--explain'], READINGS)
    expect(await command(['dose', '--explain'], DOSE)).toEqual(said)
    expect(said.code).toBe(0)
  })

  it('a bath that stays at the temperature of the sheet has a dose of its own time', async () => {
    const { out } = await command(['dose', '--point', '20C 8:00', '--json'], '0:00 20C\n4:00 20C\n8:00 20C\n')
    const answer = JSON.parse(out.join('\n'))
    expect(answer.equivalent_s).toBeCloseTo(480, 6)
    expect(answer.fraction).toBeCloseTo(1, 9)
  })
})
