import { ok, type Result } from '../../kernel/index.js'
import { ROLL_AREA_CM2 } from '../fixing/index.js'
import { refusedOutside } from '../range.js'
import { WASHING_LIMITS } from './definition.js'

/** Fixer that goes on into the wash, mL. */
export interface WetFilm {
  /** In the gelatin of a roll, and on its surface. */
  readonly emulsion: number
  readonly surface: number
  /** On reel and walls of the whole tank. */
  readonly walls: number
}

/** A wet 135-36 holds 4 mL, half of it in the gelatin; a drained 500 mL tank 6 mL (Torzynski, ENSP 2004). */
export const WET_FILM: WetFilm & { readonly source: string } = {
  emulsion: 2,
  surface: 2,
  walls: 6,
  source: 'Torzynski, ENSP Strasbourg, 2004',
}

/** What was rinsed off under the tap before the first fill. */
export const RINSES = ['nothing', 'walls', 'film-and-walls'] as const
/** One of {@link RINSES}. */
export type Rinse = (typeof RINSES)[number]

const PART = { low: 0, high: 500 }

/** Null, or why such film cannot be: each part 0 to 500 mL and some carried in all. */
export const wrongWetFilm = ({ emulsion, surface, walls }: WetFilm, rolls: number) =>
  refusedOutside(
    'washing.bad-value',
    'What the gelatin of a roll holds, in millilitres,',
    emulsion,
    PART,
    'emulsion',
  ) ??
  refusedOutside('washing.bad-value', 'What is on a roll, in millilitres,', surface, PART, 'surface') ??
  refusedOutside('washing.bad-value', 'What is on the walls, in millilitres,', walls, PART, 'walls') ??
  refusedOutside(
    'washing.bad-value',
    'What is carried over, in millilitres,',
    carriedOver({ emulsion, surface, walls }, rolls),
    // Film of many rolls carries more than one tank's worth.
    { low: WASHING_LIMITS.carried.low, high: WASHING_LIMITS.carried.high * Math.max(1, rolls) },
  )

/** mL that go from one water to the next. */
export const carriedOver = ({ emulsion, surface, walls }: WetFilm, rolls: number): number =>
  (emulsion + surface) * rolls + walls

/** mL of undiluted fixer that are left of it after a rinse. */
export function leftByRinse({ emulsion, surface, walls }: WetFilm, rolls: number, rinse: Rinse): number {
  const onFilm = rinse === 'film-and-walls' ? 0 : surface
  return (emulsion + onFilm) * rolls + (rinse === 'nothing' ? walls : 0)
}

/**
 * Part of the fixer carried over that a rinse leaves, for {@link firstFill}: of one roll and its tank 0.4 with the walls
 * rinsed, 0.2 with film and walls. Rinse first, then fill. Rolls 0.1 to 100; else refused.
 */
export function partAfterRinse(rinse: Rinse, rolls = 1, wet: WetFilm = WET_FILM): Result<number> {
  const refused =
    refusedOutside('washing.bad-value', 'Rolls', rolls, WASHING_LIMITS.rolls, 'rolls') ?? wrongWetFilm(wet, rolls)
  return refused ?? ok(leftByRinse(wet, rolls, rinse) / carriedOver(wet, rolls))
}

/** A roll by the convention, in m². */
export const ROLL_M2 = ROLL_AREA_CM2 / 10_000
