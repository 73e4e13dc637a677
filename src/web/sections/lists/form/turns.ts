import {
  problem,
  type Reading,
  readDuration,
  readNumber,
  type Seconds,
  writeDuration,
} from '../../../../kernel/index.js'
import type { Turn } from '../../../../score/index.js'

export interface Moment {
  readonly at: Seconds
  readonly turn: Turn
}

/** `5 times at 1.5 s each`, `4x`, `30 s`: inversions that are counted, or seconds. */
const COUNTED = /^(\d{1,3})\s*(?:×|x|times|inversions?)(?:\s*(?:at|of|,)?\s*([\d.,]+)\s*s(?:ec)?(?:\s+each)?)?$/i
/** Seconds that an inversion takes where nothing is said: as the shipped lists have it. */
const EACH = 2.5

/** Seconds as they are typed; a part of a second is kept. */
export const writeTime = (value: Seconds): string => (Number.isInteger(value) ? writeDuration(value) : `${value} s`)

export const writeTurn = (turn: Turn): string =>
  turn.by === 'seconds' ? `${turn.seconds} s` : `${turn.count} times at ${turn.secondsEach} s each`

export function readTurn(text: string): Reading<Turn> {
  const counted = COUNTED.exec(text.trim())
  if (counted !== null) {
    const turn = {
      by: 'inversions',
      count: Number(counted[1]),
      secondsEach: readNumber(counted[2] ?? '') ?? EACH,
    } as const
    return { kind: 'read', value: turn, echo: writeTurn(turn) }
  }
  const time = readDuration(text)
  if (time.kind === 'read') return { ...time, value: { by: 'seconds', seconds: time.value } }
  return { kind: 'refused', problem: problem('recipe.unreadable-turn', { text }) }
}

export const writeMoments = (moments: readonly Moment[]): string =>
  moments.map(({ at, turn }) => `${writeTime(at)} ${writeTurn(turn)}`).join('\n')

/** A moment and its turn on each line: `10:00 5 s`. */
export function readMoments(text: string): Reading<readonly Moment[]> {
  const moments: Moment[] = []
  for (const line of text.split('\n').filter((one) => one.trim() !== '')) {
    const [, at = '', rest = ''] = /^\s*(\d+:\d\d(?::\d\d)?)[\s,–-]+(.+)$/.exec(line) ?? []
    const [moment, turn] = [readDuration(at), readTurn(rest)]
    if (moment.kind !== 'read' || turn.kind !== 'read')
      return { kind: 'refused', problem: problem('recipe.unreadable-moment', { text: line.trim() }) }
    moments.push({ at: moment.value, turn: turn.value })
  }
  return { kind: 'read', value: moments, echo: writeMoments(moments) }
}
