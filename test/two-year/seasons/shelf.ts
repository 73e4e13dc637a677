import {
  addContainer,
  discard,
  finishMix,
  handOver,
  keepProduct,
  measureContents,
  takeBack,
  testBath,
  useBath,
} from '../../../src/lab/index.js'
import { type Posted, type ProductStatement, schemas } from '../../../src/wire/index.js'
import { evening, TERMS } from '../calendar.js'
import { Chance } from '../chance.js'
import type { Darkroom, Episode } from '../darkroom.js'
import { mistakesWith } from './shelf-mistakes.js'

export const LOTS = 90
/** Evenings from one mix to the next, and bottles that are filled in turn. */
const APART = 8
const BOTTLES = 6
const HOLDS = 1000

export const JUG = 'jug of silver waste'
const KINDS = ['fixer', 'developer', 'stop'] as const
type Kind = (typeof KINDS)[number]
const kindOf = (lot: number): Kind => KINDS[lot % KINDS.length] as Kind
export const bottleOf = (lot: number): string => `bottle ${(lot % BOTTLES) + 1}`

const product = (said: object): ProductStatement => schemas.ProductStatement.parse(said)
const PRODUCTS: Readonly<Record<Kind, ProductStatement>> = {
  fixer: product({
    name: 'Fixer of the house',
    role: 'fixer',
    use: 'reusable',
    dilutions: [[1, 4]],
    fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
    rolls_per_litre: 20,
  }),
  developer: product({ name: 'Borax developer', role: 'developer', use: 'single-use', dilutions: [[1, 4]] }),
  stop: product({ name: 'Citric stop', role: 'stop', use: 'reusable', stop: { acid: 'citric', percent: 1.5 } }),
}

/** Ninety lots in six bottles over two years, used, tested, measured, poured away and handed over. */
export function shelf(seed: number): readonly Episode[] {
  const chance = new Chance(seed, 6)
  return [
    { at: evening(0, 100), happens: comesIn },
    ...Array.from({ length: LOTS }, (_, lot) => lifeOf(lot, chance)).flat(),
    ...TERMS.slice(1).map((day): Episode => ({ at: evening(day + 1, 40), happens: handsOverAll })),
  ]
}

async function comesIn(darkroom: Darkroom): Promise<void> {
  for (const kind of KINDS) {
    const said = PRODUCTS[kind]
    darkroom.knows(kind, await darkroom.does(`keeps ${said.name}`, (c, rooms) => keepProduct(c, rooms, said)))
  }
  for (let lot = 0; lot < BOTTLES; lot++)
    await brings(darkroom, bottleOf(lot), { kind: 'bottle', name: `Brown ${lot + 1}`, holds_ml: HOLDS })
  await brings(darkroom, JUG, { kind: 'jug', name: 'Silver', holds_ml: 25_000 })
}

async function brings(darkroom: Darkroom, name: string, statement: object): Promise<void> {
  const asked = schemas.AddContainer.parse({ statement })
  darkroom.knows(name, await darkroom.does(`brings ${name}`, (c, rooms) => addContainer(c, rooms, asked)))
}

function lifeOf(lot: number, chance: Chance): Episode[] {
  const day = lot * APART + 1
  const uses = Array.from({ length: 3 }, (_, i) => day + 6 * i + chance.whole(1, 5))
  const kind = kindOf(lot)
  return [
    { at: evening(day, 10), happens: (darkroom) => mixes(darkroom, lot) },
    ...uses.map((on, i): Episode => {
      const rolls = chance.whole(1, 2)
      const clears = 30 + 4 * i + chance.whole(0, 2)
      return { at: evening(on, 30), happens: (darkroom) => meetsFilm(darkroom, lot, rolls, clears) }
    }),
    ...(chance.happens(0.3) ? [{ at: evening(day + 24, 50), happens: (d: Darkroom) => measures(d, lot) }] : []),
    ...mistakesWith(lot, kind, evening(day + 3, 70)),
  ]
}

/** Whatever the bottle held goes first; a package is opened for every fifth lot of its kind. */
async function mixes(darkroom: Darkroom, lot: number): Promise<void> {
  const [kind, bottle] = [kindOf(lot), darkroom.of(bottleOf(lot)).id]
  if (lot >= BOTTLES) await empties(darkroom, lot)
  const turn = Math.floor(lot / KINDS.length)
  const pack = `package of ${kind}`
  if (turn % 5 === 0)
    await brings(darkroom, pack, { kind: 'package', product_id: darkroom.of(kind).id, unit: 'ml', full: 1000 })
  const asked = schemas.FinishMix.parse({
    product_id: darkroom.of(kind).id,
    parts: [1, 4],
    from: [{ container_id: darkroom.of(pack).id, amount: 200 }],
    into: [{ container_id: bottle, ml: HOLDS }],
  })
  await darkroom.does(`mixes lot ${lot + 1}`, (c, rooms) => finishMix(c, rooms, asked))
}

async function empties(darkroom: Darkroom, lot: number): Promise<void> {
  const where = kindOf(lot) === 'fixer' ? { where: 'jug', jug_id: darkroom.of(JUG).id } : { where: 'as-allowed' }
  const asked = schemas.Discard.parse({ container_id: darkroom.of(bottleOf(lot)).id, ...where })
  await darkroom.does(`empties ${bottleOf(lot)}`, (c, rooms) => discard(c, rooms, asked))
}

/** What a bath met; a fixer is tested with it. */
async function meetsFilm(darkroom: Darkroom, lot: number, rolls: number, clears_s: number): Promise<void> {
  const id = darkroom.of(bottleOf(lot)).id
  await darkroom.does(`uses ${bottleOf(lot)}`, (c, rooms) => useBath(c, rooms, usedOnce(id, kindOf(lot), rolls)))
  if (kindOf(lot) !== 'fixer') return
  const test = { of: 'clearing', clears_s, fresh: clears_s < 34 }
  const asked = schemas.TestBath.parse({ container_id: id, test })
  await darkroom.does(`tests ${bottleOf(lot)}`, (c, rooms) => testBath(c, rooms, asked))
}

export const usedOnce = (id: string, kind: Kind, rolls: number, more: object = {}) =>
  schemas.UseBath.parse({
    container_id: id,
    for_role: kind,
    film: [{ format: '120', count: rolls }],
    poured: kind === 'developer' ? 250 : 500,
    back_into: kind === 'developer' ? null : id,
    ...more,
  })

/** A tenth of the bottle has gone that nobody wrote down. */
async function measures(darkroom: Darkroom, lot: number): Promise<void> {
  const { id } = darkroom.of(bottleOf(lot))
  await darkroom.does(`measures ${bottleOf(lot)}`, async (c, rooms) => {
    const held = ((await rooms.shelf.container(id))?.held ?? 0) / 1000
    const found = Math.round(held * 0.9)
    return measureContents(c, rooms, schemas.MeasureContents.parse({ container_id: id, seen: held, found }))
  })
}

async function handsOverAll(darkroom: Darkroom): Promise<void> {
  const jug_id = darkroom.of(JUG).id
  const asked = schemas.HandOver.parse({ jug_id, to: 'The collection of the town' })
  const wrong = schemas.HandOver.parse({ jug_id, ml: 1, to: 'The caretaker' })
  const first: Posted = await darkroom.does('hands over by mistake', (c, rooms) => handOver(c, rooms, wrong))
  await darkroom.does('takes that back', (c, rooms) => takeBack(c, rooms, first.entry.id, 'nobody came'))
  await darkroom.isRefused('takes it back again', 'shelf.taken-back-before', (c, rooms) =>
    takeBack(c, rooms, first.entry.id, ''),
  )
  await darkroom.does('hands the jug over', (c, rooms) => handOver(c, rooms, asked))
}
