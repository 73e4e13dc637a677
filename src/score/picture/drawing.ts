/**
 * A picture as marks on a page: what the web paints as SVG and the printer as PDF, so that both show the same.
 * Lengths are in the drawing's own unit (a CSS pixel on screen, a point on paper); x runs right, y runs down.
 */
export interface Drawing {
  readonly width: number
  readonly height: number
  /** In painting order: later marks lie on top. */
  readonly marks: readonly Mark[]
  /** One line: what the picture is. */
  readonly title: string
  /** The picture in words, for those who do not see it. */
  readonly description: string
}

/** Roles, not colours: each ground (light, dim, paper) gives them its own. */
export type Tone = 'ink' | 'quiet' | 'rule' | 'edge' | 'accent' | 'wash' | 'sheet' | 'ground'

export type Point = readonly [x: number, y: number]

export interface LineMark {
  readonly kind: 'line'
  readonly from: Point
  readonly to: Point
  readonly tone: Tone
  readonly weight: number
  /** Lengths of stroke and gap in turn; absent for an unbroken line. */
  readonly dash?: readonly number[]
}

export interface PathMark {
  readonly kind: 'path'
  readonly points: readonly Point[]
  readonly tone: Tone
  readonly weight: number
  readonly dash?: readonly number[]
}

/** A filled polygon without an outline. */
export interface AreaMark {
  readonly kind: 'area'
  readonly points: readonly Point[]
  readonly tone: Tone
}

export interface CircleMark {
  readonly kind: 'circle'
  readonly at: Point
  readonly radius: number
  readonly tone: Tone
  readonly weight: number
  readonly fill: Tone
}

/** A filled square standing on a corner; `radius` from its centre to a corner. */
export interface DiamondMark {
  readonly kind: 'diamond'
  readonly at: Point
  readonly radius: number
  readonly tone: Tone
}

export interface TextMark {
  readonly kind: 'text'
  /** On the baseline, at the end that `anchor` names. */
  readonly at: Point
  readonly text: string
  readonly tone: Tone
  readonly size: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly strong: boolean
  /** Painted around the letters in the tone of what they lie on, so that they stay legible over lines. */
  readonly halo: Tone | null
}

export type Mark = LineMark | PathMark | AreaMark | CircleMark | DiamondMark | TextMark
