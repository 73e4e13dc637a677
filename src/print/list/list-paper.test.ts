import { describe, expect, it } from 'vitest'
import type { UnitSystem } from '../../kernel/index.js'
import { type Recipe, SHIPPED_RECIPES } from '../../score/index.js'
import { cautionWords, writerFor } from '../../words/index.js'
import { faults, linesOf, textSizes } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import type { PaperName } from '../setting/page.js'
import { type ListPaperInput, listPages, listPaper } from './list-paper.js'

const fonts = measuringFonts()
const input = (recipe: Recipe, more: Partial<ListPaperInput> = {}): ListPaperInput => ({
  recipe,
  units: 'metric',
  paper: 'A4',
  today: '25 Nov 2026',
  printedAt: Date.UTC(2026, 10, 25),
  ...more,
})
const textOf = (asked: ListPaperInput): string =>
  listPages(asked, fonts)
    .flatMap(({ blocks }) => blocks.flatMap(linesOf))
    .map(({ text }) => text)
    .join(' ')

const papers: readonly [PaperName, UnitSystem][] = [
  ['A4', 'metric'],
  ['Letter', 'us'],
]

describe.each(SHIPPED_RECIPES.map((recipe) => [recipe.name, recipe] as const))('%s on paper', (_, recipe) => {
  it.each(papers)('is well set on %s in %s units, at 12 pt at least', (paper, units) => {
    const pages = listPages(input(recipe, { paper, units }), fonts)
    expect(pages.flatMap((page) => faults(fonts, page))).toEqual([])
    expect(Math.min(...pages.flatMap(textSizes))).toBeGreaterThanOrEqual(12)
  })

  it('has the name, reason and cautions of every step, and says where its figures come from', () => {
    const text = textOf(input(recipe))
    for (const step of recipe.steps) {
      expect(text).toContain(step.name)
      expect(text).toContain(step.reason)
      for (const caution of cautionWords(step, writerFor('metric'))) expect(text).toContain(caution)
    }
    expect(text).toContain('[P] common practice')
  })
})

describe('what the paper says', () => {
  const shipped = (id: string) => SHIPPED_RECIPES.find((one) => one.id === id) as Recipe

  it('refuses to move the time of a colour developer', () => {
    const text = textOf(input(shipped('colour-negative')))
    expect(text).toContain('3:15, and no other.')
    expect(text).toContain('is not moved for warmth or cold')
    expect(textOf(input(shipped('three-bath-acid-stop')))).not.toContain('and no other')
  })

  it('speaks only of mishaps that these baths can have', () => {
    expect(textOf(input(shipped('colour-negative')))).not.toContain('without the stop')
    expect(textOf(input(shipped('three-bath-acid-stop')))).toContain('without the stop')
  })

  it('says once what all baths share', () => {
    const text = textOf(input(shipped('three-bath-acid-stop')))
    expect(text.split('Counts from the tank full to the tank empty.')).toHaveLength(2)
  })

  it('is a tagged file, the same byte for byte', async () => {
    const asked = input(shipped('stand'), { paper: 'Letter' })
    const [one, other] = await Promise.all([listPaper(asked), listPaper(asked)])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
    const pdf = Buffer.from(one).toString('latin1')
    expect(pdf).toMatch(/\/Marked true/)
    expect(pdf).toContain('/MediaBox [0 0 612 792]')
  })
})
