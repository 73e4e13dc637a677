import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'
import { type Refused, refuses } from '../support/refusals.js'

const [USAGE, DATA] = [64, 65]
const json = async (argv: string[], input = '') =>
  JSON.parse((await command([...argv, '--json'], input)).out.join('\n'))

const FIX = {
  clearing: { fresh_s: 35, now_s: 55, family: 'tabular' },
  bath: {
    volume_ml: 600,
    film: [
      { format: '135', count: 5 },
      { format: '120', count: 3, family: 'tabular' },
    ],
    bottle: { holds_ml: 590, fill_ml: 500, lost_ml: 20 },
  },
  first_bath: [
    { done: 12, capacity: 25 },
    { done: 40, capacity: 67 },
  ],
}

describe('a question as JSON is answered as its schema says', () => {
  const cases: [schema: keyof typeof published, name: string, question: object, answer: object][] = [
    ['rolls-answer', 'rolls', { film: [{ format: '135', frames: 24, count: 3 }] }, { exact: 2, tally: 2 }],
    [
      'fix-answer',
      'fix',
      FIX,
      {
        clearing: { fix_for_s: 165 },
        left: { decides: 'count', rolls: { tabular: 1 } },
        two_baths: { verdict: 'rotate' },
      },
    ],
    [
      'life-answer',
      'life',
      { keeps: 'fixer', days: { tank: 40 }, stretches: [{ state: 'tank', days: 20 }] },
      { used: 0.5, days_left: 20, verdict: 'keeps' },
    ],
    [
      'replenish-answer',
      'replenish',
      {
        bath: { volume_ml: 1000, rate_ml: 100, per_roll_g: 0.05, rolls: 0 },
        book: { start_ml: 500, entries: [{ added_ml: 70, carried_out_ml: 20 }] },
      },
      { bath: { before_topping_g_per_l: 0.5, after_rolls_g_per_l: 0 }, book: { volume_ml: 550 } },
    ],
    [
      'stop-answer',
      'stop',
      {
        bath: { volume_ml: 1000, percent: 1, published_rolls_per_litre: 12, rolls: 2 },
        between: { fixer: 'alkaline' },
      },
      { bath: { decides: 'published', left: 10 }, stop: 'water' },
    ],
  ]
  it.each(cases)('%s', async (schema, name, question, expected) => {
    const argv = name === 'rolls' ? [name] : [name, '-']
    const answer = await json(argv, JSON.stringify(question))
    expect(published[schema].safeParse(answer).error?.issues ?? []).toEqual([])
    expect(answer).toMatchObject(expected)
  })
})

describe('lists and options ask the same as JSON', () => {
  it('rolls from lines and from words', async () => {
    const expected = await json(['rolls', '135-24=2', '4×5=4'])
    expect(await json(['rolls'], 'film\n135-24=2\n4x5=4\n')).toEqual(expected)
    expect(expected.exact).toBeCloseTo(7 / 3, 12)
  })

  it('a fixer by options', async () => {
    const argv = ['fix', '--fresh', '0:35', '--now', '55', '--family', 'tabular', '--volume', '600mL']
    const film = ['--film', '135-36=5', '--film', 'tabular:120=3', '--bottle', '590mL', '--fill', '500mL']
    const pair = ['--first-bath', '12/25', '--first-bath', '40/67']
    const { working, ...answer } = await json([...argv, ...film, ...pair])
    expect(answer).toEqual({ ...(await json(['fix', '-'], JSON.stringify(FIX))), working: undefined })
    expect(working.length).toBeGreaterThan(8)
  })

  it('clearing tests with and without dates, headings, a fresh time of their own', async () => {
    const argv = ['fix', '-', '--volume', '1L', '--film', '120=8']
    const plain = await json([...argv, '--fresh', '0:30'], '4, 0:36\n8, 0:41\n')
    const dated = await json(argv, 'date; rolls; clearing\n2026-01-04; 0; 30\n2026-01-05; 4; 36\n2026-02-01; 8; 41\n')
    expect(dated.left.trend).toEqual(plain.left.trend)
    expect(plain.left.trend).toMatchObject({ tests: 3, low: expect.any(Number), high: expect.any(Number) })
  })

  it('ages, books and stops', async () => {
    const age = await json(['life', '--days', 'full=100', '--days', 'half-full=40'], 'full 50\nhalf-full, 10\n')
    expect(age).toMatchObject({ used: 0.75, days_left: 10 })
    const book = await json(
      ['replenish', '-', '--volume', '1L'],
      'added, discarded, carried out\n70mL, 50mL, 20mL\n,,40mL\n',
    )
    expect(book).toMatchObject({ bath: null, book: { volume_ml: 960 } })
    expect(await json(['stop', '--developer', 'staining'])).toMatchObject({ bath: null, stop: 'water' })
  })

  it('US ounces and millilitres agree', async () => {
    const left = async (...argv: string[]) => (await json(['fix', '--film', '120=2', ...argv])).left.by.count
    expect(await left('--volume', '32', '--us')).toBeCloseTo(await left('--volume', '946.352946mL'), 4)
  })
})

describe('one answer does not speak against another', () => {
  it('a clearing test that finds the bath finished leaves no rolls and rotates the pair', async () => {
    const answer = await json(['fix', '--fresh', '30', '--now', '60', '--volume', '1L', '--first-bath', '3/25'])
    expect(answer).toMatchObject({
      clearing: { verdict: 'finished' },
      left: { decides: 'tests', rolls: { ordinary: 0 } },
      two_baths: { verdict: 'rotate', because: ['clearing'] },
    })
    expect(answer.sentences.join(' ')).not.toContain('Fix for')
  })

  it('tests that show no growth yet say so, and leave the rest to decide', async () => {
    const { sentences } = await json(['fix', '-', '--fresh', '30', '--volume', '1L', '--film', '120=4'], '4, 0:29\n')
    expect(sentences.join(' ')).toMatch(/^16 rolls more, .*does not grow/)
  })
})

describe('what is typed wrongly ends with its exit code and a sentence', () => {
  const volume = ['--volume', '1L']
  const cases: Refused[] = [
    ['film of nobody', ['rolls', '126-12'], DATA, /“126-12”.*4x5/],
    ['film without sense', ['rolls', '120=three'], USAGE, /“120=three”.*4x5=12/],
    ['a family nobody knows', ['fix', ...volume, '--film', 'slow:120'], USAGE, /“slow:120”.*tabular/],
    ['nothing asked of a fixer', ['fix'], USAGE, /--first-bath/],
    ['a clearing test without its fresh time', ['fix', '--now', '0:55'], USAGE, /--fresh/],
    ['film without a bath', ['fix', '--film', '120'], USAGE, /--volume/],
    ['a bottle without a tank', ['fix', ...volume, '--bottle', '500mL'], USAGE, /--fill/],
    ['tests without a fresh time', ['fix', '-', ...volume], USAGE, /0, 0:35/, '4, 0:36\n'],
    ['a test of one word', ['fix', '-', ...volume], USAGE, /“4”/, '4\n'],
    ['a part of nothing', ['fix', '--first-bath', '12'], USAGE, /“12”.*12\/25/],
    ['a silver limit above the guide', ['fix', ...volume, '--silver-limit', '6'], DATA, /6 g\/L.*4 g\/L/],
    ['a clearing time of a blink', ['fix', '--fresh', '1', '--now', '2'], DATA, /1 is outside 3/],
    ['a thimble of fixer', ['fix', '--volume', '20mL'], DATA, /20 is outside 50/],
    ['a state nobody knows', ['life', '--keeps', 'fixer'], USAGE, /“cupboard 3”.*half-full/, 'cupboard 3\n'],
    ['a state without a life', ['life', '--keeps', 'working-developer'], DATA, /“tank”/, 'tank 3\n'],
    ['an age of nothing', ['life', '--keeps', 'fixer'], DATA, /stretches of 0/, ''],
    ['a bath of no size', ['replenish', '--rate', '70mL'], USAGE, /--volume/],
    ['a bath without a question', ['replenish', ...volume], USAGE, /--rate/],
    ['giving and using', ['replenish', ...volume, '--rate', '70mL'], USAGE, /one of the two/],
    ['running out', ['replenish', ...volume, '--rate', '70mL', '--uses', '1g', '--start', '5'], DATA, /runs out/],
    ['a book with a hole', ['replenish', '-', ...volume], DATA, /entry 1 .* -500 mL/, '0mL, 1.5L, 0mL\n'],
    ['half an entry', ['replenish', '-', ...volume], USAGE, /“70mL”/, '70mL\n'],
    ['a stop of unknown strength', ['stop', ...volume], USAGE, /--percent/],
    ['a stop from a list', ['stop', '-'], USAGE, /stop-question/, '1 2 3\n'],
    ['JSON of another shape', ['life', '-'], USAGE, /stretches/, '{"days": {}}'],
  ]
  refuses(cases)
})
