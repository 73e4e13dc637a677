import { COEFFICIENT, REFERENCE } from './bench.test-support.js'

/**
 * The running tank in a few lines, for the four baths of the tests, written without looking at the code it checks:
 * true instants in place of clocks, closed-form development in place of quadrature, one loop in place of layers.
 */
export interface Truth {
  readonly id: string
  readonly kind: string
  readonly bath: number | null
  /** Seconds. */
  readonly at: number
  readonly of?: string
  readonly temperature?: number
  readonly confirmed?: boolean
}

export interface Model {
  readonly in: readonly (number | null)[]
  readonly out: readonly (number | null)[]
  readonly counted: readonly string[]
  readonly pourOut: number
  /** What hands do next and when: `change` into a bath, the last `drain`, or a `turn`. */
  readonly next: { readonly kind: string; readonly bath: number; readonly at: number } | null
}

const [POUR, DRAIN, CAP] = [15, 10, 3]
/** Clocks tell whole milliseconds: no sum of seconds is earlier or later by less. */
const past = (a: number, b: number) => Math.round(a * 1000) < Math.round(b * 1000)
const rate = (T: number) => COEFFICIENT ** ((T - 20) / 10)

/** ∫ rate over a straight stretch. */
function area(seconds: number, from: number, to: number): number {
  const slope = ((to - from) * Math.log(COEFFICIENT)) / 10
  return Math.abs(slope) < 1e-9 ? seconds * rate(from) : (seconds * (rate(to) - rate(from))) / slope
}

type Course = readonly (readonly [at: number, temperature: number])[]

/** Seconds until the dose is the reference time: stretch by stretch, the last one halved until it is found. */
function developed(course: Course): number {
  let left = REFERENCE
  for (let i = 0; i + 1 < course.length; i++) {
    const [[a, from], [b, to]] = [course[i] as Course[0], course[i + 1] as Course[0]]
    const whole = area(b - a, from, to)
    if (whole < left) {
      left -= whole
      continue
    }
    let [low, high] = [0, b - a]
    for (let k = 0; k < 60; k++) {
      const mid = (low + high) / 2
      if (area(mid, from, from + ((to - from) * mid) / (b - a)) < left) low = mid
      else high = mid
    }
    return a + low
  }
  const [last, held] = course.at(-1) as Course[0]
  return last + left / rate(held)
}

const stands = (events: readonly Truth[], id: string): boolean =>
  !events.some((undo) => undo.kind === 'retracted' && undo.of === id && stands(events, undo.id))

const heldAt = (course: Course, at: number): number => {
  const i = course.findIndex(([second]) => second >= at)
  const [after, before] = [course[i], course[i - 1]]
  if (after === undefined) return (course.at(-1) as Course[0])[1]
  if (before === undefined) return after[1]
  return before[1] + ((at - before[0]) / (after[0] - before[0])) * (after[1] - before[1])
}

type Reading = readonly [at: number, temperature: number]

function courseFrom(start: number, readings: readonly Reading[]): Course {
  const before = readings.filter(([at]) => at <= start).at(-1)
  return [[0, before?.[1] ?? 20], ...readings.filter(([at]) => at > start).map(([at, T]) => [at - start, T] as const)]
}

function counting(events: readonly Truth[], start: number, out: number | null): { readings: Reading[]; ids: string[] } {
  let readings: Reading[] = []
  let ids: string[] = []
  let pending: Truth | null = null
  let agreed = REFERENCE
  for (const one of events.filter(({ kind, bath }) => kind === 'reading' && bath === 0)) {
    const T = one.temperature as number
    if ((out !== null && one.at > out) || T < 10 || T > 32) continue
    const more: Reading[] = [...readings, [one.at, T]]
    const far = Math.abs(T - heldAt(courseFrom(start, readings), Math.max(0, one.at - start))) > 1 + 1e-6
    const shifts = Math.abs(developed(courseFrom(start, more)) - agreed) > REFERENCE / 10
    const second = pending !== null && Math.abs((pending.temperature as number) - T) <= 0.5 + 1e-6
    if ((far || shifts) && one.confirmed !== true && !second) {
      pending = one
      continue
    }
    const sure = (far || shifts) && one.confirmed !== true && pending !== null
    readings = sure && pending !== null ? [...readings, [pending.at, pending.temperature as number], [one.at, T]] : more
    ids = sure && pending !== null ? [...ids, pending.id, one.id] : [...ids, one.id]
    if (far || shifts) agreed = developed(courseFrom(start, readings))
    pending = null
  }
  return { readings, ids }
}

export function model(all: readonly Truth[], now: number): Model {
  const events = all.filter(({ id }) => stands(all, id)).sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  const first = (kind: string, bath: number) => events.find((one) => one.kind === kind && one.bath === bath)?.at ?? null
  const ins = [0, 1, 2, 3].map((bath) => first('poured-in', bath))
  const outs = [0, 1, 2, 3].map((bath) => first('poured-out', bath))
  const plannedIn = [15, 513, 561, 879]
  const plannedOut = [485, 533, 851, 989]
  const known = [0, 1, 2, 3].find((bath) => ins[bath] !== null || outs[bath] !== null)
  const zero =
    known === undefined
      ? (events.find(({ kind }) => kind === 'started')?.at ?? now)
      : ins[known] !== null
        ? (ins[known] as number) - (plannedIn[known] as number)
        : (outs[known] as number) - (plannedOut[known] as number)
  const jobs: { kind: string; bath: number; at: number; waits: boolean }[] = []
  let [free, before, left, ids] = [zero, null as number | null, false, [] as string[]]
  let [pourOut, lastWaits, lastDrain] = [0, false, 0]
  for (const bath of [0, 1, 2, 3]) {
    const later = [0, 1, 2, 3]
      .filter((b) => b > bath)
      .map((b) => (ins[b] != null ? (ins[b] as number) - POUR : (outs[b] as number | null)))
    const next = later.find((at) => at !== null) ?? null
    const expected = free + (bath === 0 ? 0 : CAP) + POUR
    const pressed = ins[bath] ?? null
    const implied = outs[bath] ?? next
    const start =
      pressed ?? (implied !== null ? Math.min(expected, implied) : left ? expected : Math.max(expected, now))
    const waitsIn = pressed === null && implied === null && !left && past(expected, now)
    const counted = bath === 0 ? counting(events, start, outs[0] ?? null) : null
    if (counted !== null) ids = counted.ids
    const length =
      counted !== null ? developed(courseFrom(start, counted.readings)) : ([0, 30, 300, 120][bath] as number)
    const due = start + length - DRAIN
    if (bath === 0) pourOut = due
    const out =
      outs[bath] != null
        ? Math.max(start, outs[bath] as number)
        : next !== null
          ? Math.max(start, Math.min(due, next - DRAIN))
          : Math.max(due, now)
    const waitsOut = outs[bath] == null && next === null && past(due, now)
    const joined = before !== null && !past(free + CAP, start - POUR - 1)
    if (before !== null && !joined) jobs.push({ kind: 'drain', bath: bath - 1, at: before, waits: lastWaits })
    jobs.push({ kind: 'change', bath, at: joined ? (before as number) : start - POUR, waits: waitsIn || lastWaits })
    if (bath === 0)
      for (let at = 60; !past(out, start + at + 5); at += 60)
        jobs.push({ kind: 'turn', bath, at: start + at, waits: false })
    left = outs[bath] != null || next !== null
    ;[before, free, lastWaits, lastDrain] = [out, out + DRAIN, waitsOut, out]
  }
  jobs.push({ kind: 'drain', bath: 3, at: lastDrain, waits: lastWaits })
  const over = left || events.some(({ kind }) => kind === 'abandoned' || kind === 'finished')
  const coming = jobs.sort((a, b) => a.at - b.at || a.bath - b.bath).find(({ at, waits }) => waits || past(now, at))
  return {
    in: ins,
    out: outs,
    counted: ids,
    pourOut,
    next: over || coming === undefined ? null : { kind: coming.kind, bath: coming.bath, at: coming.at },
  }
}
