import type { Page } from 'playwright-core'
import { beforeAll, describe, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench } from './support/browser.js'
import { STATES } from './support/looks/kinds.js'
import { sceneOn } from './support/looks/scene.js'
import { looks } from './support/looks/table.js'

// Here the computer itself counts as a stranger, as a phone on the house network does.
const house = bench({ LOOPBACK_OWNER: 'no', SHOW_QR: 'yes' })

let page: Page
beforeAll(async () => {
  page = await house.open('/pair', 'phone', { kept: true })
})

describe.each(STATES)('what a device that is not paired meets: %s', (state) => {
  it.each(looks(state, 'stranger'))('%s', async (name, look) => {
    if (state === 'away') await page.route('**/api/**', (route) => route.abort())
    await look(sceneOn(page, house, { bare: true }))
    await accessible(page, name)
    await page.unroute('**/api/**')
  })
})
