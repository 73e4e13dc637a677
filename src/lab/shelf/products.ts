import { compareNames, type Problem, problem } from '../../kernel/index.js'
import { SALTS } from '../../science/index.js'
import type { ProductStatement, ProductRecord as View } from '../../wire/index.js'
import { nameTaken } from '../names.js'
import { type Stated, standingOf, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'

const commands = statementCommands<ProductStatement>({
  what: 'product',
  feed: 'products',
  port: (rooms) => rooms.products,
  wrong: (statement, others) =>
    impossible(statement) ??
    nameTaken(
      'product',
      statement.name,
      others.map((other) => other.statement.name),
      'name',
    ),
})

/** What is said of a product must fit together. */
function impossible({ role, use, fixer, stop, formula, ...said }: ProductStatement): Problem | null {
  if (fixer !== null && role !== 'fixer')
    return problem('product.not-of-this-role', { what: 'a fixing salt', role }, 'fixer')
  if (stop !== null && role !== 'stop')
    return problem('product.not-of-this-role', { what: 'a stop’s acid', role }, 'stop')
  if (said.replenish_ml_per_roll !== null && use !== 'replenished')
    return problem('product.replenished-only', { use }, 'replenish_ml_per_roll')
  const unknown = formula?.additions.find(({ salt }) => !SALTS.some(({ id }) => id === salt))
  if (unknown !== undefined)
    return problem(
      'formula.salt-unknown',
      { name: unknown.salt, known: SALTS.map(({ id }) => id).join(', ') },
      'formula',
    )
  return null
}

export const viewOfProduct = (product: Stated<ProductStatement>): View => ({
  ...product.statement,
  ...standingOf(product),
})

export const { keep: keepProduct, correct: correctProduct, remove: removeProduct, undo: undoProduct } = commands

/** Products in the order of their names. */
export async function listProducts(rooms: Rooms): Promise<{ products: View[] }> {
  const products = (await rooms.products.all()).map(viewOfProduct)
  return { products: products.sort((a, b) => compareNames(a.name, b.name)) }
}

/** What is said of these products; a removed one still stands on the shelf. */
export async function productsOf(rooms: Rooms, ids: Iterable<string>): Promise<Map<string, ProductStatement>> {
  const found = await rooms.products.newestOf([...new Set(ids)])
  return new Map(found.map(({ id, statement }) => [id, statement]))
}
