import type { Score } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { beside, box, type Column, gap, type Piece, rule, stacked, text, textAtRight } from '../setting/pieces.js'
import { type Cell, cells } from './cells.js'
import { type JobTexts, jobTexts, turnedOn, turnsHeading } from './job-texts.js'
import { otherwiseCells } from './otherwise.js'
import { type Entry, entriesOf, momentOf, type TankJob } from './timeline.js'

/** Sizes in points: what is read from a step away, from the hand, and what is small. */
const SIZE = { moment: 24, heading: 15, todo: 13, small: 12 } as const
const SPACE = { over: 9, under: 9, columns: 16 } as const
const BOX = { height: 22, done: 76, temperature: 54 } as const
/** Least width of the column of moments; a run of hours is given more. */
const MOMENTS = 78

interface Columns {
  readonly whole: Column
  readonly moment: Column
  readonly text: Column
  readonly done: Column
  /** From the texts to the right edge. */
  readonly wide: Column
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
  return {
    whole,
    moment: { left: whole.left, width: widest },
    text: { left, width: right - BOX.done - SPACE.columns - left },
    done: { left: right - BOX.done, width: BOX.done },
    wide: { left, width: right - left },
  }
}

function columnHeads({ fonts, w, columns }: Setter): Piece {
  const quiet = { size: SIZE.small, ink: 'quiet' } as const
  return stacked([
    beside([
      textAtRight('P', say('sheet.moments', {}, w), quiet, columns.moment),
      text(fonts, 'P', say('sheet.jobs', {}, w), quiet, columns.text),
      text(fonts, 'P', say('sheet.done', {}, w), quiet, columns.done),
    ]),
    gap(4),
  ])
}

function entryPieces(setter: Setter, entry: Entry): Piece[] {
  if (entry.kind === 'turns') return turnsPieces(setter, entry.jobs)
  if (entry.kind === 'turned-on') return [turnedOnPiece(setter, entry.job)]
  const otherwise = otherwiseCells(setter.fonts, entry.job, setter.columns.wide, setter.w)
  const row = jobPiece(setter, entry.job)
  return otherwise === null ? [row] : [{ ...row, withNext: true }, otherwise]
}

function jobPiece(setter: Setter, job: TankJob): Piece {
  const { fonts, w, several, columns } = setter
  const { moment, whole } = columns
  const texts = jobTexts(job, several, w)
  const planned = stacked([
    textAtRight('P', w.time(momentOf(job)), { size: SIZE.moment, face: 'strong' }, moment),
    gap(2),
    box(moment, BOX.height),
  ])
  const words = stacked([
    gap(3),
    text(fonts, 'H2', texts.heading, { size: SIZE.heading, face: 'strong' }, columns.text),
    text(fonts, 'P', texts.todo, { size: SIZE.todo }, columns.text),
    ...(texts.cautions.length === 0 ? [] : [gap(2), careText(setter, texts.cautions)]),
    gap(2),
    text(fonts, 'P', texts.reason, { size: SIZE.small, ink: 'quiet' }, columns.text),
  ])
  const row = beside([planned, words, answers(setter, texts.asks)])
  return stacked([rule(whole, SPACE.over), row, gap(SPACE.under)])
}

const careText = ({ fonts, w, columns }: Setter, cautions: readonly string[]): Piece =>
  text(fonts, 'P', say('sheet.care', { cautions }, w), { size: SIZE.small, face: 'strong' }, columns.text)

/** At the right: when it was done, and what else is written down then. */
function answers({ fonts, w, columns: { done } }: Setter, asks: JobTexts['asks']): Piece {
  const at = [gap(5), box(done, BOX.height), gap(6)]
  if (asks === 'nothing') return stacked(at)
  const small = { size: SIZE.small, ink: 'quiet' } as const
  if (asks === 'clearing')
    return stacked([...at, text(fonts, 'P', say('sheet.clearing', {}, w), small, done), box(done, BOX.height)])
  const unit = { left: done.left + BOX.temperature + 5, width: done.width - BOX.temperature - 5 }
  const degrees = stacked([gap(4), text(fonts, 'P', say('sheet.degrees', {}, w), small, unit)])
  return stacked([...at, beside([box({ ...done, width: BOX.temperature }, BOX.height), degrees])])
}

function turnedOnPiece({ fonts, w, several, columns }: Setter, at: TankJob): Piece {
  const words = turnedOn(at, at.offset + at.job.end, several, w)
  return stacked([text(fonts, 'P', words, { size: SIZE.todo }, columns.wide), gap(SPACE.under)])
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
    gap(1),
    text(fonts, 'P', turnsHeading(jobs, several, w), { size: SIZE.todo }, columns.wide),
    gap(2),
    cells(fonts, moments, columns.wide),
    gap(SPACE.under),
  ])
}
