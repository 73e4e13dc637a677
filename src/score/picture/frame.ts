import { type Seconds, type UnitSystem, writeDuration } from '../../kernel/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { textWidth, wrapped } from './boxes.js'
import { type Course, courseOf } from './course.js'
import { fromBench, temperatureSpan, timeSpan, toBench } from './domain.js'
import { linearScale, logScale, type Scale } from './scales.js'
import { finestDegrees, multiples, timeTicks } from './ticks.js'

export interface Tick {
  readonly value: number
  readonly text: string
}

/** Where a graph's axes lie, what they count, and the course between them. */
export interface Frame {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  /** °C to x, seconds to y. */
  readonly temperature: Scale
  readonly time: Scale
  readonly temperatureTicks: readonly Tick[]
  readonly timeTicks: readonly Tick[]
  readonly caption: readonly string[]
  readonly course: Course
  /** Size of the text. */
  readonly size: number
}

interface Asking {
  readonly basis: TimeBasis
  readonly asked: DevelopingTime | null
  readonly units: UnitSystem
  readonly size: { readonly width: number; readonly height: number }
  readonly caption: string
  readonly textSize: number
}

const NARROW = '\u202f'

/** Room that a figure on the temperature axis gets, in sizes: the widest with its unit takes its half and its neighbour's. */
const PER_FIGURE = 2.6

/** The axes lie in what their own figures leave of the width, so the steps of degrees are tried with those in place. */
export function frameFor(asking: Asking): Frame {
  const least = PER_FIGURE * asking.textSize
  return finestDegrees(
    (step) => framed(asking, step),
    ({ left, right, temperatureTicks }) => right - left >= least * (temperatureTicks.length - 1),
  )
}

/** The frame whose temperature axis goes by `step` degrees of the bench. */
function framed({ basis, asked, units, size, caption, textSize }: Asking, step: number): Frame {
  const span = temperatureSpan(basis, asked, units, step)
  const degrees = ticksOfDegrees(span, step, units)
  const right = size.width - textWidth(degrees.at(-1)?.text ?? '', textSize) / 2 - 1
  // The caption ends where the axis does.
  const lines = wrapped(caption, textSize, right)
  const top = 2 * textSize
  const bottom = size.height - (1.9 + 1.3 * lines.length) * textSize
  const course = courseOf(basis, span.from, span.to)
  const times = timeSpan(basis, asked, course)
  const time = logScale(times.from, times.to, bottom, top)
  const clock = written(timeTicks(time, 1.7 * textSize))
  const left = Math.max(...clock.map(({ text }) => textWidth(text, textSize))) + 0.8 * textSize
  return {
    left,
    right,
    top,
    bottom,
    temperature: linearScale(span.from, span.to, left, right),
    time,
    temperatureTicks: degrees,
    timeTicks: clock,
    caption: lines,
    course,
    size: textSize,
  }
}

/** Clock times; the longest says that they are minutes, where it is a whole number of them under the hour. */
const written = (times: readonly number[]): Tick[] =>
  times.map((value, i) => {
    const whole = i === times.length - 1 && value % 60 === 0 && value < 3600
    return { value, text: whole ? `${value / 60}${NARROW}min` : writeDuration(value as Seconds) }
  })

/** Bare numbers; the warmest carries the unit. */
function ticksOfDegrees(span: { from: number; to: number }, step: number, units: UnitSystem): Tick[] {
  const shown = multiples(step, toBench(span.from, units), toBench(span.to, units))
  const unit = units === 'us' ? '°F' : '°C'
  return shown.map((degree, i) => {
    const number = String(Number(degree.toFixed(1))).replace('-', '−')
    return {
      value: fromBench(degree, units),
      text: i === shown.length - 1 ? `${number}${NARROW}${unit}` : number,
    }
  })
}
