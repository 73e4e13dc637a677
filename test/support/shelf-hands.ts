import { expectOk, type Result } from '../../src/kernel/index.js'
import {
  addContainer,
  discard,
  finishMix,
  keepProduct,
  movePortion,
  shelf,
  takeBack,
  testBath,
  useBath,
} from '../../src/lab/index.js'
import { type Posted, schemas } from '../../src/wire/index.js'
import { type Bench, problemOf } from './bench.js'

export const FIXER = {
  name: 'Ammonium fixer',
  role: 'fixer',
  use: 'reusable',
  fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
  rolls_per_litre: 20,
}
export const DEVELOPER = { name: 'Borax developer', role: 'developer', use: 'single-use' }

export const code = (done: Result<unknown>) => problemOf(done).code
export const standsAfter = (done: Result<Posted>, id: string) => expectOk(done).containers.find((one) => one.id === id)

/** What hands do at the shelf of a bench, each in a line. */
export function shelfHands(bench: () => Bench) {
  const product = async (said: object) =>
    expectOk(await bench().write((context, rooms) => keepProduct(context, rooms, schemas.ProductStatement.parse(said))))
      .id
  const container = async (statement: object, holds: number | null = null) =>
    expectOk(
      await bench().write((context, rooms) =>
        addContainer(context, rooms, schemas.AddContainer.parse({ statement, holds })),
      ),
    ).id
  const bottle = (name: string, holds_ml = 1000) => container({ kind: 'bottle', name, holds_ml })
  const jug = (name: string) => container({ kind: 'jug', name, holds_ml: 5000 })
  const pack = (product_id: string, full: number, unit = 'ml') => container({ kind: 'package', product_id, unit, full })
  const mix = (
    product_id: string,
    into: [string, number][],
    from: [string, number][] = [],
    parts: number[] | null = [1, 4],
  ) =>
    bench().write((context, rooms) =>
      finishMix(
        context,
        rooms,
        schemas.FinishMix.parse({
          product_id,
          parts,
          into: into.map(([container_id, ml]) => ({ container_id, ml })),
          from: from.map(([container_id, amount]) => ({ container_id, amount })),
        }),
      ),
    )
  const use = (container_id: string, more: object = {}) =>
    bench().write((context, rooms) =>
      useBath(
        context,
        rooms,
        schemas.UseBath.parse({
          container_id,
          poured: 500,
          back_into: container_id,
          film: [{ format: '120' }],
          ...more,
        }),
      ),
    )
  const move = (from_id: string, into_id: string, amount: number | null, top_up = false) =>
    bench().write((context, rooms) =>
      movePortion(context, rooms, schemas.MovePortion.parse({ from_id, into_id, amount, top_up })),
    )
  const away = (container_id: string, jug_id: string | null, more: object = {}) =>
    bench().write((context, rooms) =>
      discard(context, rooms, schemas.Discard.parse({ container_id, jug_id, where: 'jug', ...more })),
    )
  const test = (container_id: string, of: object) =>
    bench().write((context, rooms) => testBath(context, rooms, schemas.TestBath.parse({ container_id, test: of })))
  const back = (id: string) => bench().write((context, rooms) => takeBack(context, rooms, id, ''))
  const look = () => bench().read((rooms) => shelf(bench().context, rooms))
  const inBottle = async (id: string) => (await look()).bottles.find((one) => one.id === id)

  async function fixer(ml = 600) {
    const productId = await product(FIXER)
    const id = await bottle('Brown 1')
    const posted = expectOk(await mix(productId, [[id, ml]]))
    return { productId, id, lot: posted.lot as NonNullable<Posted['lot']> }
  }
  return { product, container, bottle, jug, pack, mix, use, move, away, test, back, look, inBottle, fixer }
}
