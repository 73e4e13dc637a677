import type { TimeRecord } from '../../../wire/index.js'
import { removeTime, undoTime } from '../../shared/desk/index.js'
import { nameOf } from '../../shared/figures/index.js'

/** A time, as it is changed or removed with the way back. */
export const keptTime = (record: TimeRecord) =>
  ({
    name: nameOf(record),
    kind: 'times',
    undo: (seen: { seen_revision: number }) => undoTime(record.id, seen),
    remove: () => removeTime(record.id, { seen_revision: record.revision }),
    leadsTo: '/times',
  }) as const
