import type { Celsius, Millilitres, Seconds } from '../../kernel/index.js'
import type { WashScheme } from './definition.js'

/** A spot test on the film's own clear edge, with its cautions. */
export interface SpotTest {
  readonly id: 'residual-hypo' | 'residual-silver'
  readonly reagent: string
  /** s until it is judged. */
  readonly wait: number
  readonly passes: string
  readonly cautions: readonly SpotCaution[]
  readonly source: string
}
/** What a spot test is handled with: the sulfide and any acid together give off deadly gas. */
export type SpotCaution =
  | 'stains-skin'
  | 'never-meets-acid-hydrogen-sulfide'
  | 'dilute-acid-into-water'
  | 'out-of-daylight'

/** The two spot tests: what is left of the fixer, and of the silver that it should have taken. */
export const SPOT_TESTS: readonly SpotTest[] = [
  {
    id: 'residual-hypo',
    reagent: 'silver nitrate 7.5 g/L with 125 mL/L of 28 % acetic acid',
    wait: 120,
    passes: 'No darker than a faint cream. Tan means: wash more.',
    cautions: ['stains-skin', 'dilute-acid-into-water', 'out-of-daylight'],
    source: 'a textbook quoted on a list, 2008',
  },
  {
    id: 'residual-silver',
    reagent: 'sodium sulfide 2 g/L, from a stock of 20 g/L at 1 + 9',
    wait: 150,
    passes: 'No darker than cream. Yellow to brown means: fix again in fresh fixer, then wash.',
    cautions: ['never-meets-acid-hydrogen-sulfide', 'stains-skin'],
    source: 'from memory; common practice',
  },
]

/** What a wash amounts to: the time in moved water, the changes, the water. */
export interface WashDone {
  readonly scheme: WashScheme
  readonly time: Seconds
  readonly changes: number
  readonly temperature: Celsius
  readonly waterPerRoll: Millilitres
  readonly hardened?: boolean
}

/** A spot test that was made on one's own film, and the wash before it. */
export interface SpotReading {
  readonly test: SpotTest['id']
  readonly passed: boolean
  /** How that film had been washed; only a wash of the same kind, no colder and with no less water, is spoken for. */
  readonly washed: WashDone
}
