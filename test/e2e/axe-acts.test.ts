import type { Page } from 'playwright-core'
import { beforeAll, describe, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench } from './support/browser.js'
import { sceneOn } from './support/looks/scene.js'
import { looks } from './support/looks/table.js'
import { openDemo } from './support/steps.js'

const house = bench()

let page: Page
beforeAll(async () => {
  page = await house.open('/', 'laptop', { kept: true })
  await openDemo(page)
})

describe.each([
  ['what cannot be right', 'trouble'],
  ['what an act brings up', 'opened'],
] as const)('%s', (_, state) => {
  it.each(looks(state, 'owner'))('%s', async (name, look) => {
    await look(sceneOn(page, house, { bare: false }))
    await accessible(page, name)
  })
})
