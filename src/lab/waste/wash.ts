import type { Celsius, Millilitres, Result, Seconds } from '../../kernel/index.js'
import { ok } from '../../kernel/index.js'
import {
  clearingVerdict,
  estimateWash,
  type FixerVerdict,
  firstFill,
  fixerByClearing,
  fixerByLeft,
  HALF_LIFE,
  partAfterRinse,
  RESIDUE_LIMIT,
  type SpotReading,
  type WashAsked,
  type WashEstimate,
  type WashStep,
  WET_FILM,
} from '../../science/index.js'
import type { WashAnswer, WashQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { leftOf } from './fixer.js'

/** What a wash comes to, with its sentences and its working. */
export function washView(question: WashQuestion, writer: Writer): Result<WashAnswer> {
  const after = fixerVerdict(question.after)
  return after.ok ? washAfter(question, after.value, writer) : after
}

/** A wash without what is said of the fixer before it. */
export type Washed = Omit<WashQuestion, 'after'>

/** The same after a fixer whose verdict is known from elsewhere. */
export function washAfter(question: Washed, after: FixerVerdict, writer: Writer): Result<WashAnswer> {
  const asked = askedOf(question, after)
  const found = estimateWash(asked)
  if (!found.ok) return found
  const rinse = rinseWords(question, asked, writer)
  if (!rinse.ok) return rinse
  const { verdict, floor } = found.value
  return ok({
    ...bodyOf(found.value),
    floor: { time_s: floor.seconds, changes: floor.changes, met: floor.met, by_own_test: floor.byOwnTest },
    verdict: verdict.says,
    because: verdict.says === 'cannot-be-judged' ? verdict.because : null,
    sentences: [...sentencesOf(found.value, writer), ...rinse.value],
    working: workingOf(question, found.value, writer),
  })
}

/** A clearing test speaks first; a bath is judged by what it met, this film counted in. */
function fixerVerdict(after: WashQuestion['after']): Result<FixerVerdict> {
  if (after?.clearing !== undefined) {
    const { fresh_s, now_s, family } = after.clearing
    const test = clearingVerdict(fresh_s as Seconds, now_s as Seconds, family)
    if (!test.ok) return test
    const verdict = fixerByClearing(test.value)
    if (verdict.state === 'finished' || after.bath === undefined) return ok(verdict)
  }
  if (after?.bath === undefined) return ok({ state: 'unknown' })
  const left = leftOf(after.bath, after.clearing)
  return left.ok ? ok(fixerByLeft(left.value)) : left
}

const stepOf = (step: WashQuestion['steps'][number]): WashStep => {
  const both = { volume: step.volume_ml as Millilitres, time: step.time_s as Seconds }
  return step.kind === 'change'
    ? { kind: 'change', ...both, moved: step.moved }
    : { kind: 'running', ...both, perMinute: step.ml_per_min as Millilitres }
}

const readingOf = (made: WashQuestion['tests'][number]): SpotReading => ({
  test: made.test,
  passed: made.passed,
  washed: {
    scheme: made.scheme,
    time: made.time_s as Seconds,
    changes: made.changes,
    temperature: made.temperature_c as Celsius,
    waterPerRoll: made.water_ml_per_roll as Millilitres,
    hardened: made.hardened,
  },
})

function askedOf(question: Washed, after: FixerVerdict): WashAsked {
  const { half_life_s: halfLife, wet } = question
  return {
    after,
    steps: question.steps.map(stepOf),
    fixer: question.fixer_g_per_l,
    rolls: question.rolls,
    temperature: question.temperature_c as Celsius,
    rinse: question.rinse,
    hardened: question.hardened,
    washAid: question.wash_aid,
    readings: question.tests.map(readingOf),
    ...(halfLife === undefined ? {} : { halfLife: halfLife as Seconds }),
    ...(wet === undefined ? {} : { wet: { emulsion: wet.emulsion_ml, surface: wet.surface_ml, walls: wet.walls_ml } }),
  }
}

const bodyOf = (found: WashEstimate) => ({
  residue_g_per_m2: found.residue,
  mg_per_roll: found.perRoll,
  limit_g_per_m2: RESIDUE_LIMIT.gramsPerM2,
  margin: found.margin,
  left: {
    water: { mg_per_roll: found.left.water.milligramsPerRoll, part: found.left.water.part },
    diffusion: { mg_per_roll: found.left.diffusion.milligramsPerRoll, part: found.left.diffusion.part },
  },
  slower: found.slower,
  scheme: found.scheme,
  water_ml: found.water,
  time_s: found.time,
  half_life_s: found.halfLife,
  diffusion_needs_s: found.diffusionNeeds,
  factors: found.factors.map(({ name, factor }) => ({ name, factor })),
})

function sentencesOf(found: WashEstimate, writer: Writer): string[] {
  const { verdict, residue, perRoll, margin, floor } = found
  return [
    verdict.says === 'cannot-be-judged'
      ? say('wash.cannot', verdict, writer)
      : verdict.says === 'enough'
        ? say('wash.enough', {}, writer)
        : say('wash.longer', { byFloor: !floor.met, byResidue: margin < 1 }, writer),
    say('wash.residue', { residue, perRoll, margin, limit: RESIDUE_LIMIT.gramsPerM2 }, writer),
    say('wash.slower', { slower: found.slower, needs: found.diffusionNeeds }, writer),
    floor.byOwnTest
      ? say('wash.own-floor', { time: floor.seconds }, writer)
      : say('wash.floor', { time: floor.seconds, changes: floor.changes }, writer),
    say('wash.water', { water: found.water, time: found.time }, writer),
  ]
}

/** What rinsing first would save, said where nothing was rinsed. */
function rinseWords({ rinse }: Washed, asked: WashAsked, writer: Writer): Result<string[]> {
  const [first] = asked.steps
  if (rinse !== 'nothing' || first === undefined) return ok([])
  const wet = asked.wet ?? WET_FILM
  const part = partAfterRinse('film-and-walls', asked.rolls, wet)
  if (!part.ok) return part
  const carried = (wet.emulsion + wet.surface) * asked.rolls + wet.walls
  const fill = firstFill(asked.fixer * carried, first.volume, part.value)
  if (!fill.ok) return fill
  return ok([say('wash.rinse-first', { unrinsed: fill.value.gramsPerLitre, rinsed: fill.value.rinsed }, writer)])
}

function workingOf(question: Washed, found: WashEstimate, writer: Writer): WorkingLine[] {
  const { left, factors, floor } = found
  const wet = question.wet
  const film = wet === undefined ? WET_FILM.emulsion + WET_FILM.surface : wet.emulsion_ml + wet.surface_ml
  const { fixer_g_per_l: fixer, half_life_s: own } = question
  const from = (source: string) => say('wash.source.of', { source }, writer)
  return [
    {
      line: say('wash.working.held', { fixer, film, mg: fixer * film }, writer),
      source: `${from(wet === undefined ? WET_FILM.source : say('wash.source.stated', {}, writer))}; ${say('wash.source.fixer', {}, writer)}`,
    },
    {
      line: say('wash.working.water', { part: left.water.part, mg: left.water.milligramsPerRoll }, writer),
      source: say('wash.source.water', {}, writer),
    },
    ...factors.map(({ name, factor, source }) => ({
      line: say('wash.working.factor', { name, factor }, writer),
      source: from(source),
    })),
    {
      line: say('wash.working.half-life', { halfLife: found.halfLife }, writer),
      source: own === undefined ? from(HALF_LIFE.source) : say('wash.source.stated', {}, writer),
    },
    {
      line: say('wash.working.diffusion', { part: left.diffusion.part, mg: left.diffusion.milligramsPerRoll }, writer),
      source: say('wash.source.diffusion', {}, writer),
    },
    {
      line: say('wash.working.together', { mg: found.perRoll }, writer),
      source: say('wash.source.together', {}, writer),
    },
    {
      line: say('wash.working.limit', { limit: RESIDUE_LIMIT.gramsPerM2 }, writer),
      source: from(RESIDUE_LIMIT.source),
    },
    {
      line: say('wash.floor', { time: floor.seconds, changes: floor.changes }, writer),
      source: from(floor.source),
    },
  ]
}
