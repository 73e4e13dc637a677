import { describe, expect, it } from 'vitest'
import { boxOf, crosses, overlap, wrapped } from './boxes.js'

const box = { left: 10, top: 10, right: 30, bottom: 20 }

describe('boxes', () => {
  it('reckon a text from the end that its anchor names', () => {
    const at = (anchor: 'start' | 'middle' | 'end') => boxOf({ at: [100, 50], text: '9:30', size: 10, anchor })
    expect(at('start')).toEqual({ left: 100, top: 42.5, right: 122, bottom: 52.5 })
    expect(at('middle').left).toBe(89)
    expect(at('end').right).toBe(100)
  })

  it('overlap only when they share ground', () => {
    expect(overlap(box, { left: 29, top: 0, right: 40, bottom: 11 })).toBe(true)
    expect(overlap(box, { left: 30, top: 0, right: 40, bottom: 40 })).toBe(false)
  })

  it.each([
    ['through it', [0, 0], [40, 30], true],
    ['past a corner', [0, 20], [20, 40], false],
    ['beside it', [31, 0], [31, 40], false],
    ['ending before it', [0, 15], [9, 15], false],
    ['inside it', [12, 12], [14, 14], true],
  ] as const)('see a stroke %s', (_, from, to, expected) => {
    expect(crosses(box, from, to)).toBe(expected)
  })

  it('break a text at its spaces', () => {
    expect(wrapped('beyond the sheet', 10, 60)).toEqual(['beyond the', 'sheet'])
    expect(wrapped('beyond', 10, 5)).toEqual(['beyond'])
  })
})
