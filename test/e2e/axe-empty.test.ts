import type { Page } from 'playwright-core'
import { beforeAll, describe, it } from 'vitest'
import { routeTable } from '../../src/web/app/route-table.js'
import { accessible } from './support/axe.js'
import { bench } from './support/browser.js'
import { sees } from './support/steps.js'

const { open } = bench()
/** Pages that need nothing from the server to be filled in. */
const STANDS_ALONE = new Set(['pair', 'time-new', 'thermometer-new', 'times-paste'])
const NOBODY = '00000000-0000-7000-8000-000000000000'

/** The page as someone meets it once it has said what it has to say. */
async function settled(page: Page) {
  await page.getByRole('heading', { level: 1 }).or(page.getByRole('alert')).first().waitFor()
  await page.getByText(/^(Reading the bench|Opening the page) …$/).waitFor({ state: 'detached' })
}

const pages = routeTable.map(({ page, path }) => [page, path.replace(':id', NOBODY)] as const)

describe('every page before anything is kept, on a phone', () => {
  let page: Page
  beforeAll(async () => {
    page = await open('/', 'phone', { kept: true })
  })
  it.each(pages)('%s', async (name, path) => {
    await page.goto(path)
    await settled(page)
    await accessible(page, `${name}, empty`)
  })
})

describe('every page while the server does not answer, on a laptop', () => {
  let page: Page
  beforeAll(async () => {
    page = await open('/pair', 'laptop', { kept: true })
    await page.route('**/api/**', (route) => route.abort())
  })
  it.each(pages)('%s', async (name, path) => {
    await page.goto(path)
    if (!STANDS_ALONE.has(name)) await sees(page, 'The computer that runs the bench does not answer.')
    await settled(page)
    await accessible(page, `${name}, no answer`)
  })
})
