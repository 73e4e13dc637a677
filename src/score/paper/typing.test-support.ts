import { celsius, readTimeOfDay, seconds, type TimeOfDay } from '../../kernel/index.js'
import type { WrittenReading, WrittenSheet, WrittenStep } from './definition.js'
import type { Boxed } from './hand.test-support.js'

/** A time of day that is surely readable. */
export function clock(text: string): TimeOfDay {
  const read = readTimeOfDay(text)
  if (read.kind !== 'read') throw new Error(`${text} is no time of day.`)
  return read.value
}

const EMPTY = { inAt: null, outAt: null, doneAt: null, clearing: null, leftOut: null }

/** A step of a sheet with some boxes filled in. */
export const step = (index: number, filled: Partial<WrittenStep> = {}): WrittenStep => ({
  step: index,
  ...EMPTY,
  sure: false,
  ...filled,
})

/** A sheet of tank A with some boxes filled in. */
export const sheet = (
  steps: readonly WrittenStep[],
  more: Partial<WrittenSheet> & { readings?: readonly WrittenReading[] } = {},
): WrittenSheet => {
  const { readings = [], ...rest } = more
  const tank = { tank: 'A', steps, readings, remarks: [], mishaps: [], givenUp: null }
  return { day: '2026-11-25', zero: null, tanks: [tank], ...rest }
}

/** Types what a pencil wrote, box by box; every odd time is said to stand so. */
export function typedIn(boxes: readonly Boxed[], day: string): WrittenSheet {
  const steps = new Map<number, WrittenStep>()
  const readings: WrittenReading[] = []
  let zero: TimeOfDay | null = null
  const fill = (index: number, part: Partial<WrittenStep>) =>
    steps.set(index, { ...(steps.get(index) ?? step(index, { sure: true })), ...part })
  for (const box of boxes) {
    const at = box.clock === '' ? null : clock(box.clock)
    const index = box.step ?? 0
    if (box.box === 'zero') zero = at
    else if (box.box === 'in') fill(index, { inAt: at })
    else if (box.box === 'out') fill(index, { outAt: at })
    else if (box.box === 'left-out') fill(index, { leftOut: box.words ?? '' })
    else if (box.box === 'done') {
      fill(index, { doneAt: at, clearing: box.clearing === undefined ? null : seconds(box.clearing) })
    } else {
      const temperature = celsius(box.temperature ?? Number.NaN)
      readings.push({ step: index, at, temperature, sure: box.sure ?? false })
    }
  }
  return sheet([...steps.values()], { day, zero, readings })
}
