import { describe, expect, it } from 'vitest'
import type { Fonts } from './fonts.js'
import type { Line } from './page.js'
import { runOn } from './run-on.js'

/** Every letter one wide. */
const fonts = { width: (text: string) => text.length } as unknown as Fonts
const linesOf = (stretches: Parameters<typeof runOn>[2], width: number): readonly Line[] => {
  const [block] = runOn(fonts, 'P', stretches, 10, { left: 5, width }).at(100)
  return block?.kind === 'words' ? block.lines : []
}

describe('a paragraph of several faces', () => {
  it('runs on in the same line, each stretch where the one before ended and a space', () => {
    const lines = linesOf([{ words: 'pour it out' }, { words: 'take care', face: 'strong' }], 40)
    expect(lines.map(({ text, x, face }) => [text, x, face])).toEqual([
      ['pour it out', 5, 'text'],
      ['take care', 17, 'strong'],
    ])
    expect(new Set(lines.map(({ y }) => y)).size).toBe(1)
  })

  it('goes on at the edge when a line is full, and its height counts the lines', () => {
    const stretches = [{ words: 'aaaa bbbb' }, { words: 'cccc dddd', ink: 'quiet' as const }]
    expect(linesOf(stretches, 14).map(({ text, x, y }) => [text, x, y])).toEqual([
      ['aaaa bbbb', 5, 110],
      ['cccc', 15, 110],
      ['dddd', 5, 123],
    ])
    expect(runOn(fonts, 'P', stretches, 10, { left: 5, width: 14 }).height).toBeCloseTo(26, 9)
    expect(runOn(fonts, 'P', [], 10, { left: 5, width: 14 }).height).toBe(0)
  })
})
