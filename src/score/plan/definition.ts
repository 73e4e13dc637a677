import type { Celsius, Millilitres, Seconds } from '../../kernel/index.js'
import type { CourseReading, DevelopingTime, DevelopmentWarning, Modifier, TimeBasis } from '../../science/index.js'
import type { Agitation, Recipe, Step } from '../recipe/definition.js'

/** What pulls a tank's temperature: the air or water around it, by Newton's law. */
export interface Room {
  readonly temperature: Celsius
  /** Time in which 63 % of the difference is gone: 5 minutes to 24 hours. */
  readonly timeConstant: Seconds
}

/** How long to develop: from a reference time with the bath's temperature, or the person's own figure. */
export type DevelopmentWish =
  | {
      readonly from: 'basis'
      readonly basis: TimeBasis
      readonly modifiers?: readonly Modifier[]
      /** When the bath's clock starts. */
      readonly temperature: Celsius
      /** A planned course, seconds from the clock's start; else the room's pull, else the temperature holds. */
      readonly course?: readonly CourseReading[]
    }
  | { readonly from: 'own'; readonly time: Seconds; readonly temperature: Celsius | null }

/** What one tank is run under. */
export interface TankConditions {
  /** `A`, `B`: short, told by voice. */
  readonly tank: string
  /** First pour, seconds after the run's start. */
  readonly offset?: Seconds
  /** Null for lists whose developers have fixed times. */
  readonly development: DevelopmentWish | null
  /** Measured temperatures by id of the step; those left out are not judged. */
  readonly temperatures?: Readonly<Record<string, Celsius>>
  readonly room?: Room | null
  readonly volume?: Millilitres | null
  /** Clearing time seen on this film in this fixer. */
  readonly clearing?: Seconds | null
  /** Moments to read the thermometer, seconds into the developer's clock. */
  readonly checks?: readonly Seconds[]
  /** The person takes the risk of baths that are too far apart. */
  readonly overridesSpread?: boolean
}

/** A tank made ready: everything resolved, nothing to check any more. */
export interface Tank {
  readonly tank: string
  readonly offset: number
  readonly recipe: Recipe
  readonly development: Development | null
  readonly temperatures: Readonly<Record<string, Celsius>>
  readonly volume: Millilitres | null
  readonly clearing: Seconds | null
  readonly checks: readonly number[]
}

/** How far development goes in the bath timed by it. */
export type Development =
  | { readonly from: 'own'; readonly time: Seconds; readonly temperature: Celsius | null }
  | {
      readonly from: 'basis'
      readonly basis: TimeBasis
      /** Equivalent seconds at the reference temperature: reference time times its modifiers. */
      readonly target: Seconds
      readonly course: PlannedCourse
      /** The answer at the starting temperature, with its factors and band. */
      readonly answer: DevelopingTime
    }

export interface PlannedCourse {
  readonly start: Celsius
  readonly points: readonly CourseReading[] | null
  readonly room: Room | null
}

/** A reading that counts, in seconds from the tank's zero. */
export interface Reading {
  readonly at: number
  readonly temperature: Celsius
}

/** What is known to have happened to a step; seconds from the tank's zero. An empty object is a plan. */
export interface StepFacts {
  readonly pouredIn?: number
  readonly pouredOut?: number
  readonly skipped?: boolean
  /** For a step that is not a bath: when it was done. */
  readonly done?: number
  /** Clearing time seen on this film. */
  readonly clearing?: number
  readonly readings?: readonly Reading[]
  /** What something that went wrong has made of the step. */
  readonly agitation?: Agitation
  readonly development?: Development
  /** Seconds to stay longer than its law says. */
  readonly longer?: number
}
export type Facts = ReadonlyMap<number, StepFacts>

/** How a moment is known: confirmed by hand, implied by what followed, or still to come. */
export type Known = 'pressed' | 'implied' | 'expected' | 'waiting'

/** One step laid out in time, seconds from the tank's zero. */
export interface Laid {
  readonly index: number
  readonly step: Step
  readonly skipped: boolean
  /** Clock start of a bath; beginning of an act. */
  readonly in: number
  readonly inBy: Known
  /** Beginning of the draining; end of an act. */
  readonly out: number
  readonly outBy: Known
  /** `out` as the plan or the dose has it, before it is known or overdue. */
  readonly due: number
  /** End of the bath's clock by its convention; for an act the same as `out`. */
  readonly clockEnd: number
  /** Hands free again: tank empty, or act done. */
  readonly free: number
  /** For a developing bath with a basis: temperatures from the clock's start on. */
  readonly course: readonly CourseReading[] | null
  readonly development: Development | null
  readonly agitation: Agitation | null
}

export type JobKind = 'change' | 'drain' | 'turn' | 'check' | 'lid-off' | 'look' | 'squeeze' | 're-expose' | 'hang-up'
export type JobPartKind = 'drain' | 'cap' | 'pour' | 'tap' | 'turns'

export interface JobPart {
  readonly part: JobPartKind
  readonly start: number
  readonly end: number
}

/** Something hands do, from `start` to `end`; it is never broken off. */
export interface Job {
  /** Step and number: `developer/turn-3`. */
  readonly id: string
  readonly kind: JobKind
  /** The step it belongs to; a change belongs to the bath that goes in. */
  readonly index: number
  readonly start: number
  readonly end: number
  readonly parts: readonly JobPart[]
  /** How much later it may begin when hands are needed elsewhere. */
  readonly maySlide: number
}

export interface BathSpan {
  readonly index: number
  readonly id: string
  readonly name: string
  readonly clockStart: number
  readonly drainStart: number
  readonly clockEnd: number
  readonly drainEnd: number
}

export interface TankPlan {
  readonly tank: Tank
  readonly laid: readonly Laid[]
  readonly baths: readonly BathSpan[]
  readonly jobs: readonly Job[]
  /** Seconds from its own zero to the end of its last step. */
  readonly length: number
}

export type ScoreWarning =
  | { readonly code: 'development'; readonly tank: string; readonly warning: DevelopmentWarning }
  | {
      readonly code: 'bath-differs' | 'bath-too-far'
      readonly tank: string
      readonly name: string
      readonly temperature: Celsius
      readonly other: string
      readonly otherTemperature: Celsius
      readonly by: number
    }
  | {
      readonly code: 'chain-too-long'
      readonly tank: string
      readonly first: string
      readonly last: string
      readonly by: number
    }
  | {
      readonly code: 'outside-window' | 'colour-cast-likely'
      readonly tank: string
      readonly name: string
      readonly temperature: Celsius
      readonly from: Celsius
      readonly to: Celsius
    }
  | { readonly code: 'fixer-finished'; readonly tank: string; readonly needed: Seconds; readonly most: Seconds }

/** The timed plan of one or more tanks. */
export interface Score {
  readonly tanks: readonly TankPlan[]
  readonly warnings: readonly ScoreWarning[]
  /** From the first pour of the first tank to the last step of the last, seconds. */
  readonly length: Seconds
  /** Time in which some tank needs hands; jobs of two tanks at once are counted once. */
  readonly handsBusy: Seconds
}
