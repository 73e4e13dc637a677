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

  /** Seconds go by in this window, and all that is due in them happens at its moment. */
  async run(page: Page, seconds: number): Promise<void> {
    this.#ahead += seconds * 1000
    for (const each of this.#pages)
      await (each === page ? each.clock.runFor(seconds * 1000) : each.clock.fastForward(seconds * 1000))
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

/** Size in px of the smallest text that is to be seen, that of pictures as large as they are drawn. */
export const textSizes = (page: Page) =>
  page.evaluate(() => {
    const sizes: number[] = []
    const drawn = (around: Element) => (around instanceof SVGGraphicsElement ? (around.getScreenCTM()?.d ?? 0) : 1)
    let inPictures = 0
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const around = node.parentElement
      const shown =
        around?.checkVisibility({ visibilityProperty: true }) && (around.getBoundingClientRect().width ?? 0) > 1
      const isWords = around !== null && !['SCRIPT', 'STYLE', 'TITLE', 'title', 'desc'].includes(around.tagName)
      if (!shown || !isWords || (node.textContent ?? '').trim() === '') continue
      if (around instanceof SVGElement) inPictures++
      sizes.push(Number.parseFloat(getComputedStyle(around).fontSize) * drawn(around))
    }
    // A picture is as wide as its column but for a fraction of a pixel: to the hundredth.
    return { least: Math.round(Math.min(...sizes) * 100) / 100, texts: sizes.length, inPictures }
  })

/** Size in px of a count. */
export const countSize = (page: Page, name: string | RegExp) =>
  page.getByRole('timer', { name }).evaluate((count) => Number.parseFloat(getComputedStyle(count).fontSize))

/** Controls and words of the page that lie over one another, in pairs; those inside one another do not count. */
export const overlaps = (page: Page) =>
  page.evaluate(() => {
    type Part = { words: string; around: Element; box: DOMRect }
    const parts: Part[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const controlOf = (element: Element): Element => {
      for (let at: Element | null = element; at !== null; at = at.parentElement) if (at.tagName === 'BUTTON') return at
      return element
    }
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const around = node.parentElement
      const inPicture = around instanceof SVGElement || ['SCRIPT', 'STYLE'].includes(around?.tagName ?? 'SCRIPT')
      if (around === null || inPicture || (node.textContent ?? '').trim() === '' || !around.checkVisibility()) continue
      const control = controlOf(around)
      const range = document.createRange()
      range.selectNodeContents(node)
      // Letters stand in a box that is taller than their line; the line is what counts.
      const [line, own] = [range.getBoundingClientRect(), control.getBoundingClientRect()]
      const top = Math.max(line.top, own.top)
      const words = new DOMRect(line.left, top, line.width, Math.min(line.bottom, own.bottom) - top)
      const box = control === around ? words : own
      if (box.width > 1) parts.push({ words: (node.textContent ?? '').trim(), around: control, box })
    }
    const over = (a: DOMRect, b: DOMRect) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 6
    return parts.flatMap((one, i) =>
      parts
        .slice(i + 1)
        .filter(
          ({ around, box }) =>
            around !== one.around && !around.contains(one.around) && !one.around.contains(around) && over(box, one.box),
        )
        .map(({ words }) => `${one.words} | ${words}`),
    )
  })

/** The sizes at which the screen of a tank is measured. */
const MEASURED = [
  [390, 844],
  [360, 640],
  [1280, 800],
] as const

/** Before the pour as well no text is small, nor in the picture of the plan, at each size. */
export async function readableBefore(page: Page): Promise<void> {
  const before = page.viewportSize()
  for (const [width, height] of MEASURED) {
    const where = `before the pour, ${width} by ${height}`
    await page.setViewportSize({ width, height })
    // The picture is drawn anew for its new width.
    await expect.poll(async () => (await textSizes(page)).least, { message: where }).toBeGreaterThanOrEqual(24)
    expect((await textSizes(page)).inPictures, where).toBeGreaterThan(6)
    expect(await overlaps(page), where).toEqual([])
  }
  if (before !== null) await page.setViewportSize(before)
}

/** What a wet hand and an old eye need, at each size: large words, larger counts, nothing over anything, all in view. */
export async function readable(page: Page, state: string): Promise<void> {
  const before = page.viewportSize()
  for (const [width, height] of MEASURED) {
    const where = `${state}, ${width} by ${height}`
    await page.setViewportSize({ width, height })
    await expect.poll(() => overlaps(page), { message: where }).toEqual([])
    const sizes = await textSizes(page)
    expect(sizes.least, where).toBeGreaterThanOrEqual(24)
    expect(sizes.texts, where).toBeGreaterThan(12)
    for (const name of [/time left$/, /^(Pour|Turn|Change|Read)/]) {
      expect(await countSize(page, name), where).toBeGreaterThanOrEqual(56)
      const box = await page.getByRole('timer', { name }).boundingBox()
      expect((box?.y ?? height) + (box?.height ?? 0), `${where}: ${name} in view`).toBeLessThanOrEqual(height)
    }
    const control = await page
      .getByRole('button', { name: /^Hold: / })
      .first()
      .boundingBox()
    expect((control?.y ?? height) + (control?.height ?? 0), `${where}: the hold in view`).toBeLessThanOrEqual(height)
  }
  if (before !== null) await page.setViewportSize(before)
}
