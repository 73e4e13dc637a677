import { rateOf } from '../../science/index.js'
import { temperatureAt } from '../plan/course.js'
import type { Laid, TankPlan } from '../plan/definition.js'
import type { Point } from './drawing.js'
import type { StaveFrame } from './score-definition.js'

/** Enough straight pieces that the area drawn is the dose to a thousandth. */
const PIECES = 48

/** The developing bath of a tank whose rate is known; null where there is none. */
export const developing = ({ laid }: TankPlan): Laid | null =>
  laid.find(({ course, skipped }) => course !== null && !skipped) ?? null

/** Rate of development at moments of a bath, `from` to `to` seconds after the tank's zero: (second, rate). */
export function ratesOf(bath: Laid, from: number, to: number): Point[] {
  const { development, course } = bath
  if (course === null || development?.from !== 'basis' || !(to > from)) return []
  const rate = rateOf(development.basis)
  return Array.from({ length: PIECES + 1 }, (_, i) => {
    const at = from + ((to - from) * i) / PIECES
    const known = rate(temperatureAt(course, at - bath.in) as never)
    return [at, known.ok ? known.value : 1] as const
  })
}

/** The greatest rate a stave has to hold, that of its plan included. */
export function greatestRate(plans: readonly (TankPlan | null)[]): number {
  const rates = plans.flatMap((plan) => {
    const bath = plan === null ? null : developing(plan)
    return bath === null ? [] : ratesOf(bath, bath.in, bath.clockEnd).map(([, rate]) => rate)
  })
  return Math.max(1, ...rates)
}

/** The outline of the band over a stretch of the bath, in the drawing's lengths. */
export function outline({ x, base, unit }: StaveFrame, bath: Laid, from: number, to: number): Point[] {
  return ratesOf(bath, from, to).map(([at, rate]) => [x.at(at), base - unit * rate] as const)
}

/** The same as an area that stands on the line: as large as the development done over that stretch. */
export function area(frame: StaveFrame, bath: Laid, from: number, to: number): Point[] {
  const top = outline(frame, bath, from, to)
  const [first, last] = [top[0], top.at(-1)]
  if (first === undefined || last === undefined) return []
  return [[first[0], frame.base], ...top, [last[0], frame.base]]
}
