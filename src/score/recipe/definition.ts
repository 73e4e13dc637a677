import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Origin } from '../../science/index.js'

/** What a bath does to the film. */
export type BathKind =
  | 'pre-wet'
  | 'developer'
  | 'single-bath'
  | 'bath-a'
  | 'bath-b'
  | 'first-developer'
  | 'colour-developer'
  | 'second-developer'
  | 'stop'
  | 'rinse'
  | 'reversal'
  | 'pre-bleach'
  | 'bleach'
  | 'clear'
  | 'fix'
  | 'wash'
  | 'wash-aid'
  | 'wetting'

/** What is done to the film apart from bathing it. */
export type ActKind = 'lid-off' | 'look' | 'squeeze' | 're-expose' | 'hang-up'

/** A length of time and what it rests on. */
export interface Length {
  readonly seconds: Seconds
  readonly origin: Origin
}

/**
 * How long a bath lasts.
 * - `by-developing-time`: the film's time in this developer, from a basis or the person's own figure.
 * - `fixed`: so many seconds, whatever the temperature.
 * - `by-clearing`: a multiple of the clearing time, at least `least`; a bath that would need more than `most` is
 *   finished. `assumed` is the clearing time reckoned with until one has been seen.
 */
export type TimeLaw =
  | { readonly law: 'by-developing-time' }
  | { readonly law: 'fixed'; readonly seconds: Seconds; readonly origin: Origin }
  | {
      readonly law: 'by-clearing'
      readonly multiple: number
      readonly assumed: Seconds
      readonly least: Seconds
      readonly most: Seconds
      readonly origin: Origin
    }

/** One spell of agitation: for so many seconds, or so many inversions at so many seconds each. */
export type Turn =
  | { readonly by: 'seconds'; readonly seconds: Seconds }
  | { readonly by: 'inversions'; readonly count: number; readonly secondsEach: number }

/**
 * How the tank is moved. Moments count from the start of the bath's clock.
 * - `turns`: an opening, then `turn` every so often. `first` is the moment of the first later turn; where it is
 *   absent, the first multiple of `every` that leaves the tank half a minute's rest (or `every`, when shorter).
 * - `moments`: an opening and a list of one's own; stand development has an empty list.
 * - `then-continuous`: as `before` up to `from`, then without a stop; what a run becomes when the developer is short.
 * - `continuous`: by hand all the time. `rotary`: by a machine; no hands. `none`: not moved at all.
 */
export type Agitation =
  | { readonly kind: 'none' }
  | { readonly kind: 'continuous' }
  | { readonly kind: 'rotary' }
  | { readonly kind: 'then-continuous'; readonly before: Agitation; readonly from: Seconds }
  | {
      readonly kind: 'turns'
      readonly opening: Turn | null
      readonly turn: Turn
      readonly every: Seconds
      readonly first?: Seconds
    }
  | {
      readonly kind: 'moments'
      readonly opening: Turn | null
      readonly moments: readonly { readonly at: Seconds; readonly turn: Turn }[]
    }

/** A temperature window of a bath's own; a bath that has one is judged by it alone. */
export interface Window {
  readonly from: Celsius
  readonly to: Celsius
  readonly origin: Origin
}

/** Which moments of pouring and draining start and end the bath's clock. */
export interface ClockConvention {
  readonly starts: 'start-of-pour' | 'end-of-pour'
  readonly ends: 'start-of-drain' | 'end-of-drain'
}

/** How long the parts of a bath change take. */
export interface Handling {
  readonly pour: Length
  readonly drain: Length
  /** Cap off for draining and funnel out, before the next bath goes in. */
  readonly cap: Length
  /** Knocking bubbles off after the pour; null where the tank is not tapped. */
  readonly tap: Length | null
}

/** Where the bath goes when it is poured out: to its own bottle, down the drain, or into the jug of silver waste. */
export type Destination = 'bottle' | 'away' | 'waste-jug'

/** Warnings that a step carries; their words are in the catalogue. */
export type Caution =
  | 'dark-until-fixed'
  | 'never-into-developer'
  | 'acid-splash'
  | 'bleach-oxidiser'
  | 'bleach-never-meets-fixer'
  | 'no-rinse-between'
  | 'keep-temperature'
  | 'do-not-touch-emulsion'
  | 'even-light'
  | 'gloves'

interface StepBase {
  /** Unique in the list; events and jobs name it. */
  readonly id: string
  readonly name: string
  /** Why the step is there, in a sentence for someone who has never done it. */
  readonly reason: string
  readonly cautions: readonly Caution[]
}

export interface Bath extends StepBase {
  readonly step: 'bath'
  readonly kind: BathKind
  readonly time: TimeLaw
  readonly agitation: Agitation
  readonly window: Window | null
  readonly convention: ClockConvention
  readonly handling: Handling
  readonly goesTo: Destination
  /** The next bath follows at once: nothing may come between, and the change is not put off. */
  readonly neverPartFromNext: boolean
  /** How much longer it may stay in when hands are needed elsewhere; 0 where it may not. */
  readonly mayStay: Seconds
}

export interface Act extends StepBase {
  readonly step: 'act'
  readonly kind: ActKind
  readonly length: Length
  /** Seconds into the bath before it, whose clock goes on; null when it comes after that bath is out. */
  readonly within: Seconds | null
}

export type Step = Bath | Act

export type Process = 'black-and-white' | 'black-and-white-reversal' | 'colour-negative' | 'colour-reversal'

/** A list of baths. */
export interface Recipe {
  readonly id: string
  readonly name: string
  readonly process: Process
  readonly steps: readonly Step[]
  /** When to choose it, in a sentence or two. */
  readonly about: string
}
