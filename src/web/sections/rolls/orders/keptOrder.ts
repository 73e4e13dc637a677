import type { OrderRecord } from '../../../shared/api/index.js'
import { removeOrder, undoOrder } from '../../../shared/desk/index.js'

/** An order, as it is changed or removed with the way back. */
export const keptOrder = (record: OrderRecord) =>
  ({
    name: `The order of ${record.person}`,
    kind: 'orders',
    undo: (seen: { seen_revision: number }) => undoOrder(record.id, seen),
    remove: () => removeOrder(record.id, { seen_revision: record.revision }),
    leadsTo: '/rolls/orders',
  }) as const
