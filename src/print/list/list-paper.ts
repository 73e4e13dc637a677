import type { Instant, UnitSystem } from '../../kernel/index.js'
import { SPREAD } from '../../science/index.js'
import { hasFixedTime, isBath, type Recipe, type Step } from '../../score/index.js'
import {
  actLines,
  bathLines,
  cautionWords,
  commonLines,
  ORIGIN_MARKS,
  type StepLine,
  say,
  shortLength,
  type Writer,
  writerFor,
} from '../../words/index.js'
import { notes } from '../run/notes.js'
import { wrongPieces } from '../run/wrong.js'
import { columnOf, flow } from '../setting/flow.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import type { Pages, PaperName } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { beside, type Column, gap, type Piece, rule, stacked, text, textAtRight } from '../setting/pieces.js'

/** What a list of baths is printed from. */
export interface ListPaperInput {
  readonly recipe: Recipe
  readonly units: UnitSystem
  readonly paper: PaperName
  /** The day of printing, as the bench writes a day. */
  readonly today: string
  /** Stands in the file as its date. */
  readonly printedAt: Instant
}

/** A list of baths on paper: every step with its reason, its cautions and the source of its figures. Tagged PDF. */
export const listPaper = (input: ListPaperInput): Promise<Uint8Array> =>
  paintPages(listPages(input, measuringFonts()), input.printedAt)

const BODY = { size: 12 } as const
const QUIET = { size: 12, ink: 'quiet' } as const
const STRONG = { size: 12, face: 'strong' } as const
const HEADING = { size: 14, face: 'strong' } as const
/** Widths of the step's number, of what a line is about, and of the length at the right. */
const WIDE = { number: 26, label: 84, length: 190 } as const

interface Setter {
  readonly fonts: Fonts
  readonly w: Writer
  readonly whole: Column
}

/** The list laid out, not yet painted. */
export function listPages({ recipe, units, paper, today }: ListPaperInput, fonts: Fonts): Pages {
  const w = writerFor(units)
  const whole = columnOf(paper)
  const setter = { fonts, w, whole }
  const common = commonLines(recipe.steps.filter(isBath), { spread: SPREAD }, w)
  const shared = new Set(common.map(({ words }) => words))
  return flow(
    fonts,
    [
      text(fonts, 'H1', recipe.name, { size: 24, face: 'strong' }, whole),
      gap(4),
      text(fonts, 'P', recipe.about, { size: 13 }, whole),
      gap(10),
      ...recipe.steps.map((step, i) => stepPiece(setter, step, i + 1, shared)),
      ...(common.length === 0 ? [] : [sharedPiece(setter, common)]),
      marksPiece(setter),
      ...wrongPieces(fonts, recipe.steps, whole, w),
    ],
    {
      title: say('list.title', recipe, w),
      paper,
      foot: say('sheet.foot', { today }, w),
      last: notes(fonts, whole, w),
      pageOf: (page, pages) => say('sheet.page', { page, pages }, w),
    },
  )
}

const besides = ({ left, width }: Column, hang: number): Column => ({ left: left + hang, width: width - hang })

function stepPiece({ fonts, w, whole }: Setter, step: Step, place: number, shared: ReadonlySet<string>): Piece {
  const column = besides(whole, WIDE.number)
  const name = { ...column, width: column.width - WIDE.length }
  const lines = isBath(step)
    ? bathLines(step, { spread: SPREAD, onlyTime: hasFixedTime(step) }, w).filter(({ words }) => !shared.has(words))
    : actLines(step, w)
  return stacked([
    rule(whole, 7),
    beside([
      text(fonts, 'P', String(place), { ...HEADING, ink: 'quiet' }, { ...whole, width: WIDE.number }),
      text(fonts, 'H2', step.name, HEADING, name),
      textAtRight('P', shortLength(step, w), HEADING, column),
    ]),
    text(fonts, 'P', step.reason, BODY, column),
    ...cautionWords(step, w).map((caution) => text(fonts, 'P', caution, STRONG, column)),
    gap(3),
    ...lines.map((line) => linePiece(fonts, line, column)),
    gap(7),
  ])
}

function linePiece(fonts: Fonts, { label, words, origins }: StepLine, column: Column): Piece {
  const marked = [words, ...origins.map((origin) => `[${ORIGIN_MARKS[origin]}]`)].join(' ')
  return beside([
    text(fonts, 'P', label, QUIET, { ...column, width: WIDE.label }),
    text(fonts, 'P', marked, BODY, besides(column, WIDE.label)),
  ])
}

function sharedPiece({ fonts, w, whole }: Setter, common: readonly StepLine[]): Piece {
  const column = besides(whole, WIDE.number)
  return stacked([
    rule(whole, 7),
    text(fonts, 'H2', say('list.shared', {}, w), HEADING, column),
    ...common.map((line) => linePiece(fonts, line, column)),
    gap(7),
  ])
}

/** What the letters behind the figures mean. */
function marksPiece({ fonts, w, whole }: Setter): Piece {
  const origins = Object.keys(ORIGIN_MARKS) as (keyof typeof ORIGIN_MARKS)[]
  const each = origins.map((origin) =>
    say('list.mark', { mark: `[${ORIGIN_MARKS[origin]}]`, origin: say(`list.origin.${origin}`, {}, w) }, w),
  )
  const column = besides(whole, WIDE.number)
  return stacked([
    rule(whole, 7),
    text(fonts, 'H2', say('list.marks', {}, w), HEADING, column),
    text(fonts, 'P', `${each.join('; ')}.`, QUIET, column),
    gap(7),
  ])
}
