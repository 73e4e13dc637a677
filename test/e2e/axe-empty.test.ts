import type { Page } from 'playwright-core'
import { beforeAll, describe, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench } from './support/browser.js'
import { sceneOn } from './support/looks/scene.js'
import { looks } from './support/looks/table.js'

const house = bench()

describe('every page before anything is kept, on a phone', () => {
  let page: Page
  beforeAll(async () => {
    page = await house.open('/', 'phone', { kept: true })
  })
  it.each(looks('empty', 'owner'))('%s', async (name, look) => {
    await look(sceneOn(page, house, { bare: true }))
    await accessible(page, name)
  })
})

describe('every page while the server does not answer, on a laptop', () => {
  let page: Page
  beforeAll(async () => {
    page = await house.open('/pair', 'laptop', { kept: true })
    await page.route('**/api/**', (route) => route.abort())
  })
  it.each(looks('away', 'owner'))('%s', async (name, look) => {
    await look(sceneOn(page, house, { bare: true }))
    await accessible(page, name)
  })
})
