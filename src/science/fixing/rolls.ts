import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import {
  areaOf,
  FILM_FORMATS,
  type FilmFormat,
  FORMAT_FACTS,
  FRAMES_135,
  FRAMES_OF_A_ROLL,
  ROLL_AREA_CM2,
} from './formats.js'

/** Some film of one format. */
export interface FilmPiece {
  readonly format: FilmFormat
  /** Frames of a 135 length, 36 when not given; other formats have none. */
  readonly frames?: number
  /** How many rolls or sheets. */
  readonly count: number
}

/** By what a piece came to its rolls. */
export type CountedBy = 'convention' | 'frames' | 'area'

/** One kind of film of a list, with what it comes to. */
export interface CountedPiece {
  readonly piece: FilmPiece
  /** Rolls that one of it counts as. */
  readonly each: number
  readonly rolls: number
  readonly by: CountedBy
  readonly areaCm2: number
}

/** What film comes to in a bath. */
export interface FilmCount {
  /** Rolls by the convention, with their fractions. */
  readonly exact: number
  /** Whole rolls, a begun one counting as one: the strokes on a bottle. */
  readonly tally: number
  /** Square centimetres of all of it, and rolls if that alone counted: what silver and carried-out volume go by. */
  readonly areaCm2: number
  readonly byArea: number
  readonly pieces: readonly CountedPiece[]
}

/** Rolls that one piece counts as, and why: the one place of the unit rules. */
function each(format: FilmFormat, frames: number): { readonly rolls: number; readonly by: CountedBy } {
  const { counts, kind } = FORMAT_FACTS[format]
  if (kind === 'frames' && frames !== FRAMES_OF_A_ROLL) return { rolls: frames / FRAMES_OF_A_ROLL, by: 'frames' }
  if (counts !== null) return { rolls: counts, by: 'convention' }
  return { rolls: areaOf(format) / ROLL_AREA_CM2, by: 'area' }
}

function counted(piece: FilmPiece): Result<CountedPiece> {
  const { format, frames = FRAMES_OF_A_ROLL, count } = piece
  if (!Object.hasOwn(FORMAT_FACTS, format))
    return failed(
      problem('fixing.format-unknown', { format: String(format), known: FILM_FORMATS.join(', ') }, 'format'),
    )
  const refused =
    notWhole('Frames', frames, FRAMES_135, 'frames') ??
    notWhole('A number of rolls or sheets', count, { low: 0, high: 10_000 }, 'count')
  if (refused) return refused
  const one = each(format, frames)
  return ok({
    piece,
    each: one.rolls,
    rolls: count * one.rolls,
    by: one.by,
    areaCm2: count * areaOf(format, frames),
  })
}

function notWhole(what: string, value: number, range: { readonly low: number; readonly high: number }, field: string) {
  if (Number.isInteger(value)) return refusedOutside('fixing.bad-value', what, value, range, field)
  return failed(problem('fixing.not-whole', { what, value }, field))
}

/** Parts leave a last digit over: nine times four frames must tally to one roll, not to two. */
const NEGLIGIBLE = 1e-9

/**
 * Film as rolls: 135-36, 120 and an 8×10 sheet count 1, 220 counts 2, other 135 lengths by frames over 36, the rest by
 * area over 80 square inches (common practice; the 80 is in a textbook, 3rd ed. 2008, p. 108). Twelve 4×5 are 3 rolls.
 * Frames 1 to 100 and counts 0 to 10 000, whole; else refused.
 */
export function rollsOf(list: readonly FilmPiece[]): Result<FilmCount> {
  const pieces: CountedPiece[] = []
  for (const piece of list) {
    const one = counted(piece)
    if (!one.ok) return one
    pieces.push(one.value)
  }
  const exact = pieces.reduce((sum, { rolls }) => sum + rolls, 0)
  const areaCm2 = pieces.reduce((sum, piece) => sum + piece.areaCm2, 0)
  return ok({
    exact,
    tally: Math.max(0, Math.ceil(exact - NEGLIGIBLE)),
    areaCm2,
    byArea: areaCm2 / ROLL_AREA_CM2,
    pieces,
  })
}

/** Whole pieces of a format that still fit into what is left of a count: of 0.375 rolls, one 4×5. */
export function fitting(rollsLeft: number, format: FilmFormat, frames: number = FRAMES_OF_A_ROLL): Result<number> {
  const one = counted({ format, frames, count: 1 })
  if (!one.ok) return one
  const refused = refusedOutside('fixing.bad-value', 'What is left in rolls', rollsLeft, { low: 0, high: 100_000 })
  return refused ?? ok(Math.floor(rollsLeft / one.value.each + NEGLIGIBLE))
}
