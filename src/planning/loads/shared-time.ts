import { failed, ok, problem, type Result, type Seconds, seconds } from '../../kernel/index.js'

/** One film of a mixed tank: the time it wants, and how far from it the time may lie. */
export interface Wanted {
  readonly time: Seconds
  /** Largest departure allowed, as parts of the wanted time: 0.1 is ten per cent longer or shorter. */
  readonly tolerance: { readonly longer: number; readonly shorter: number }
}

export interface SharedTime {
  readonly time: Seconds
  /** For each film in the order given: served ÷ wanted − 1. Above 0 it gets more than it wants. */
  readonly departures: readonly number[]
}

/** Hands and clocks work in quarter minutes. */
const STEP_S = 15

/**
 * One time for films that want different ones: the time whose largest departure, as a part of the time wanted, is
 * smallest (the harmonic mean of the shortest and the longest: both then depart by as much), rounded to 15 s. Refused when that departs from any of
 * them by more than its tolerance; then they do not share a tank.
 */
export function sharedTime(films: readonly Wanted[]): Result<SharedTime> {
  const times = films.map((film) => film.time)
  const shortest = Math.min(...times)
  const longest = Math.max(...times)
  if (!(shortest > 0 && Number.isFinite(longest))) return failed(problem('loads.no-films', { count: films.length }))
  const time = seconds(Math.max(STEP_S, Math.round((2 * shortest * longest) / (shortest + longest) / STEP_S) * STEP_S))
  const departures = times.map((wanted) => time / wanted - 1)
  const strayed = films.findIndex((film, i) => beyond(departures[i] as number, film.tolerance))
  if (strayed === -1) return ok({ time, departures })
  const departs = `${((departures[strayed] as number) * 100).toFixed(1)} %`
  return failed(problem('loads.times-too-far-apart', { film: strayed + 1, departs }))
}

const beyond = (departure: number, { longer, shorter }: Wanted['tolerance']): boolean =>
  departure > longer || -departure > shorter
