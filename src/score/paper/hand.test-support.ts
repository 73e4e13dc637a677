import { celsius } from '../../kernel/index.js'
import type { Happening, RunEvent } from '../events/definition.js'
import type { Recipe, Step } from '../recipe/definition.js'

/**
 * Somebody at a sink, and a pencil. Written from the sheet and the guide, without the importer: people pour by lists
 * of baths, a phone writes down what they confirm, and a pencil writes the same moments as a clock on the wall shows
 * them. A moment on the sheet is when hands begin, one on the phone when the bath's clock starts: for a bath that is
 * counted from full, the pour lies between.
 */

/** Whole numbers from 0 up to but not with `below`, from a stream that a seed fixes. */
export type Dice = (below: number) => number

/** A plain congruence, so that this chance has nothing in common with the kernel’s. */
export function dice(seed: number): Dice {
  let state = (seed * 2654435761 + 88_675_123) >>> 0
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}

export interface AtTheSink {
  readonly recipe: Recipe
  readonly tank: string
  /** Instant of the first drop. */
  readonly zeroMs: number
  /** Seconds that the developer should stay in, as somebody reckoned it before. */
  readonly develop: number
  /** What the thermometer is expected to show, °C. */
  readonly temperature: number
  /** Presses fall on whole multiples of this, ms. */
  readonly tickMs: number
  /** Whether some confirmations were forgotten; the last one never is. */
  readonly forgets: boolean
}

/** Plays one run. The events are a phone's that has met the server. */
export class Sink {
  readonly events: RunEvent[] = []
  #now = 0

  constructor(
    readonly at: AtTheSink,
    readonly roll: Dice,
  ) {
    this.#press(0, { kind: 'started' }, null)
    const { steps } = at.recipe
    for (const [i, step] of steps.entries()) {
      if (step.step === 'bath') this.#bathe(i, step)
      else this.#act(i, step, i === steps.length - 1)
    }
  }

  #press(second: number, happening: Happening, bath: number | null): void {
    const { tank, zeroMs, tickMs } = this.at
    const monotonicMs = Math.round((second * 1000) / tickMs) * tickMs
    const number = String(this.events.length).padStart(3, '0')
    const clocks = { life: 'one', monotonicMs, wallMs: zeroMs + monotonicMs, serverOffsetMs: zeroMs }
    this.events.push({ ...happening, ...clocks, id: `press-${number}`, device: 'phone', tank, bath, actor: 'me' })
  }

  /** Forgets one in twelve, if it forgets at all. */
  #forgets = (): boolean => this.at.forgets && this.roll(12) === 0

  #bathe(i: number, step: Extract<Step, { step: 'bath' }>): void {
    const { steps } = this.at.recipe
    if (['wash-aid', 'wetting', 'pre-wet'].includes(step.kind) && this.roll(3) === 0) {
      this.#press(this.#now, { kind: 'skipped', reason: 'had none' }, i)
      return
    }
    const first = !steps.slice(0, i).some((one) => one.step === 'bath')
    const pour = step.handling.pour.seconds
    this.#now += first ? 0 : step.handling.cap.seconds
    const fromFull = step.convention.starts === 'end-of-pour'
    const clock = this.#now + (fromFull ? pour : 0)
    const timed = step.time.law === 'by-developing-time'
    if (first || timed || this.roll(2) === 0) this.#press(clock, { kind: 'poured-in' }, i)
    const stays = this.#stays(step)
    if (timed) this.#readings(i, clock, stays)
    this.#within(i, clock, stays)
    this.#now = clock + stays
    const last = i === steps.length - 1
    if (last || timed || !this.#forgets()) this.#press(this.#now, { kind: 'poured-out' }, i)
    this.#now += step.handling.drain.seconds
  }

  #stays({ time, convention, handling }: Extract<Step, { step: 'bath' }>): number {
    const inside = convention.ends === 'end-of-drain' ? handling.drain.seconds : 0
    const law = time.law === 'fixed' ? time.seconds : time.law === 'by-clearing' ? time.least : this.at.develop
    const slip = this.roll(4) === 0 ? this.roll(90) - 20 : this.roll(5) - 2
    return Math.max(5, Math.round(law - inside + slip))
  }

  #readings(i: number, clock: number, stays: number): void {
    let at = clock
    for (let n = this.roll(4); n > 0; n--) {
      at += 20 + this.roll(Math.max(1, Math.floor(stays / 4)))
      const off = this.roll(8) === 0 ? 14 + this.roll(9) : this.roll(15) - 7
      const temperature = celsius(Math.round(this.at.temperature * 10 + off) / 10)
      this.#press(at, { kind: 'reading', temperature, confirmed: this.roll(2) === 0 }, i)
    }
  }

  /** Steps inside the bath: lid off, a look at the film. */
  #within(i: number, clock: number, stays: number): void {
    const { steps } = this.at.recipe
    for (let k = i + 1; k < steps.length; k++) {
      const step = steps[k] as Step
      if (step.step === 'bath' || step.within === null) return
      const at = clock + Math.min(stays - 1, step.within + this.roll(20))
      const clearing = step.kind === 'look' && this.roll(2) === 0 ? { clearing: (60 + this.roll(120)) as never } : {}
      if (!this.#forgets()) this.#press(at, { kind: 'step-done', ...clearing }, k)
    }
  }

  #act(i: number, step: Extract<Step, { step: 'act' }>, last: boolean): void {
    if (step.within !== null) return
    this.#now += Math.round(step.length.seconds) + this.roll(30)
    if (last || !this.#forgets()) this.#press(this.#now, { kind: 'step-done' }, i)
  }
}

/** How somebody writes a moment: to the second, or the minute that the clock shows. */
export type Pencil = 'seconds' | 'minutes'

/** One box of the sheet as it was filled in; an empty one is not there. */
export interface Boxed {
  readonly tank: string
  readonly step: number | null
  readonly box: 'zero' | 'in' | 'out' | 'done' | 'reads' | 'left-out'
  /** As the wall clock showed it; empty for what has no time on the sheet. */
  readonly clock: string
  readonly temperature?: number
  /** Said of a reading: it really was that. */
  readonly sure?: boolean
  readonly clearing?: number
  readonly words?: string
}

/** The wall clock of a place that is so many hours ahead of UTC all year. */
export function onTheWall(instant: number, hoursAhead: number, pencil: Pencil): string {
  const day = 86_400
  const second = (((Math.floor(instant / 1000) + hoursAhead * 3600) % day) + day) % day
  const [h, m, s] = [Math.floor(second / 3600), Math.floor(second / 60) % 60, second % 60]
  const two = (value: number): string => (value < 10 ? `0${value}` : `${value}`)
  return pencil === 'minutes' ? `${h}:${two(m)}` : `${h}:${two(m)}:${two(s)}`
}

/** What a pencil leaves on the sheet of a run, in the order in which it was written. */
export function pencilled({ events, at }: Sink, hoursAhead: number, pencil: Pencil): Boxed[] {
  const boxes = events.map((event): Boxed => {
    const step = event.bath === null ? null : (at.recipe.steps[event.bath] as Step)
    const pour = step?.step === 'bath' && step.convention.starts === 'end-of-pour' ? step.handling.pour.seconds : 0
    const instant = event.wallMs - (event.kind === 'poured-in' ? pour * 1000 : 0)
    const clock = onTheWall(instant, hoursAhead, pencil)
    const place = { tank: event.tank, step: event.bath, clock }
    switch (event.kind) {
      case 'started':
        return { ...place, box: 'zero' }
      case 'poured-in':
        return { ...place, box: 'in' }
      case 'poured-out':
        return { ...place, box: 'out' }
      case 'step-done':
        return { ...place, box: 'done', ...(event.clearing == null ? {} : { clearing: event.clearing }) }
      case 'reading':
        return { ...place, box: 'reads', temperature: event.temperature, sure: event.confirmed }
      case 'skipped':
        return { ...place, clock: '', box: 'left-out', words: event.reason }
      default:
        throw new Error(`A pencil has no box for ${event.kind}.`)
    }
  })
  return boxes
}
