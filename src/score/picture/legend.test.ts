import { describe, expect, it } from 'vitest'
import { boxOf, overlap } from './boxes.js'
import type { TextMark } from './drawing.js'
import { legendOf, legendRise } from './legend.js'

const labels = {
  change: 'bath change: drain, pour, opening turns',
  turn: 'turns',
  area: 'area is development; dashed, the plan',
}
const textsIn = (width: number, t = 14): TextMark[] =>
  legendOf(labels, t, 60, width)
    .marksAt(200)
    .filter((mark): mark is TextMark => mark.kind === 'text')

describe('the key under the score', () => {
  it.each([160, 280, 320, 358, 520, 760, 1200])('says all it has to say in %i px, each apart and inside', (width) => {
    const texts = textsIn(width)
    expect(texts.map(({ text }) => text).join(' ')).toBe(Object.values(labels).join(' '))
    const boxes = texts.map(boxOf)
    for (const [i, box] of boxes.entries()) {
      expect(box.right).toBeLessThanOrEqual(width)
      for (const other of boxes.slice(i + 1)) expect(overlap(box, other)).toBe(false)
    }
    expect(Math.max(...texts.map(({ at }) => at[1]))).toBeCloseTo(200, 6)
  })

  it('begins its words at one edge where they stand under one another', () => {
    const firsts = textsIn(358).filter(({ text }) => Object.values(labels).some((label) => label.startsWith(text)))
    expect(new Set(firsts.map(({ at }) => at[0])).size).toBe(1)
  })

  it('stands on one line from the staves on where there is room, and takes no height then', () => {
    const legend = legendOf(labels, 14, 60, 1200)
    expect(legend.lines).toBe(1)
    expect(legendRise(legend, 14)).toBe(0)
    expect(textsIn(1200)[0]?.at[0]).toBeGreaterThan(60)
    expect(legendOf(labels, 14, 60, 358).lines).toBeGreaterThan(1)
  })
})
