import { describe, expect, it } from 'vitest'
import { measuringFonts } from './fonts.js'
import { broken, fittingSize } from './lines.js'

const fonts = measuringFonts()

describe('fonts', () => {
  it('take each letter from a font that has it', () => {
    const { runs } = fonts.runs('Łąka 100', 'text', 12)
    expect(runs.map(({ font, text }) => [font, text])).toEqual([
      ['text.latin-ext', 'Łą'],
      ['text.latin', 'ka 100'],
    ])
  })

  it('refuse no letter', () => {
    expect(fonts.width('フィルム 400', 'strong', 20)).toBeGreaterThan(fonts.width('400', 'strong', 20))
  })

  it('set a fifth of an em before a unit', () => {
    const apart = fonts.width('20.0', 'text', 100) + fonts.width('°C', 'text', 100)
    expect(fonts.width('20.0\u202f°C', 'text', 100) - apart).toBeCloseTo(20, 6)
  })

  it('set figures of one width', () => {
    expect(fonts.width('1:11', 'text', 12)).toBeCloseTo(fonts.width('8:48', 'text', 12), 9)
  })
})

describe('lines', () => {
  const text = 'Maker’s sheet, printed March 2025, page 2; four points, typed in on a quiet evening'

  it('are no wider than their column and lose nothing', () => {
    const lines = broken(fonts, text, { size: 12 }, 120)
    expect(lines.join(' ')).toBe(text)
    for (const line of lines) expect(fonts.width(line, 'text', 12)).toBeLessThanOrEqual(120)
  })

  it('end in an ellipsis where there are too many', () => {
    const lines = broken(fonts, text, { size: 12 }, 120, 2)
    expect(lines).toHaveLength(2)
    expect(lines[1]?.endsWith('…')).toBe(true)
    expect(fonts.width(lines[1] ?? '', 'text', 12)).toBeLessThanOrEqual(120)
  })

  it('break a word that no line holds', () => {
    const lines = broken(fonts, 'x'.repeat(60), { size: 12 }, 120)
    expect(lines.join('')).toBe('x'.repeat(60))
    for (const line of lines) expect(fonts.width(line, 'text', 12)).toBeLessThanOrEqual(120)
  })

  it('shrink to fit, down to a least size', () => {
    const size = fittingSize(fonts, text, 'strong', 60, 5, 400)
    expect(size).toBeLessThan(60)
    expect(fonts.width(text, 'strong', size)).toBeLessThanOrEqual(400)
    expect(fittingSize(fonts, text, 'strong', 60, 40, 400)).toBe(40)
  })
})
