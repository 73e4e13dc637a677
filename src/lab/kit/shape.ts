import { celsius, instantText } from '../../kernel/index.js'
import type { ThermometerRecord as RecordView, ThermometerStatement as StatementWire } from '../../wire/index.js'
import type { ThermometerCheck, ThermometerRecord, ThermometerStatement } from './port.js'

export const statementOf = (wire: StatementWire): ThermometerStatement => ({
  name: wire.name,
  kind: wire.kind,
  scaleLow: celsius(wire.scale_low_c),
  scaleHigh: celsius(wire.scale_high_c),
  note: wire.note,
})

export const viewOf = (record: ThermometerRecord, checks: readonly ThermometerCheck[]): RecordView => ({
  id: record.id,
  revision: record.revision,
  saved_at: instantText(record.savedAt),
  removed: record.removed,
  name: record.name,
  kind: record.kind,
  scale_low_c: record.scaleLow,
  scale_high_c: record.scaleHigh,
  note: record.note,
  checks: checks.map((check) => ({
    id: check.id,
    at: instantText(check.at),
    method: check.method,
    read_c: check.read,
    true_c: check.true,
    set_id: check.setId,
    withdrawn: check.withdrawn,
  })),
})
