import { describe, expect, it } from 'vitest'
import { celsius, expectOk, minutes, type UnitSystem } from '../../kernel/index.js'
import { type BasisInput, defineBasis, developingTime, type Modifier } from '../../science/index.js'
import { faults, linesOf } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import type { PaperName } from '../setting/page.js'
import { type TimeCardInput, timeCard, timeCardPage } from './time-card.js'

const fonts = measuringFonts()
const points = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([at, time]) => ({ temperature: celsius(at), time: minutes(time) }))

const STATED: Readonly<Record<string, BasisInput>> = {
  four: { kind: 'ordinary', points: points([18, 11.5], [20, 9.5], [22, 8], [24, 6.75]) },
  one: { kind: 'ordinary', points: points([20, 9.5]) },
  slow: { kind: 'ordinary', points: points([18, 70], [24, 45]) },
  fixed: { kind: 'fixed', points: points([37.8, 3.25]) },
  single: { kind: 'single-bath', points: points([21, 7], [24, 6], [27, 5]) },
  many: {
    kind: 'ordinary',
    points: Array.from({ length: 21 }, (_, i) => ({ temperature: celsius(10 + i), time: minutes(20 - i / 2) })),
  },
}

function card(
  name: string,
  at: number | null,
  more: Partial<TimeCardInput> = {},
  modifiers: readonly Modifier[] = [],
): TimeCardInput {
  const basis = expectOk(defineBasis(STATED[name] as BasisInput))
  return {
    film: 'Corvane 400',
    exposureIndex: 400,
    developer: 'Ascorbate developer',
    dilution: '1 + 3',
    agitation: 'four turns each minute',
    basis,
    asked: at === null ? null : expectOk(developingTime(basis, celsius(at), { modifiers })),
    units: 'metric',
    paper: 'A4',
    sourceWords: 'maker’s sheet, page 2',
    savedAt: '3 Nov 2026',
    today: '25 Nov 2026',
    printedAt: Date.UTC(2026, 10, 25),
    ...more,
  }
}

const crowded: Partial<TimeCardInput> = {
  film: 'Łąka Panchromatyczny '.repeat(6).slice(0, 120),
  developer: 'A developer of one’s own mixing '.repeat(4).slice(0, 120),
  agitation: 'slow turns, then a tap against the sink '.repeat(5).slice(0, 200),
  sourceWords: 'from a note in pencil on the lid of the box '.repeat(12).slice(0, 500),
}
const twoFactors: Modifier[] = [
  { name: 'repeat-use', factor: 1.1, origin: 'practice' },
  { name: 'agitation', factor: 0.85, origin: 'sheet' },
]
const cases: readonly [string, TimeCardInput][] = [
  ['four points, asked between', card('four', 21.6)],
  ['four points, nothing asked', card('four', null)],
  ['four points, beyond, with factors', card('four', 28.3, {}, twoFactors)],
  ['one point', card('one', 24)],
  ['hours', card('slow', 19)],
  ['a fixed time', card('fixed', 37.8)],
  ['a fixed time asked elsewhere', card('fixed', 30)],
  ['a single bath', card('single', 22.5)],
  ['many points', card('many', 19.3)],
  ['everything at its longest', card('one', 30.4, crowded, twoFactors)],
]
const papers: readonly [PaperName, UnitSystem][] = [
  ['A4', 'metric'],
  ['A4', 'us'],
  ['Letter', 'metric'],
  ['Letter', 'us'],
]

describe.each(cases)('the card of %s', (_, input) => {
  it.each(papers)('is well set on %s in %s units', (paper, units) => {
    expect(faults(fonts, timeCardPage({ ...input, paper, units }, fonts))).toEqual([])
  })

  it('has no text under 12 pt, and its time at 24 pt at least', () => {
    const page = timeCardPage(input, fonts)
    const figures = page.blocks.flatMap((block) => (block.kind === 'figure' ? block.drawing.marks : []))
    const sizes = [...page.blocks.flatMap(linesOf), ...figures].flatMap((mark) => ('text' in mark ? [mark.size] : []))
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12)
    const lead = page.blocks.flatMap(linesOf).find((line) => line.text.startsWith('Develop '))
    expect(lead?.size).toBeGreaterThanOrEqual(24)
  })
})

describe('the table', () => {
  const rowsOf = (input: TimeCardInput) => {
    const page = timeCardPage(input, fonts)
    return page.blocks.flatMap((block) =>
      block.kind === 'table' ? block.rows.map((row) => row.map((cell) => cell.text)) : [],
    )
  }

  it('gives the sheet’s own times and says so, and the law’s between and beyond', () => {
    const rows = rowsOf(card('four', 21.6))
    expect(rows.map(([temperature]) => temperature)).toEqual([...Array(11).keys()].map((i) => `${16 + i}\u202f°C`))
    expect(rows[2]).toEqual(['18\u202f°C', '11:30', 'sheet'])
    expect(rows[3]?.[2]).toBe('law')
    expect(rows.at(-1)?.[2]).toBe('law, beyond')
  })

  it('steps by two °F on a bench that reads °F', () => {
    const temperatures = rowsOf(card('one', null, { units: 'us' })).map(([temperature]) =>
      Number.parseFloat(temperature ?? ''),
    )
    expect(temperatures).toEqual([60, 62, 64, 66, 68, 70, 72, 74, 76])
  })

  it('ends where a single bath’s sheet ends', () => {
    const rows = rowsOf(card('single', null))
    expect([rows[0]?.[0], rows.at(-1)?.[0]]).toEqual(['21\u202f°C', '27\u202f°C'])
  })

  it('carries the factors that the answer carries', () => {
    expect(rowsOf(card('four', 20, {}, [{ name: 'agitation', factor: 2, origin: 'sheet' }]))[4]?.[1]).toBe('19:00')
  })
})

describe('the file', () => {
  const text = async (input: TimeCardInput) => Buffer.from(await timeCard(input)).toString('latin1')

  it('is tagged, in reading order, with the picture in words', async () => {
    const pdf = await text(card('four', 21.6))
    const roles = [...pdf.matchAll(/\/S \/(Document|H1|H2|P|Figure|Table|TR|TH|TD)\b/g)].map(([, role]) => role)
    const count = (role: string) => roles.filter((each) => each === role).length
    expect([
      count('Document'),
      count('H1'),
      count('Figure'),
      count('Table'),
      count('TR'),
      count('TH'),
      count('TD'),
    ]).toEqual([1, 1, 1, 1, 12, 14, 22])
    expect(pdf).toMatch(/\/Alt \(/)
    expect(pdf).toMatch(/\/Lang \(en\)/)
    expect(pdf).toMatch(/\/Marked true/)
    expect(pdf).toMatch(/\/DisplayDocTitle true/)
  })

  it.each([
    ['A4', '[0 0 595.28 841.89]'],
    ['Letter', '[0 0 612 792]'],
  ] as const)('is one page of %s', async (paper, box) => {
    const pdf = await text(card('four', 21.6, { paper }))
    expect(pdf).toContain(`/MediaBox ${box}`)
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1)
  })

  it('is the same, byte for byte, for the same card and instant', async () => {
    const [one, other] = await Promise.all([timeCard(card('four', 21.6)), timeCard(card('four', 21.6))])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
    const later = await timeCard(card('four', 21.6, { printedAt: Date.UTC(2026, 10, 26) }))
    expect(Buffer.compare(Buffer.from(one), Buffer.from(later))).not.toBe(0)
  })
})
