import { ok } from '../../kernel/index.js'
import { findLots, keepProduct, listProducts, lotByCode, startingProducts, viewOfProduct } from '../../lab/index.js'
import type { LotHeads, LotView, ProductRecord } from '../../wire/index.js'
import { say } from '../../words/index.js'
import { tell } from '../answer.js'
import { atBench } from '../data/at-bench.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'
import { booked, lookAtShelf } from '../shelf/at.js'
import { containerLine, entryLine, jugLine, lotLine } from '../shelf/lines.js'

const print = (view: object, lines: readonly string[], options: Common, output: Output): number =>
  tell({ view, lines, working: () => [] }, options, output)

/** Prints what stands on the shelf, what it can still do, and the jugs. */
export async function showShelf(options: Common, output: Output): Promise<number> {
  const found = await lookAtShelf()
  if (!found.ok) return refuse(output, found.problem, options)
  const units = unitsOf(options)
  const { bottles, packages, jugs } = found.value
  const lines = [
    ...[...bottles, ...packages].map((one) => containerLine(one, units)),
    ...jugs.map((jug) => jugLine(jug, units)),
  ]
  return print(found.value, lines.length === 0 ? [say('shelf.line.nothing', {}, units)] : lines, options, output)
}

/** Prints lots of all times by words, newest first. */
export async function lots(words: readonly string[], options: Common, output: Output): Promise<number> {
  const asked = { words: words.join(' '), after: null, most: 50 }
  const found = await atBench<LotHeads>({
    path: '/api/lots/find',
    body: asked,
    writes: false,
    here: (_, rooms) => findLots(rooms, asked),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const units = unitsOf(options)
  const lines = found.value.lots.map((lot) => lotLine(lot, units))
  return print(found.value, [...lines, say('shelf.line.found', found.value, units)], options, output)
}

/** Prints one lot by the code on its label: where it stands, what it cost, and everything that happened to it. */
export async function lot(code: string, options: Common, output: Output): Promise<number> {
  const found = await atBench<LotView>({
    path: `/api/lots/by-code?code=${encodeURIComponent(code)}`,
    writes: false,
    here: (context, rooms) => lotByCode(context, rooms, code),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const units = unitsOf(options)
  const { lot: head, containers, cost, history } = found.value
  const money = (minor: number, currency: string) => `${(minor / 100).toFixed(2)} ${currency}`
  const price =
    cost === null
      ? []
      : [
          say(
            'shelf.line.cost',
            {
              ...{ amount: money(cost.minor, cost.currency), whole: cost.whole },
              each: cost.per_roll_minor === null ? null : money(cost.per_roll_minor, cost.currency),
            },
            units,
          ),
        ]
  const lines = [
    lotLine(head, units),
    ...containers.map((one) => containerLine(one, units)),
    ...price,
    ...history.map((entry) => entryLine(entry, units)),
  ]
  return print(found.value, lines, options, output)
}

export interface ProductsOptions extends Common {
  readonly starting?: boolean
}

/** Prints the products that are kept, or the generic ones that come along. */
export async function products(options: ProductsOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  if (options.starting) {
    const view = startingProducts()
    return print(
      view,
      view.products.map((one) => say('shelf.line.product', one, units)),
      options,
      output,
    )
  }
  const found = await atBench<{ products: ProductRecord[] }>({
    path: '/api/products',
    writes: false,
    here: async (_, rooms) => ok(await listProducts(rooms)),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const lines = found.value.products.map((one) => say('shelf.line.product', one, units))
  return print(found.value, [...lines, say('shelf.line.found', { found: lines.length }, units)], options, output)
}

/** Keeps a product that is stated in JSON. */
export async function keepOne(file: string | undefined, options: Common, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const { jsonAs } = await import('../asked.js')
  const { schemas } = await import('../../wire/index.js')
  const stated = jsonAs(text.value, 'the product', schemas.AddProduct as never)
  if (!stated.ok) return refuse(output, stated.problem, options)
  const done = await booked<never, ProductRecord>({
    ...{ path: '/api/products', schema: 'AddProduct', body: stated.value as object },
    here: async (context, rooms, body) => {
      const kept = await keepProduct(context, rooms, body)
      return kept.ok ? ok(viewOfProduct(kept.value)) : kept
    },
  })
  if (!done.ok) return refuse(output, done.problem, options)
  return print(done.value, [say('shelf.line.kept', done.value, unitsOf(options))], options, output)
}
