import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk, instantText } from '../../src/kernel/index.js'
import { benchView, keepFilm, moveRolls, takeInRolls, today, undoBatch } from '../../src/lab/index.js'
import { schemas } from '../../src/wire/index.js'
import { type Bench, benches, NOON } from '../support/bench.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(503)
})

const MINUTE = 60_000
const takeIn = async (...films: string[]): Promise<string[]> => {
  const rolls = films.map((film) => ({ statement: { film, process: 'black-and-white', format: '135' } }))
  const asked = schemas.TakeInRolls.parse({ rolls })
  return expectOk(await bench.write((context, rooms) => takeInRolls(context, rooms, asked))).rolls.map(({ id }) => id)
}
/** A step at so many minutes after noon. */
const move = async (ids: readonly string[], state: string, minute: number, hook = '') => {
  bench.clock.advance(NOON + minute * MINUTE - bench.clock.now())
  const asked = schemas.MoveRolls.parse({ roll_ids: ids, state, hook })
  return expectOk(await bench.write((context, rooms) => moveRolls(context, rooms, asked)))
}
const drying = () => bench.read(async (rooms) => (await today(rooms, await benchView(bench.context, rooms))).drying)
const at = (minute: number) => instantText(NOON + minute * MINUTE)

/** Rolls of a film that were hung and then sleeved so many minutes later. */
async function hungBefore(film: string, ...minutes: number[]) {
  const ids = await takeIn(...minutes.map(() => film))
  await move(ids, 'hung', 1)
  const inOrder = ids.map((id, i) => [minutes[i] as number, id] as const).sort(([a], [b]) => a - b)
  for (const [minute, id] of inOrder) await move([id], 'sleeved', 1 + minute)
}

describe('what is drying', () => {
  it('is told from hanging to sleeving, those that hang first, by when they are ready', async () => {
    const [wet, first, second, dry] = (await takeIn('Fell 25', 'Fell 25', 'Tarn 100', 'Fell 25')) as [
      string,
      string,
      string,
      string,
    ]
    expect(await drying()).toEqual([])
    await move([wet, first, second, dry], 'developed', 1)
    await move([dry], 'hung', 2)
    await move([second], 'hung', 20, 'line 2')
    await move([first], 'hung', 30)
    await move([dry], 'sleeved', 40)
    const facts = (await drying()).map(({ id, ready_at, dry_by, hook }) => [id, ready_at, dry_by, hook])
    expect(facts).toEqual([
      [second, at(140), 'usual', 'line 2'],
      [first, at(150), 'usual', ''],
      [wet, null, null, ''],
    ])
  })

  it('goes by what is kept of the film, whatever its capitals, before own records', async () => {
    await hungBefore('Fell 25', 50, 60, 70)
    const film = schemas.FilmStatement.parse({ name: 'FELL 25', process: 'black-and-white', drying_s: 5400 })
    expectOk(await bench.write((context, rooms) => keepFilm(context, rooms, film)))
    await move(await takeIn('Fell 25'), 'hung', 200)
    expect(await drying()).toMatchObject([{ ready_at: at(290), dry_by: 'kept' }])
  })

  it('goes by the second shortest of its last rolls, once three of them say it', async () => {
    await hungBefore('Fell 25', 75, 600)
    const [hangs] = (await takeIn('Fell 25')) as [string]
    await move([hangs], 'hung', 700)
    expect(await drying()).toMatchObject([{ ready_at: at(820), dry_by: 'usual' }])
    const [third] = (await takeIn('Fell 25')) as [string]
    await move([third], 'hung', 701)
    await move([third], 'sleeved', 701 + 90)
    expect(await drying()).toMatchObject([{ ready_at: at(790), dry_by: 'own-record' }])
  })

  it('learns nothing from steps that were slips, taken back, or of another film', async () => {
    await hungBefore('Fell 25', 3, 60, 4000)
    await hungBefore('Tarn 100', 20, 30, 40)
    const [taken] = (await takeIn('Fell 25')) as [string]
    await move([taken], 'hung', 4100)
    const { batch_id } = await move([taken], 'sleeved', 4150)
    expectOk(await bench.write((context, rooms) => undoBatch(context, rooms, batch_id)))
    await move([taken], 'handed-back', 4160)
    await move(await takeIn('Fell 25'), 'hung', 4200)
    expect(await drying()).toMatchObject([{ ready_at: at(4320), dry_by: 'usual' }])
  })
})
