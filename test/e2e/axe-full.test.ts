import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench, SIZES } from './support/browser.js'
import { sceneOn } from './support/looks/scene.js'
import { looks } from './support/looks/table.js'
import { openDemo } from './support/steps.js'

const house = bench()

let page: Page
beforeAll(async () => {
  page = await house.open('/', 'laptop', { kept: true })
  await openDemo(page)
})

describe('every page of a full bench, on a laptop and on a phone', () => {
  it.each(looks('full', 'owner'))('%s', async (name, look) => {
    await page.setViewportSize(SIZES.laptop)
    await look(sceneOn(page, house, { bare: false }))
    expect(await page.getByRole('alert').filter({ hasText: /\S/ }).count(), 'nothing went wrong').toBe(0)
    await accessible(page, `${name}, laptop`, { whole: true })
    await page.setViewportSize(SIZES.phone)
    await accessible(page, `${name}, phone`)
  })
})
