import { expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { sees } from './support/steps.js'
import { plannedWithWarmth } from './support/warmth.js'

const { open } = bench()

it.each<Size>(['phone', 'laptop'])(
  'thermometer, room, tank and taps are counted before the pour on a %s',
  { timeout: 60_000 },
  async (size) => {
    const page = await open('/shelf/thermometers/new', size)
    await plannedWithWarmth(page, `Spirit of the ${size}`, `Mere ${size}`)
    // 20.5 on a thermometer that shows 0.5 too much is 20.0.
    await sees(page, /shows 0\.5\s°C too much; that is counted\./)
    expect(
      await page
        .getByRole('status')
        .getByText(/^20\.5\s°C$/)
        .count(),
    ).toBe(1)
    await sees(page, /The room gives 0\.\d\s°C on the way; that is counted\.$/)
    // 14.5 °C from the tap and 38 °C: (20 − 14.5) / (38 − 14.5) of a litre is hot.
    await sees(page, /^Wash, for each litre: 234\smL at 38\.0\s°C and 766\smL from the tap\.$/)
    await page.getByRole('button', { name: 'Hot tap a degree more' }).click()
    await sees(page, /^Wash, for each litre: 22[45]\smL at 39\.0\s°C/)
  },
)
