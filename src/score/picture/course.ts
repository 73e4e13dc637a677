import type { Celsius } from '../../kernel/index.js'
import { developingTime, type TimeBasis } from '../../science/index.js'

/** The time at one temperature of the course, and its give or take by the sheet and the law; °C and seconds. */
export interface CoursePoint {
  readonly temperature: number
  readonly time: number
  readonly doubt: number
}

/** The course of developing time over temperature: inside the sheet, and beyond its cold and its warm end. */
export interface Course {
  readonly inside: readonly CoursePoint[]
  readonly cold: readonly CoursePoint[]
  readonly warm: readonly CoursePoint[]
}

/** Samples per stretch: dense enough that the curve looks smooth at any size it is drawn. */
const SAMPLES = 32

/** The coldest and the warmest temperature the sheet speaks of, °C. */
export function sheetRange(basis: TimeBasis): { from: number; to: number } {
  if (basis.window !== null) return basis.window
  const temperatures = basis.points.map((point) => point.temperature)
  return { from: Math.min(...temperatures), to: Math.max(...temperatures) }
}

/** The course between two temperatures; empty where the basis gives no time, and for a fixed time altogether. */
export function courseOf(basis: TimeBasis, from: number, to: number): Course {
  if (basis.kind === 'fixed') return { inside: [], cold: [], warm: [] }
  const sheet = sheetRange(basis)
  const [coldest, warmest] = [Math.max(from, basis.usable.from), Math.min(to, basis.usable.to)]
  const knots = basis.points.map((point) => point.temperature)
  return {
    inside: sampled(basis, sheet.from, sheet.to, knots),
    cold: sampled(basis, coldest, sheet.from),
    warm: sampled(basis, sheet.to, warmest),
  }
}

function sampled(basis: TimeBasis, from: number, to: number, knots: readonly number[] = []): CoursePoint[] {
  if (!(to > from)) return []
  const even = Array.from({ length: SAMPLES + 1 }, (_, i) => from + ((to - from) * i) / SAMPLES)
  const temperatures = [...new Set([...even, ...knots])].sort((a, b) => a - b)
  const course = temperatures.flatMap((temperature) => {
    const answer = developingTime(basis, temperature as Celsius)
    return answer.ok ? [{ temperature, time: answer.value.time, doubt: answer.value.band.bySheetAndLaw }] : []
  })
  // A single answer is the end of the neighbouring stretch, where a basis gives none of its own.
  return course.length > 1 ? course : []
}
