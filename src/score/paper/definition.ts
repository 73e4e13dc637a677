import type { Celsius, Instant, Problem, Seconds, TimeOfDay } from '../../kernel/index.js'
import type { Happening, MishapKind, StatedTo } from '../events/definition.js'

/** A step as its boxes on the sheet were filled in; null is an empty box, which says nothing. */
export interface WrittenStep {
  /** Its place in the list, from 0. */
  readonly step: number
  /** Of a bath: the first drop of its pour. */
  readonly inAt: TimeOfDay | null
  /** Of a bath: the beginning of pouring out. */
  readonly outAt: TimeOfDay | null
  /** Of a step between baths: when it was done. */
  readonly doneAt: TimeOfDay | null
  /** Of a look: how long the film took to clear. */
  readonly clearing: Seconds | null
  /** The reason for which it was left out. */
  readonly leftOut: string | null
  /** The person has said that its odd times stand so on the sheet. */
  readonly sure: boolean
}

export interface WrittenReading {
  /** Place of the bath in the list. */
  readonly step: number
  /** Null where no time was written: then it stands at the pour. */
  readonly at: TimeOfDay | null
  readonly temperature: Celsius
  /** The person has said that it really read that. */
  readonly sure: boolean
}

export interface WrittenRemark {
  readonly at: TimeOfDay | null
  readonly text: string
}

export interface WrittenMishap {
  readonly mishap: MishapKind
  readonly at: TimeOfDay
  /** For a wrong dilution: the sheet's time at the one that was in the tank. */
  readonly referenceTime: Seconds | null
}

export interface WrittenTank {
  readonly tank: string
  readonly steps: readonly WrittenStep[]
  readonly readings: readonly WrittenReading[]
  readonly remarks: readonly WrittenRemark[]
  readonly mishaps: readonly WrittenMishap[]
  readonly givenUp: { readonly at: TimeOfDay | null; readonly reason: string } | null
}

/** A bench sheet as a pencil filled it in. */
export interface WrittenSheet {
  /** The day of the first time on it, as `2026-11-25`. */
  readonly day: string
  /** The first drop of the first bath. */
  readonly zero: TimeOfDay | null
  readonly tanks: readonly WrittenTank[]
}

/** Something that happened by the sheet, with its instant. */
export interface FromPaper {
  readonly tank: string
  readonly bath: number | null
  readonly at: Instant
  readonly statedTo: StatedTo
  readonly happening: Happening
}

/**
 * What is to be said of a field.
 * - `never`: it cannot have been so, and nothing is taken before it is changed.
 * - `by-saying-so`: odd; it is taken once the person says that the sheet has it so.
 * - `told`: it is taken as it is; this is what becomes of it.
 */
export interface Finding {
  /** As the interface names it: `tanks[0].steps[2].out_at`. */
  readonly field: string
  readonly problem: Problem
  readonly stands: 'never' | 'by-saying-so' | 'told'
}

/** A sheet as it was read. */
export interface SheetRead {
  /** In the order of the sheet. Complete only where nothing is found that does not stand. */
  readonly happened: readonly FromPaper[]
  /** The instant of every time on the sheet, by its field; of what is written to the minute, its middle. */
  readonly moments: ReadonlyMap<string, Instant>
  readonly findings: readonly Finding[]
}
