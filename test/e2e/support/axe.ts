import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

const GROUNDS = ['light', 'dark'] as const

/**
 * No serious or critical finding, on the light and on the dim ground.
 * `whole` looks on the dim ground at everything once more; else only at what depends on colour, as the rest was
 * looked at on the light ground.
 */
export async function accessible(page: Page, state: string, { whole = false } = {}): Promise<void> {
  for (const colorScheme of GROUNDS) {
    await page.emulateMedia({ colorScheme })
    // Details of what passed are not asked for: they take as long as the findings.
    const axe = (await builder(page)).setLegacyMode(true).options({ resultTypes: ['violations'] })
    if (colorScheme === 'dark' && !whole) axe.withRules(['color-contrast', 'link-in-text-block'])
    const { violations, passes } = await axe.analyze()
    expect(passes.length, `${state}: axe looked at something`).toBeGreaterThan(0)
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')
    const said = grave.map(({ id, help, nodes }) => `${id}: ${help} (${nodes.map(({ html }) => html).join(' ')})`)
    expect(said, `${state}, ${colorScheme}`).toEqual([])
  }
}

/** Axe is half a megabyte, so a document that has it already is not given it again. */
async function builder(page: Page): Promise<AxeBuilder> {
  const here = await page.evaluate(() => 'axe' in window)
  return here ? new AxeBuilder({ page, axeSource: '/* here already */' }) : new AxeBuilder({ page })
}
