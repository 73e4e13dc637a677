import { afterAll, beforeAll, expect, it } from 'vitest'
import { SeededRandom } from '../../src/kernel/index.js'
import { routes } from '../../src/wire/index.js'
import { drivers, type WritingRoute } from './drivers.js'
import type { House } from './house.js'
import { killDuring } from './rounds.js'

/** Kills per route, 40 in all: most for what is written during a run, more than one for what keeps many rows in one write. */
const SEVERAL: Partial<Record<WritingRoute, number>> = {
  addRunEvents: 4,
  planRun: 2,
  abandonRun: 2,
  judgeRun: 2,
  keepTimes: 2,
  correctTime: 2,
  addClassSet: 2,
  checkThermometer: 2,
  changeSettings: 2,
  openDemo: 2,
  removeDemo: 2,
  restore: 2,
  pair: 2,
}
const KILLS = (name: WritingRoute): number => SEVERAL[name] ?? 1
const ALL_KILLS = 40
const names = Object.keys(drivers) as WritingRoute[]
// Restoring first, while there is little to restore.
const order: WritingRoute[] = ['restore', ...names.filter((name) => name !== 'restore')]

/** The kills of one database, each route a test of its own. */
export function killsAreSurvived(open: () => Promise<House>): void {
  const seed = Number(process.env['WETSIDE_SEED'] ?? 20261)
  const random = new SeededRandom(seed)
  let house: House
  const total = { kills: 0, acknowledged: 0, cutOff: 0 }
  beforeAll(async () => {
    house = await open()
    await house.start()
  })
  afterAll(() => house.close())

  it.each(order)('%s: nothing acknowledged is lost, nothing is half there, nothing is done twice', async (name) => {
    for (let kill = 0; kill < KILLS(name); kill++) {
      const { complaints, acknowledged, cutOff } = await killDuring(house, drivers[name], random)
      expect(complaints, `kill ${kill + 1}, seed ${seed}`).toEqual([])
      total.kills++
      total.acknowledged += acknowledged
      total.cutOff += cutOff
    }
  })

  it('was killed often enough, in the middle of writes', () => {
    console.log(`${total.kills} kills: ${total.acknowledged} writes acknowledged, ${total.cutOff} cut off`)
    expect(total.kills).toBeGreaterThanOrEqual(ALL_KILLS)
    // Were the kills to fall between writes they would show nothing.
    expect(total.cutOff).toBeGreaterThanOrEqual(ALL_KILLS / 2)
    expect(total.acknowledged).toBeGreaterThanOrEqual(ALL_KILLS)
  })

  it('drives every writing route', () => {
    const writing = Object.entries(routes).flatMap(([name, route]) => (route.writes ? [name] : []))
    expect([...names].sort()).toEqual(writing.sort())
  })
}
