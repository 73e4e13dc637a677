import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'

const USAGE = 64
const DATA = 65
const STEPS = '3 x fill 300mL 1:00\nstand 300mL 5:00\nrun 300mL 30:00 1L\n'

async function answered(schema: 'wash-answer' | 'silver-answer' | 'fumes-answer', argv: string[], input = '') {
  const { code, out, err } = await command([...argv, '--json'], input)
  expect([code, err]).toEqual([0, []])
  const read = published[schema].safeParse(JSON.parse(out.join('\n')))
  expect(read.error?.issues ?? []).toEqual([])
  return JSON.parse(out.join('\n'))
}

describe('wash by command', () => {
  it('JSON asks what a list and options ask', async () => {
    const options = ['--fixer', '60', '--rinse', 'walls', '--fresh', '0:30', '--now', '0:42', '--at', '15C']
    const question = {
      ...{ fixer_g_per_l: 60, rinse: 'walls', temperature_c: 15, after: { clearing: { fresh_s: 30, now_s: 42 } } },
      steps: [
        ...[1, 2, 3].map(() => ({ kind: 'change', volume_ml: 300, time_s: 60 })),
        { kind: 'change', volume_ml: 300, time_s: 300, moved: false },
        { kind: 'running', volume_ml: 300, time_s: 1800, ml_per_min: 1000 },
      ],
    }
    const byOptions = await answered('wash-answer', ['wash', '-', ...options], STEPS)
    expect(await answered('wash-answer', ['wash'], JSON.stringify(question))).toEqual(byOptions)
    expect(byOptions.factors).toHaveLength(1)
  })

  it('what options leave out is what the shape of the question fills in', async () => {
    const bare = { steps: [{ kind: 'change', volume_ml: 300, time_s: 60 }] }
    const byOptions = await answered('wash-answer', ['wash', '-'], 'fill 300mL 1:00')
    expect(await answered('wash-answer', ['wash'], JSON.stringify(bare))).toEqual(byOptions)
    const all = [
      ...[
        '--rolls-washed',
        '2',
        '--hardened',
        '--wash-aid',
        '--half-life',
        '0:40',
        '--volume',
        '1L',
        '--film',
        '120=3',
      ],
      ...['--rinse', 'film-and-walls'],
    ]
    const said = {
      ...{ rolls: 2, hardened: true, wash_aid: true, half_life_s: 40, rinse: 'film-and-walls' },
      after: {
        bath: {
          ...{ kind: 'ammonium-thiosulfate', volume_ml: 1000, rolls_per_litre: 20 },
          film: [{ format: '120', count: 3 }],
        },
      },
    }
    expect(await answered('wash-answer', ['wash'], JSON.stringify({ ...bare, ...said }))).toEqual(
      await answered('wash-answer', ['wash', '-', ...all], 'fill 300mL 1:00'),
    )
  })

  it.each([
    [['--at', '60C'], /water in °C of 60 is outside 1 to 40/],
    [['--fixer', '900'], /900 is outside 1 to 400/],
    [['--rolls-washed', '0'], /Rolls of 0 is outside/],
    [['--half-life', '2:00:00'], /half-life in seconds of 7200 is outside/],
  ])('what is typed out of its range is refused by the science itself: %j', async (options, says) => {
    const ran = await command(['wash', '-', ...options], 'fill 300mL 3:00')
    expect([ran.code, ran.out]).toEqual([DATA, []])
    expect(ran.err.join(' ')).toMatch(says)
  })

  it('the same wash after a loaded fixer gets no verdict, and the sentence says why', async () => {
    const asked = (rolls: number) => ['wash', '--volume', '600mL', '--film', `120=${rolls}`]
    const steps = '7 x fill 300mL 3:00'
    const [fresh, loaded] = [
      await answered('wash-answer', asked(3), steps),
      await answered('wash-answer', asked(13), steps),
    ]
    expect(fresh.verdict).toBe('enough')
    expect([loaded.verdict, loaded.because]).toEqual(['cannot-be-judged', 'count-used'])
    expect(loaded.residue_g_per_m2).toBe(fresh.residue_g_per_m2)
    expect(loaded.sentences[0]).toMatch(/loaded fixer cannot be washed safe/)
  })

  it('a residual test of one’s own lowers the floor; silver in the film withholds the verdict', async () => {
    const step = { kind: 'change', volume_ml: 300, time_s: 150 }
    const made = {
      passed: true,
      scheme: 'changes',
      time_s: 600,
      changes: 4,
      temperature_c: 20,
      water_ml_per_roll: 1200,
    }
    const ask = (tests: object[]) =>
      answered(
        'wash-answer',
        ['wash'],
        JSON.stringify({
          ...{ steps: [step, step, step, step], after: { clearing: { fresh_s: 30, now_s: 35 } }, fixer_g_per_l: 60 },
          tests,
        }),
      )
    expect((await ask([])).verdict).toBe('longer')
    expect(await ask([{ test: 'residual-hypo', ...made }])).toMatchObject({
      verdict: 'enough',
      floor: { by_own_test: true },
    })
    expect((await ask([{ test: 'residual-silver', ...made, passed: false }])).because).toBe('silver-left-in-film')
  })

  it.each([
    [USAGE, 'soak 300mL 3:00', /not a step of a wash/],
    [USAGE, 'fill 300mL 3:00 1L', /not a step of a wash/],
    [USAGE, '{"steps": 3}', /the question: steps/],
    [DATA, '', /one step at least/],
    [DATA, '31 x fill 300mL 3:00\n30 x fill 300mL 3:00', /number of steps of 61/],
    [DATA, 'fill 20mL 3:00', /20 is outside 50/],
  ])('exit %d for “%s”', async (code, steps, says) => {
    const ran = await command(['wash'], steps)
    expect([ran.code, ran.out]).toEqual([code, []])
    expect(ran.err.join(' ')).toMatch(says)
  })
})

describe('silver by command', () => {
  it('JSON asks what a list and options ask', async () => {
    const question = {
      own_limit_mg_per_l: 1.2,
      pours: [
        { by: 'rolls', volume_ml: 1000, rolls: 12, silver: { g_per_m2: 5, share: 0.6 } },
        { by: 'reading', volume_ml: 500, g_per_l: 2.5, off_by_g_per_l: 0.5 },
        { by: 'none', volume_ml: 2000 },
      ],
    }
    const list = '1L rolls 12\n500mL read 2.5 0.5\n2L water\n'
    const byList = await answered('silver-answer', ['silver', '--limit', '1.2', '--silver', '5=0.6'], list)
    expect(await answered('silver-answer', ['silver'], JSON.stringify(question))).toEqual(byList)
    expect(byList.origin).toBe('measured')
  })

  it('water changes no gram, no verdict, and it is never said that anything may be poured away', async () => {
    const [jug, thinned] = [
      await answered('silver-answer', ['silver'], '1L rolls 12'),
      await answered('silver-answer', ['silver'], '1L rolls 12\n900L water'),
    ]
    expect([thinned.grams, thinned.rule]).toEqual([jug.grams, jug.rule])
    expect(thinned.sentences.at(-1)).toMatch(/local codes .* septic tank and a garden never/)
  })

  it.each([
    [USAGE, '1L foo 3', /not a pour/],
    [USAGE, '1L rolls many', /should be a number/],
    [DATA, '', /A number of pours of 0/],
    [DATA, '1L read 90', /90 is outside 0 to 50/],
  ])('exit %d for “%s”', async (code, pours, says) => {
    const ran = await command(['silver'], pours)
    expect([ran.code, ran.out]).toEqual([code, []])
    expect(ran.err.join(' ')).toMatch(says)
  })
})

describe('fumes by command', () => {
  it('JSON asks what options ask', async () => {
    const byOptions = await answered('fumes-answer', ['fumes', '--sulfite', '100', '--acid', '500mL', '--room', '20'])
    const question = JSON.stringify({ sulfite_g_per_l: 100, acid_ml: 500, room_m3: 20 })
    expect(await answered('fumes-answer', ['fumes', '-'], question)).toEqual(byOptions)
    const whole = ['fumes', '--sulfite', '100', '--acid', '500mL', '--bath', '2L', '--percent', '28', '--room', '20']
    const said = { sulfite_g_per_l: 100, acid_ml: 500, bath_ml: 2000, acid_percent: 28, room_m3: 20 }
    expect(await answered('fumes-answer', ['fumes', '-'], JSON.stringify(said))).toEqual(
      await answered('fumes-answer', whole),
    )
    expect(byOptions.after.ph).toBeLessThan(byOptions.before.ph)
    expect(byOptions.whole_g).toBeGreaterThan(byOptions.gas_g)
  })

  it('needs a bath and an acid, and a room that can be', async () => {
    expect((await command(['fumes', '--sulfite', '100'])).code).toBe(USAGE)
    expect((await command(['fumes', '--sulfite', '-1', '--acid', '1L'])).code).toBe(DATA)
    const ran = await command(['fumes', '--sulfite', '100', '--acid', '1L', '--room', '0'])
    expect([ran.code, ran.err.join(' ')]).toEqual([DATA, expect.stringMatching(/room in cubic metres of 0/)])
  })
})
