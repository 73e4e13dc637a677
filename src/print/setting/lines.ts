import type { Fonts } from './fonts.js'
import type { Face, Line } from './page.js'

/** Distance between baselines, in sizes of the text. */
export const LEADING = 1.3

export interface Setting {
  readonly size: number
  readonly face?: Face
  readonly ink?: Line['ink']
  readonly anchor?: Line['anchor']
}

export const line = (
  text: string,
  x: number,
  y: number,
  { size, face = 'text', ink = 'ink', anchor = 'start' }: Setting,
): Line => ({
  text,
  x,
  y,
  size,
  face,
  ink,
  anchor,
})

type Measure = Pick<Fonts, 'width'>

/**
 * Breaks a text into lines no wider than `width`, at spaces; a word too long for a line is broken anywhere.
 * With `most`, what does not fit into so many lines is left out and an ellipsis stands for it.
 */
export function broken(
  fonts: Measure,
  text: string,
  { size, face = 'text' }: Setting,
  width: number,
  most = 99,
): string[] {
  const fits = (part: string) => fonts.width(part, face, size) <= width
  const lines: string[] = []
  for (const word of text
    .split(/[ \n\t]+/)
    .filter((part) => part !== '')
    .flatMap((part) => pieces(part, fits))) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  if (lines.length <= most) return lines
  const kept = lines.slice(0, most)
  let last = [...(kept.at(-1) ?? '')]
  while (last.length > 0 && !fits(`${last.join('')}…`)) last = last.slice(0, -1)
  return [...kept.slice(0, -1), `${last.join('').trimEnd()}…`]
}

/** The word whole where it fits a line, else cut into stretches that do. */
function pieces(word: string, fits: (part: string) => boolean): string[] {
  if (fits(word)) return [word]
  const parts: string[] = []
  for (const letter of word) {
    const longer = `${parts.at(-1) ?? ''}${letter}`
    if (parts.length > 0 && fits(longer)) parts[parts.length - 1] = longer
    else parts.push(letter)
  }
  return parts
}

/** The largest size up to `size` at which the text fits one line of `width`; never under `least`. */
export function fittingSize(
  fonts: Measure,
  text: string,
  face: Face,
  size: number,
  least: number,
  width: number,
): number {
  const natural = fonts.width(text, face, size)
  return natural <= width ? size : Math.max(least, Math.floor((2 * size * width) / natural) / 2)
}
