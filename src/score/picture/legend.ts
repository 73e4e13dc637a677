import { textWidth, wrapped } from './boxes.js'
import type { Mark } from './drawing.js'
import type { ScoreLabels } from './score-definition.js'

/** The key under the score: what block, tick and area are. None is left out; a narrow score takes more lines. */
export interface Legend {
  readonly lines: number
  /** Marks with the last line standing at `bottom`. */
  readonly marksAt: (bottom: number) => Mark[]
}

interface Key {
  readonly wide: number
  /** Kept for it, so that words under one another begin at one edge. */
  readonly room: number
  readonly tone: 'ink' | 'wash'
  readonly words: readonly string[]
}

interface Placed extends Key {
  readonly x: number
  /** Its first line, from the top. */
  readonly line: number
}

/** From line to line, and between two keys, in sizes of the text. */
const LINE = 1.4
const BETWEEN = 1.5
const BESIDE = 0.6

/** How much of the drawing's height the legend takes beyond its one line. */
export const legendRise = ({ lines }: Legend, size: number): number => (lines - 1) * LINE * size

/** Keys beside one another from `left` where they fit on one line; else from the edge, line by line. */
export function legendOf(labels: ScoreLabels['legend'], t: number, left: number, width: number): Legend {
  const keys: readonly Key[] = [
    { wide: 2 * t, room: 2 * t, tone: 'ink', words: [labels.change] },
    { wide: 2, room: 2, tone: 'ink', words: [labels.turn] },
    { wide: 2 * t, room: 2 * t, tone: 'wash', words: [labels.area] },
  ]
  const inOne = placedFrom(keys, t, left, width)
  const placed = inOne.every(({ line, words }) => line === 0 && words.length === 1)
    ? inOne
    : placedFrom(keys.map(asWideAsTheOthers(t)), t, 0, width)
  const lines = Math.max(...placed.map(({ line, words }) => line + words.length))
  const marksAt = (bottom: number) =>
    placed.flatMap((key) => marksOf(key, t, bottom - (lines - 1 - key.line) * LINE * t))
  return { lines, marksAt }
}

const asWideAsTheOthers =
  (t: number) =>
  (key: Key): Key => ({ ...key, room: 2 * t })

const lengthOf = ({ room, words }: Key, t: number): number =>
  room + BESIDE * t + Math.max(...words.map((one) => textWidth(one, t)))

function placedFrom(keys: readonly Key[], t: number, left: number, width: number): Placed[] {
  const placed: Placed[] = []
  for (const key of keys) {
    const words = wrapped(key.words.join(' '), t, width - left - key.room - BESIDE * t)
    const before = placed.at(-1)
    const fitted = { ...key, words }
    const beside = before === undefined ? left : before.x + lengthOf(before, t) + BETWEEN * t
    const joins = before === undefined || (beside + lengthOf(fitted, t) <= width && before.words.length === 1)
    if (joins) placed.push({ ...fitted, x: beside, line: before?.line ?? 0 })
    else placed.push({ ...fitted, x: left, line: before.line + before.words.length })
  }
  return placed
}

function marksOf({ x: left, wide, room, tone, words }: Placed, t: number, y: number): Mark[] {
  const x = left + (room - wide) / 2
  const top = y - 0.75 * t
  const key: Mark = {
    kind: 'area',
    points: [
      [x, top],
      [x + wide, top],
      [x + wide, y],
      [x, y],
    ],
    tone,
  }
  const texts = words.map(
    (text, i): Mark => ({
      kind: 'text',
      at: [left + room + BESIDE * t, y + i * LINE * t],
      text,
      tone: 'quiet',
      size: t,
      anchor: 'start',
      strong: false,
      halo: null,
    }),
  )
  return [key, ...texts]
}
