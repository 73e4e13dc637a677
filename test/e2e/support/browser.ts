import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll } from 'vitest'
import { findChromium } from '../../../scripts/chromium.mjs'
import { type RunningHouse, startHouse } from './house.js'

export const SIZES = { phone: { width: 390, height: 844 }, laptop: { width: 1280, height: 800 } } as const
export type Size = keyof typeof SIZES

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
]

/** How long a page has to show what it should. */
const PATIENCE_MS = 30_000

/** One server and one browser for a test file; a fresh window for each page asked for. */
export function bench(environment: Record<string, string> = {}) {
  let house: RunningHouse
  let browser: Browser
  const windows: BrowserContext[] = []
  beforeAll(async () => {
    const executablePath = findChromium()
    if (executablePath === undefined)
      throw new Error('No Chromium was found. Install one, or set CHROMIUM_PATH to its program.')
    ;[house, browser] = await Promise.all([startHouse(environment), chromium.launch({ executablePath, args: FLAGS })])
  })
  afterEach(async () => {
    await Promise.all(windows.splice(0).map((window) => window.close()))
  })
  afterAll(async () => {
    await browser?.close()
    await house?.stop()
  })
  /** A new window of its own: nothing is shared with the others but the server. It closes after the test unless kept. */
  const open = async (path: string, size: Size = 'laptop', { kept = false } = {}): Promise<Page> => {
    const window = await browser.newContext({ viewport: SIZES[size], baseURL: house.address, reducedMotion: 'reduce' })
    window.setDefaultTimeout(PATIENCE_MS)
    if (!kept) windows.push(window)
    const page = await window.newPage()
    await page.goto(path)
    return page
  }
  return { open, address: () => house.address, printed: () => house.printed() }
}
