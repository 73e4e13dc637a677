import type { Point, TextMark } from './drawing.js'

/** A rectangle in the drawing, edges in lengths. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Mean advance of a letter or figure, in ems; the real one depends on the letters and is seldom wider. */
const ADVANCE = 0.55

export const textWidth = (text: string, size: number): number => [...text].length * ADVANCE * size

/** The room a text takes, letters with ascenders and descenders included. */
export function boxOf(mark: Pick<TextMark, 'at' | 'text' | 'size' | 'anchor'>): Box {
  const width = textWidth(mark.text, mark.size)
  const [x, y] = mark.at
  const left = mark.anchor === 'start' ? x : mark.anchor === 'middle' ? x - width / 2 : x - width
  return { left, top: y - 0.75 * mark.size, right: left + width, bottom: y + 0.25 * mark.size }
}

export const grown = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
})

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

export const within = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom

/** Whether a stroke from `a` to `b` passes through the box (clipping by Liang and Barsky, 1984). */
export function crosses(box: Box, a: Point, b: Point): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  let [enter, leave] = [0, 1]
  const sides: readonly (readonly [number, number])[] = [
    [-dx, a[0] - box.left],
    [dx, box.right - a[0]],
    [-dy, a[1] - box.top],
    [dy, box.bottom - a[1]],
  ]
  for (const [toward, room] of sides) {
    if (toward === 0 && room < 0) return false
    if (toward < 0) enter = Math.max(enter, room / toward)
    if (toward > 0) leave = Math.min(leave, room / toward)
  }
  return enter <= leave
}

/** Breaks a text into lines no wider than `width` at its spaces; a longer word stands alone. */
export function wrapped(text: string, size: number, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last} ${word}`
    if (last === undefined || textWidth(longer, size) > width) lines.push(word)
    else lines[lines.length - 1] = longer
  }
  return lines
}
