import type { TimeRecord } from '../../../../wire/index.js'
import { developerOf } from '../../../shared/figures/index.js'

/** The words of the question that choose among kept times. */
export type Word = 'film' | 'index' | 'developer'

export const wordOf = (time: TimeRecord, word: Word): string =>
  word === 'film' ? time.film : word === 'index' ? String(time.exposure_index ?? '') : developerOf(time)

/** What one word can be: any kept film; the indexes and developers that this film has times for. */
export function wordsKept(times: readonly TimeRecord[], film: string, word: Word): string[] {
  const among = word === 'film' ? times : times.filter((time) => time.film === film)
  return [...new Set(among.map((time) => wordOf(time, word)))]
    .filter((text) => text !== '')
    .sort((a, b) => a.localeCompare(b, undefined, { numeric: true }))
}

/** The kept time that has the new word and keeps as much of the rest of the question as there is. */
export function nearest(times: readonly TimeRecord[], now: TimeRecord, word: Word, value: string) {
  const rest = (['film', 'index', 'developer'] as const).filter((other) => other !== word)
  const kept = (time: TimeRecord) =>
    rest.reduce((sum, other, place) => sum + (wordOf(time, other) === wordOf(now, other) ? 2 - place : 0), 0)
  return times
    .filter((time) => wordOf(time, word) === value && (word === 'film' || time.film === now.film))
    .sort((a, b) => kept(b) - kept(a))[0]
}
