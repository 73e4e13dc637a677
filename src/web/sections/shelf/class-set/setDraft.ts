import { type Celsius, problem, type Reading, readTemperature, type UnitSystem } from '../../../../kernel/index.js'
import type { AddClassSet, ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'

export interface SetDraft {
  /** Empty when none is trusted. */
  readonly trusted: string
  readonly readings: Readonly<Record<string, string>>
}
export const EMPTY_SET: SetDraft = { trusted: '', readings: {} }

/** The rows as read; those left empty were not in the beaker. */
export function readSet(draft: SetDraft, all: readonly ThermometerRecord[], units: UnitSystem) {
  const readings: Record<string, Reading<Celsius>> = {}
  for (const { id, name } of all) {
    const text = draft.readings[id] ?? ''
    if (text.trim() !== '') readings[id] = readTemperature(text, { system: units, what: `the reading of ${name}` })
  }
  const trouble = troubleOf(readings, draft, all, units)
  const body: AddClassSet = {
    trusted_id: draft.trusted === '' ? null : draft.trusted,
    readings: Object.entries(readings).flatMap(([thermometer_id, reading]) =>
      reading.kind === 'read' ? [{ thermometer_id, read_c: reading.value as number }] : [],
    ),
  }
  return { readings, trouble, body: trouble === null ? body : null }
}

function troubleOf(
  readings: Readonly<Record<string, Reading<Celsius>>>,
  draft: SetDraft,
  all: readonly ThermometerRecord[],
  units: UnitSystem,
): string | null {
  const wrong = Object.values(readings).find((reading) => reading.kind !== 'read')
  if (wrong) return wrong.problem.sentence
  const count = Object.keys(readings).length
  if (count < 2) return problem('thermometer.class-set-too-small', { count }).sentence
  const trusted = all.find(({ id }) => id === draft.trusted)
  return trusted && readings[trusted.id] === undefined
    ? say('class-set.trusted-unread', { name: trusted.name }, units)
    : null
}
