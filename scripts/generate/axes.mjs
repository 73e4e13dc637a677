// A plot with two straight axes as a drawing: scales and round numbers are those of the graph of times.
import { linearScale } from '../../dist/score/picture/scales.js'
import { multiples } from '../../dist/score/picture/ticks.js'

const SIZE = { width: 560, height: 360 }
const EDGE = { left: 56, right: 540, top: 34, bottom: 306 }
const TEXT = 13

const text = (at, words, more = {}) => ({
  kind: 'text',
  at,
  text: words,
  tone: 'quiet',
  size: TEXT,
  anchor: 'start',
  strong: false,
  halo: null,
  ...more,
})
const written = (value, decimals) => value.toFixed(decimals).replace('-', '−')

/** `curves`, `levels`, `points` and `notes` in the plot's own values; later ones lie on top. */
export function plot({ title, description, x, y, levels = [], curves = [], points = [], notes = [] }) {
  const across = linearScale(x.from, x.to, EDGE.left, EDGE.right)
  const up = linearScale(y.from, y.to, EDGE.bottom, EDGE.top)
  const place = ([one, other]) => [across.at(one), up.at(other)]
  const marks = [
    ...multiples(y.step, y.from, y.to).flatMap((value) => [
      { kind: 'line', from: [EDGE.left, up.at(value)], to: [EDGE.right, up.at(value)], tone: 'rule', weight: 1 },
      text([EDGE.left - 8, up.at(value) + 4], written(value, y.decimals), { anchor: 'end' }),
    ]),
    ...multiples(x.step, x.from, x.to).flatMap((value) => [
      {
        kind: 'line',
        from: [across.at(value), EDGE.bottom],
        to: [across.at(value), EDGE.bottom + 5],
        tone: 'quiet',
        weight: 1,
      },
      text([across.at(value), EDGE.bottom + 20], written(value, x.decimals), { anchor: 'middle' }),
    ]),
    { kind: 'line', from: [EDGE.left, EDGE.bottom], to: [EDGE.right, EDGE.bottom], tone: 'quiet', weight: 1 },
    ...levels.map(({ at, tone = 'edge' }) => ({
      kind: 'line',
      from: [EDGE.left, up.at(at)],
      to: [EDGE.right, up.at(at)],
      tone,
      weight: 1.5,
      dash: [5, 4],
    })),
    ...curves.map(({ through, tone = 'accent', weight = 2, dash }) => ({
      kind: 'path',
      points: through.map(place),
      tone,
      weight,
      ...(dash ? { dash } : {}),
    })),
    ...points.map(({ at, fill = 'sheet', tone = 'ink' }) => ({
      kind: 'circle',
      at: place(at),
      radius: 4,
      tone,
      weight: 1.5,
      fill,
    })),
    ...notes.map(({ at, words, anchor = 'start', dx = 8, dy = 4 }) => {
      const [px, py] = place(at)
      return text([px + dx, py + dy], words, { tone: 'ink', anchor })
    }),
    text([EDGE.left, 20], y.label),
    text([EDGE.right, EDGE.bottom + 42], x.label, { anchor: 'end' }),
  ]
  return { ...SIZE, title, description, marks }
}

/** Values of a function at even steps. */
export const along = (from, to, of, count = 80) =>
  Array.from({ length: count + 1 }, (_, i) => {
    const at = from + ((to - from) * i) / count
    return [at, of(at)]
  })
