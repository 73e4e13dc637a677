import { failed, ok, problem, type Result, type Seconds, seconds, writeDuration } from '../../kernel/index.js'

/** One film of a mixed tank: the time it wants, and how far from it the time may lie. */
export interface Wanted {
  /** What it is called when it is told that it does not fit. */
  readonly name: string
  readonly time: Seconds
  readonly tolerance: Tolerance
}

/** Largest departure allowed, as parts of the wanted time: 0.1 is ten per cent longer or shorter. */
export interface Tolerance {
  readonly longer: number
  readonly shorter: number
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
 * smallest (the harmonic mean of the shortest and the longest: both then depart by as much), rounded to 15 s.
 * Refused when that departs from any of them by more than its tolerance; then they do not share a tank.
 */
export function sharedTime(films: readonly Wanted[]): Result<SharedTime> {
  const times = films.map((film) => film.time)
  const shortest = Math.min(...times)
  const longest = Math.max(...times)
  if (!(shortest > 0 && Number.isFinite(longest))) return failed(problem('loads.no-films', { count: films.length }))
  const best = (2 * shortest * longest) / (shortest + longest)
  return servedAt(seconds(Math.max(STEP_S, Math.round(best / STEP_S) * STEP_S)), films)
}

/** What films that are all developed for one given time depart by; refused when one of them does not bear it. */
export function servedAt(time: Seconds, films: readonly Wanted[]): Result<SharedTime> {
  const departures = films.map((film) => time / film.time - 1)
  const strayed = films.findIndex(({ tolerance }, i) => beyond(departures[i] as number, tolerance))
  const film = films[strayed]
  if (film === undefined) return ok({ time, departures })
  const by = departures[strayed] as number
  const bears = by > 0 ? film.tolerance.longer : film.tolerance.shorter
  return failed(
    problem('loads.times-too-far-apart', {
      film: film.name,
      wants: writeDuration(film.time),
      gets: writeDuration(time),
      departs: `${percent(by)} ${by > 0 ? 'more' : 'less'}`,
      bears: percent(bears),
    }),
  )
}

const percent = (part: number): string => `${(Math.abs(part) * 100).toFixed(1)} %`

/** A departure at its limit is within it, whatever the last binary digit says. */
const ROUNDING = 1e-9

const beyond = (departure: number, { longer, shorter }: Tolerance): boolean =>
  departure > longer + ROUNDING || -departure > shorter + ROUNDING
