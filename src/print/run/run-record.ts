import {
  type Score,
  type StaveInput,
  type TankFollowing,
  type TankPlan,
  type TankState,
  typedInAt,
} from '../../score/index.js'
import { say, type Writer, writeDay, writeMinuteOfDay, writerFor, writeTimeOfDay } from '../../words/index.js'
import { columnOf, firstPageRoom, flow } from '../setting/flow.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import type { Pages } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { type Column, gap, type Piece, rule, stacked, text } from '../setting/pieces.js'
import type { RunRecordInput } from './definition.js'
import { headed, leadPiece } from './heading.js'
import { notes } from './notes.js'
import { deviationSentences, noteSentences, readingSentences } from './record-sentences.js'
import { isReckoned, recordTable } from './record-table.js'
import { scoreFigure } from './score-figure.js'

/** What became of a run, printed: the score with its real instants, development against plan, deviations. Tagged PDF. */
export const runRecord = (input: RunRecordInput): Promise<Uint8Array> =>
  paintPages(runRecordPages(input, measuringFonts()), input.printedAt)

/** The record laid out, not yet painted. */
export function runRecordPages(input: RunRecordInput, fonts: Fonts): Pages {
  const { following, score, paper, title, units } = input
  if (following.doubts.length > 0) throw new Error('The record of a run was asked for while its clock is in doubt.')
  const w = writerFor(units)
  const column = columnOf(paper)
  const became: Score = { ...score, tanks: following.tanks.map((tank) => placed(tank, following.tanks[0])) }
  const staves = became.tanks.map((plan, i) => staveOf(plan, following.tanks[i] as TankFollowing, score.tanks[i], w))
  const before = [
    text(fonts, 'H1', title, { size: 22, face: 'strong' }, column),
    gap(4),
    ...following.tanks.flatMap((tank) => headPieces(fonts, input, tank, column, w)),
    gap(8),
  ]
  const after = [
    gap(6),
    ...following.tanks.flatMap((tank, i) =>
      tankPieces(fonts, input, { tank, began: score.tanks[i], state: input.state.tanks[i] }, column, w),
    ),
    verdictPiece(fonts, input, column, w),
  ]
  const last = notes(fonts, column, w)
  const height = firstPageRoom(paper) - stacked([...before, ...after]).height - last.least
  const pieces = [...before, scoreFigure(title, became, staves, { ...column, height }, w), ...after]
  return flow(fonts, pieces, {
    title: say('record.title', { title }, w),
    paper,
    foot: say('sheet.foot', { today: input.today }, w),
    last,
    pageOf: (page, pages) => say('sheet.page', { page, pages }, w),
  })
}

/** A tank's plan as it became, at its real distance from the first tank. */
function placed({ plan, zero }: TankFollowing, first: TankFollowing | undefined): TankPlan {
  return { ...plan, tank: { ...plan.tank, offset: first === undefined ? 0 : (zero - first.zero) / 1000 } }
}

function staveOf(plan: TankPlan, tank: TankFollowing, began: TankPlan | undefined, w: Writer): StaveInput {
  const { developed, jobs } = tank
  const bath = developed === null ? null : plan.laid[developed.index]
  return {
    plan,
    began: began ?? null,
    states: new Map(jobs.map(({ job, state }) => [job.id, state])),
    next: null,
    now: nowOf(tank),
    label: tank.tank,
    note: '',
    band: developed === null || bath === null ? [] : [bath?.step.name ?? '', w.percent(developed.fraction)],
  }
}

/** Where a run that goes on has got to, seconds from its zero; null once it is over. */
function nowOf({ phase, index, timeLeft, plan, next }: TankFollowing): number | null {
  if (phase !== 'running') return null
  const current = index === null ? undefined : plan.laid[index]
  return current === undefined || timeLeft === null ? (next?.job.start ?? null) : current.due - timeLeft
}

function headPieces(fonts: Fonts, input: RunRecordInput, tank: TankFollowing, column: Column, w: Writer): Piece[] {
  const { zone, loads } = input
  const { recipe } = tank.plan.tank
  const { developed, zero, phase } = tank
  const begun = { day: writeDay(zero, zone), at: writeTimeOfDay(zero, zone), zone }
  const sentences = [
    developed === null ? say('record.fixed', {}, w) : say('record.band', developed, w),
    phase === 'not-started' ? say('record.not-begun', {}, w) : say('record.begun', begun, w),
    ...(phase === 'running' ? [say('record.going-on', {}, w)] : []),
    ...fromPaper(input, w),
  ]
  const load = say('sheet.tank', { tank: tank.tank, load: loads[tank.tank] ?? '' }, w)
  return [
    text(fonts, 'H2', load, { size: 15, face: 'strong' }, column),
    leadPiece(
      fonts,
      developed === null ? say('record.lead-list', recipe, w) : say('record.lead', developed, w),
      input.following.tanks.length > 1,
      column,
    ),
    ...sentences.map((sentence) => text(fonts, 'P', sentence, { size: 13 }, column)),
    gap(4),
  ]
}

/** When it was typed in, for a run that was done on paper. */
function fromPaper({ state, zone }: RunRecordInput, w: Writer): string[] {
  const typed = typedInAt(state)
  if (typed === undefined) return []
  return [say('record.from-paper', { day: writeDay(typed, zone), at: writeMinuteOfDay(typed, zone) }, w)]
}

interface Told {
  readonly tank: TankFollowing
  readonly began: TankPlan | undefined
  readonly state: TankState | undefined
}

function tankPieces(fonts: Fonts, { zone, following }: RunRecordInput, told: Told, column: Column, w: Writer): Piece[] {
  const { tank, began, state } = told
  const several = following.tanks.length > 1
  const heading = several
    ? [text(fonts, 'H2', say('sheet.tank', { tank: tank.tank, load: '' }, w), HEADING, column)]
    : []
  const why = isReckoned(tank) ? [text(fonts, 'P', say('record.reckoned-why', {}, w), SMALL, column)] : []
  const readings = readingSentences(tank, zone, w)
  const written = state === undefined ? [] : noteSentences(state, zone, w)
  return [
    stacked([...heading, section(fonts, say('record.deviations', {}, w), deviationSentences(tank, zone, w), column)]),
    stacked([rule(column, 8), recordTable(fonts, tank, began ?? tank.plan, zone, column, w), ...why, gap(8)]),
    ...(readings.length === 0 ? [] : [section(fonts, say('record.readings', {}, w), readings, column)]),
    ...(written.length === 0 ? [] : [section(fonts, say('record.noted-then', {}, w), written, column)]),
  ]
}

const HEADING = { size: 15, face: 'strong' } as const
const SMALL = { size: 12, ink: 'quiet' } as const

const section = (fonts: Fonts, heading: string, sentences: readonly string[], column: Column): Piece =>
  stacked([rule(column, 4), headed(fonts, heading, sentences, column), gap(8)])

function verdictPiece(fonts: Fonts, { verdict, note }: RunRecordInput, column: Column, w: Writer): Piece {
  const sentences = [verdict ?? say('record.no-verdict', {}, w), ...(note === '' ? [] : [note])]
  return section(fonts, say('record.verdict', {}, w), sentences, column)
}
