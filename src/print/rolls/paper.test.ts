import { describe, expect, it } from 'vitest'
import { faults, linesOf, textSizes } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import type { PaperName } from '../setting/page.js'
import type { PaperRoll, SlipInput } from './definition.js'
import { slipPages } from './slip.js'
import { GRIDS, stickerPages, stickerSheet } from './stickers.js'

const fonts = measuringFonts()
const roll = (n: number, changes: Partial<PaperRoll> = {}): PaperRoll => ({
  number: `2026-${String(n).padStart(4, '0')}`,
  twin: n,
  film: 'Corvane 400',
  format: '135',
  frames: null,
  sheets: 1,
  treatment: { as: 'normal' },
  ...changes,
})
const rolls = (count: number, changes: Partial<PaperRoll> = {}) =>
  Array.from({ length: count }, (_, i) => roll(i + 1, changes))
const LONG: Partial<PaperRoll> = {
  number: 'A pattern that somebody made 2026-000012',
  film: 'A film whose name somebody has written out at full size, with where it was bought',
  format: '13x18cm',
  sheets: 120,
  treatment: { as: 'contrast', contrast: 0.62 },
}
const papers: readonly PaperName[] = ['A4', 'Letter']

const ORDER: SlipInput['order'] = {
  person: 'Ida',
  counted_in: 3,
  deposit: '20',
  agreed_on_loss: 'a fresh roll of the same film',
  due: '2026-12-01',
  rolls: rolls(3),
}
const slip = (changes: Partial<SlipInput> = {}): SlipInput => ({
  bench: { name: 'The cellar', zone: 'UTC' },
  order: ORDER,
  handedOver: Date.UTC(2026, 10, 24),
  link: { address: `http://192.168.100.200:4717/o/${'Ab_-9'.repeat(9)}`, expiresAt: Date.UTC(2027, 0, 24) },
  paper: 'A4',
  printedAt: Date.UTC(2026, 10, 25),
  ...changes,
})
const textOf = (asked: SlipInput): string =>
  slipPages(asked, fonts)
    .flatMap(({ blocks }) => blocks.flatMap(linesOf))
    .map(({ text }) => text)
    .join(' ')

describe.each(papers)('a slip on %s', (paper) => {
  it.each([
    ['three rolls', {}],
    ['forty rolls of long names', { order: { ...ORDER, rolls: rolls(40, LONG) } }],
    ['no link, nothing agreed', { link: null, order: { ...ORDER, due: null, deposit: '', agreed_on_loss: '' } }],
  ])('of %s is well set, at 12 pt at least', (_, changes) => {
    const pages = slipPages(slip({ paper, ...changes }), fonts)
    expect(pages.flatMap((page) => faults(fonts, page))).toEqual([])
    expect(Math.min(...pages.flatMap(textSizes))).toBeGreaterThanOrEqual(12)
  })
})

describe('what a slip says', () => {
  it.each([
    [{ format: '135' as const }, '135, 36 frames'],
    [{ format: '135' as const, frames: 37 }, '135, 37 frames'],
    [{ format: '120' as const }, '120'],
    [{ format: '4x5' as const, sheets: 12 }, '4 × 5 in, 12 sheets'],
    [{ format: '9x12cm' as const }, '9 × 12 cm'],
  ])('of %j is “%s”', (changes, said) => {
    expect(textOf(slip({ order: { ...ORDER, rolls: [roll(1, changes)] } }))).toContain(`Corvane 400 ${said} as usual`)
  })

  it('of every roll is there, over as many pages as it takes', () => {
    const text = textOf(slip({ order: { ...ORDER, rolls: rolls(40) } }))
    for (const { number } of rolls(40)) expect(text.split(number)).toHaveLength(2)
  })
})

describe('letters that paper has no type for', () => {
  const said = /Boxes stand for letters/
  const sheet = (film: string) => {
    const [page] = stickerPages(
      { rolls: [roll(1, { film })], base: 'http://a', paper: 'A4', used: 0, printedAt: 0 },
      fonts,
    )
    return page?.blocks
      .flatMap(linesOf)
      .map(({ text }) => text)
      .join(' ')
  }

  it.each(['пленка', '現像', 'שלום'])('are owned to: %s', (name) => {
    expect(textOf(slip({ order: { ...ORDER, person: name } }))).toMatch(said)
    expect(textOf(slip({ order: { ...ORDER, rolls: [roll(1, { film: name })] } }))).toMatch(said)
    expect(sheet(name)).toMatch(said)
  })

  it('are not spoken of where there are none', () => {
    expect(textOf(slip({ order: { ...ORDER, person: 'Zoë Łuczak–Ðorđević' } }))).not.toMatch(said)
    expect(sheet('Übersicht 100')).not.toMatch(said)
  })
})

describe.each(papers)('stickers on %s', (paper) => {
  const pages = (list: readonly PaperRoll[], used = 0) =>
    stickerPages({ rolls: list, base: 'http://192.168.1.20:4717', paper, used, printedAt: 0 }, fonts)

  it.each([
    ['plain numbers', rolls(21)],
    ['long names', rolls(21, LONG)],
  ])('with %s lie on one another nowhere', (_, list) => {
    expect(pages(list).flatMap((page) => faults(fonts, page))).toEqual([])
  })

  it('keep inside their own sticker', () => {
    const { left, top, width, height } = GRIDS[paper]
    for (const { blocks } of pages(rolls(20, LONG))) {
      blocks.forEach((block, i) => {
        const place = Math.floor(i / 3)
        const [x, y] = [left + (place % 4) * width, top + Math.floor(place / 4) * height]
        for (const line of linesOf(block)) {
          expect(line.x + fonts.width(line.text, line.face, line.size)).toBeLessThanOrEqual(x + width)
          expect(line.x).toBeGreaterThanOrEqual(x)
          expect(line.y).toBeGreaterThan(y)
          expect(line.y + line.size / 4).toBeLessThanOrEqual(y + height)
        }
      })
    }
  })

  it('are the same byte for byte when printed again', async () => {
    const input = { rolls: rolls(2), base: 'http://192.168.1.20:4717', paper, used: 0, printedAt: 0 }
    const [one, other] = await Promise.all([stickerSheet(input), stickerSheet(input)])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
  })
})
