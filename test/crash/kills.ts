import { afterAll, beforeAll, expect, it } from 'vitest'
import { SeededRandom } from '../../src/kernel/index.js'
import { routes } from '../../src/wire/index.js'
import { drivers, type WritingRoute } from './drivers.js'
import type { House } from './house.js'
import { killDuring } from './rounds.js'
import { runThroughKills } from './whole-run.js'

/** Kills per route, with those of a whole run 40 in all: more than one for what keeps many rows in one write. */
const SEVERAL: Partial<Record<WritingRoute, number>> = {
  addRunEvents: 2,
  planRun: 2,
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
/** During one and the same run, while its phone goes on. */
const KILLS_OF_A_RUN = 6
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

  it('a run goes on through kills, and the server has all of it once', async () => {
    const { acknowledged, written } = await runThroughKills(house, KILLS_OF_A_RUN, random)
    expect(written).toBeGreaterThan(KILLS_OF_A_RUN * 3)
    total.kills += KILLS_OF_A_RUN
    total.acknowledged += acknowledged
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
