import type { DeveloperClass, DeveloperKind } from '../../src/science/index.js'

export interface Film {
  readonly name: string
  readonly index: number
}

const film = (name: string, index: number): Film => ({ name, index })

/** As long as a name may be. */
const LONGEST = `${'Long Reservoir ortho, thick base, cut from sheets by the Thursday group, in cassettes without labels'.padEnd(116, '.')} 100`

/** Invented black-and-white films, named after water and places. Some names are as people really type them. */
export const FILMS: readonly Film[] = [
  film('Tarn 100', 100),
  film('Corvane 400', 400),
  film('Fell 25', 25),
  film('Weir 200', 200),
  film('Ghyll 50', 50),
  film('Sike 125', 125),
  film('Mere 80', 80),
  film('Lode 320', 320),
  film('Ness 1600', 1600),
  film('Skerry 250', 250),
  film('Combe 160', 160),
  film('Beck 3200', 3200),
  film('Strand ortho 40', 40),
  film('Grünwasser 100', 100),
  film("O'Hara's Ford 125", 125),
  film('Miller’s “Leap” 400', 400),
  film('Öresjö 64; --', 64),
  film('Dune 🏜️ 200', 200),
  film('Łąka 50', 50),
  film(LONGEST, 100),
]

/** Films for the two kinds of colour developer. */
export const COLOUR_NEGATIVES: readonly Film[] = [
  film('Weir colour 200', 200),
  film('Lode colour 800', 800),
  film('Éclusette colour 100', 100),
]
export const COLOUR_SLIDES: readonly Film[] = [film('Lough slide 100', 100), film('Tarn slide 50 🎞️', 50)]

export interface Developer {
  readonly name: string
  readonly parts: readonly number[] | null
  readonly kind: DeveloperKind
  readonly class: DeveloperClass
  /** Hidden from the sheet: how much ten degrees do, and minutes at 20 °C, lowest and highest. */
  readonly coefficient: readonly [number, number]
  readonly minutes: readonly [number, number]
}

const ordinary = (
  name: string,
  parts: readonly number[],
  of: DeveloperClass,
  coefficient: readonly [number, number],
  minutes: readonly [number, number],
): Developer => ({ name, parts, kind: 'ordinary', class: of, coefficient, minutes })

/** Developers by composition. */
export const DEVELOPERS: readonly Developer[] = [
  ordinary('MQ–borax', [1], 'metol-hydroquinone', [1.9, 2.8], [6, 13]),
  ordinary('ascorbate', [1, 3], 'phenidone-ascorbate', [1.8, 2.4], [7, 14]),
  ordinary('p-aminophenol', [1, 50], 'p-aminophenol', [1.7, 3.2], [8, 16]),
  ordinary('metol–sulfite', [1, 1], 'metol', [1.5, 2], [9, 18]),
  ordinary('pyro two-part', [1, 1, 100], 'pyro', [1.5, 2.2], [9, 17]),
  ordinary('hydroquinone lith', [1, 10], 'hydroquinone', [2.6, 3.8], [5, 9]),
]
const special = (name: string, kind: DeveloperKind): Developer => ({
  name,
  parts: null,
  kind,
  class: 'unknown',
  coefficient: [1, 1],
  minutes: [6, 8],
})
export const SINGLE_BATH = special('single bath', 'single-bath')
export const COLOUR_NEGATIVE = special('colour negative developer', 'fixed')
export const COLOUR_REVERSAL = special('colour reversal first developer', 'fixed')
