import type { TimeRecord } from '../../lab/index.js'
import type { TimePointRow, TimeRevisionRow } from '../schema.js'
import { fromMilliCelsius, fromMilliseconds, toFlag, toMilliCelsius, toMilliseconds } from './amounts.js'

type Range = TimeRecord['usable']

export function timeRow(bench: string, record: TimeRecord): TimeRevisionRow {
  return {
    bench_id: bench,
    time_id: record.id,
    revision: record.revision,
    saved_at: record.savedAt,
    saved_by: record.savedBy,
    removed: toFlag(record.removed),
    film: record.film,
    exposure_index: record.exposureIndex,
    developer: record.developer,
    dilution_parts: record.dilutionParts && JSON.stringify(record.dilutionParts),
    agitation: record.agitation,
    kind: record.kind,
    law: record.law,
    developer_class: record.developerClass,
    coefficient: record.coefficient,
    usable_from_mc: record.usable && toMilliCelsius(record.usable.from),
    usable_to_mc: record.usable && toMilliCelsius(record.usable.to),
    window_from_mc: record.window && toMilliCelsius(record.window.from),
    window_to_mc: record.window && toMilliCelsius(record.window.to),
    source_words: record.sourceWords,
    source_origin: record.sourceOrigin,
    note: record.note,
  }
}

export const pointRows = (bench: string, record: TimeRecord): TimePointRow[] =>
  record.points.map((point, position) => ({
    bench_id: bench,
    time_id: record.id,
    revision: record.revision,
    position,
    temperature_mc: toMilliCelsius(point.temperature),
    duration_ms: toMilliseconds(point.time),
  }))

/** The record of a revision; `points` are its own, by position. */
export function timeRecord(row: TimeRevisionRow, points: readonly TimePointRow[]): TimeRecord {
  return {
    id: row.time_id,
    revision: row.revision,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
    removed: row.removed === 1,
    film: row.film,
    exposureIndex: row.exposure_index,
    developer: row.developer,
    dilutionParts: row.dilution_parts === null ? null : (JSON.parse(row.dilution_parts) as number[]),
    agitation: row.agitation,
    kind: row.kind as TimeRecord['kind'],
    law: row.law as TimeRecord['law'],
    developerClass: row.developer_class as TimeRecord['developerClass'],
    coefficient: row.coefficient,
    usable: range(row.usable_from_mc, row.usable_to_mc),
    window: range(row.window_from_mc, row.window_to_mc),
    points: points.map((point) => ({
      temperature: fromMilliCelsius(point.temperature_mc),
      time: fromMilliseconds(point.duration_ms),
    })),
    sourceWords: row.source_words,
    sourceOrigin: row.source_origin as TimeRecord['sourceOrigin'],
    note: row.note,
  }
}

const range = (from: number | null, to: number | null): Range =>
  from === null || to === null ? null : { from: fromMilliCelsius(from), to: fromMilliCelsius(to) }
