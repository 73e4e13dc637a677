import { describe, expect, it } from 'vitest'
import { celsius, minutes, seconds, type UnitSystem, writeDuration } from '../../kernel/index.js'
import { type Bath, type Job, type Recipe, type Score, SHIPPED_RECIPES } from '../../score/index.js'
import { faults, linesOf, textSizes } from '../setting/faults.test-support.js'
import { measuringFonts } from '../setting/fonts.js'
import type { Line, Page, PaperName } from '../setting/page.js'
import { benchSheet, benchSheetPages } from './bench-sheet.js'
import type { BenchSheetInput } from './definition.js'
import { scoreOf, type TankSketch } from './plans.test-support.js'

const fonts = measuringFonts()
const shipped = (id: string): Recipe => SHIPPED_RECIPES.find((one) => one.id === id) as Recipe
const acid = shipped('three-bath-acid-stop')

const sheet = (score: Score, more: Partial<BenchSheetInput> = {}): BenchSheetInput => ({
  title: 'Three rolls from the coast',
  score,
  loads: { A: 'rolls 0409, 0410 and 0411, Tarn 100 at 100' },
  units: 'metric',
  paper: 'A4',
  today: '25 Nov 2026',
  printedAt: Date.UTC(2026, 10, 25),
  note: '',
  ...more,
})
const pagesOf = (input: BenchSheetInput): readonly Page[] => benchSheetPages(input, fonts)
const linesIn = (pages: readonly Page[]): Line[] => pages.flatMap(({ blocks }) => blocks.flatMap(linesOf))
const textOf = (pages: readonly Page[]): string =>
  linesIn(pages)
    .map(({ text }) => text)
    .join(' ')

const papers: readonly [PaperName, UnitSystem][] = [
  ['A4', 'metric'],
  ['A4', 'us'],
  ['Letter', 'metric'],
  ['Letter', 'us'],
]
const twoTanks = scoreOf({ recipe: acid }, { recipe: acid, temperature: celsius(21), offset: minutes(12) })
/** Turned every ten seconds for two hours: more moments than a page holds. */
const restless: Recipe = {
  ...acid,
  id: 'restless',
  steps: acid.steps.map((step) =>
    step.id === 'stop'
      ? {
          ...(step as Bath),
          name: 'A bath of a name that somebody has written out at full size',
          time: { law: 'fixed', seconds: minutes(120), origin: 'assumption' },
          agitation: {
            kind: 'turns',
            opening: null,
            turn: { by: 'seconds', seconds: seconds(3) },
            every: seconds(10),
          },
        }
      : step,
  ),
}
const long = 'from a pencilled note on the lid of the box '.repeat(8)
const cases: readonly [string, BenchSheetInput][] = [
  ...SHIPPED_RECIPES.map((recipe) => [recipe.name, sheet(scoreOf({ recipe }))] as [string, BenchSheetInput]),
  ['two tanks', sheet(twoTanks, { note: 'Fixer was tested this morning.' })],
  ['two hours of turns', sheet(scoreOf({ recipe: restless }))],
  ['everything at its longest', sheet(twoTanks, { title: long, loads: { A: long, B: long }, note: long })],
]

describe.each(cases)('the bench sheet of %s', (_, input) => {
  it.each(papers)('is well set on %s in %s units', (paper, units) => {
    const pages = pagesOf({ ...input, paper, units })
    expect(pages.flatMap((page) => faults(fonts, page))).toEqual([])
    expect(Math.min(...pages.flatMap(textSizes))).toBeGreaterThanOrEqual(12)
  })

  it('has every job of the score once, in order, pours at 24 pt', () => {
    const { score } = input
    const lines = linesIn(pagesOf(input))
    const several = score.tanks.length > 1
    const jobs = score.tanks
      .flatMap(({ tank, laid, jobs: own }) => own.map((job) => ({ job, tank, laid })))
      .sort((a, b) => a.tank.offset + a.job.start - (b.tank.offset + b.job.start))
    const turnedOn = ({ job, laid }: (typeof jobs)[number]) => laid[job.index]?.agitation?.kind === 'continuous'
    const momentsOf = (wanted: (job: Job) => boolean) =>
      jobs.filter((each) => wanted(each.job)).filter((each) => each.job.kind !== 'turn' || !turnedOn(each))
    const moments = (size: number) => lines.filter((line) => line.size === size && /\d:\d\d$/.test(line.text))
    expect(moments(24).map(({ text }) => text)).toEqual(
      momentsOf(({ kind }) => kind !== 'turn').map(({ job, tank }) => writeDuration(seconds(tank.offset + job.start))),
    )
    const turns = moments(14).filter(({ face }) => face === 'strong')
    expect(turns.map(({ text }) => text)).toEqual(
      momentsOf(({ kind }) => kind === 'turn').map(({ job, tank }) => {
        const moment = writeDuration(seconds(tank.offset + job.start))
        return several ? `${tank.tank}\u00a0${moment}` : moment
      }),
    )
    const on = jobs.filter((each) => each.job.kind === 'turn' && turnedOn(each))
    expect(lines.filter(({ text }) => text.includes('turn on without a stop'))).toHaveLength(on.length)
  })

  it('gives the reason and the cautions of every step, and a page number of so many', () => {
    const pages = pagesOf(input)
    const text = textOf(pages)
    for (const { tank, jobs } of input.score.tanks) {
      for (const index of new Set(jobs.map((job) => job.index))) {
        expect(text).toContain(tank.recipe.steps[index]?.reason)
      }
    }
    pages.forEach((_page, i) => {
      expect(textOf([pages[i] as Page])).toContain(`page ${i + 1} of ${pages.length}`)
    })
  })
})

describe('what the sheet says', () => {
  it('moves the pour-out with the reading: a degree warmer by 2.4 per ten degrees', () => {
    const lines = linesIn(pagesOf(sheet(scoreOf({ recipe: acid }))))
    const at = lines.findIndex(({ text }) => text === '21.0\u202f°C')
    // 15 s of pouring before the clock, 10 s of draining inside it.
    expect(lines[at + 1]?.text).toBe(writeDuration(seconds(570 * 2.4 ** -0.1 + 15 - 10)))
  })

  it('reckons with the room’s pull there, as the plan for that reading does', () => {
    const room = { temperature: celsius(17), timeConstant: minutes(110) }
    const score = scoreOf({ recipe: acid, room })
    const lines = linesIn(pagesOf(sheet(score)))
    const at = lines.findIndex(({ text }) => text === '21.0\u202f°C')
    const warmer = scoreOf({ recipe: acid, room, temperature: celsius(21) }).tanks[0]?.baths[0]
    expect(lines[at + 1]?.text).toBe(writeDuration(seconds(warmer?.drainStart ?? 0)))
    expect(textOf(pagesOf(sheet(score)))).toContain('the room’s pull is reckoned with')
    // A tank that cools takes longer than one that holds its temperature.
    expect(warmer?.drainStart).toBeGreaterThan(570 * 2.4 ** -0.1 + 15 - 10 + 1)
  })

  it('leaves that out where the time does not move with the temperature', () => {
    expect(textOf(pagesOf(sheet(scoreOf({ recipe: shipped('colour-negative') }))))).not.toContain('reads otherwise')
  })

  it('writes a narrow window by its middle, a wide one by its ends', () => {
    const text = textOf(pagesOf(sheet(scoreOf({ recipe: shipped('colour-negative') }))))
    expect(text).toContain('37.8 ± 0.15\u202f°C')
    expect(text).toContain('24.0 to 41.0\u202f°C')
  })

  it.each<PaperName>(['A4', 'Letter'])('takes two leaves of %s for three baths: jobs on three pages', (paper) => {
    // With a thermometer reading asked for; every job, its boxes and its reason are held by the tests above.
    const pages = pagesOf(sheet(scoreOf({ recipe: acid }), { paper }))
    expect(pages.length).toBeLessThanOrEqual(4)
    const wrong = pages.map((page) => textOf([page]).includes('When something goes wrong'))
    expect(wrong.indexOf(true)).toBe(3)
    // What is looked for in a hurry stands on one page.
    for (const said of ['Fixer went in first', 'Fixer went in without the stop'])
      expect(textOf(pages.slice(3))).toContain(said)
  })

  it('says at its end what to do when something goes wrong, of what can go wrong with these baths', () => {
    const wrong = (...tanks: readonly TankSketch[]) => {
      const text = textOf(pagesOf(sheet(scoreOf(...tanks))))
      return text.slice(text.indexOf('When something goes wrong'))
    }
    for (const said of [
      'Fixer went in first',
      'Developer does not cover the film',
      'The lid came off',
      'The tank leaks',
    ])
      expect(wrong({ recipe: acid })).toContain(said)
    expect(wrong({ recipe: shipped('single-bath') })).not.toContain('Fixer went in first')
    // Once for all tanks, not once for each.
    const two = wrong({ recipe: shipped('single-bath') }, { recipe: acid, offset: minutes(12) })
    expect(two.split('Fixer went in first')).toHaveLength(2)
  })

  it('gives every job a box for its time of day and one for when it was done', () => {
    const score = scoreOf({ recipe: acid })
    const boxes = pagesOf(sheet(score)).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'boxes' ? block.boxes : [])),
    )
    const jobs = score.tanks.flatMap((tank) => tank.jobs.filter(({ kind }) => kind !== 'turn'))
    expect(boxes.filter(({ width }) => Math.round(width) === 55)).toHaveLength(2 * jobs.length)
  })
})

describe('the file', () => {
  it('is tagged, has the pages that were laid out, and is the same byte for byte', async () => {
    const input = sheet(scoreOf({ recipe: acid }), { paper: 'Letter' })
    const [one, other] = await Promise.all([benchSheet(input), benchSheet(input)])
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0)
    const pdf = Buffer.from(one).toString('latin1')
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(pagesOf(input).length)
    expect(pdf.match(/\/MediaBox \[0 0 612 792\]/g)).toHaveLength(pagesOf(input).length)
    expect(pdf.match(/\/S \/H1\b/g)).toHaveLength(1)
    expect(pdf.match(/\/S \/Figure\b/g)).toHaveLength(1)
    expect(pdf).toMatch(/\/Marked true/)
  })
})
