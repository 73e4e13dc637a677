import type { Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** A figure with what is left open about it; an end that is not known is not said. */
export interface OpenFigure {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
}

const two = (value: number): string => value.toFixed(2).replace('-', '−')
const three = (value: number): string => value.toFixed(3).replace('-', '−')
const between = ({ low, high }: OpenFigure, write: (value: number) => string): string =>
  low === null || high === null ? 'its interval is open' : `${write(low)} to ${write(high)}`
const whole = (value: number): string => value.toPrecision(value < 10 ? 2 : 3).replace(/\.0$/, '')

/** Sentences about strips: what a curve says, line by line. */
export const stripWords = {
  'strip.speed-iso': (p: OpenFigure & { name: string }) =>
    `Film speed ISO ${p.name} (computed ${whole(p.value)}, ${between(p, whole)}).`,
  'strip.speed-delta-x': (p: OpenFigure & { name: string }) =>
    `No ISO speed. By Δ-X it is ${p.name} (computed ${whole(p.value)}, ${between(p, whole)}).`,
  'strip.unsure': (_: object) =>
    'What reading and scatter leave open reaches past the limit: another strip may be judged otherwise.',
  'strip.no-speed': (p: { reason: string }) => `No speed: ${p.reason}`,
  'strip.figure': (p: OpenFigure & { name: string }) => `${p.name}: ${two(p.value)} (${between(p, two)}).`,
  'strip.undefined': (p: { name: string; reason: string }) => `${p.name}: undefined. ${p.reason}`,
  'strip.measure.iso-triangle': (_: object) => 'Average gradient, 0.10 over base and fog to 1.30 further',
  'strip.measure.g-bar': (_: object) => 'Average gradient, 0.10 over base and fog to 1.50 further',
  'strip.measure.g-bar-chord': (_: object) => 'Average gradient, 0.10 over base and fog to 1.50 along the chord',
  'strip.measure.contrast-index-short': (_: object) => 'Contrast index, short form by a chord of 2.00',
  'strip.measure.radiographic': (_: object) => 'Average gradient, 0.25 to 2.00 over base and fog',
  'strip.measure.contrast-index': (_: object) => 'Contrast index by arcs of 0.2 and 2.2',
  'strip.measure.gamma': (_: object) => 'Gamma, the steepest mean slope over 0.90',
  'strip.warning.base-from-lightest-step': (p: { density: number }) =>
    `No clear film was read, so the lightest step, ${two(p.density)}, stands for base and fog; it may have had light.`,
  'strip.warning.steps-far-apart': (p: { apart: number }) =>
    `Steps ${two(p.apart)} apart can hide the toe: the speed’s interval is a little too narrow.`,
  'strip.warning.dip-evened-out': (p: { steps: readonly number[] }) =>
    `A small dip was evened out at step ${p.steps.join(', ')}.`,
  'strip.work.steps': (p: { count: number; from: number; to: number }) =>
    `${p.count} steps, log H ${two(p.from)} to ${two(p.to)}`,
  'strip.work.base': (p: { density: number }) => `base and fog ${two(p.density)}`,
  'strip.work.error': (p: { error: number }) => `reading error ${three(p.error)}`,
  'strip.work.scatter': (p: { scatter: number }) => `scatter from strip to strip ${three(p.scatter)}`,
  'strip.work.speed-point': (p: { density: number; logH: number }) =>
    `m: density ${two(p.density)} is reached at log H ${three(p.logH)}`,
  'strip.work.rise': (p: { rise: number }) =>
    `n: 1.30 further the density is ${three(p.rise)} higher; 0.80 ± 0.05 is asked for`,
  'strip.work.iso': (p: { logH: number; speed: number }) =>
    `S = 0.8 / 10^${three(p.logH)} = ${p.speed.toFixed(1)}, named by degrees`,
  'strip.work.delta-x': (p: { rise: number; deltaX: number; speed: number }) =>
    `ΔX = ${three(p.deltaX)} for a rise of ${three(p.rise)}, less 0.296 moves the exposure: S = ${p.speed.toFixed(1)}`,
  'strip.work.figure': (p: { name: string; value: number; byReadings: number | null; byStrips: number | null }) =>
    `${p.name}: ${three(p.value)}, error ${p.byReadings === null ? 'open' : three(p.byReadings)} by reading, ${p.byStrips === null ? 'open' : three(p.byStrips)} by strips`,
  'strip.source.tablet': (p: { name: string }) => `the printed densities of a ${p.name} tablet; its own are better`,
  'strip.source.own-tablet': (_: object) => 'the tablet’s own densities, as given',
  'strip.source.exposures': (_: object) => 'the exposures, as given',
  'strip.source.measured': (_: object) => 'measured here',
  'strip.source.lightest': (_: object) => 'assumption: the lightest step had no light',
  'strip.source.stated': (_: object) => 'as stated',
  'strip.source.calibrated': (_: object) => 'the largest that the known steps leave open',
  'strip.source.practice': (_: object) => 'common practice',
  'strip.source.iso': (_: object) => 'ISO 6:1993',
  'strip.source.tolerance': (_: object) => 'ISO 6:1993; the ± 0.05 is remembered',
  'strip.source.delta-x': (_: object) => 'Nelson & Simonds 1956; the polynomial is remembered',
  'strip.source.two-points': (_: object) => 'the two points as published',
  'strip.source.arcs': (_: object) => 'Niederpruem, Nelson & Yule 1966; the radii are remembered',
  'strip.source.gamma': (_: object) => 'Hurter & Driffield 1890; the 0.90 is ours',
} as const

/** Sentences about a film’s own index and about densities without a densitometer. */
export const indexWords = {
  'index.frame': (p: { setting: string; index: number; density: number | null }) =>
    `${p.setting} is index ${whole(p.index)}${p.density === null ? '' : `: ${two(p.density)} over base and fog`}`,
  'index.own': (p: OpenFigure & { name: string }) =>
    `Your own index is ${whole(p.value)} (${between(p, whole)}): set ${p.name}. It holds for this camera, meter and development.`,
  'index.frames-only': (_: object) => 'Give the density of each frame over base and fog for an index of your own.',
  'index.none': (p: { reason: string }) => `No index of your own: ${p.reason}`,
  'index.work.meter': (p: { setting: string; index: number; under: number }) =>
    `the meter says ${p.setting} at ${whole(p.index)}; frames are meant to lie ${p.under} stops under it`,
  'index.work.frame': (p: { setting: string; less: number; index: number; from: number }) =>
    `${p.setting}: ${p.less.toFixed(1).replace('-', '−')} stops less than meant, ${whole(p.from)} × 2^${p.less.toFixed(1).replace('-', '−')} = ${whole(p.index)}`,
  'index.work.own': (p: { index: number }) => `0.10 over base and fog is met at ${whole(p.index)}`,
  'index.source.marks': (_: object) => 'the marks on lens and shutter, rounded to their stops',
  'density.enlarger': (p: { blank: number; matched: number; density: number; error: number }) =>
    `${p.blank} s against ${p.matched} s: ${two(p.density)} over base and fog, give or take ${two(p.error)}.`,
  'density.scanner': (p: { read: number; density: number; error: number }) =>
    `${three(p.read)} read is ${two(p.density)}, give or take ${two(p.error)}, for this scanner and setting only.`,
  'density.work.enlarger': (p: { blank: number; matched: number; density: number }) =>
    `log10(${p.matched} / ${p.blank}) = ${three(p.density)}`,
  'density.work.scanner': (p: { read: number; density: number }) => `${three(p.read)} stands for ${three(p.density)}`,
  'density.source.matched': (_: object) => 'two greys matched by eye; a twentieth of the time is not seen',
  'density.source.uncalibrated': (_: object) => 'as read: no known step, 15 in a hundred assumed',
  'density.source.one-step': (_: object) => 'the ratio of one known step, within a factor of two of it',
  'density.source.between': (_: object) => 'a curve between the known steps',
} as const

/** Sentences about a family of strips over time. */
export const contrastWords = {
  'contrast.answer': (p: { wanted: number; time: Seconds; low: Seconds | null; high: Seconds | null }, w: Writer) =>
    `Develop ${w.time(p.time)} for a contrast of ${two(p.wanted)} (${timesBetween(p.low, p.high, w)}).`,
  'contrast.speed': (p: OpenFigure & { name: string }) =>
    `The speed there is ${p.name} by the 0.10 point (computed ${whole(p.value)}, ${between(p, whole)}).`,
  'contrast.fog': (p: { density: number }) => `Base and fog there is ${two(p.density)}.`,
  'contrast.beyond': (_: object) => 'That is outside the strips, by less than one N: develop one nearer to it.',
  'contrast.two-strips': (_: object) =>
    'Two strips say nothing about when the image begins: it is taken to begin at once. A third strip would tell.',
  'contrast.strip': (p: { time: Seconds; contrast: number; misfit: number }, w: Writer) =>
    `${w.time(p.time)}: contrast ${three(p.contrast)}, the law ${three(p.contrast + p.misfit)}`,
  'contrast.work.law': (p: { most: number; rate: number; start: Seconds }, w: Writer) =>
    `G = ${three(p.most)} · (1 − exp(−${(60 * p.rate).toFixed(4)} · (t − ${w.time(Math.round(p.start))}))), t in minutes`,
  'contrast.work.inverse': (p: { wanted: number; most: number; rate: number; time: Seconds }, w: Writer) =>
    `t = t0 − ln(1 − ${two(p.wanted)}/${three(p.most)}) / ${(60 * p.rate).toFixed(4)} = ${w.time(p.time)}`,
  'contrast.work.interval': (p: { scatter: number; low: Seconds | null; high: Seconds | null }, w: Writer) =>
    `with a scatter of ${three(p.scatter)} from strip to strip: ${timesBetween(p.low, p.high, w)}`,
  'contrast.work.watkins': (p: { appearance: number; factor: number; time: Seconds }, w: Writer) =>
    `to compare: appearance ${p.appearance} s × ${p.factor} = ${w.time(p.time)}`,
  'contrast.source.given': (_: object) => 'contrast as given',
  'contrast.source.read': (p: { measure: string }) => `read off the strip: ${p.measure}`,
  'contrast.source.two-strips': (_: object) => 'closed form from t and 2t, t0 = 0 assumed; Sheppard & Mees 1907',
  'contrast.source.assumed-start': (_: object) => 'least squares, t0 = 0 assumed; Sheppard & Mees 1907',
  'contrast.source.least-squares': (_: object) => 'least squares; Sheppard & Mees 1907',
  'contrast.source.inverse': (_: object) => 'the law turned round',
  'contrast.source.assumption': (_: object) => 'scatter assumed until measured; Bates & Watts 1988, §6.1',
  'contrast.source.measured': (_: object) => 'scatter as measured; Bates & Watts 1988, §6.1',
  'contrast.source.watkins': (_: object) => 'Watkins’ rule, a check of the law by history and no way of working',
} as const

const timesBetween = (low: Seconds | null, high: Seconds | null, w: Writer): string => {
  if (low !== null && high !== null) return `${w.time(low)} to ${w.time(high)}`
  if (low === null && high === null) return 'the strips leave it open'
  return low === null ? `up to ${w.time(high as Seconds)}` : `from ${w.time(low)}`
}

/** Sentences about zones, ranges and papers. */
export const zonesWords = {
  'zones.row': (p: { n: number; stops: number; gradient: number }) =>
    `${nOf(p.n).padEnd(5)} ${p.stops.toFixed(1).padStart(4)} stops  average gradient ${two(p.gradient)}`,
  'zones.model.no-flare': (p: { stops: number; range: number }) =>
    `Without flare: normal is ${p.stops} stops, the negative spans ${two(p.range)}.`,
  'zones.model.flare': (p: { stops: number; range: number; flare: number }) =>
    `With flare: normal is ${p.stops.toFixed(1)} stops less ${two(p.flare)} of flare, the negative spans ${two(p.range)}.`,
  'zones.of-gradient': (p: { gradient: number; n: number }) => `A gradient of ${two(p.gradient)} is ${nOf(p.n)}.`,
  'zones.apart': (_: object) =>
    'The two models start from different normals: never use a figure of one with the other.',
  'zones.read': (p: { gradient: number; from: number; to: number }) =>
    `From zone ${roman(p.from)} to ${roman(p.to)} the mean gradient is ${three(p.gradient)}.`,
  'zones.speed-met': (p: { density: number }) => `Zone I is ${two(p.density)} over base and fog: the speed is met.`,
  'zones.speed-missed': (p: { density: number }) =>
    `Zone I is ${two(p.density)} over base and fog, under 0.10: give more light.`,
  'zones.work': (p: { n: number; range: number; stops: number; flare: number; gradient: number }) =>
    `${nOf(p.n)}: ${two(p.range)} / (0.30 × ${two(p.stops)}${p.flare === 0 ? '' : ` − ${two(p.flare)}`}) = ${three(p.gradient)}`,
  'zones.work.read': (p: { low: number; high: number; zones: number; gradient: number }) =>
    `(${two(p.high)} − ${two(p.low)}) / (${p.zones} × 0.30103) = ${three(p.gradient)}`,
  'zones.source.no-flare': (_: object) => 'Lambrecht & Woodhouse, as practitioners state it',
  'zones.source.flare': (_: object) => 'a practitioners’ model with flare; 0.40 is remembered',
  'zones.source.read': (_: object) => 'measured here; a stop is log10 of 2',
  'range.at-film': (p: { subject: number; flare: number; ratio: number; logRange: number; lost: number }) =>
    `A subject of ${whole(p.subject)} : 1 with flare ${p.flare} is ${p.ratio.toFixed(1)} : 1 at the film, ${two(p.logRange)}; flare took ${two(p.lost)}.`,
  'range.negative': (p: { range: number }) => `The negative then spans ${two(p.range)}.`,
  'range.grade': (p: { grade: number; range: number }) => `A range of ${two(p.range)} suits paper of grade ${p.grade}.`,
  'range.room': (p: { from: number; to: number; logRange: number; stops: number }) =>
    `From ${two(p.from)} to ${two(p.to)} there is room for ${two(p.logRange)}, ${p.stops.toFixed(1)} stops.`,
  'range.print': (p: { film: number; paper: number; product: number }) =>
    `Film ${two(p.film)} on paper ${two(p.paper)} prints at ${two(p.product)} in the middle of both.`,
  'range.work.flare': (p: { subject: number; flare: number; ratio: number }) =>
    `(${whole(p.subject)} + ${p.flare}) / (1 + ${p.flare}) = ${p.ratio.toFixed(2)}`,
  'range.work.negative': (p: { logRange: number; gradient: number; range: number }) =>
    `${three(p.logRange)} × ${two(p.gradient)} = ${three(p.range)}`,
  'range.work.room': (p: { from: number; to: number; gradient: number; logRange: number }) =>
    `(${two(p.to)} − ${two(p.from)}) / ${two(p.gradient)} = ${three(p.logRange)}`,
  'range.work.print': (p: { film: number; paper: number; product: number }) =>
    `${two(p.film)} × ${two(p.paper)} = ${three(p.product)}`,
  'range.work.grade': (p: { grade: number; from: number; to: number }) =>
    `grade ${p.grade} takes ${two(p.from)} to ${two(p.to)}`,
  'range.source.flare': (_: object) => 'flare as so many times the darkest light, spread evenly',
  'range.source.gradient': (_: object) => 'the meaning of an average gradient',
  'range.source.print': (_: object) => 'the gamma product rule; not in toes and shoulders',
  'range.source.memory': (_: object) => 'the whole span is published, this bound is remembered',
  'range.source.source': (_: object) => 'Focal Encyclopedia of Photography, p. 679',
} as const

const roman = (zone: number): string =>
  ['0', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X'][zone] ?? `${zone}`
/** `N−1`, `N`, `N+0.5`. */
const nOf = (n: number): string => {
  const size = Number(Math.abs(n).toFixed(1))
  if (size === 0) return 'N'
  return `N${n < 0 ? '−' : '+'}${size}`
}

/** Sentences about charts and fits. */
export const chartWords = {
  'control.hit': (p: { quantity: string; rule: string; plot: number }) => `${p.quantity}, plot ${p.plot}: ${p.rule}.`,
  'control.rule.beyond-3': (_: object) => 'past three standard deviations',
  'control.rule.two-of-three-beyond-2': (_: object) => 'two of three past two standard deviations',
  'control.rule.four-of-five-beyond-1': (_: object) => 'four of five past one standard deviation',
  'control.rule.eight-on-one-side': (_: object) => 'eight on one side of the aim',
  'control.rule.trend': (_: object) => 'five moves one way',
  'control.wait': (_: object) => 'Wait: leave the process alone.',
  'control.act': (p: { quantities: readonly string[] }) => `Act: ${p.quantities.join(', ')}.`,
  'control.setting-up': (p: { count: number }) =>
    `The aims are the mean of the first ${p.count}; nothing is known against which those could be judged.`,
  'control.work.aim': (p: { quantity: string; aim: number }) => `${p.quantity}: aim ${three(p.aim)}`,
  'control.work.limits': (p: { quantity: string; lower: number | null; upper: number }) =>
    `${p.quantity}: limits ${p.lower === null ? 'none below' : three(p.lower)}, ${three(p.upper)} above the aim`,
  'control.work.individuals': (p: { quantity: string; lower: number | null; upper: number; deviation: number }) =>
    `${p.quantity}: s = mean moving range / 1.128 = ${p.deviation.toFixed(4)}, three of them ${p.lower === null ? '' : `${three(p.lower)} and `}${three(p.upper)}`,
  'control.work.ewma': (p: { quantity: string; last: number; lower: number | null; upper: number }) =>
    `${p.quantity}: moving average ${three(p.last)}, its limits ${p.lower === null ? '' : `${three(p.lower)} and `}${three(p.upper)}`,
  'control.source.mean': (p: { count: number }) => `mean of the first ${p.count} strips; 21 CFR 900.12`,
  'control.source.stated': (_: object) => 'as stated',
  'control.source.source': (_: object) => '21 CFR 900.12(e)(1)',
  'control.source.practice': (_: object) => 'common practice of small labs',
  'control.source.memory': (_: object) => 'remembered',
  'control.source.individuals': (_: object) => 'NIST/SEMATECH e-Handbook 6.3.2.2',
  'control.source.ewma': (_: object) => 'NIST/SEMATECH e-Handbook 6.3.2.4, weight 0.3',
  'control.source.rules': (_: object) => 'Western Electric 1956; US Army SS0513, p. 71',
  'fit.value': (p: { parameter: string; value: number; error: number | null }) =>
    `${p.parameter} = ${p.value.toPrecision(7)}${p.error === null ? '' : ` ± ${p.error.toPrecision(3)}`}`,
  'fit.stopped': (p: { formula: string; stopped: string; iterations: number }) =>
    p.stopped === 'converged'
      ? `y = ${p.formula}, fitted in ${p.iterations} steps.`
      : `No answer: the fit of y = ${p.formula} ended by ${p.stopped} after ${p.iterations} steps. Start elsewhere.`,
  'fit.scatter': (p: { scatter: number; count: number }) =>
    `Scatter about it ${p.scatter.toPrecision(4)}, ${p.count} values left over.`,
  'fit.work.residual': (p: { x: number; y: number; residual: number }) =>
    `x ${p.x}: y ${p.y}, the curve is ${p.residual.toPrecision(3).replace('-', '−')} off`,
  'fit.source.data': (_: object) => 'as given',
  'fit.source.covariance': (_: object) => 'the residuals’ own scatter',
  'fit.work.covariance': (p: { row: number; values: readonly number[] }) =>
    `covariance, row ${p.row}: ${p.values.map((value) => value.toPrecision(4)).join('  ')}`,
} as const
