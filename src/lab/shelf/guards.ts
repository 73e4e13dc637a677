import { failed, problem, type Result } from '../../kernel/index.js'
import type { ProductStatement } from '../../wire/index.js'
import { nameOf, type Standing } from './posting.js'

/** A container with something in it. */
export type Held = Standing & { readonly product: ProductStatement }

/** What comes out of a package, and a bath that is used once, does not go back. */
export const isUsedOnce = ({ statement, product }: Held): boolean =>
  statement.kind === 'package' || product.use === 'single-use'

/** Why a bottle is not the one that a person believes in, by its lot; null where nobody named one. */
export const wrongLot = (found: Held, lotId: string | null, field: string): Result<never> | null =>
  lotId === null || lotId === (found.lot?.id ?? null)
    ? null
    : failed(problem('shelf.wrong-lot', { name: nameOf(found), code: found.lot?.code ?? '' }, field))

/** Why what is in a bottle is not the bath that it is to be: most spoilt film met the wrong bottle. */
export function wrongRole(found: Held, wanted: ProductStatement['role'] | null, field: string): Result<never> | null {
  const { name: holds, role } = found.product
  if (wanted === null || wanted === role) return null
  return failed(problem('shelf.wrong-role', { name: nameOf(found), holds, role, wanted }, field))
}
