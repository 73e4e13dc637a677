import { all, andThen, type Millilitres, ok, type Result, type Seconds } from '../../kernel/index.js'
import {
  type ClearingVerdict,
  capacityOf,
  clearingVerdict,
  FIXING_FAMILIES,
  type Fills,
  type FilmFixed,
  type FixerLeft,
  fixerLeft,
  rollsOf,
  type TwoBaths,
  twoBaths,
} from '../../science/index.js'
import type { FixAnswer, FixQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { pieceOf } from './film.js'

type Bath = NonNullable<FixQuestion['bath']>

/** Everything that was asked about a fixer, answered, with its sentences and its working. */
export function fixView(question: FixQuestion, writer: Writer): Result<FixAnswer> {
  const clearing = question.clearing === undefined ? ok(null) : verdictOf(question.clearing)
  if (!clearing.ok) return clearing
  const left = question.bath === undefined ? ok(null) : leftOf(question.bath, question.clearing)
  if (!left.ok) return left
  const pair = question.first_bath === undefined ? ok(null) : twoBaths(question.first_bath, clearing.value ?? undefined)
  if (!pair.ok) return pair
  const parts = [
    clearing.value && clearingWords(question.clearing as Clearing, clearing.value, writer),
    left.value && leftWords(question.bath as Bath, left.value, writer),
    pair.value && pairWords(question.first_bath ?? [], pair.value, writer),
  ].filter((part) => part !== null)
  return ok({
    clearing: clearing.value && clearingBody(clearing.value),
    left: left.value && leftBody(left.value),
    two_baths: pair.value && { ...pair.value, because: [...pair.value.because], left: [...pair.value.left] },
    sentences: parts.flatMap(({ sentences }) => sentences),
    working: parts.flatMap(({ working }) => working),
  })
}

type Clearing = NonNullable<FixQuestion['clearing']>
interface Words {
  readonly sentences: string[]
  readonly working: WorkingLine[]
}

const verdictOf = ({ fresh_s, now_s, family }: Clearing) =>
  clearingVerdict(fresh_s as Seconds, now_s as Seconds, family)

const clearingBody = ({ fixFor, grown, verdict, finishedAt }: ClearingVerdict) => ({
  fix_for_s: fixFor,
  grown,
  verdict,
  finished_at_s: finishedAt,
})

function clearingWords({ now_s, family }: Clearing, found: ClearingVerdict, writer: Writer): Words {
  const { multiple } = FIXING_FAMILIES[family]
  const { grown, finishedAt } = found
  const usable = [
    say('fix.for', { time: found.fixFor, multiple, now: now_s as Seconds }, writer),
    say('fix.usable', { grown, at: finishedAt }, writer),
  ]
  return {
    sentences: found.verdict === 'usable' ? usable : [say('fix.finished', { grown }, writer)],
    working: [
      {
        line: say('fix.working.multiple', { multiple, family }, writer),
        source: say('fix.source.multiple', {}, writer),
      },
      { line: say('fix.usable', { grown, at: finishedAt }, writer), source: say('fix.source.twice', {}, writer) },
    ],
  }
}

export interface Left extends FixerLeft {
  readonly fixed: readonly FilmFixed[]
}

/** What is left in a bath, and the film it was counted from. */
export function leftOf(bath: Bath, clearing: FixQuestion['clearing']): Result<Left> {
  const fixed = all(bath.film.map(fixedOf))
  if (!fixed.ok) return fixed
  const { silver_limit_g_per_l: silverLimit, silver, bottle } = bath
  const tests = bath.tests ?? (clearing && aloneTest(clearing, fixed.value))
  const found = fixerLeft({
    kind: bath.kind,
    volume: bath.volume_ml as Millilitres,
    rollsPerLitre: bath.rolls_per_litre,
    fixed: fixed.value,
    ...(silverLimit === undefined ? {} : { silverLimit }),
    ...(silver === undefined ? {} : { film: { gramsPerM2: silver.g_per_m2, share: silver.share } }),
    ...(tests === undefined ? {} : { tests: testsOf(tests) }),
    ...(bottle === undefined ? {} : { fills: fillsOf(bottle) }),
  })
  return found.ok ? ok({ ...found.value, fixed: fixed.value }) : found
}

const fixedOf = (film: Bath['film'][number]): Result<FilmFixed> =>
  andThen(rollsOf([pieceOf(film)]), ({ exact }) =>
    ok({
      rolls: exact,
      family: film.family,
      ...(film.capacity === undefined ? {} : { capacity: film.capacity }),
    }),
  )

/** A clearing test without a list is one test, after all that the bath has met. */
const aloneTest = ({ fresh_s, now_s }: Clearing, fixed: readonly FilmFixed[]): NonNullable<Bath['tests']> => ({
  fresh_s,
  made: [{ rolls: fixed.reduce((sum, { rolls }) => sum + rolls, 0), clearing_s: now_s }],
})

const testsOf = ({ fresh_s, made }: NonNullable<Bath['tests']>) => ({
  fresh: fresh_s as Seconds,
  made: made.map(({ rolls, clearing_s }) => ({ rolls, clearing: clearing_s as Seconds })),
})

/** What no bottle can be the science refuses, as with all numbers here. */
const fillsOf = ({ holds_ml, fill_ml, rolls_per_fill, lost_ml }: NonNullable<Bath['bottle']>): Fills => ({
  inBottle: holds_ml as Millilitres,
  fill: fill_ml as Millilitres,
  rollsPerFill: rolls_per_fill,
  lost: lost_ml as Millilitres,
})

const leftBody = ({ whole, decides, by, taken, carries, silver, silverLimit, trend }: FixerLeft) => ({
  rolls: whole,
  decides,
  by,
  taken,
  carries,
  silver_g_per_l: silver,
  silver_limit_g_per_l: silverLimit,
  trend: trend && { ends_at_rolls: trend.endsAt, low: trend.low, high: trend.high, tests: trend.tests },
})

function leftWords(bath: Bath, left: Left, writer: Writer): Words {
  const { whole, silver, silverLimit, trend, noTrend } = left
  return {
    sentences: [
      say('fix.left', { ordinary: whole.ordinary, slow: whole.tabular }, writer),
      decidesWords(left, writer),
      ...(trend === null || left.by.tests === 0 ? [] : [say('fix.trend', trend, writer)]),
      ...(noTrend === null ? [] : [noTrend.sentence]),
      say('fix.silver-now', { ...silver, limit: silverLimit }, writer),
    ],
    working: [
      {
        line: say(
          'fix.working.capacity',
          { perLitre: bath.rolls_per_litre, litres: bath.volume_ml / 1000, carries: left.carries },
          writer,
        ),
        source: say('fix.source.capacity', {}, writer),
      },
      ...left.fixed.map((film) => takenLine(film, writer)),
      ...(['count', 'silver', 'tests', 'volume'] as const).map((by) => ({
        line: say('fix.working.left-by', { by, left: left.by[by] }, writer),
        source: say(`fix.source.${by}`, {}, writer),
      })),
    ],
  }
}

function decidesWords({ decides, rolls, taken, carries, silverLimit }: Left, writer: Writer): string {
  if (decides === 'count') return say('fix.decides.count', { taken, carries }, writer)
  if (decides === 'silver') return say('fix.decides.silver', { left: rolls, limit: silverLimit }, writer)
  return say(`fix.decides.${decides}`, { left: rolls }, writer)
}

function takenLine(film: FilmFixed, writer: Writer): WorkingLine {
  const capacity = capacityOf(film)
  const source = film.capacity !== undefined ? 'own-family' : film.family === 'ordinary' ? 'ordinary' : 'family'
  return {
    line: say('fix.working.taken', { ...film, capacity, taken: film.rolls / capacity }, writer),
    source: say(`fix.source.${source}`, {}, writer),
  }
}

function pairWords(film: NonNullable<FixQuestion['first_bath']>, pair: TwoBaths, writer: Writer): Words {
  return {
    sentences: [say(`fix.${pair.verdict}`, pair, writer)],
    working: film.map((one) => ({
      line: say('fix.working.kind', one, writer),
      source: say('fix.source.two-baths', {}, writer),
    })),
  }
}
