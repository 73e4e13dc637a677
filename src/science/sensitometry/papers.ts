import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import type { FigureMark } from './definition.js'

/** A paper grade by its useful log exposure range. */
export interface PaperGrade {
  readonly grade: number
  readonly from: number
  readonly to: number
  readonly mark: FigureMark
}

/**
 * Grades by log exposure range. The whole span 0.50–1.70 in six grades (standard of 1966) and grade 6 (a draft of
 * 1978) are published (Focal Encyclopedia of Photography, p. 679); the bounds in between are remembered.
 */
export const PAPER_GRADES: readonly PaperGrade[] = [
  { grade: 0, from: 1.4, to: 1.7, mark: 'memory' },
  { grade: 1, from: 1.15, to: 1.4, mark: 'memory' },
  { grade: 2, from: 0.95, to: 1.15, mark: 'memory' },
  { grade: 3, from: 0.8, to: 0.95, mark: 'memory' },
  { grade: 4, from: 0.65, to: 0.8, mark: 'memory' },
  { grade: 5, from: 0.5, to: 0.65, mark: 'memory' },
  { grade: 6, from: 0.35, to: 0.5, mark: 'source' },
]

/**
 * The grade whose range holds a log exposure range of 0.35 to 1.70; on a bound the softer one. Outside, refused.
 * The same number is the density range a negative should have for it, by contact or diffuse light.
 */
export function gradeFor(logRange: number): Result<PaperGrade> {
  const found = PAPER_GRADES.find(({ from, to }) => logRange >= from && logRange <= to)
  if (found) return ok(found)
  const details = { what: 'A log exposure range', value: short(logRange, 3), low: 0.35, high: 1.7 }
  return failed(problem('curve.bad-value', details, 'logRange'))
}

/** ISO range number of a paper, R = 100 × log exposure range (remembered). 0.3 to 2, else refused. */
export const paperRangeNumber = (logRange: number): Result<number> =>
  refusedOutside('curve.bad-value', 'A log exposure range', logRange, { low: 0.3, high: 2 }) ??
  ok(Math.round(100 * logRange))

/** Where the useful range of a paper ends on its own curve: ISO 6846:1992. */
export const PAPER_RANGE_ENDS = { overFog: 0.04, ofMost: 0.9 } as const

/** Normal contrasts of negatives with their marks, to compare one's own with; never across measures. */
export const NORMAL_CONTRASTS = {
  gammaOutdoors: { low: 0.65, high: 0.9, mark: 'source' },
  contrastIndex: { low: 0.56, high: 0.6, mark: 'source' },
  contrastIndexDiffusion: { low: 0.56, high: 0.58, mark: 'memory' },
  contrastIndexCondenser: { low: 0.42, high: 0.45, mark: 'memory' },
} as const satisfies Record<string, { low: number; high: number; mark: FigureMark }>
