import { type Failed, failed, problem } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { WASHING_LIMITS, type WashStep } from './definition.js'
import type { WashAsked } from './estimate.js'
import { timeOf, waterUsed } from './left.js'
import { WET_FILM, wrongWetFilm } from './wet-film.js'

const { fixer: FIXER, temperature: TEMPERATURE, steps: STEPS, rolls: ROLLS, halfLife: HALF_LIFE } = WASHING_LIMITS
const { volume: VOLUME, time: TIME, flow: FLOW } = WASHING_LIMITS

const ALL_TIME = { low: 0, high: 604_800 }
const ALL_WATER = { low: 0, high: 1_000_000 }

/** Null, or the first thing about a wash that cannot be. */
export function wrong({ steps, fixer, rolls, temperature, halfLife, wet = WET_FILM }: WashAsked): Failed | null {
  if (steps.length === 0) return failed(problem('washing.no-steps', {}))
  if (steps.length > STEPS)
    return failed(
      problem('washing.bad-value', { what: 'A number of steps', value: steps.length, low: 1, high: STEPS }, 'steps'),
    )
  for (const step of steps) {
    const refused = wrongStep(step)
    if (refused) return refused
  }
  return (
    refusedOutside('washing.bad-value', 'Thiosulfate in the fixer, in g/L,', fixer, FIXER, 'fixer') ??
    refusedOutside('washing.bad-value', 'Rolls', rolls, ROLLS, 'rolls') ??
    refusedOutside('washing.bad-value', 'The water in °C', temperature, TEMPERATURE, 'temperature') ??
    wrongWetFilm(wet, rolls) ??
    refusedOutside('washing.bad-value', 'All the time in seconds', timeOf(steps), ALL_TIME, 'steps') ??
    refusedOutside(
      'washing.bad-value',
      'All the water in millilitres a roll',
      waterUsed(steps) / Math.min(1, rolls),
      ALL_WATER,
      'steps',
    ) ??
    (halfLife === undefined
      ? null
      : refusedOutside('washing.bad-value', 'A half-life in seconds', halfLife, HALF_LIFE, 'halfLife'))
  )
}

const wrongStep = (step: WashStep): Failed | null =>
  refusedOutside('washing.bad-value', 'A volume in millilitres', step.volume, VOLUME, 'volume') ??
  refusedOutside('washing.bad-value', 'A time in seconds', step.time, TIME, 'time') ??
  (step.kind === 'running'
    ? refusedOutside('washing.bad-value', 'A flow in millilitres a minute', step.perMinute, FLOW, 'perMinute')
    : null)
