import type { EventOf } from '../events/definition.js'
import type { Placed } from '../events/fold.js'
import type { Reading } from '../plan/definition.js'
import type { ReadingTold } from './definition.js'
import { type Course, type Followable, lengthOf, SCREEN, screenReading } from './screen.js'

/** A developing bath whose readings are to be gone through. */
export interface Bathed {
  readonly development: Followable
  readonly zeroMs: number
  readonly clockStart: number
  /** When the draining began, if it has; readings after it say nothing about development. */
  readonly pouredOut: number | null
}

type Written = Placed<EventOf<'reading'>>

interface Going {
  readonly course: Course
  /** A far reading that waits for a second one. */
  readonly pending: { readonly reading: Reading; readonly index: number } | null
  readonly told: readonly ReadingTold[]
}

/**
 * Which readings count, one after the other: a far one counts when it was confirmed or when the next one agrees
 * with it; one that would move the pour-out far counts when it was confirmed; all others count.
 */
export function goThrough(
  bathed: Bathed,
  written: readonly Written[],
): { readings: readonly Reading[]; told: readonly ReadingTold[] } {
  const { development, clockStart } = bathed
  const planned = lengthOf({ development, clockStart, readings: [] })
  const start: Going = {
    course: { development, clockStart, readings: [], planned, agreed: planned },
    pending: null,
    told: [],
  }
  const end = written.reduce((going, one) => take(bathed, going, one), start)
  return { readings: end.course.readings, told: end.told }
}

function take({ zeroMs, pouredOut }: Bathed, going: Going, { event, at }: Written): Going {
  const reading: Reading = { at: (at - zeroMs) / 1000, temperature: event.temperature }
  const screened = screenReading(going.course, reading)
  const tell = (verdict: ReadingTold['verdict'], counts: boolean): ReadingTold => ({
    id: event.id,
    at,
    temperature: reading.temperature,
    expected: screened.expected,
    shift: screened.shift,
    verdict,
    counts,
    ...(event.statedTo == null ? {} : { statedTo: event.statedTo }),
  })
  if (pouredOut !== null && reading.at > pouredOut)
    return { ...going, told: [...going.told, tell('after-pour-out', false)] }
  if (screened.verdict === 'outside') return { ...going, told: [...going.told, tell('outside', false)] }
  if (screened.verdict === 'fine') return counted(going, [reading], tell('fine', true), false)
  if (event.confirmed) return counted(going, [reading], tell(screened.verdict, true), true)
  const { pending } = going
  if (pending !== null && Math.abs(pending.reading.temperature - reading.temperature) <= SCREEN.agrees + 1e-6) {
    const told = going.told.map((one, i) => (i === pending.index ? { ...one, counts: true } : one))
    return counted({ ...going, told }, [pending.reading, reading], tell(screened.verdict, true), true)
  }
  const waits = { reading, index: going.told.length }
  return { ...going, pending: waits, told: [...going.told, tell(screened.verdict, false)] }
}

/** A plain reading that counts also answers one that was waiting: the far one was a slip. */
function counted({ course, told }: Going, more: readonly Reading[], tell: ReadingTold, agrees: boolean): Going {
  const readings = [...course.readings, ...more]
  const agreed = agrees ? lengthOf({ ...course, readings }) : course.agreed
  return { course: { ...course, readings, agreed }, pending: null, told: [...told, tell] }
}
