import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { short } from '../saying.js'

/** A named film speed: both numbers, as printed on a box. */
export interface NamedSpeed {
  readonly arithmetic: number
  readonly degrees: number
  /** `100/21°`. */
  readonly name: string
  /** Whether the film standards assign it (4 to 3200); the others only go on with the series. */
  readonly assigned: boolean
}

/**
 * The series of speeds by thirds of a stop, from 3/6° up. The names are not exact powers, so they are a list.
 * Source: ISO 5800:1987, ANSI PH2.5-1979 table 1 and ISO 12232:1998, as an encyclopaedia lists them.
 */
const SERIES: readonly number[] = [
  3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250,
  1600, 2000, 2500, 3200, 4000, 5000, 6400, 8000, 10000,
]
const FIRST_DEGREES = 6

/** Every named speed, slowest first. */
export const NAMED_SPEEDS: readonly NamedSpeed[] = SERIES.map((arithmetic, i) => ({
  arithmetic,
  degrees: FIRST_DEGREES + i,
  name: `${arithmetic}/${FIRST_DEGREES + i}°`,
  assigned: arithmetic >= 4 && arithmetic <= 3200,
}))

/**
 * The name of a computed speed: S° = 10 log10 S + 1 rounded to a whole degree, then the list; never by the
 * nearest arithmetic number. Used wherever a speed is said. Speeds outside 3/6° to 10000/41° are refused.
 * Source: ISO 6:1993 and the series above.
 */
export function nameSpeed(speed: number): Result<NamedSpeed> {
  const named = speed > 0 ? NAMED_SPEEDS[Math.round(10 * Math.log10(speed) + 1) - FIRST_DEGREES] : undefined
  if (named) return ok(named)
  const [low, high] = [NAMED_SPEEDS[0]?.name ?? '', NAMED_SPEEDS.at(-1)?.name ?? '']
  return failed(problem('speed.outside-list', { speed: short(speed, 2), low, high }))
}

/** The computed speeds that carry a name: from half a degree under it up to half a degree over. */
export const speedsNamed = ({ degrees }: NamedSpeed): { readonly low: number; readonly high: number } => ({
  low: 10 ** ((degrees - 1.5) / 10),
  high: 10 ** ((degrees - 0.5) / 10),
})
