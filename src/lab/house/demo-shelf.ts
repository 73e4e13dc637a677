import { DAY_MS, instantText, ok, type Result } from '../../kernel/index.js'
import { schemas } from '../../wire/index.js'
import type { Context } from '../context.js'
import { addContainer } from '../shelf/containers.js'
import { finishMix } from '../shelf/mixing.js'
import { discard } from '../shelf/moving.js'
import { keepProduct } from '../shelf/products.js'
import { testBath } from '../shelf/testing.js'
import { useBath } from '../shelf/use.js'
import type { Rooms } from '../store.js'

const PRODUCTS = {
  fixer: {
    name: 'Ammonium fixer',
    role: 'fixer',
    use: 'reusable',
    dilutions: [[1, 4]],
    fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
    rolls_per_litre: 20,
    hazards: ['fumes'],
    source: 'invented for the demo bench',
  },
  developer: {
    name: 'MQ–borax stock',
    role: 'developer',
    use: 'single-use',
    dilutions: [[1], [1, 1]],
    coefficient_class: 'metol-hydroquinone',
    floor_ml_per_roll: 150,
    hazards: ['sensitiser'],
    source: 'invented for the demo bench',
  },
  stop: {
    name: 'Acetic stop',
    role: 'stop',
    use: 'reusable',
    dilutions: [[1, 19]],
    stop: { acid: 'acetic', percent: 1 },
    rolls_per_litre: 12,
    hazards: ['acid', 'fumes'],
    source: 'invented for the demo bench',
  },
}
const BOTTLES = [
  { name: 'Brown 1', holds_ml: 1000 },
  { name: 'Brown 2', holds_ml: 1000 },
  { name: 'Five litres', holds_ml: 5000 },
  { name: 'Brown 3', holds_ml: 1000 },
  { name: 'Old flask', holds_ml: 500 },
]

/** Puts invented products, bottles, baths with a past, and a jug of waste on a bench, by the commands people use. */
export async function furnishShelf(context: Context, rooms: Rooms): Promise<Result<null>> {
  const ids: Record<string, string> = {}
  for (const [key, said] of Object.entries(PRODUCTS)) {
    const kept = await keepProduct(context, rooms, schemas.ProductStatement.parse(said))
    if (!kept.ok) return kept
    ids[key] = kept.value.id
  }
  const price = { minor: 1450, currency: 'EUR' }
  const things = [
    ...BOTTLES.map((bottle) => ({ kind: 'bottle', ...bottle })),
    { kind: 'jug', name: 'Spent fixer, jug 2', holds_ml: 5000 },
    { kind: 'package', product_id: ids.fixer, unit: 'ml', full: 1000, price },
    { kind: 'package', product_id: ids.stop, unit: 'ml', full: 500 },
  ]
  for (const statement of things) {
    const added = await addContainer(context, rooms, schemas.AddContainer.parse({ statement }))
    if (!added.ok) return added
    ids[added.value.statement.name || `package of ${added.value.id}`] = added.value.id
  }
  return past(context, rooms, ids)
}

/** What happened to the baths in the weeks before: days ago, and what was done. */
async function past(context: Context, rooms: Rooms, ids: Readonly<Record<string, string>>): Promise<Result<null>> {
  const { mix, use, test, empty } = hands(context, rooms, ids)
  const steps = [
    () => mix(41, 'fixer', [1, 4], 'Old flask', 500),
    () => use(39, 'Old flask', 9, 500),
    () => mix(26, 'fixer', [1, 4], 'Brown 1', 1000),
    () => test(26, 'Brown 1', 30, true),
    () => use(21, 'Brown 1', 6, 600),
    () => mix(20, 'developer', null, 'Five litres', 2400),
    () => test(14, 'Brown 1', 34, false),
    () => use(9, 'Brown 1', 6, 600),
    () => mix(8, 'stop', [1, 19], 'Brown 2', 1000),
    () => use(8, 'Brown 2', 5, 600),
    () => test(2, 'Brown 1', 41, false),
    () => empty(1, 'Old flask'),
  ]
  for (const step of steps) {
    const done = await step()
    if (!done.ok) return done
  }
  return ok(null)
}

function hands(context: Context, rooms: Rooms, ids: Readonly<Record<string, string>>) {
  const ago = (days: number) => instantText(context.clock.now() - days * DAY_MS)
  return {
    mix: (days: number, product: string, parts: number[] | null, into: string, ml: number) =>
      finishMix(
        context,
        rooms,
        schemas.FinishMix.parse({
          product_id: ids[product],
          parts,
          into: [{ container_id: ids[into], ml }],
          at: ago(days),
        }),
      ),
    use: (days: number, bottle: string, count: number, poured: number) =>
      useBath(
        context,
        rooms,
        schemas.UseBath.parse({
          container_id: ids[bottle],
          film: [{ format: '135', count }],
          poured,
          back_into: ids[bottle],
          at: ago(days),
        }),
      ),
    test: (days: number, bottle: string, clears_s: number, fresh: boolean) =>
      testBath(
        context,
        rooms,
        schemas.TestBath.parse({
          container_id: ids[bottle],
          test: { of: 'clearing', clears_s, fresh },
          at: ago(days),
        }),
      ),
    empty: (days: number, bottle: string) =>
      discard(
        context,
        rooms,
        schemas.Discard.parse({
          container_id: ids[bottle],
          where: 'jug',
          jug_id: ids['Spent fixer, jug 2'],
          at: ago(days),
        }),
      ),
  }
}
