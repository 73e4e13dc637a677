import type { ThermometerRecord } from '../../../wire/index.js'
import { removeThermometer, undoThermometer } from '../../shared/desk/index.js'

/** A thermometer, as it is changed or removed with the way back. */
export const keptThermometer = (record: ThermometerRecord) =>
  ({
    name: record.name,
    kind: 'thermometers',
    undo: (seen: { seen_revision: number }) => undoThermometer(record.id, seen),
    remove: () => removeThermometer(record.id, { seen_revision: record.revision }),
    leadsTo: '/shelf',
  }) as const
