import type { Seconds } from '../../kernel/index.js'
import { endsOf, slopeBeyond } from './curve.js'
import type { DevelopmentWarning, TimeBasis } from './definition.js'
import { slopeOf, warmth } from './law.js'
import { isOutside, isUnder, LIMITS } from './limits.js'

/** What is to be said of a stretch of temperatures: one temperature, or the coldest and warmest of a course. */
export function temperatureWarnings(basis: TimeBasis, coldest: number, warmest: number): DevelopmentWarning[] {
  if (basis.kind === 'fixed') return colourCast(basis, coldest, warmest)
  if (basis.kind === 'single-bath') return [{ code: 'single-bath-sheet-only' }]
  return [...beyondSheet(basis, coldest, warmest), ...outsidePractice(coldest, warmest)]
}

function colourCast({ window }: TimeBasis, coldest: number, warmest: number): DevelopmentWarning[] {
  if (window === null || !(isOutside(coldest, window) || isOutside(warmest, window))) return []
  return [{ code: 'colour-cast-likely', ...window }]
}

function beyondSheet(basis: TimeBasis, coldest: number, warmest: number): DevelopmentWarning[] {
  const { first, last } = endsOf(basis)
  const [from, to] = [first.temperature, last.temperature]
  if (!isOutside(coldest, { from, to }) && !isOutside(warmest, { from, to })) return []
  return [{ code: 'beyond-sheet', by: Math.max(from - coldest, warmest - to), from, to }]
}

function outsidePractice(coldest: number, warmest: number): DevelopmentWarning[] {
  const { from, to } = LIMITS.practice
  if (!isOutside(coldest, { from, to }) && !isOutside(warmest, { from, to })) return []
  return [{ code: 'outside-practice', from, to }]
}

/** A black-and-white time too short to develop evenly. */
export function shortTime(basis: TimeBasis, time: Seconds): DevelopmentWarning[] {
  const limit = LIMITS.shortestTime.time
  return basis.kind === 'ordinary' && isUnder(time, limit) ? [{ code: 'short-time', time, limit }] : []
}

/** Whether an answer at this temperature leans on an assumed coefficient. */
export const leansOnAssumption = (basis: TimeBasis, temperature: number): boolean => {
  const { first, last } = endsOf(basis)
  const outside = isOutside(temperature, { from: first.temperature, to: last.temperature })
  return basis.kind === 'ordinary' && basis.coefficient.origin === 'assumption' && outside
}

/** The times that the low and the high end of the assumed coefficient give in place of `time`. */
export function assumedCoefficient(basis: TimeBasis, temperature: number, time: Seconds): DevelopmentWarning[] {
  if (!leansOnAssumption(basis, temperature)) return []
  const { value, low, high } = basis.coefficient
  const { first, last } = endsOf(basis)
  const end = temperature < first.temperature ? first : last
  const distance = warmth(basis.law, temperature) - warmth(basis.law, end.temperature)
  const times = [low, high].map((other) => time * Math.exp((slopeOf(basis.law, other) - slopeBeyond(basis)) * distance))
  const [shortest, longest] = [Math.min(...times) as Seconds, Math.max(...times) as Seconds]
  return [{ code: 'assumed-coefficient', value, low, high, shortest, longest }]
}
