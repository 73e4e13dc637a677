import { ok, type Result, type Seconds } from '../../kernel/index.js'
import { type ContrastPoint, type FittedContrast, fitContrast, type OwnTime, ownTime } from '../contrast/index.js'
import { contrastIndex } from './contrast-index.js'
import type { StripCurve } from './curve.js'
import type { Measured } from './definition.js'
import { type GradientName, gamma, namedGradient } from './gradient.js'
import { SPEED_CRITERION } from './limits.js'
import { measured, NORMAL_95 } from './measured.js'
import { logSpeedPoint } from './speed.js'
import { type NamedSpeed, nameSpeed } from './speed-names.js'

/** A measure of contrast by name; a family is judged by one only. */
export type ContrastMeasure = GradientName | 'contrast-index' | 'gamma'

/** A strip of a family: its curve, and how long it was developed. */
export interface TimedCurve {
  readonly time: Seconds
  readonly curve: StripCurve
}

/** Contrast of every strip and the law through them. */
export interface Family {
  readonly measure: ContrastMeasure
  readonly strips: readonly { readonly time: Seconds; readonly contrast: Measured; readonly curve: StripCurve }[]
  readonly fitted: FittedContrast
}

/** The film in this developer at a wanted contrast. */
export interface FamilyAnswer {
  readonly measure: ContrastMeasure
  readonly contrast: number
  readonly time: OwnTime
  /** Density of clear film at that time, between the neighbouring strips. Longer development fogs more. */
  readonly baseFog: number
  /** Speed that goes with it; null when the exposures are relative or the contrast lies outside the strips. */
  readonly speed: {
    readonly value: number
    readonly low: number | null
    readonly high: number | null
    readonly named: NamedSpeed
  } | null
}

/** One measure of contrast of a strip by its name. */
export function contrastOf(curve: StripCurve, measure: ContrastMeasure): Result<Measured> {
  if (measure === 'contrast-index') return contrastIndex(curve)
  return measure === 'gamma' ? gamma(curve) : namedGradient(curve, measure)
}

/**
 * A family of strips over time: the contrast of each by one measure, and the contrast–time law through them.
 * `scatter`: one's own standard deviation of contrast from strip to strip, else that of the strips (0.02).
 * Refused with the first strip whose contrast is not defined, or as `fitContrast`. About 5 ms a strip.
 */
export function familyOf(curves: readonly TimedCurve[], measure: ContrastMeasure, scatter?: number): Result<Family> {
  const strips: { time: Seconds; contrast: Measured; curve: StripCurve }[] = []
  for (const { time, curve } of curves) {
    const contrast = contrastOf(curve, measure)
    if (!contrast.ok) return contrast
    strips.push({ time, contrast: contrast.value, curve })
  }
  const points = strips.map(
    ({ time, contrast: { value, byReadings } }): ContrastPoint => ({
      time,
      contrast: value,
      standardError: byReadings ?? 0,
    }),
  )
  const fitted = fitContrast(points, scatter)
  return fitted.ok ? ok({ measure, strips, fitted: fitted.value }) : fitted
}

/**
 * The developing time for a wanted contrast, with the speed and the fog that go with it. Time and its interval as
 * `ownTime`; log speed and fog are taken straight between the two strips either side in contrast.
 */
export function answerOf(family: Family, contrast: number): Result<FamilyAnswer> {
  const time = ownTime(family.fitted, contrast)
  if (!time.ok) return time
  const between = neighbours(family, contrast)
  const speed = speedBetween(between)
  if (!speed.ok) return speed
  const [low, high] = [between.low.curve.curve.baseFog, between.high.curve.curve.baseFog]
  return ok({
    measure: family.measure,
    contrast,
    time: time.value,
    baseFog: low + between.share * (high - low),
    speed: speed.value,
  })
}

type FamilyStrip = Family['strips'][number]

interface Between {
  readonly low: FamilyStrip
  readonly high: FamilyStrip
  /** How far from the one to the other, 0 to 1. */
  readonly share: number
  readonly outside: boolean
}

/** The two strips around a contrast; outside them the end strip stands on both sides. */
function neighbours({ strips }: Family, contrast: number): Between {
  const sorted = [...strips].sort((one, other) => one.contrast.value - other.contrast.value)
  const above = sorted.findIndex((strip) => strip.contrast.value >= contrast)
  const high = (above === -1 ? sorted.at(-1) : sorted[above]) as FamilyStrip
  const low = sorted[above - 1]
  if (above === -1 || low === undefined) return { low: high, high, share: 0, outside: high.contrast.value !== contrast }
  const share = (contrast - low.contrast.value) / (high.contrast.value - low.contrast.value)
  return { low, high, share, outside: false }
}

function speedBetween({ low, high, share, outside }: Between): Result<FamilyAnswer['speed']> {
  const known = [low, high].every(({ curve }) => curve.strip.exposure === 'lux-seconds')
  if (!known || outside) return ok(null)
  const [first, second] = [measured(low.curve, logSpeedPoint), measured(high.curve, logSpeedPoint)]
  // A strip that is too thin or too dense for a speed point leaves contrast and time standing.
  if (!first.ok || !second.ok) return ok(null)
  const logH = first.value.value + share * (second.value.value - first.value.value)
  const value = SPEED_CRITERION.numerator / 10 ** logH
  const named = nameSpeed(value)
  if (!named.ok) return ok(null)
  const half = halfBetween(first.value, second.value, share)
  return ok({
    value,
    low: half === null ? null : value / 10 ** half,
    high: half === null ? null : value * 10 ** half,
    named: named.value,
  })
}

/** Two independent strips, each by its share; strip scatter is common to a strip's whole curve and so counts with it. */
function halfBetween(first: Measured, second: Measured, share: number): number | null {
  const error = ({ byReadings, byStrips }: Measured): number | null =>
    byReadings === null || byStrips === null ? null : Math.hypot(byReadings, byStrips)
  const [one, other] = [error(first), error(second)]
  return one === null || other === null ? null : NORMAL_95 * Math.hypot((1 - share) * one, share * other)
}

/** Contrasts by different measures, or scatter that decides, cannot be ranked. */
export type Comparison =
  | { readonly comparable: false; readonly why: 'different-measures' | 'no-interval' }
  | { readonly comparable: true; readonly difference: number; readonly low: number; readonly high: number }

/** Compares two contrasts: only by the same measure, and with what their errors leave of the difference. */
export function compareContrasts(
  one: { readonly measure: ContrastMeasure; readonly contrast: Measured },
  other: { readonly measure: ContrastMeasure; readonly contrast: Measured },
): Comparison {
  if (one.measure !== other.measure) return { comparable: false, why: 'different-measures' }
  const parts = [one.contrast.byReadings, one.contrast.byStrips, other.contrast.byReadings, other.contrast.byStrips]
  if (parts.some((part) => part === null)) return { comparable: false, why: 'no-interval' }
  const difference = other.contrast.value - one.contrast.value
  const half = NORMAL_95 * Math.hypot(...(parts as number[]))
  return { comparable: true, difference, low: difference - half, high: difference + half }
}
