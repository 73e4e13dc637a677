import { describe, expect, it } from 'vitest'
import type { LabelFacts } from '../../wire/index.js'
import { faults, linesOf } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import { handOverPages } from './hand-over.js'
import { LABEL_GRIDS, labelPages, labelSheet } from './labels.js'

const fonts = measuringFonts()
const lot = (n: number, more: Partial<LabelFacts> = {}): LabelFacts => ({
  name: 'Ammonium fixer, concentrate',
  code: `26-${String(n).padStart(3, '0')}`,
  parts: [1, 4],
  mixed_at: '2026-03-01T12:00:00.000Z',
  mixed_by: 'Phone',
  use_by: '2026-05-01T12:00:00.000Z',
  hazards: ['acid', 'fumes'],
  ...more,
})
const LONG: Partial<LabelFacts> = {
  name: 'A developer of two parts whose name somebody wrote out in full with where it was bought',
  mixed_by: 'The old telephone that hangs beside the door of the darkroom',
  hazards: ['strong-acid', 'caustic', 'sensitiser', 'irritant', 'fumes', 'oxidiser', 'poison', 'flammable'],
}
const lots = (count: number, more: Partial<LabelFacts> = {}) =>
  Array.from({ length: count }, (_, i) => lot(i + 1, more))
const input = (list: readonly LabelFacts[], layout: keyof typeof LABEL_GRIDS, used = 0) => ({
  ...{ lots: list, layout, used, zone: 'UTC' },
  base: 'http://192.168.100.200:4717',
  printedAt: 0,
})
const said = (pages: ReturnType<typeof labelPages>) =>
  pages.flatMap(({ blocks }) => blocks.flatMap(linesOf)).map(({ text }) => text)

describe.each(Object.keys(LABEL_GRIDS) as (keyof typeof LABEL_GRIDS)[])('labels on %s', (layout) => {
  it.each([
    ['plain', {}],
    ['long', LONG],
    ['bare', { parts: null, use_by: null, hazards: [], mixed_by: '' } as Partial<LabelFacts>],
  ])('lie on one another nowhere: %s', (_, more) => {
    const pages = labelPages(input(lots(15, more), layout), fonts)
    expect(pages.flatMap((page) => faults(fonts, page)).filter((one) => one.includes('” on “'))).toEqual([])
  })

  it('keep inside their own label', () => {
    const { columns, left, top, width, height, gap } = LABEL_GRIDS[layout]
    for (const { blocks } of labelPages(input(lots(9, LONG), layout), fonts))
      blocks.forEach((block, i) => {
        const place = Math.floor(i / 3)
        const [x, y] = [left + (place % columns) * (width + gap), top + Math.floor(place / columns) * height]
        for (const line of linesOf(block)) {
          expect(line.x + fonts.width(line.text, line.face, line.size)).toBeLessThanOrEqual(x + width)
          expect(line.y - line.size * 0.75).toBeGreaterThanOrEqual(y)
          expect(line.y + line.size / 4).toBeLessThanOrEqual(y + height)
        }
      })
  })

  it('say name, lot and dilution, hazards, who and when, and until when', () => {
    const text = said(labelPages(input([lot(7)], layout), fonts)).join('\n')
    for (const part of ['Ammonium fixer', 'Lot 26-007, 1 + 4', 'Acid, gives off fumes.', 'by Phone'])
      expect(text).toContain(part)
    expect(text).toMatch(/Mixed .*2026/)
    expect(text).toMatch(/Use by .*2026/)
  })

  it('are the same byte for byte when printed again', async () => {
    const [one, other] = await Promise.all([labelSheet(input(lots(2), layout)), labelSheet(input(lots(2), layout))])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
  })
})

it('labels begin at the first place that is free, and go on over sheets', () => {
  expect(labelPages(input(lots(2), 'A4', 13), fonts)).toHaveLength(2)
  expect(labelPages(input(lots(14), 'A4'), fonts)).toHaveLength(1)
  expect(labelPages(input(lots(3), 'roll'), fonts)).toHaveLength(3)
})

describe('the record of a hand-over', () => {
  const pages = (paper: 'A4' | 'Letter') =>
    handOverPages(
      {
        bench: { name: 'The cellar', zone: 'UTC' },
        handOver: {
          ...{ at: '2026-03-01T12:00:00.000Z', to: 'The collection of the town', jug: 'Silver', ml: 4200, rolls: 31.5 },
          ...{ silver_g: { low: 1.4, usual: 4.9, high: 10.4 }, note: 'two cans' },
        },
        ...{ units: 'metric', paper, printedAt: 0 },
      },
      fonts,
    )
  it.each(['A4', 'Letter'] as const)('is well set on %s and says when, to whom and how much', (paper) => {
    const set = pages(paper)
    expect(set.flatMap((page) => faults(fonts, page))).toEqual([])
    const text = said(set).join(' ')
    for (const part of ['The collection of the town', '31.5 rolls', 'about 4.9 g, between 1.4 and 10 g', '5.0 mg/L'])
      expect(text).toContain(part)
    expect(text).toMatch(/4[.,\s]?2/)
  })
})
