import type { Celsius, Seconds } from '../../kernel/index.js'

/**
 * How a developer's time answers to temperature.
 *
 * - `ordinary`: a black-and-white developer; warmer is faster, by one of the two laws.
 * - `single-bath`: develops and fixes in one; cold slows the fixing more, so cold makes *more* development.
 *   Only its own sheet counts.
 * - `fixed`: a colour developer or a reversal first developer; one time at one temperature, never moved.
 */
export type DeveloperKind = 'ordinary' | 'single-bath' | 'fixed'

/**
 * The two published laws of rate against temperature.
 * `exponential`: r = K^((T − Tref)/10). `arrhenius`: r = exp(Ea/R · (1/Tref − 1/T)), in kelvin.
 */
export type RateLaw = 'exponential' | 'arrhenius'

/** Where a figure comes from; every figure shown carries one. */
export type Origin = 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'

/** A time of the sheet with its temperature. */
export interface SheetPoint {
  readonly temperature: Celsius
  readonly time: Seconds
}

/** Composition classes and the ten-degree coefficient assumed when a sheet gives one point only. */
export type DeveloperClass =
  | 'unknown'
  | 'metol'
  | 'hydroquinone'
  | 'metol-hydroquinone'
  | 'phenidone-ascorbate'
  | 'pyro'
  | 'glycin'
  | 'p-aminophenol'

/** What a person states about a developing time; `defineBasis` checks it and fills the rest. */
export interface BasisInput {
  readonly kind: DeveloperKind
  readonly law?: RateLaw
  readonly points: readonly SheetPoint[]
  readonly developerClass?: DeveloperClass
  /** The developer's own K per 10 °C, when the sheet or one's own measurements give it. Used with one point. */
  readonly coefficient?: number
  /** Outside this the time is refused. Default: {@link LIMITS}, widened to hold the points. */
  readonly usable?: { readonly from: Celsius; readonly to: Celsius }
  /** For `fixed`: inside it nothing is said; outside, a colour cast is likely. */
  readonly window?: { readonly from: Celsius; readonly to: Celsius }
}

/** A checked basis: points sorted by temperature, everything filled in. Only `defineBasis` makes one. */
export interface TimeBasis {
  readonly kind: DeveloperKind
  readonly law: RateLaw
  readonly points: readonly SheetPoint[]
  readonly developerClass: DeveloperClass
  readonly coefficient: { readonly value: number; readonly low: number; readonly high: number; readonly origin: Origin }
  readonly usable: { readonly from: Celsius; readonly to: Celsius }
  readonly window: { readonly from: Celsius; readonly to: Celsius } | null
  /** The sheet point nearest 20 °C (the colder of two equally near): its time is the reference time. */
  readonly reference: SheetPoint
}

/** A named multiplier on the reference time: agitation, repeat use of the bath, push by factor, own strips. */
export interface Modifier {
  readonly name: 'agitation' | 'pre-wet' | 'repeat-use' | 'push-pull' | 'own-strips' | 'other'
  readonly factor: number
  readonly origin: Origin
  readonly note?: string
}

/** Where on the basis a temperature lies. */
export type Position = 'sheet-point' | 'between' | 'beyond-cold' | 'beyond-warm' | 'fixed'

/** One factor of an answer with where it comes from: that of temperature, or a modifier. */
export interface Factor {
  readonly name: 'temperature' | Modifier['name']
  readonly factor: number
  readonly origin: Origin
  readonly note?: string
}

/** What is said of a developing time that is served all the same, with the figures it speaks of. */
export type DevelopmentWarning =
  | { readonly code: 'beyond-sheet'; readonly by: number; readonly from: Celsius; readonly to: Celsius }
  | {
      readonly code: 'assumed-coefficient'
      readonly value: number
      readonly low: number
      readonly high: number
      readonly shortest: Seconds
      readonly longest: Seconds
    }
  | { readonly code: 'short-time'; readonly time: Seconds; readonly limit: Seconds }
  | { readonly code: 'outside-practice'; readonly from: Celsius; readonly to: Celsius }
  | { readonly code: 'colour-cast-likely'; readonly from: Celsius; readonly to: Celsius }
  | { readonly code: 'single-bath-sheet-only' }

/** The answer to "how long at this temperature". */
export interface DevelopingTime {
  readonly temperature: Celsius
  readonly time: Seconds
  /** The sheet point that the sentence compares with. */
  readonly reference: SheetPoint
  readonly position: Position
  /** time = reference.time × every factor, in this order; the temperature factor is first. */
  readonly factors: readonly Factor[]
  readonly band: {
    /** Give or take by the sheet's rounding and the law. */
    readonly bySheetAndLaw: Seconds
    /** What `thermometerError` makes of the time. */
    readonly byThermometer: Seconds
    readonly thermometerError: number
  }
  readonly law: RateLaw
  readonly warnings: readonly DevelopmentWarning[]
}

/** A law of rate laid through the points of a sheet, with how far each point is from it. */
export interface LawFit {
  readonly law: RateLaw
  /** Slope of ln t per °C (exponential) or per 1/K (arrhenius). */
  readonly slope: number
  readonly slopeStandardError: number | null
  readonly coefficient: number
  /** kJ/mol; for the exponential law by K between 15 and 25 °C. */
  readonly activationEnergy: number
  readonly timeAt: (temperature: Celsius) => Seconds
  /** Relative misfit of each point (fit ÷ sheet − 1), in the order of the points. */
  readonly misfits: readonly number[]
  readonly worst: { readonly index: number; readonly misfit: number }
}

/** Temperature at a moment of the course; between two the temperature runs straight. */
export interface CourseReading {
  readonly at: Seconds
  readonly temperature: Celsius
}
