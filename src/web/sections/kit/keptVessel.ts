import type { VesselRecord } from '../../shared/api/index.js'
import { removeVessel, undoVessel } from '../../shared/desk/index.js'

/** A tank, reel or graduate, as it is changed or removed with the way back. */
export const keptVessel = (record: VesselRecord) =>
  ({
    name: record.statement.name,
    kind: 'vessels',
    undo: (seen: { seen_revision: number }) => undoVessel(record.id, seen),
    remove: () => removeVessel(record.id, { seen_revision: record.revision }),
    leadsTo: '/shelf/kit',
  }) as const
