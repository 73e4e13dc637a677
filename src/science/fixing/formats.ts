import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'

/** How film is cut. A length of 135 is said by its frames, sheets by their number. */
export const FILM_FORMATS = [
  '135',
  '120',
  '220',
  '127',
  '110',
  '4x5',
  '5x7',
  '8x10',
  '11x14',
  '9x12cm',
  '13x18cm',
  '18x24cm',
] as const
export type FilmFormat = (typeof FILM_FORMATS)[number]

/** Square centimetres in a roll's worth: 80 square inches, by common convention a 135-36, a 120 or an 8×10 sheet. */
export const ROLL_AREA_CM2 = 80 * 2.54 * 2.54
export const FRAMES_OF_A_ROLL = 36

interface FormatFacts {
  readonly kind: 'frames' | 'roll' | 'sheet'
  /** Millimetres of film that a bath meets. */
  readonly width: number
  readonly length: number
  /** Rolls it counts as by convention; null where its area counts. */
  readonly counts: number | null
  /** Where the size is from: the name of a sheet is its size; lengths of rolls are from memory. */
  readonly origin: Origin
}

const sheet = (width: number, length: number): FormatFacts => ({
  kind: 'sheet',
  width,
  length,
  counts: null,
  origin: 'law',
})
const inches = (width: number, length: number): FormatFacts => sheet(width * 25.4, length * 25.4)

/** Sizes and what each counts as. */
export const FORMAT_FACTS: Readonly<Record<FilmFormat, FormatFacts>> = {
  '135': { kind: 'frames', width: 35, length: 1600, counts: 1, origin: 'practice' },
  '120': { kind: 'roll', width: 61.5, length: 820, counts: 1, origin: 'practice' },
  '220': { kind: 'roll', width: 61.5, length: 1640, counts: 2, origin: 'practice' },
  '127': { kind: 'roll', width: 46, length: 700, counts: null, origin: 'assumption' },
  '110': { kind: 'roll', width: 16, length: 600, counts: null, origin: 'assumption' },
  '4x5': inches(4, 5),
  '5x7': inches(5, 7),
  '8x10': { ...inches(8, 10), counts: 1 },
  '11x14': inches(11, 14),
  '9x12cm': sheet(90, 120),
  '13x18cm': sheet(130, 180),
  '18x24cm': sheet(180, 240),
}

/** Some film of one format. */
export interface FilmPiece {
  readonly format: FilmFormat
  /** Frames of a 135 length, 36 when not given; no other format has frames. */
  readonly frames?: number
  /** How many rolls or sheets. */
  readonly count: number
}

/** What film comes to in a bath. */
export interface FilmCount {
  /** Rolls by the convention, in full. */
  readonly exact: number
  /** Whole rolls, a part counting as one: what a tally on a bottle says. */
  readonly tally: number
}

/** Square centimetres of one piece: the whole strip or sheet. 135 lengths in proportion to their frames. */
export function areaOf(format: FilmFormat, frames: number = FRAMES_OF_A_ROLL): number {
  const { width, length, kind } = FORMAT_FACTS[format]
  return ((width * length) / 100) * (kind === 'frames' ? frames / FRAMES_OF_A_ROLL : 1)
}

/** Rolls that one piece counts as. */
function countsAs(format: FilmFormat, frames: number): number {
  const { counts, kind } = FORMAT_FACTS[format]
  if (kind === 'frames') return frames / FRAMES_OF_A_ROLL
  return counts ?? areaOf(format) / ROLL_AREA_CM2
}

/**
 * Film as rolls: 135-36, 120 and an 8×10 sheet count 1, 220 counts 2, other 135 lengths by frames over 36, the rest by
 * area over 80 square inches. Frames 1 to 100 and counts 0 to 10 000, whole; else refused.
 */
export function rollsOf(pieces: readonly FilmPiece[]): Result<FilmCount> {
  let exact = 0
  for (const { format, frames = FRAMES_OF_A_ROLL, count } of pieces) {
    if (!Object.hasOwn(FORMAT_FACTS, format))
      return failed(problem('fixing.format-unknown', { format: String(format), known: FILM_FORMATS.join(', ') }))
    if (!Number.isInteger(frames) || frames < 1 || frames > 100)
      return failed(problem('fixing.bad-value', { what: 'Frames', value: frames, low: 1, high: 100 }))
    if (!Number.isInteger(count) || count < 0 || count > 10_000)
      return failed(
        problem('fixing.bad-value', { what: 'A number of rolls or sheets', value: count, low: 0, high: 10_000 }),
      )
    exact += count * countsAs(format, frames)
  }
  // 1 + 2 + 3 rolls must tally to 6 whatever the thirds before them left in the last digit.
  return ok({ exact, tally: Math.ceil(exact - 1e-9) })
}
