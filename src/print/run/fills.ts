import { type Bath, isBath, isRefillOf, type Laid, seriesOf } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'

/** A bath, or several fills of the same that follow one another: five fills of water are one wash to the eye. */
export interface Fills {
  readonly bath: Bath
  readonly first: Laid
  readonly last: Laid
  readonly count: number
  /** Of all of them together, seconds. */
  readonly time: number
}

export function fillsOf(laid: readonly Laid[]): Fills[] {
  const fills: Fills[] = []
  for (const one of laid) {
    if (one.skipped || !isBath(one.step)) continue
    const bath = one.step
    const before = fills.at(-1)
    const time = one.clockEnd - one.in
    if (before !== undefined && isRefillOf(before.bath, bath) && one.index === before.last.index + 1)
      fills[fills.length - 1] = { ...before, last: one, count: before.count + 1, time: before.time + time }
    else fills.push({ bath, first: one, last: one, count: 1, time })
  }
  return fills
}

export const fillsName = (name: string, count: number, w: Writer): string =>
  count === 1 ? name : say('sheet.fills', { name: seriesOf(name), count }, w)
