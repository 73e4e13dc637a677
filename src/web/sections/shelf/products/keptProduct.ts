import type { ProductRecord } from '../../../shared/api/index.js'
import { removeProduct, undoProduct } from '../../../shared/desk/index.js'

/** A product, as it is changed or removed with the way back. */
export const keptProduct = (record: ProductRecord) =>
  ({
    name: record.name,
    kind: 'products',
    undo: (seen: { seen_revision: number }) => undoProduct(record.id, seen),
    remove: () => removeProduct(record.id, { seen_revision: record.revision }),
    leadsTo: '/shelf/products',
  }) as const
