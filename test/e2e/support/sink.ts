import type { Locator, Page } from 'playwright-core'
import { expect } from 'vitest'
import { plainSpaces } from './steps.js'

/**
 * A clock for windows that can be sped: the pages' own through the browser, the server's in what it answers about its
 * clock. All windows of a test go with the same one.
 */
export class SinkClock {
  #ahead = 0
  readonly #pages: Page[] = []

  /** Before anything else happens in the window. */
  async wind(page: Page): Promise<void> {
    this.#pages.push(page)
    await page.clock.install()
    await page.route('**/api/health', async (route) => {
      const answer = (await (await route.fetch()).json()) as { now: string }
      await route.fulfill({ json: { ...answer, now: new Date(Date.parse(answer.now) + this.#ahead).toISOString() } })
    })
    if (this.#ahead > 0) await page.clock.fastForward(this.#ahead)
  }

  /** So many seconds go by in every window. */
  async pass(seconds: number): Promise<void> {
    this.#ahead += seconds * 1000
    for (const page of this.#pages) await page.clock.fastForward(seconds * 1000)
  }
}

/** Longer than a hold takes to count. */
const HELD_MS = 650

/** Holds a control as a wet finger does. */
export async function hold(where: Page | Locator, name: string | RegExp): Promise<void> {
  const control = where.getByRole('button', { name }).first()
  const page = control.page()
  await control.scrollIntoViewIfNeeded()
  const box = (await control.boundingBox()) ?? expect.fail(`${name} is not to be seen.`)
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.waitForTimeout(HELD_MS)
  await page.mouse.up()
}

/** Seconds of the count with this name: `3:06` is 186. */
export async function count(page: Page, name: string | RegExp): Promise<number> {
  const [minutes = '', seconds = ''] = plainSpaces((await page.getByRole('timer', { name }).textContent()) ?? '').split(
    ':',
  )
  return Number(minutes) * 60 + Number(seconds)
}

/** The time of day at which the developer is to be poured out, in seconds of the day. */
export async function pourOut(page: Page): Promise<number> {
  const words = (await page.getByText(/^pour out \d\d:\d\d:\d\d$/).textContent()) ?? ''
  const [hours = 0, minutes = 0, seconds = 0] = (/(\d\d):(\d\d):(\d\d)/.exec(words) ?? []).slice(1).map(Number)
  return hours * 3600 + minutes * 60 + seconds
}

/** Size in px of the smallest text that is to be seen, and of the two counts. */
export const textSizes = (page: Page) =>
  page.evaluate(() => {
    const sizes: number[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const around = node.parentElement
      const shown =
        around?.checkVisibility({ visibilityProperty: true }) && (around.getBoundingClientRect().width ?? 0) > 1
      const isWords = around !== null && !['SCRIPT', 'STYLE', 'TITLE', 'title', 'desc'].includes(around.tagName)
      if (shown && isWords && (node.textContent ?? '').trim() !== '')
        sizes.push(Number.parseFloat(getComputedStyle(around).fontSize))
    }
    return { least: Math.min(...sizes), texts: sizes.length }
  })

/** Size in px of a count. */
export const countSize = (page: Page, name: string | RegExp) =>
  page.getByRole('timer', { name }).evaluate((count) => Number.parseFloat(getComputedStyle(count).fontSize))
