import type { ThermometerCheck, ThermometerRecord } from '../../lab/index.js'
import type { CheckRow, ThermometerRevisionRow } from '../schema.js'
import { fromMilliCelsius, toFlag, toMilliCelsius } from './amounts.js'

export function thermometerRow(bench: string, record: ThermometerRecord): ThermometerRevisionRow {
  return {
    bench_id: bench,
    thermometer_id: record.id,
    revision: record.revision,
    saved_at: record.savedAt,
    saved_by: record.savedBy,
    removed: toFlag(record.removed),
    name: record.name,
    kind: record.kind,
    scale_low_mc: toMilliCelsius(record.scaleLow),
    scale_high_mc: toMilliCelsius(record.scaleHigh),
    note: record.note,
  }
}

export function thermometerRecord(row: ThermometerRevisionRow): ThermometerRecord {
  return {
    id: row.thermometer_id,
    revision: row.revision,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
    removed: row.removed === 1,
    name: row.name,
    kind: row.kind as ThermometerRecord['kind'],
    scaleLow: fromMilliCelsius(row.scale_low_mc),
    scaleHigh: fromMilliCelsius(row.scale_high_mc),
    note: row.note,
  }
}

export function checkRow(bench: string, check: ThermometerCheck): CheckRow {
  return {
    bench_id: bench,
    id: check.id,
    thermometer_id: check.thermometerId,
    at: check.at,
    done_by: check.by,
    method: check.method,
    read_mc: toMilliCelsius(check.read),
    true_mc: toMilliCelsius(check.true),
    set_id: check.setId,
  }
}

/** `withdrawal_id` is that of the row that withdraws the check, if there is one. */
export function checkRecord(row: CheckRow & { withdrawal_id: string | null }): ThermometerCheck {
  return {
    id: row.id,
    thermometerId: row.thermometer_id,
    at: row.at,
    by: row.done_by,
    method: row.method as ThermometerCheck['method'],
    read: fromMilliCelsius(row.read_mc),
    true: fromMilliCelsius(row.true_mc),
    setId: row.set_id,
    withdrawn: row.withdrawal_id !== null,
  }
}
