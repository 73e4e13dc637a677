import { isBath, type ScoreWarning, type TankPlan } from '../../score/index.js'
import { say, type Writer, warningSentence } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { fittingSize } from '../setting/lines.js'
import { beside, box, type Column, gap, type Piece, stacked, text } from '../setting/pieces.js'
import { bathTable, plannedTemperature, volumeOf } from './bath-table.js'
import type { BenchSheetInput } from './definition.js'
import { plannedStave, scoreFigure } from './score-figure.js'

const BODY = { size: 12 } as const
const LEAD = { size: 28, several: 26, least: 24 } as const
const STRONG = { size: 13, face: 'strong' } as const

/** What is on the reels, how long its developer takes, what stands ready, and the picture of it all. */
export function headingPieces(fonts: Fonts, input: BenchSheetInput, column: Column, w: Writer): Piece[] {
  const { score, title, note } = input
  const warnings = score.warnings.map((warning) => scoreWarningSentence(warning, w))
  const before = [
    text(fonts, 'H1', title, { size: 16, face: 'strong' }, column),
    gap(2),
    ...score.tanks.flatMap((plan) => tankPieces(fonts, input, plan, column, w)),
    text(fonts, 'P', say('sheet.length', { length: score.length, hands: score.handsBusy }, w), BODY, column),
    gap(4),
  ]
  const after = [
    gap(2),
    ...(warnings.length === 0 ? [] : [headed(fonts, say('sheet.warnings', {}, w), warnings, column)]),
    ...(note === '' ? [] : [headed(fonts, say('sheet.note', {}, w), [note], column)]),
    gap(2),
    zeroPiece(fonts, column, w),
    gap(6),
  ]
  const staves = score.tanks.map((plan) => plannedStave(plan, w))
  return [...before, scoreFigure(title, score, staves, { ...column, height: 0 }, w), ...after]
}

function tankPieces(fonts: Fonts, input: BenchSheetInput, plan: TankPlan, column: Column, w: Writer): Piece[] {
  const several = input.score.tanks.length > 1
  const load = input.loads[plan.tank.tank] ?? ''
  const { tank, recipe } = plan.tank
  return [
    text(fonts, 'H2', say('sheet.tank', { tank, load }, w), { size: 13, face: 'strong' }, column),
    leadPiece(fonts, leadOf(plan, w), several, column),
    text(fonts, 'P', say('sheet.list', { name: recipe.name, volume: volumeOf(plan, w) }, w), BODY, column),
    gap(3),
    bathTable(fonts, plan, column, w),
  ]
}

/** The one line of a paper that is read from across the room. */
export function leadPiece(fonts: Fonts, words: string, several: boolean, column: Column): Piece {
  const size = fittingSize(fonts, words, 'strong', several ? LEAD.several : LEAD.size, LEAD.least, column.width)
  return text(fonts, 'P', words, { size, face: 'strong' }, column)
}

/** The bath that decides the picture, its time, and its temperature where that is planned. */
function leadOf({ laid, tank }: TankPlan, w: Writer): string {
  const baths = laid.filter(({ step, skipped }) => isBath(step) && !skipped)
  const one =
    baths.find(({ development }) => development !== null) ??
    baths.find(({ step }) => isBath(step) && step.neverPartFromNext) ??
    baths[0]
  if (one === undefined) return tank.recipe.name
  const temperature = plannedTemperature(tank, one, w)
  const at = { name: one.step.name, time: one.clockEnd - one.in }
  return temperature === null ? say('sheet.lead', at, w) : say('sheet.lead-at', { ...at, temperature }, w)
}

const ZERO = { width: 150, height: 34 } as const

/** The box for the time of day of zero, and how the sheet is used. */
function zeroPiece(fonts: Fonts, { left, width }: Column, w: Writer): Piece {
  const small = { left, width: ZERO.width }
  const rest = { left: left + ZERO.width + 18, width: width - ZERO.width - 18 }
  return beside([
    stacked([text(fonts, 'H2', say('sheet.zero', {}, w), STRONG, small), gap(4), box(small, ZERO.height)]),
    stacked([
      text(fonts, 'P', say('sheet.how', {}, w), { size: 12 }, rest),
      text(fonts, 'P', say('sheet.late', {}, w), { size: 12 }, rest),
    ]),
  ])
}

/** A heading at the left and its sentences beside it. */
export function headed(fonts: Fonts, heading: string, sentences: readonly string[], { left, width }: Column): Piece {
  const hang = 132
  const rest = { left: left + hang, width: width - hang }
  return stacked([
    gap(4),
    beside([
      text(fonts, 'H2', heading, STRONG, { left, width: hang - 10 }),
      stacked(sentences.map((sentence) => text(fonts, 'P', sentence, BODY, rest))),
    ]),
  ])
}

function scoreWarningSentence(warning: ScoreWarning, w: Writer): string {
  switch (warning.code) {
    case 'development':
      return warningSentence(warning.warning, w)
    case 'bath-differs':
    case 'bath-too-far':
      return say(`score.warning.${warning.code}`, warning, w)
    case 'outside-window':
    case 'colour-cast-likely':
      return say(`score.warning.${warning.code}`, warning, w)
    case 'chain-too-long':
      return say('score.warning.chain-too-long', warning, w)
    case 'fixer-finished':
      return say('score.warning.fixer-finished', warning, w)
  }
}
