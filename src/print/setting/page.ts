import type { Drawing } from '../../score/index.js'

/**
 * A page before it is painted: what stands where, and what it is for those who have it read to them.
 * Lengths in points from the upper left corner; text stands on its baseline.
 */
export interface Page {
  readonly title: string
  readonly width: number
  readonly height: number
  readonly margin: number
  /** In reading order. */
  readonly blocks: readonly Block[]
}

/** A file has one page at least. */
export type Pages = readonly [Page, ...Page[]]

export type Face = 'text' | 'strong'
/** Black, and a grey that a photocopier keeps. */
export type Ink = 'ink' | 'quiet'

export interface Line {
  readonly x: number
  readonly y: number
  readonly text: string
  readonly size: number
  readonly face: Face
  readonly ink: Ink
  readonly anchor: 'start' | 'end'
}

export interface Words {
  readonly kind: 'words'
  readonly role: 'H1' | 'H2' | 'P'
  readonly lines: readonly Line[]
}

export interface Table {
  readonly kind: 'table'
  readonly head: readonly Line[]
  /** The first cell of a row is its heading. */
  readonly rows: readonly (readonly Line[])[]
}

export interface Figure {
  readonly kind: 'figure'
  readonly drawing: Drawing
  readonly x: number
  readonly y: number
}

/** Hairlines: decoration, not read to anybody. */
export interface Rules {
  readonly kind: 'rules'
  readonly rules: readonly {
    readonly from: number
    readonly to: number
    readonly y: number
    readonly dotted: boolean
  }[]
}

/** Heads and feet that every page repeats: not read to anybody. */
export interface Running {
  readonly kind: 'running'
  readonly lines: readonly Line[]
}

/** Empty boxes to pencil into: decoration, not read to anybody. */
export interface Boxes {
  readonly kind: 'boxes'
  readonly boxes: readonly { readonly x: number; readonly y: number; readonly width: number; readonly height: number }[]
}

export type Block = Words | Table | Figure | Rules | Running | Boxes

/** Papers by their usual names, in points. */
export const PAPERS = {
  A4: { width: 595.28, height: 841.89 },
  Letter: { width: 612, height: 792 },
} as const
export type PaperName = keyof typeof PAPERS
