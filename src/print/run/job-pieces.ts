import { type Score, seriesOf } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { beside, box, type Column, gap, type Piece, rule, stacked, text, textAtRight } from '../setting/pieces.js'
import { runOn, type Stretch } from '../setting/run-on.js'
import { type Cell, cells } from './cells.js'
import { type JobTexts, jobTexts, openingOf, turnedOn, turnsHeading } from './job-texts.js'
import { otherwiseCells } from './otherwise.js'
import { type Entry, entriesOf, momentOf, type TankJob } from './timeline.js'

/** Sizes in points: what is read from a step away, from the hand, and what is small. */
const SIZE = { moment: 24, heading: 13, todo: 12, small: 12 } as const
const SPACE = { over: 5, under: 5, columns: 12, boxes: 6 } as const
const BOX = { height: 20, answer: 54 } as const
/** Least width of the column of moments with its two boxes; a run of hours is given more. */
const MOMENTS = 116

interface Columns {
  readonly whole: Column
  readonly moment: Column
  /** The two boxes under a moment: the time of day it is planned for, and when it was done. */
  readonly clock: Column
  readonly done: Column
  readonly text: Column
}

interface Setter {
  readonly fonts: Fonts
  readonly w: Writer
  readonly several: boolean
  readonly columns: Columns
}

/** Every job of a score, one row each; turns in rows of their moments. */
export function jobPieces(fonts: Fonts, score: Score, whole: Column, w: Writer): Piece[] {
  const setter = { fonts, w, several: score.tanks.length > 1, columns: columnsOf(fonts, score, whole, w) }
  const above = columnHeads(setter)
  const rows = entriesOf(score).flatMap((entry) => entryPieces(setter, entry))
  return [{ ...above, withNext: true }, ...rows.map((piece) => ({ ...piece, above }))]
}

function columnsOf(fonts: Fonts, score: Score, whole: Column, w: Writer): Columns {
  const moments = score.tanks.flatMap(({ tank, jobs }) => jobs.map(({ start }) => w.time(tank.offset + start)))
  const widest = Math.max(MOMENTS, ...moments.map((moment) => Math.ceil(fonts.width(moment, 'strong', SIZE.moment))))
  const right = whole.left + whole.width
  const left = whole.left + widest + SPACE.columns
  const half = (widest - SPACE.boxes) / 2
  return {
    whole,
    moment: { left: whole.left, width: widest },
    clock: { left: whole.left, width: half },
    done: { left: whole.left + half + SPACE.boxes, width: half },
    text: { left, width: right - left },
  }
}

function columnHeads({ fonts, w, columns }: Setter): Piece {
  const quiet = { size: SIZE.small, ink: 'quiet' } as const
  return stacked([
    beside([
      text(fonts, 'P', say('sheet.clock', {}, w), quiet, columns.clock),
      text(fonts, 'P', say('sheet.done', {}, w), quiet, columns.done),
      text(fonts, 'P', say('sheet.jobs', {}, w), quiet, columns.text),
    ]),
    gap(4),
  ])
}

function entryPieces(setter: Setter, entry: Entry): Piece[] {
  if ('jobs' in entry)
    return entry.kind === 'turns' ? turnsPieces(setter, entry.jobs) : [refillsPiece(setter, entry.jobs)]
  if (entry.kind === 'turned-on') return [turnedOnPiece(setter, entry.job)]
  const otherwise = otherwiseCells(setter.fonts, entry.job, setter.columns.text, setter.w)
  const row = jobPiece(setter, entry.job)
  return otherwise === null ? [row] : [{ ...row, withNext: true }, otherwise]
}

function jobPiece(setter: Setter, job: TankJob): Piece {
  const { fonts, w, several, columns } = setter
  const texts = jobTexts(job, several, w)
  const column = texts.asks === 'nothing' ? columns.text : narrowed(columns.text)
  const words = stacked([
    text(fonts, 'H2', texts.heading, { size: SIZE.heading, face: 'strong' }, column),
    runOn(fonts, 'P', sentencesOf(setter, texts), SIZE.todo, column),
  ])
  const row = beside([momentPiece(setter, job), words, ...answer(setter, texts.asks)])
  return stacked([rule(columns.whole, SPACE.over), row, gap(SPACE.under)])
}

/** When it is planned from zero, and under it a box for that moment's time of day and one for when it was done. */
const momentPiece = ({ w, columns }: Setter, job: TankJob): Piece =>
  stacked([
    textAtRight('P', w.time(momentOf(job)), { size: SIZE.moment, face: 'strong' }, columns.moment),
    gap(1),
    beside([box(columns.clock, BOX.height), box(columns.done, BOX.height)]),
  ])

/** Room at the right for what is written down beside the moment. */
const ANSWER = BOX.answer + SPACE.columns + 24
const narrowed = ({ left, width }: Column): Column => ({ left, width: width - ANSWER })

/** What to do, what to take care of, and why, in one paragraph: the cautions strong, the reason quiet. */
const sentencesOf = ({ w }: Setter, { todo, cautions, reason }: JobTexts): Stretch[] => [
  { words: todo },
  ...(cautions.length === 0 ? [] : [{ words: say('sheet.care', { cautions }, w), face: 'strong' } as const]),
  { words: reason, ink: 'quiet' },
]

/** At the right: what else is written down when it is done. */
function answer({ fonts, w, columns }: Setter, asks: JobTexts['asks']): Piece[] {
  if (asks === 'nothing') return []
  const small = { size: SIZE.small, ink: 'quiet' } as const
  const left = columns.text.left + columns.text.width - BOX.answer - 24
  const place = { left, width: BOX.answer }
  const [above, behind] =
    asks === 'clearing'
      ? [say('sheet.clearing', {}, w), '']
      : [say('sheet.column.measured', {}, w), say('sheet.degrees', {}, w)]
  const unit = stacked([gap(3), text(fonts, 'P', behind, small, { left: left + BOX.answer + 5, width: 19 })])
  const boxed = behind === '' ? box(place, BOX.height) : beside([box(place, BOX.height), unit])
  return [stacked([text(fonts, 'P', above, small, place), gap(1), boxed])]
}

/** Fills of the same that follow one another, in one row: the moment of each, its two boxes, and how it is turned. */
function refillsPiece(setter: Setter, jobs: readonly TankJob[]): Piece {
  const { fonts, w, several, columns } = setter
  const { whole, moment } = columns
  const texts = jobs.map((job) => jobTexts(job, several, w))
  const perRow = Math.max(1, Math.floor((whole.width + SPACE.columns) / (moment.width + SPACE.columns)))
  const rows = Array.from({ length: Math.ceil(jobs.length / perRow) }, (_, i) =>
    jobs.slice(i * perRow, (i + 1) * perRow),
  )
  const shift = (column: Column, i: number): Column => ({
    ...column,
    left: column.left + i * (moment.width + SPACE.columns),
  })
  const fill = (job: TankJob, i: number): Piece => {
    const own = { ...columns, moment: shift(moment, i), clock: shift(columns.clock, i), done: shift(columns.done, i) }
    const turned = openingOf(job, w)
    return stacked([
      momentPiece({ ...setter, columns: own }, job),
      text(fonts, 'P', turned, { size: SIZE.small }, own.moment),
    ])
  }
  const series = seriesOf(jobs[0]?.one.step.name ?? '')
  return stacked([
    rule(whole, SPACE.over),
    text(fonts, 'H2', say('sheet.job.refill', { name: series }, w), { size: SIZE.heading, face: 'strong' }, whole),
    text(fonts, 'P', say('sheet.do.refills', { count: jobs.length }, w), { size: SIZE.todo }, whole),
    ...rows.map((row) => beside(row.map(fill))),
    text(fonts, 'P', texts.map(({ reason }) => reason).join(' '), { size: SIZE.small, ink: 'quiet' }, whole),
    gap(SPACE.under),
  ])
}

function turnedOnPiece({ fonts, w, several, columns }: Setter, at: TankJob): Piece {
  const words = turnedOn(at, at.offset + at.job.end, several, w)
  return stacked([text(fonts, 'P', words, { size: SIZE.todo }, columns.text), gap(SPACE.under)])
}

/** So many moments make a piece; more than that go over several, so that they fit any page. */
const TURNS = 36

const turnsPieces = (setter: Setter, jobs: readonly TankJob[]): Piece[] =>
  Array.from({ length: Math.ceil(jobs.length / TURNS) }, (_, i) =>
    turnsPiece(setter, jobs.slice(i * TURNS, (i + 1) * TURNS)),
  )

function turnsPiece({ fonts, w, several, columns }: Setter, jobs: readonly TankJob[]): Piece {
  const moments = jobs.map((job): Cell => {
    const moment = w.time(momentOf(job))
    return { head: several ? `${job.plan.tank.tank}\u00a0${moment}` : moment, under: null }
  })
  return stacked([
    beside([
      text(fonts, 'P', turnsHeading(jobs, several, w), { size: SIZE.todo }, columns.moment),
      cells(fonts, moments, columns.text),
    ]),
    gap(SPACE.under),
  ])
}
