import { expectOk, type Result, type Seconds } from '../../../src/kernel/index.js'
import {
  answerOf,
  characteristicCurve,
  contrastIndex,
  familyOf,
  filmSpeed,
  namedGradient,
} from '../../../src/science/index.js'
import { chance, FAMILY, simulateStrip, type Truth, trueGradient, trueSpeed } from './strips.js'

/** How many intervals held the truth, and how many there were; an answer without an interval counts as a miss. */
export interface Coverage {
  readonly held: number
  readonly of: number
}
type Interval = { readonly low: number | null; readonly high: number | null }

class Counter {
  held = 0
  of = 0
  add({ low, high }: Interval, truth: number): void {
    this.of++
    if (low !== null && high !== null && low <= truth && truth <= high) this.held++
  }
  refused(): void {
    this.of++
  }
}

/** Contrast index of a truth by trying 400 000 places of the gauge's centre: brute force, no root finder. */
export function bruteContrastIndex(net: (x: number) => number, from: number, to: number): number {
  const angleAt = (centre: number, radius: number): number => {
    let [low, high] = [0, Math.PI / 2]
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2
      if (net(centre + radius * Math.cos(middle)) > radius * Math.sin(middle)) low = middle
      else high = middle
    }
    return low
  }
  let best = { off: Number.POSITIVE_INFINITY, index: Number.NaN, centre: Number.NaN }
  for (let pass = 0, [low, high] = [from, to]; pass < 4; pass++) {
    const step = (high - low) / 200
    for (let i = 0; i <= 200; i++) {
      const centre = low + step * i
      const far = angleAt(centre, 2.2)
      const off = Math.abs(angleAt(centre, 0.2) - far)
      if (off < best.off) best = { off, index: Math.tan(far), centre }
    }
    // A finer pass that finds nothing better goes on about the best centre so far.
    ;[low, high] = [best.centre - 2 * step, best.centre + 2 * step]
  }
  return best.index
}

/** Coverage of speed, average gradient and contrast index over simulated strips of three contrasts in turn. */
export function coverageOfStrips(count: number, seed: number): Record<'speed' | 'gradient' | 'index', Coverage> {
  const random = chance(seed)
  const counters = { speed: new Counter(), gradient: new Counter(), index: new Counter() }
  const truths = FAMILY.map((truth) => ({
    truth,
    speed: trueSpeed(truth),
    gradient: trueGradient(truth),
    index: bruteContrastIndex((x) => truth.gamma * 0.15 * Math.log1p(Math.exp((x + 2.184701) / 0.15)), -2.6, -1.9),
  }))
  const put = <T>(counter: Counter, answer: Result<T>, interval: (value: T) => Interval, truth: number) =>
    answer.ok ? counter.add(interval(answer.value), truth) : counter.refused()
  for (let i = 0; i < count; i++) {
    const { truth, speed, gradient, index } = truths[i % truths.length] as (typeof truths)[number]
    const curve = expectOk(characteristicCurve({ ...simulateStrip(truth, random), exposure: 'lux-seconds' }))
    put(counters.speed, filmSpeed(curve), (found) => found.speed, speed)
    put(counters.gradient, namedGradient(curve, 'g-bar'), (found) => found, gradient)
    put(counters.index, contrastIndex(curve), (found) => found, index)
  }
  return counters
}

const MINUTES = [4, 5.5, 8, 11, 16]
const WANTED = 0.6
const MOST = 0.95
const RATE = 0.17

const truthAfter = (minutes: number): Truth => ({
  gamma: MOST * (1 - Math.exp(-RATE * minutes)),
  base: 0.2 + 0.006 * minutes,
})

/** Minutes at which the true average gradient is the wanted one: by halving, from the truth alone. */
function trueOwnTime(): number {
  let [low, high] = [1, 30]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (trueGradient(truthAfter(middle)) < WANTED) low = middle
    else high = middle
  }
  return low
}

/** Coverage of one's own time for a contrast, each from a family of five simulated strips. */
export function coverageOfOwnTime(families: number, seed: number): Coverage {
  const random = chance(seed)
  const counter = new Counter()
  const truth = 60 * trueOwnTime()
  for (let i = 0; i < families; i++) {
    const curves = MINUTES.map((minutes) => ({
      time: (60 * minutes) as Seconds,
      curve: expectOk(characteristicCurve({ ...simulateStrip(truthAfter(minutes), random), exposure: 'lux-seconds' })),
    }))
    const family = familyOf(curves, 'g-bar')
    const answer = family.ok ? answerOf(family.value, WANTED) : family
    if (answer.ok) counter.add(answer.value.time, truth)
    else counter.refused()
  }
  return counter
}

/** The band 93–97 %, wider by twice the binomial error of so many trials. */
export function bandFor(trials: number): { readonly low: number; readonly high: number } {
  const error = trials >= 2000 ? 0 : 2 * Math.sqrt((0.95 * 0.05) / trials)
  return { low: 0.93 - error, high: 0.97 + error }
}
