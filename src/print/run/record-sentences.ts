import type { Deviation, TankFollowing, TankState } from '../../score/index.js'
import { say, statedMoment, type Writer, writeTimeOfDay } from '../../words/index.js'

/** How a tank's run departed from its plan; a run that did not says so. */
export function deviationSentences({ deviations }: TankFollowing, zone: string, w: Writer): string[] {
  if (deviations.length === 0) return [say('record.no-deviations', {}, w)]
  return deviations.map((deviation) => sentenceOf(deviation, zone, w))
}

function sentenceOf(deviation: Deviation, zone: string, w: Writer): string {
  switch (deviation.code) {
    case 'mishap': {
      const what = say(`mishap.${deviation.mishap}`, {}, w)
      return say('record.mishap', { what, at: writeTimeOfDay(deviation.at, zone) }, w)
    }
    case 'poured-out-late':
    case 'poured-out-early':
      return say(`run.deviation.${deviation.code}`, deviation, w)
    case 'poured-in-late':
      return say('run.deviation.poured-in-late', deviation, w)
    case 'skipped':
      return say('run.deviation.skipped', deviation, w)
    case 'fixer-finished':
      return say('run.deviation.fixer-finished', deviation, w)
    case 'reading-not-counted':
      return say('run.deviation.reading-not-counted', deviation, w)
    case 'not-written':
      return say('run.deviation.not-written', deviation, w)
    case 'development-assumed':
      return say('run.deviation.development-assumed', deviation, w)
    case 'pressed-twice':
      return say('run.deviation.pressed-twice', deviation, w)
    case 'taken-back':
      return say('run.deviation.taken-back', deviation, w)
    case 'abandoned':
      return say('run.deviation.abandoned', deviation, w)
  }
}

/** Readings that count; the others are among the deviations. */
export const readingSentences = ({ readings }: TankFollowing, zone: string, w: Writer): string[] =>
  readings
    .filter(({ counts }) => counts)
    .map(({ at, temperature, expected, statedTo }) =>
      say('record.reading', { at: statedMoment(at, statedTo, zone, w), temperature, expected }, w),
    )

/** What was written down during the run. */
export const noteSentences = (state: TankState, zone: string, w: Writer): string[] =>
  state.notes.map(({ at, event: { statedTo, text } }) =>
    statedTo === 'placed'
      ? say('record.noted-only', { text }, w)
      : say('record.noted', { at: statedMoment(at, statedTo, zone, w), text }, w),
  )
