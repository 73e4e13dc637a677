import type { Celsius, Seconds } from '../kernel/index.js'
import type { deskWords } from './catalogue/desk.js'
import { say } from './say.js'
import type { Writer } from './writer.js'

/** A step of a list of baths as the score has it, seen from here only by shape (this folder knows the kernel alone). */
type OriginName = 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
interface Length {
  readonly seconds: Seconds
  readonly origin: OriginName
}
type Turn =
  | { readonly by: 'seconds'; readonly seconds: Seconds }
  | { readonly by: 'inversions'; readonly count: number; readonly secondsEach: number }
export type Turning =
  | { readonly kind: 'none' | 'continuous' | 'rotary' }
  | { readonly kind: 'then-continuous'; readonly before: Turning; readonly from: Seconds }
  | {
      readonly kind: 'turns'
      readonly opening: Turn | null
      readonly turn: Turn
      readonly every: Seconds
      readonly first?: Seconds | undefined
    }
  | {
      readonly kind: 'moments'
      readonly opening: Turn | null
      readonly moments: readonly { readonly at: Seconds; readonly turn: Turn }[]
    }
type Law =
  | { readonly law: 'by-developing-time' }
  | { readonly law: 'fixed'; readonly seconds: Seconds; readonly origin: OriginName }
  | {
      readonly law: 'by-clearing'
      readonly multiple: number
      readonly assumed: Seconds
      readonly least: Seconds
      readonly most: Seconds
      readonly origin: OriginName
    }
export interface BathShape {
  readonly step: 'bath'
  readonly name: string
  readonly cautions: readonly string[]
  readonly time: Law
  readonly agitation: Turning
  readonly window: { readonly from: Celsius; readonly to: Celsius; readonly origin: OriginName } | null
  readonly convention: {
    readonly starts: 'start-of-pour' | 'end-of-pour'
    readonly ends: 'start-of-drain' | 'end-of-drain'
  }
  readonly handling: {
    readonly pour: Length
    readonly drain: Length
    readonly cap: Length
    readonly tap: Length | null
  }
  readonly goesTo: 'bottle' | 'away' | 'waste-jug'
  readonly neverPartFromNext: boolean
  readonly mayStay: Seconds
}
export interface ActShape {
  readonly step: 'act'
  readonly name: string
  readonly cautions: readonly string[]
  readonly length: Length
  readonly within: Seconds | null
}

/** What the science says of temperatures of baths, and whether this bath has one time at one temperature. */
export interface BathRules {
  readonly spread: { readonly said: number; readonly refused: number }
  readonly onlyTime: boolean
}

/** One thing about a step: what it is about, the sentence, and the marks of where its figures come from. */
export interface StepLine {
  readonly about: About
  readonly label: string
  readonly words: string
  readonly origins: readonly OriginName[]
}

/** Marks that stand behind figures: a letter each, explained once below. */
export const ORIGIN_MARKS: Readonly<Record<OriginName, string>> = {
  measured: 'M',
  sheet: 'S',
  law: 'L',
  practice: 'P',
  assumption: 'A',
}

/** Everything about a bath in plain words, line by line, in the order in which hands meet it. */
export function bathLines(bath: BathShape, rules: BathRules, w: Writer): StepLine[] {
  const { time, window, convention, handling } = bath
  const parts = [handling.pour, handling.drain, handling.cap, ...(handling.tap === null ? [] : [handling.tap])]
  const lengths = {
    pour: handling.pour.seconds,
    drain: handling.drain.seconds,
    cap: handling.cap.seconds,
    tap: handling.tap?.seconds ?? null,
  }
  return [
    line('time', lawWords(bath, rules, w), time.law === 'by-developing-time' ? [] : [time.origin], w),
    line('turn', turningWords(bath.agitation, w), [], w),
    line('window', windowWords(bath, rules, w), window === null ? [] : [window.origin], w),
    line('clock', say(`list.clock.${convention.starts}.${convention.ends}`, {}, w), [], w),
    line('change', say('list.change', lengths, w), [...new Set(parts.map(({ origin }) => origin))], w),
    line('after', afterWords(bath, w), [], w),
  ]
}

/** What is usually alike in all baths of a list, and is said once. */
const ALIKE: readonly About[] = ['window', 'clock', 'change']

/** Of what is usually alike, what most baths of the list have; a step says only where it differs. */
export function commonLines(baths: readonly BathShape[], rules: Pick<BathRules, 'spread'>, w: Writer): StepLine[] {
  const lines = baths.flatMap((bath) => bathLines(bath, { ...rules, onlyTime: false }, w))
  return ALIKE.flatMap((about) => {
    const of = lines.filter((one) => one.about === about)
    const often = (words: string) => of.filter((one) => one.words === words).length
    const most = of.toSorted((a, b) => often(b.words) - often(a.words))[0]
    return most !== undefined && often(most.words) > 1 ? [most] : []
  })
}

/** When a step that is not a bath is done, and how long it takes. */
export function actLines({ within, length }: ActShape, w: Writer): StepLine[] {
  const words =
    within === null
      ? say('list.act.after', { takes: length.seconds }, w)
      : say('list.act.within', { at: within, takes: length.seconds }, w)
  return [line('when', words, [length.origin], w)]
}

/** How long a step is, as short as a row has room for. */
export function shortLength(step: BathShape | ActShape, w: Writer): string {
  if (step.step === 'act') return say('list.short.act', { within: step.within, takes: step.length.seconds }, w)
  const { time } = step
  if (time.law === 'by-developing-time') return say('list.short.developing', {}, w)
  return time.law === 'fixed' ? w.time(time.seconds) : say('list.short.clearing', time, w)
}

export const cautionWords = ({ cautions }: { readonly cautions: readonly string[] }, w: Writer): string[] =>
  cautions.map((caution) => say(`caution.${caution}` as 'caution.gloves', {}, w))

type About = Extract<keyof typeof deskWords, `list.label.${string}`> extends `list.label.${infer Name}` ? Name : never

const line = (about: About, words: string, origins: readonly OriginName[], w: Writer): StepLine => ({
  about,
  label: say(`list.label.${about}`, {}, w),
  words,
  origins,
})

function lawWords({ time, name }: BathShape, { onlyTime }: BathRules, w: Writer): string {
  if (time.law === 'by-developing-time') return say('list.time.developing', {}, w)
  if (time.law === 'by-clearing') return say('list.time.clearing', time, w)
  return onlyTime
    ? say('list.time.only', { name, time: time.seconds }, w)
    : say('list.time.fixed', { time: time.seconds }, w)
}

function windowWords({ window, time }: BathShape, { spread }: BathRules, w: Writer): string {
  if (window !== null) return say('list.window', window, w)
  return time.law === 'by-developing-time' ? say('list.window.developer', {}, w) : say('list.window.none', spread, w)
}

function afterWords({ goesTo, neverPartFromNext, mayStay }: BathShape, w: Writer): string {
  const stay = mayStay === 0 ? say('list.stay.none', {}, w) : say('list.stay', { by: mayStay }, w)
  return [
    say(`list.goes.${goesTo}`, {}, w),
    stay,
    ...(neverPartFromNext ? [say('list.next-at-once', {}, w)] : []),
  ].join(' ')
}

/** How the tank is moved, in a sentence. */
export function turningWords(turning: Turning, w: Writer): string {
  switch (turning.kind) {
    case 'none':
    case 'continuous':
    case 'rotary':
      return say(`list.turn.${turning.kind}`, {}, w)
    case 'then-continuous':
      return `${turningWords(turning.before, w)} ${say('list.turn.until', turning, w)}`
    case 'turns':
    case 'moments':
      return withOpening(turning, w)
  }
}

function withOpening(turning: Extract<Turning, { kind: 'turns' | 'moments' }>, w: Writer): string {
  const start = turning.opening === null ? null : say('list.turn.opening', { turn: turnWords(turning.opening, w) }, w)
  if (turning.kind === 'turns') {
    const every = { turn: turnWords(turning.turn, w), every: turning.every, first: turning.first ?? null }
    return start === null ? say('list.turn.every', every, w) : `${start}, ${say('list.turn.then', every, w)}`
  }
  const moments = turning.moments.map(({ at, turn }) => ({ at, turn: turnWords(turn, w) }))
  const rest = moments.length === 0 ? say('list.turn.still', {}, w) : say('list.turn.moments', { moments }, w)
  return start === null ? (moments.length === 0 ? say('list.turn.none', {}, w) : rest) : `${start}, ${rest}`
}

const turnWords = (turn: Turn, w: Writer): string =>
  turn.by === 'seconds'
    ? say('list.turn.seconds', { seconds: turn.seconds }, w)
    : say('list.turn.count', { count: turn.count, each: turn.secondsEach }, w)
