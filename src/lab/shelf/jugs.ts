import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { makesTogether } from '../../planning/index.js'
import type { Discard, ProductStatement } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import { standingEntries } from './ledger.js'
import { nameOf, type Standing } from './posting.js'
import { productsOf } from './products.js'

type Role = ProductStatement['role']

interface Going {
  readonly product: ProductStatement
  readonly unit: 'ml' | 'g'
  readonly where: Discard['where']
  readonly jug: Standing | null
}

/** Whether spent solution may go where it is said to go. There is no way down a drain for a fixer. */
export async function mayGoInto(rooms: Rooms, { product, unit, where, jug }: Going): Promise<Result<null>> {
  if (where === 'as-allowed' && ['fixer', 'toner', 'bleach'].includes(product.role))
    return failed(problem('shelf.into-a-jug-only', { product: product.name }, 'where'))
  if (jug === null) return ok(null)
  if (unit !== 'ml') return failed(problem('shelf.no-powder-into-jug', { product: product.name }, 'jug_id'))
  for (const role of await rolesIn(rooms, jug.container.id)) {
    const makes = makesTogether(product.role, role)
    if (makes !== null)
      return failed(
        problem('shelf.never-together', { product: product.name, name: nameOf(jug), role, makes }, 'jug_id'),
      )
  }
  return ok(null)
}

/** The roles of what went into a jug since it was last empty. */
async function rolesIn(rooms: Rooms, jugId: string): Promise<Set<Role>> {
  const entries = standingEntries(await rooms.shelf.entriesOf([jugId]))
  let [held, lots, packages] = [0, new Set<string>(), new Set<string>()]
  for (const { legs } of entries) {
    held += legs.find(({ containerId }) => containerId === jugId)?.held ?? 0
    if (held <= 0) [lots, packages] = [new Set(), new Set()]
    for (const leg of legs)
      if (leg.containerId !== jugId && held > 0)
        (leg.lotId === null ? packages : lots).add(leg.lotId ?? leg.containerId)
  }
  const productIds = (await rooms.shelf.lots([...lots])).map(({ productId }) => productId)
  for (const id of packages) {
    const said = await rooms.shelf.containers.newest(id)
    if (said?.statement.kind === 'package') productIds.push(said.statement.product_id)
  }
  return new Set([...(await productsOf(rooms, productIds)).values()].map(({ role }) => role))
}
