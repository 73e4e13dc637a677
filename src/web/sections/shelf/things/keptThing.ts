import type { ContainerRecord } from '../../../shared/api/index.js'
import { removeContainer, undoContainer } from '../../../shared/desk/index.js'

/** A bottle, package or jug by the name it goes by, as it is changed or removed with the way back. */
export const keptThing = (record: ContainerRecord, name: string) =>
  ({
    name,
    kind: 'shelf',
    undo: (seen: { seen_revision: number }) => undoContainer(record.id, seen),
    remove: () => removeContainer(record.id, { seen_revision: record.revision }),
    leadsTo: '/shelf',
  }) as const
