import { type Seconds, type UnitSystem, writeDuration } from '../../kernel/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { textWidth, wrapped } from './boxes.js'
import { type Course, courseOf } from './course.js'
import { fromBench, temperatureSpan, timeSpan, toBench } from './domain.js'
import { linearScale, logScale, type Scale } from './scales.js'
import { degreeStep, multiples, timeTicks } from './ticks.js'

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

export function frameFor({ basis, asked, units, size, caption, textSize }: Asking): Frame {
  const lines = wrapped(caption, textSize, size.width)
  const top = 2 * textSize
  const bottom = size.height - (1.9 + 1.3 * lines.length) * textSize
  const step = degreeStep((degrees) => {
    const { from, to } = temperatureSpan(basis, asked, units, degrees)
    const steps = (toBench(to, units) - toBench(from, units)) / degrees
    // The gutter of the other axis and the half of the last figure that hangs over take six sizes together.
    return (size.width - 6 * textSize) / steps >= 2.6 * textSize
  })
  const span = temperatureSpan(basis, asked, units, step)
  const course = courseOf(basis, span.from, span.to)
  const times = timeSpan(basis, asked, course)
  const time = logScale(times.from, times.to, bottom, top)
  const clock = written(timeTicks(time, 1.7 * textSize))
  const degrees = ticksOfDegrees(span, step, units)
  const left = Math.max(...clock.map(({ text }) => textWidth(text, textSize))) + 0.8 * textSize
  const right = size.width - textWidth(degrees.at(-1)?.text ?? '', textSize) / 2 - 1
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
