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
/** A format of film by its name. */
export type FilmFormat = (typeof FILM_FORMATS)[number]

/** Square centimetres in a roll's worth: 80 square inches, by common convention a 135-36, a 120 or an 8×10 sheet. */
export const ROLL_AREA_CM2 = 80 * 2.54 * 2.54
/** The 135 length that counts as one roll. */
export const FRAMES_OF_A_ROLL = 36

interface FormatFacts {
  readonly kind: 'frames' | 'roll' | 'sheet'
  /** Millimetres of film that a bath meets; a 135 length by {@link FRAMES_135}. */
  readonly width: number
  readonly length: number
  /** Rolls it counts as by convention; null where its area counts. */
  readonly counts: number | null
  /** Where the size is from: a sheet is called by its size; lengths of rolls are from memory. */
  readonly origin: Origin
}

/**
 * Whole strips of 135: about 1.15 m with 24 frames and 1.6 m with 36 (from memory); the straight line through the two
 * gives other lengths. Frames alone lie 38 mm apart.
 */
export const FRAMES_135 = { perFrame: 37.5, ends: 250, pitch: 38, low: 1, high: 100, origin: 'assumption' } as const

const sheet = (width: number, length: number): FormatFacts => ({
  kind: 'sheet',
  width,
  length,
  counts: null,
  origin: 'law',
})
const inches = (width: number, length: number): FormatFacts => sheet(width * 25.4, length * 25.4)
const strip135 = (frames: number): number => FRAMES_135.ends + FRAMES_135.perFrame * frames

/** The one table of formats: sizes, and what each counts as in a bath. */
export const FORMAT_FACTS: Readonly<Record<FilmFormat, FormatFacts>> = {
  '135': { kind: 'frames', width: 35, length: strip135(FRAMES_OF_A_ROLL), counts: 1, origin: 'assumption' },
  '120': { kind: 'roll', width: 61.5, length: 820, counts: 1, origin: 'assumption' },
  '220': { kind: 'roll', width: 61.5, length: 1640, counts: 2, origin: 'assumption' },
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

/** Square centimetres of one piece: the whole strip or sheet. `frames` is looked at for 135 only. */
export function areaOf(format: FilmFormat, frames: number = FRAMES_OF_A_ROLL): number {
  const { width, length, kind } = FORMAT_FACTS[format]
  return (width * (kind === 'frames' ? strip135(frames) : length)) / 100
}

/** Square centimetres of a 135 length without its ends: only what lies under the frames. */
export const frameAreaOf = (frames: number): number => (FORMAT_FACTS['135'].width * FRAMES_135.pitch * frames) / 100
