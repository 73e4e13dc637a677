import { say, writerFor } from '../../words/index.js'
import { columnOf, flow } from '../setting/flow.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import type { Pages } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import type { BenchSheetInput } from './definition.js'
import { headingPieces } from './heading.js'
import { jobPieces } from './job-pieces.js'
import { notes } from './notes.js'
import { wrongPieces } from './wrong.js'

/** The paper a run can be done by with a wall clock and a pencil alone: every job at its second. Tagged PDF. */
export const benchSheet = (input: BenchSheetInput): Promise<Uint8Array> =>
  paintPages(benchSheetPages(input, measuringFonts()), input.printedAt)

/** The sheet laid out, not yet painted. */
export function benchSheetPages(input: BenchSheetInput, fonts: Fonts): Pages {
  const { score, paper, title } = input
  const w = writerFor(input.units)
  const column = columnOf(paper)
  const steps = score.tanks.flatMap(({ tank }) => tank.recipe.steps)
  const pieces = [
    ...headingPieces(fonts, input, column, w),
    ...jobPieces(fonts, score, column, w),
    ...wrongPieces(fonts, steps, column, w),
  ]
  return flow(fonts, pieces, {
    title: say('sheet.title', { title }, w),
    paper,
    foot: say('sheet.foot', { today: input.today }, w),
    last: notes(fonts, column, w),
    pageOf: (page, pages) => say('sheet.page', { page, pages }, w),
  })
}
