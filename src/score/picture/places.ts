import type { TimeBasis } from '../../science/index.js'
import type { Point } from './drawing.js'
import type { Frame } from './frame.js'

export const place = (frame: Frame, temperature: number, time: number): Point => [
  frame.temperature.at(temperature),
  frame.time.at(time),
]

/** From the centre of the asked point to its corners. */
export const DIAMOND = 8

/** Many points are drawn smaller, so that they stay apart. */
export const pointRadius = (basis: TimeBasis): number => (basis.points.length > 8 ? 3.5 : 5)

/** The edges of the band, cold to warm; cut where they would leave the frame. */
export function bandEdges(frame: Frame): { longest: Point[]; shortest: Point[] } {
  const all = [...frame.course.cold, ...frame.course.inside, ...frame.course.warm]
  const edge = (side: 1 | -1) =>
    all.map(({ temperature, time, doubt }) =>
      place(frame, temperature, Math.min(frame.time.to, Math.max(frame.time.from, time + side * doubt))),
    )
  return { longest: edge(1), shortest: edge(-1) }
}
