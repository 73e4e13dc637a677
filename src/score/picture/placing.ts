import { type Box, boxOf, crosses, grown, overlap, within } from './boxes.js'
import type { LineMark, Point, TextMark } from './drawing.js'

/** A place that a label may take: its lines of text, and the leader that ties it to what it names, if any. */
export interface Candidate {
  readonly texts: readonly TextMark[]
  readonly leader?: LineMark
}

/** Room kept free around each label. */
const AIR = 2

/**
 * Finds room for labels one after the other: each takes the first of its candidates that lies inside the frame
 * and touches neither stroke, symbol nor label. A label that must be there settles for lying over faint strokes,
 * then over any (its halo keeps it legible); any other is left out when there is no room.
 */
export class Placing {
  readonly #strokes: (readonly [Point, Point])[] = []
  readonly #faint: (readonly [Point, Point])[] = []
  readonly #symbols: Box[] = []
  readonly #labels: Box[] = []
  readonly placed: (TextMark | LineMark)[] = []

  constructor(readonly room: Box) {}

  stroke(points: readonly Point[], { faint = false } = {}): void {
    const strokes = faint ? this.#faint : this.#strokes
    points.slice(1).forEach((point, i) => {
      strokes.push([points[i] as Point, point])
    })
  }

  symbol(box: Box): void {
    this.#symbols.push(box)
  }

  /** A label that has its place already, such as a figure on an axis. */
  fixed(text: TextMark): void {
    this.#labels.push(grown(boxOf(text), AIR))
    this.placed.push(text)
  }

  label(candidates: readonly Candidate[], { needed = false } = {}): void {
    const chosen =
      candidates.find((candidate) => this.#clear(candidate, [...this.#strokes, ...this.#faint])) ??
      (needed ? this.#overFaint(candidates) : undefined)
    if (chosen === undefined) return
    if (chosen.leader !== undefined) {
      this.placed.push(chosen.leader)
      this.stroke([chosen.leader.from, chosen.leader.to])
    }
    chosen.texts.forEach((text) => {
      this.fixed(text)
    })
  }

  /** Inside the room and clear of other labels. */
  #apart({ texts, leader }: Candidate): boolean {
    const crossing = (box: Box) => leader !== undefined && crosses(box, leader.from, leader.to)
    return (
      texts.every((text) => within(boxOf(text), this.room)) &&
      !this.#labels.some((box) => crossing(box) || texts.some((text) => overlap(box, grown(boxOf(text), AIR))))
    )
  }

  #overFaint(candidates: readonly Candidate[]): Candidate | undefined {
    return (
      candidates.find((candidate) => this.#clear(candidate, this.#strokes)) ??
      candidates.find((candidate) => this.#clear(candidate, [])) ??
      candidates.find((candidate) => this.#apart(candidate))
    )
  }

  #clear(candidate: Candidate, strokes: readonly (readonly [Point, Point])[]): boolean {
    const { texts, leader } = candidate
    const hit = (symbol: Box) => leader !== undefined && crosses(symbol, leader.from, leader.to)
    return (
      this.#apart(candidate) &&
      !this.#symbols.some(hit) &&
      texts.every((text) => {
        const box = grown(boxOf(text), AIR)
        return !this.#symbols.some((other) => overlap(box, other)) && !strokes.some(([a, b]) => crosses(box, a, b))
      })
    )
  }
}
