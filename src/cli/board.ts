import type { WorkingLine } from '../words/index.js'

/** The working in two columns, as on a board: the step, and where its number comes from. */
export function board(steps: readonly WorkingLine[]): string[] {
  const width = Math.max(0, ...steps.map(({ line }) => line.length)) + 2
  return steps.map(({ line, source }) => `${line.padEnd(width)}[${source}]`)
}
