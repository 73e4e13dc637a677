import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

const GROUNDS = ['light', 'dark'] as const

/** No serious or critical finding, on the light and on the dim ground. */
export async function accessible(page: Page, state: string): Promise<void> {
  for (const colorScheme of GROUNDS) {
    await page.emulateMedia({ colorScheme })
    const axe = new AxeBuilder({ page }).setLegacyMode(true)
    // What does not depend on colour was looked at on the first ground.
    if (colorScheme === 'dark') axe.withRules(['color-contrast', 'link-in-text-block'])
    const { violations, passes } = await axe.analyze()
    expect(passes.length, `${state}: axe looked at something`).toBeGreaterThan(0)
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')
    const said = grave.map(({ id, help, nodes }) => `${id}: ${help} (${nodes.map(({ html }) => html).join(' ')})`)
    expect(said, `${state}, ${colorScheme}`).toEqual([])
  }
}
