import { type Celsius, failed, ok, type Problem, problem, type Result, type Seconds } from '../../kernel/index.js'
import { pchip } from '../fitting/index.js'
import { sayTemperature, sayTime } from '../saying.js'
import type { DeveloperKind, Position, SheetPoint, TimeBasis } from './definition.js'
import { lineThrough } from './fit.js'
import { slopeOf, warmth, warmthPerDegree } from './law.js'
import { isAt, isOutside, isOver, isUnder, LIMITS } from './limits.js'

/** A basis made ready for many questions. `lnTime` and `slopeAt` ask no permission; `refusal` does. */
export interface Curve {
  /** Natural logarithm of the time in seconds. */
  readonly lnTime: (temperature: number) => number
  /** Change of ln t per °C. */
  readonly slopeAt: (temperature: number) => number
  /** Why no time can be given at this temperature; null when one can. */
  readonly refusal: (temperature: number) => Problem | null
  readonly place: (temperature: number) => Place
}

export interface Place {
  readonly position: Position
  /** °C past the nearest end of the sheet; 0 on and between its points. */
  readonly beyondBy: number
}

const curves = new WeakMap<TimeBasis, Curve>()

/** The curve of a basis, built once: a basis never changes. */
export function curveOf(basis: TimeBasis): Curve {
  const known = curves.get(basis)
  if (known !== undefined) return known
  const built = build(basis)
  curves.set(basis, built)
  return built
}

function build(basis: TimeBasis): Curve {
  const range = allowedRange(basis)
  return {
    ...shape(basis),
    refusal: (temperature) => refusalAt(basis.kind, range, temperature),
    place: (temperature) => placeOf(basis, temperature),
  }
}

type Shape = Pick<Curve, 'lnTime' | 'slopeAt'>

function shape(basis: TimeBasis): Shape {
  const { law, points } = basis
  const lnReference = Math.log(basis.reference.time)
  if (basis.kind === 'fixed') return { lnTime: () => lnReference, slopeAt: () => 0 }
  if (basis.kind === 'single-bath' && points.length === 1)
    // Held over its small tolerance; the slope serves the band only, since nothing else is known of it.
    return { lnTime: () => lnReference, slopeAt: () => slopeOf('exponential', basis.coefficient.value) }
  return continued(
    basis,
    points.length === 1
      ? null
      : pchip(
          warmths(basis),
          points.map((point) => Math.log(point.time)),
        ),
    law,
  )
}

const warmths = ({ law, points }: TimeBasis): number[] => points.map((point) => warmth(law, point.temperature))

/** Monotone between the points; past an end, on from that point's own time with the law's slope. */
function continued(basis: TimeBasis, between: ReturnType<typeof pchip> | null, law: TimeBasis['law']): Shape {
  const { first, last } = endsOf(basis)
  const [coldest, warmest] = [warmth(law, first.temperature), warmth(law, last.temperature)]
  const [lnCold, lnWarm] = [Math.log(first.time), Math.log(last.time)]
  const slope = slopeBeyond(basis)
  return {
    lnTime: (temperature) => {
      const at = warmth(law, temperature)
      if (at <= coldest) return lnCold + slope * (at - coldest)
      if (at >= warmest || between === null) return lnWarm + slope * (at - warmest)
      return between.at(at)
    },
    slopeAt: (temperature) => {
      const at = warmth(law, temperature)
      const inside = between !== null && at >= coldest && at <= warmest
      return (inside ? between.slopeAt(at) : slope) * warmthPerDegree(law, temperature)
    },
  }
}

/** Slope on warmth past the sheet: of the fit, or of the coefficient when the points give none. */
export function slopeBeyond(basis: TimeBasis): number {
  if (basis.coefficient.origin === 'law') return lineThrough(basis.points, basis.law).slope
  return slopeOf(basis.law, basis.coefficient.value)
}

export const endsOf = ({ points }: TimeBasis): { first: SheetPoint; last: SheetPoint } => ({
  first: points[0] as SheetPoint,
  last: points[points.length - 1] as SheetPoint,
})

/** Where a time may be given: the usable range, and for a single bath its sheet alone. */
export function allowedRange(basis: TimeBasis): TimeBasis['usable'] {
  if (basis.kind !== 'single-bath') return basis.usable
  const { first, last } = endsOf(basis)
  const within = basis.points.length === 1 ? LIMITS.singleBathTolerance.within : 0
  return {
    from: Math.max(first.temperature - within, basis.usable.from) as Celsius,
    to: Math.min(last.temperature + within, basis.usable.to) as Celsius,
  }
}

function refusalAt(kind: DeveloperKind, range: TimeBasis['usable'], temperature: number): Problem | null {
  if (!Number.isFinite(temperature)) {
    const details = { text: sayTemperature(temperature), what: 'the temperature of a developer' }
    return problem('quantity.out-of-range', {
      ...details,
      low: sayTemperature(LIMITS.temperature.from),
      high: sayTemperature(LIMITS.temperature.to),
    })
  }
  if (!isOutside(temperature, range)) return null
  const code = kind === 'single-bath' ? 'times.single-bath-outside-sheet' : 'times.outside-usable-range'
  return problem(code, {
    temperature: sayTemperature(temperature),
    from: sayTemperature(range.from),
    to: sayTemperature(range.to),
  })
}

function placeOf(basis: TimeBasis, temperature: number): Place {
  if (basis.kind === 'fixed') return { position: 'fixed', beyondBy: 0 }
  if (pointAt(basis, temperature) !== undefined) return { position: 'sheet-point', beyondBy: 0 }
  const { first, last } = endsOf(basis)
  if (temperature < first.temperature) return { position: 'beyond-cold', beyondBy: first.temperature - temperature }
  if (temperature > last.temperature) return { position: 'beyond-warm', beyondBy: temperature - last.temperature }
  return { position: 'between', beyondBy: 0 }
}

/** The sheet point that answers at a temperature by itself, if one does. */
function pointAt(basis: TimeBasis, temperature: number): SheetPoint | undefined {
  const holdsEverywhere = basis.kind === 'fixed' || (basis.kind === 'single-bath' && basis.points.length === 1)
  return holdsEverywhere ? basis.reference : basis.points.find((point) => isAt(point.temperature, temperature))
}

/** The time at a temperature: a sheet point's own, else by the curve; refused where the basis gives none. */
export function timeOn(basis: TimeBasis, temperature: number): Result<Seconds> {
  const curve = curveOf(basis)
  const refusal = curve.refusal(temperature)
  if (refusal !== null) return failed(refusal)
  const own = pointAt(basis, temperature)
  return possibleTime(own === undefined ? Math.exp(curve.lnTime(temperature)) : own.time, temperature)
}

/** A time that can be waited out by hand, or the problem that says it cannot. */
export function possibleTime(time: number, temperature: number): Result<Seconds> {
  const { from, to } = LIMITS.answerTime
  if (!isUnder(time, from) && !isOver(time, to)) return ok(time as Seconds)
  const details = { temperature: sayTemperature(temperature), time: sayTime(time) }
  return failed(problem('times.impossible-answer', { ...details, from: sayTime(from), to: sayTime(to) }))
}
