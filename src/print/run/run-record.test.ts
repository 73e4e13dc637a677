import { describe, expect, it } from 'vitest'
import { celsius, type Instant, type UnitSystem } from '../../kernel/index.js'
import { type Following, fold, follow, type Recipe, type RunEvent, SHIPPED_RECIPES } from '../../score/index.js'
import { faults, linesOf, textSizes } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import type { Page, PaperName } from '../setting/page.js'
import type { RunRecordInput } from './definition.js'
import { scoreOf } from './plans.test-support.js'
import { runRecord, runRecordPages } from './run-record.js'

const fonts = measuringFonts()
const recipe = SHIPPED_RECIPES.find(({ id }) => id === 'three-bath-acid-stop') as Recipe
const ZERO = Date.UTC(2026, 10, 25, 13, 5)

type Told = Partial<RunEvent> & Pick<RunEvent, 'kind'>
const at = (second: number, told: Told): RunEvent =>
  ({
    id: `${second} ${told.kind} ${told.tank ?? 'A'}`,
    device: 'phone',
    life: 'one',
    monotonicMs: second * 1000,
    wallMs: ZERO + second * 1000,
    serverOffsetMs: ZERO,
    tank: 'A',
    bath: 0,
    actor: 'someone',
    ...told,
  }) as RunEvent

/** Warmer than planned and poured out 26 s late, a leak, a stop that was left out, an entry taken back. */
const eventful: readonly RunEvent[] = [
  at(15, { kind: 'poured-in' }),
  at(195, { kind: 'reading', temperature: celsius(20.8), confirmed: false }),
  at(260, { kind: 'noted', text: 'Jacket topped up with warm water.' }),
  at(300, { kind: 'reading', temperature: celsius(23.8), confirmed: false }),
  at(410, { kind: 'mishap', mishap: 'tank-leaks' }),
  at(420, { kind: 'poured-out' }),
  at(425, { kind: 'retracted', of: '420 poured-out A' }),
  at(566, { kind: 'poured-out' }),
  at(570, { kind: 'skipped', bath: 1, reason: 'the bottle was empty' }),
  at(600, { kind: 'poured-in', bath: 2 }),
  at(1000, { kind: 'poured-out', bath: 2 }),
  at(2300, { kind: 'finished', bath: null }),
]
/** Each bath at its planned second. */
const uneventful = (tank: string, offset: number): RunEvent[] =>
  scoreOf({ recipe }).tanks.flatMap(({ laid }) =>
    laid.flatMap(({ step, index, in: start, out }) =>
      step.step === 'bath'
        ? [
            at(offset + start, { kind: 'poured-in', bath: index, tank }),
            at(offset + out, { kind: 'poured-out', bath: index, tank }),
          ]
        : [at(offset + out, { kind: 'step-done', bath: index, tank })],
    ),
  )

function record(events: readonly RunEvent[], now: Instant, more: Partial<RunRecordInput> = {}): RunRecordInput {
  const score = more.score ?? scoreOf({ recipe })
  const state = fold(score, events)
  return {
    title: 'Three rolls from the coast',
    score,
    state,
    following: follow(score, state, now),
    loads: { A: 'rolls 0409, 0410 and 0411' },
    zone: 'Europe/Vienna',
    verdict: null,
    note: '',
    units: 'metric',
    paper: 'A4',
    today: '26 Nov 2026',
    printedAt: Date.UTC(2026, 10, 26),
    ...more,
  }
}
const LATER = ZERO + 3_600_000
const text = (input: RunRecordInput): string =>
  runRecordPages(input, fonts)
    .flatMap(({ blocks }) => blocks.flatMap(linesOf))
    .map((line) => line.text)
    .join(' ')

const cases: readonly [string, RunRecordInput][] = [
  ['an eventful run', record(eventful, LATER, { verdict: 'A little dense, no marks.' })],
  ['a run as planned', record(uneventful('A', 0), LATER)],
  ['a run that goes on', record(eventful.slice(0, 4), ZERO + 320_000)],
  ['a run that has not begun', record([], ZERO)],
  [
    'two tanks',
    record([...uneventful('A', 0), ...uneventful('B', 900)], LATER, { score: scoreOf({ recipe }, { recipe }) }),
  ],
]
const papers: readonly [PaperName, UnitSystem][] = [
  ['A4', 'metric'],
  ['Letter', 'us'],
]

describe.each(cases)('the record of %s', (_, input) => {
  it.each(papers)('is well set on %s in %s units', (paper, units) => {
    const pages: readonly Page[] = runRecordPages({ ...input, paper, units }, fonts)
    expect(pages.flatMap((page) => faults(fonts, page))).toEqual([])
    expect(Math.min(...pages.flatMap(textSizes))).toBeGreaterThanOrEqual(12)
    expect(Math.max(...pages.flatMap(textSizes))).toBeGreaterThanOrEqual(24)
  })
})

describe('what the record says', () => {
  it('leads with the development that was followed, and gives its band', () => {
    const input = record(eventful, LATER)
    const developed = input.following.tanks[0]?.developed
    const whole = (part: number | undefined) => `${Math.round((part ?? 0) * 100)}\u202f%`
    expect(text(input)).toContain(`${whole(developed?.fraction)} of the planned development`)
    expect(text(input)).toContain(`Between ${whole(developed?.low)} and ${whole(developed?.high)}`)
  })

  it('tells every departure in a sentence, the readings and what was written down', () => {
    const told = text(record(eventful, LATER, { verdict: 'A little dense.', note: 'Print on grade 2.' }))
    for (const sentence of [
      'Developer came out 23\u202fs late: 4\u202f% more development.',
      'Stop was left out: the bottle was empty.',
      'A reading of 23.8\u202f°C was not counted; 20.8\u202f°C was expected.',
      'The tank leaks, at 14:11:50.',
      '14:08:15: 20.8\u202f°C where 20.0\u202f°C was expected.',
      '14:09:20: Jacket topped up with warm water.',
      'A little dense.',
      'Print on grade 2.',
    ])
      expect(told).toContain(sentence)
  })

  it('gives real instants in the bench’s zone; what nobody confirmed in brackets', () => {
    const input = record(eventful, LATER)
    expect(text(input)).toContain('14:05:15 14:14:26')
    expect(text({ ...input, zone: 'UTC' })).toContain('13:05:15 13:14:26')
    expect(text(input)).toMatch(/Wash, five fills \(14:2\d:\d\d\)/)
    expect(text(record(uneventful('A', 0), LATER))).not.toContain('nobody confirmed')
  })

  it('says so when everything went as planned', () => {
    expect(text(record(uneventful('A', 0), LATER))).toContain('Everything went as planned.')
  })

  it('keeps an ordinary run on one page, lines for notes included', () => {
    expect(runRecordPages(record(uneventful('A', 0), LATER), fonts)).toHaveLength(1)
  })

  it('is not printed while the clock is in doubt', () => {
    const doubts = [{}] as unknown as Following['doubts']
    expect(() => runRecordPages({ ...record([], ZERO), following: { tanks: [], doubts, next: null } }, fonts)).toThrow(
      'in doubt',
    )
  })
})

describe('the file', () => {
  it('is tagged and the same byte for byte', async () => {
    const input = record(eventful, LATER)
    const [one, other] = await Promise.all([runRecord(input), runRecord(input)])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
    const pdf = Buffer.from(one).toString('latin1')
    expect(pdf.match(/\/S \/(H1|Table|Figure)\b/g)?.sort()).toEqual(['/S /Figure', '/S /H1', '/S /Table'])
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(runRecordPages(input, fonts).length)
  })
})
