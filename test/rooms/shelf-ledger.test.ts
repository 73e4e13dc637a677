import { expect, it } from 'vitest'
import { expectOk, SeededRandom } from '../../src/kernel/index.js'
import {
  addContainer,
  discard,
  finishMix,
  handOver,
  keepProduct,
  movePortion,
  shelf,
  takeBack,
  useBath,
} from '../../src/lab/index.js'
import { schemas } from '../../src/wire/index.js'
import { benches } from '../support/bench.js'

/**
 * A ledger of its own: every bottle is a list of pours, each with its volume and with the film that it shares. It knows
 * nothing of microlitres, portions or legs, and says what a bottle holds and still carries by adding up.
 */
interface Pour {
  ml: number
  /** Millilitres as it was filled: what its count goes by. */
  filled: number
  ordinary: number
  slow: number
}
type Book = Map<string, Pour>

const NONE = (): Pour => ({ ml: 0, filled: 0, ordinary: 0, slow: 0 })
function takePart(from: Pour, ml: number): Pour {
  const part = ml / from.ml
  const out = { ml, filled: from.filled * part, ordinary: from.ordinary * part, slow: from.slow * part }
  from.ml -= out.ml
  from.filled -= out.filled
  from.ordinary -= out.ordinary
  from.slow -= out.slow
  return out
}
function pourIn(into: Pour, pour: Pour) {
  into.ml += pour.ml
  into.filled += pour.filled
  into.ordinary += pour.ordinary
  into.slow += pour.slow
}

const PER_LITRE = 20
const open = benches()

it.each([1, 2, 3])('agrees with a ledger of other make over a bench’s months, history %s', async (seed) => {
  const bench = await open(700 + seed)
  const random = new SeededRandom(seed)
  const below = (most: number) => Math.floor(random.unit() * most)
  const { write } = bench
  const said = {
    name: 'Fixer',
    role: 'fixer',
    use: 'reusable',
    rolls_per_litre: PER_LITRE,
    fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
  }
  const productId = expectOk(await write((c, rooms) => keepProduct(c, rooms, schemas.ProductStatement.parse(said)))).id
  const add = async (statement: object) =>
    expectOk(await write((c, rooms) => addContainer(c, rooms, schemas.AddContainer.parse({ statement })))).id
  const bottles = [
    await add({ kind: 'bottle', name: 'A', holds_ml: 2000 }),
    await add({ kind: 'bottle', name: 'B', holds_ml: 2000 }),
  ]
  const jugId = await add({ kind: 'jug', name: 'Jug', holds_ml: 20_000 })
  const book: Book = new Map([...bottles, jugId].map((id) => [id, NONE()]))
  const of = (id: string) => book.get(id) as Pour
  const [a, b] = bottles as [string, string]

  const acts: (() => Promise<void>)[] = [
    async () => {
      if (of(a).ml > 0 || of(b).ml > 0) return
      const into = [
        { container_id: a, ml: 1000 + below(900) },
        { container_id: b, ml: 500.125 },
      ]
      expectOk(await write((c, rooms) => finishMix(c, rooms, schemas.FinishMix.parse({ product_id: productId, into }))))
      for (const { container_id, ml } of into) book.set(container_id, { ...NONE(), ml, filled: ml })
    },
    async () => {
      const id = bottles[below(2)] as string
      if (of(id).ml < 50) return
      const [ordinary, slow] = [below(3), below(2)]
      const film = [
        { format: '120', count: ordinary },
        { format: '135', frames: 36, count: slow, family: 'tabular' },
      ].filter(({ count }) => count > 0)
      const lost = (1 + below(20_000)) / 1000
      const asked = { container_id: id, poured: 40, lost, back_into: id, film }
      const done = await write((c, rooms) => useBath(c, rooms, schemas.UseBath.parse(asked)))
      const pour = of(id)
      const worked = pour.ordinary + pour.slow / 0.6 + ordinary + slow / 0.6
      const carries = (pour.filled * PER_LITRE) / 1000
      // To the millionth of a roll nobody can say which side a share fell on.
      if (Math.abs(worked - carries) > 1e-4) expect(done.ok, `${worked} of ${carries}`).toBe(worked < carries)
      if (!done.ok) return
      pour.ml -= lost
      pour.ordinary += ordinary
      pour.slow += slow
    },
    async () => {
      const [from, into] = below(2) === 0 ? [a, b] : [b, a]
      if (of(from).ml < 2 || of(into).ml < 1) return
      const amount = 1 + below(Math.min(of(from).ml - 1, 2000 - of(into).ml))
      if (amount > 2000 - of(into).ml) return
      const asked = { from_id: from, into_id: into, amount }
      expectOk(await write((c, rooms) => movePortion(c, rooms, schemas.MovePortion.parse(asked))))
      pourIn(of(into), takePart(of(from), amount))
    },
    async () => {
      const id = bottles[below(2)] as string
      if (of(id).ml === 0) return
      const all = below(3) === 0
      const asked = {
        container_id: id,
        where: 'jug',
        jug_id: jugId,
        amount: all ? null : of(id).ml / 3 < 0.001 ? 0.001 : Math.round(of(id).ml * 333) / 1000,
      }
      const done = expectOk(await write((c, rooms) => discard(c, rooms, schemas.Discard.parse(asked))))
      const took = -(done.entry.legs.find((leg) => leg.container_id === id)?.change ?? 0)
      pourIn(of(jugId), takePart(of(id), took))
      if (all) book.set(id, NONE())
    },
    async () => {
      const id = bottles[below(2)] as string
      if (of(id).ml < 50) return
      const asked = {
        container_id: id,
        poured: 40,
        lost: 7.5,
        back_into: id,
        film: [{ format: '4x5', count: 1 }],
        over_count: true,
      }
      const { entry } = expectOk(await write((c, rooms) => useBath(c, rooms, schemas.UseBath.parse(asked))))
      expectOk(await write((c, rooms) => takeBack(c, rooms, entry.id, 'wrong bottle')))
    },
    async () => {
      if (of(jugId).ml < 5000) return
      expectOk(await write((c, rooms) => handOver(c, rooms, schemas.HandOver.parse({ jug_id: jugId, to: 'The town' }))))
      book.set(jugId, NONE())
    },
  ]

  for (let step = 0; step < 90; step++) {
    bench.clock.advance(3_600_000 * (1 + below(20)))
    await acts[below(acts.length)]?.()
    const stands = await bench.read((rooms) => shelf(bench.context, rooms))
    for (const one of stands.bottles) {
      const pour = of(one.id)
      expect(one.held).toBeCloseTo(pour.ml, 6)
      expect(one.left?.met ?? 0).toBeCloseTo(pour.ordinary + pour.slow, 3)
    }
    expect(stands.jugs[0]?.held_ml).toBeCloseTo(of(jugId).ml, 6)
    expect(stands.jugs[0]?.rolls).toBeCloseTo(of(jugId).ordinary + of(jugId).slow, 3)
  }
})
