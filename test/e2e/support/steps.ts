import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** Waits until the words stand on the page for people to see. */
export async function sees(page: Page, words: string | RegExp): Promise<void> {
  await page.getByText(words).first().waitFor()
}

/** The first heading of the page, once it says this. */
export async function headed(page: Page, words: string | RegExp): Promise<void> {
  await page.getByRole('heading', { level: 1, name: words }).waitFor()
}

/** By the rail or the tabs. */
export async function goTo(
  page: Page,
  section: 'Today' | 'Rolls' | 'Runs' | 'Shelf' | 'Times' | 'House',
): Promise<void> {
  await page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name: section }).click()
}

/** Chooses the units of the bench on the House page. */
export async function useUnits(page: Page, units: 'metric' | 'us'): Promise<void> {
  await goTo(page, 'House')
  await page.getByRole('radio', { name: units === 'us' ? /^US: °F/ : /^Metric/ }).check()
  await page.getByRole('radio', { name: units === 'us' ? 'US Letter' : 'A4' }).check()
  await page.getByRole('button', { name: 'Keep the settings' }).click()
  await sees(page, 'The settings are kept.')
}

/** Opens the demo bench from a bare Today. */
export async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click()
  await sees(page, 'This is the demo bench, all invented.')
}

export const removeDemo = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Remove it' }).click()
  await sees(page, 'The demo bench is gone; this is your own.')
}

/** A text with every kind of space as a plain one, for comparing with what is printed or answered elsewhere. */
export const plainSpaces = (text: string): string => text.replace(/\s+/gu, ' ').trim()

/** What the first heading says. */
export const heading = async (page: Page): Promise<string> =>
  plainSpaces((await page.getByRole('heading', { level: 1 }).textContent()) ?? '')

/** Presses Tab until the control of this name has the focus, as someone without a mouse does. */
export async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  for (let press = 0; press < 80; press++) {
    await page.keyboard.press('Tab')
    if (matches(await focusedName(page), name)) return
  }
  expect.fail(`Tab did not come to ${name}.`)
}

const matches = (text: string, name: string | RegExp) => (typeof name === 'string' ? text === name : name.test(text))

/** The name by which the focused control is announced. */
export async function focusedName(page: Page): Promise<string> {
  const name = await page.evaluate(() => {
    const focused = document.activeElement
    const labels = focused instanceof HTMLInputElement || focused instanceof HTMLTextAreaElement ? focused.labels : null
    return focused?.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? focused?.textContent ?? ''
  })
  return plainSpaces(name)
}
