import { failed, ok, type Result } from '../../kernel/index.js'
import { addContainer } from '../../lab/index.js'
import type { ContainerRecord } from '../../wire/index.js'
import { say } from '../../words/index.js'
import { tell } from '../answer.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'
import { booked } from '../shelf/at.js'
import { ml } from '../shelf/options.js'

export interface AddOptions extends Common {
  readonly holds?: string
  readonly product?: string
  readonly shape?: string
  readonly useBy?: string
  readonly opened?: string
  readonly price?: string
}

/** Adds a package, a bottle or a jug. */
export async function addOne(kind: string, name: string, options: AddOptions, output: Output): Promise<number> {
  const statement = statementOf(kind, name, options)
  if (!statement.ok) return refuse(output, statement.problem, options)
  const done = await booked<never, ContainerRecord>({
    ...{ path: '/api/containers', schema: 'AddContainer', body: { statement: statement.value } },
    here: (context, rooms, body) => addContainer(context, rooms, body),
  })
  if (!done.ok) return refuse(output, done.problem, options)
  const lines = [say('shelf.line.kept', { name }, unitsOf(options))]
  return tell({ view: done.value, lines, working: () => [] }, options, output)
}

function statementOf(kind: string, name: string, options: AddOptions): Result<object> {
  const holds = ml(options.holds, '--holds', options)
  if (!holds.ok) return holds
  if (holds.value === null) return failed(usage('Say how much it holds, like --holds 1L.'))
  if (kind !== 'package')
    return ok({
      kind,
      name,
      holds_ml: holds.value,
      ...(kind === 'bottle' && options.shape ? { shape: options.shape } : {}),
    })
  if (options.product === undefined)
    return failed(usage('Say what is in the package, like --product 0190d1c2-0000-7000-8000-000000000000.'))
  const price = /^(\d+(?:[.,]\d{1,2})?)\s*([A-Za-z]{3})$/.exec(options.price ?? '')
  if (options.price !== undefined && price === null)
    return failed(usage(`--price is “${options.price}”; write it like “12.50 EUR”.`))
  return ok({
    ...{ kind, name, product_id: options.product, unit: 'ml', full: holds.value },
    use_by: options.useBy ?? null,
    opened: options.opened ?? null,
    price:
      price === null
        ? null
        : {
            minor: Math.round(Number((price[1] as string).replace(',', '.')) * 100),
            currency: (price[2] as string).toUpperCase(),
          },
  })
}
