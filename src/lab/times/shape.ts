import { celsius, instantText, seconds } from '../../kernel/index.js'
import type { TimeRecord as TimeView, TimeStatement as TimeWire } from '../../wire/index.js'
import type { TimeRecord, TimeStatement } from './port.js'

const rangeIn = (range: { from_c: number; to_c: number } | null) =>
  range && { from: celsius(range.from_c), to: celsius(range.to_c) }
const rangeOut = (range: TimeStatement['usable']) => range && { from_c: range.from, to_c: range.to }

/** A statement as it comes in over the wire, with its units in the types. */
export const statementOf = (wire: TimeWire): TimeStatement => ({
  film: wire.film,
  exposureIndex: wire.exposure_index,
  developer: wire.developer,
  dilutionParts: wire.dilution_parts,
  agitation: wire.agitation,
  kind: wire.kind,
  law: wire.law,
  developerClass: wire.developer_class,
  coefficient: wire.coefficient,
  usable: rangeIn(wire.usable),
  window: rangeIn(wire.window),
  points: wire.points.map((point) => ({ temperature: celsius(point.temperature_c), time: seconds(point.time_s) })),
  sourceWords: wire.source_words,
  sourceOrigin: wire.source_origin,
  note: wire.note,
})

export const viewOfStatement = (statement: TimeStatement): TimeWire => ({
  film: statement.film,
  exposure_index: statement.exposureIndex,
  developer: statement.developer,
  dilution_parts: statement.dilutionParts === null ? null : [...statement.dilutionParts],
  agitation: statement.agitation,
  kind: statement.kind,
  law: statement.law,
  developer_class: statement.developerClass,
  coefficient: statement.coefficient,
  usable: rangeOut(statement.usable),
  window: rangeOut(statement.window),
  points: statement.points.map((point) => ({ temperature_c: point.temperature, time_s: point.time })),
  source_words: statement.sourceWords,
  source_origin: statement.sourceOrigin,
  note: statement.note,
})

export const viewOf = (record: TimeRecord): TimeView => ({
  ...viewOfStatement(record),
  id: record.id,
  revision: record.revision,
  saved_at: instantText(record.savedAt),
  removed: record.removed,
})
