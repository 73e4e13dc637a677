import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { goTo, headed, heading, plainSpaces, sees, useUnits } from './support/steps.js'

const run = promisify(execFile)
const { open, address } = bench()

/** The same sheet in both units; the film is another in each journey, so that none meets the other's. */
const SHEETS = {
  metric: (film: string) => `${film}   18C  20C  22C  24C\nEI 400  11½  9½  8  6¾\nEI 1600  -  14½  12¼  1o`,
  us: (film: string) => `${film}   64F  68F  72F  76F\nEI 400  11½  9½  8  6¾\nEI 1600  -  14½  12¼  1o`,
}
const ASKED = {
  metric: { typed: '70.9F', readAs: /read as .*21\.6\s°C/, own: '20', reads: '21,2', truth: '20 C' },
  us: { typed: '21.6C', readAs: /read as .*70\.9\s°F/, own: '68', reads: '70.2', truth: '68F' },
}

for (const units of ['metric', 'us'] as const)
  for (const size of ['phone', 'laptop'] as const)
    describe(`on a ${size}, in ${units} units`, () => {
      it('a table becomes a time, a checked thermometer corrects it, and the card is printed', async () => {
        const film = `Harrow ${units} ${size}`
        const page = await open('/', size)
        await useUnits(page, units)
        await pasteTable(page, film, units)
        await askTemperature(page, film, units)
        await checkThermometer(page, `Stem ${units} ${size}`, units)
        await nameThermometer(page, film, `Stem ${units} ${size}`, units)
        await printCard(page, film, size)
      })
    })

async function pasteTable(page: Page, film: string, units: 'metric' | 'us') {
  await goTo(page, 'Times')
  await page.getByRole('link', { name: 'Paste a table' }).click()
  await headed(page, 'Paste a table')
  await page.getByLabel('The table as text').fill(SHEETS[units](film))
  await sees(page, /“1o” at .* is not a time/)
  await page.getByRole('textbox', { name: 'Developer' }).fill('ascorbate')
  await page.getByRole('button', { name: 'Keep six times, leave “1o” out' }).click()
  await sees(page, 'Six times kept in two records.')
}

async function askTemperature(page: Page, film: string, units: 'metric' | 'us') {
  await page.getByRole('link', { name: new RegExp(`${film} at 400 in ascorbate`) }).click()
  const temperature = page.getByRole('textbox', { name: 'Temperature of the developer' })
  await temperature.fill(ASKED[units].own)
  await headed(page, 'Develop 9:30 as the sheet says')
  await temperature.fill(ASKED[units].typed)
  await sees(page, ASKED[units].readAs)
  await headed(page, /^Develop 8:\d\d in place of 9:30 at/)
  await page.waitForURL(/\?at=21\.6/)
  expect(await answered(page)).toBe(`${await heading(page)}.`)
}

/** What the interface answers to the question that stands in the page's address. */
async function answered(page: Page): Promise<string> {
  const { pathname, searchParams } = new URL(page.url())
  const asked = new URLSearchParams({ at_c: searchParams.get('at') ?? '' })
  const thermometer = searchParams.get('thermometer')
  if (thermometer !== null) asked.set('thermometer_id', thermometer)
  const response = await page.request.get(`${address()}/api${pathname}/answer?${asked}`)
  return plainSpaces(((await response.json()) as { sentence: string }).sentence)
}

async function checkThermometer(page: Page, name: string, units: 'metric' | 'us') {
  await goTo(page, 'Shelf')
  await page.getByRole('link', { name: 'Add a thermometer' }).click()
  await page.getByRole('textbox', { name: 'Name' }).fill(name)
  await page.getByRole('textbox', { name: 'Its scale begins at' }).fill(units === 'us' ? '30' : '-1')
  await page.getByRole('textbox', { name: 'Its scale ends at' }).fill(units === 'us' ? '120F' : '50')
  await page.getByRole('button', { name: 'Keep this thermometer' }).click()
  await headed(page, name)
  await page.getByRole('radio', { name: 'Boiling water' }).check()
  await sees(page, /Boiling water needs a thermometer that reads past/)
  await page.getByRole('radio', { name: 'A trusted thermometer beside it' }).check()
  await page.getByRole('textbox', { name: 'It reads' }).fill(ASKED[units].reads)
  await page.getByRole('textbox', { name: 'The trusted one reads' }).fill(ASKED[units].truth)
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await sees(page, `The check of ${name} is kept.`)
  await sees(page, /high at/)
}

async function nameThermometer(page: Page, film: string, name: string, units: 'metric' | 'us') {
  await goTo(page, 'Times')
  await page.getByRole('link', { name: new RegExp(`${film} at 400 in ascorbate`) }).click()
  await page.getByRole('textbox', { name: 'Temperature of the developer' }).fill(ASKED[units].typed)
  await headed(page, /^Develop 8:\d\d in place of/)
  const uncorrected = (await heading(page)).split(' ')[1]
  await page.getByLabel('Read with').selectOption({ label: name })
  await sees(page, `Taken at its word the time would have been ${uncorrected}`)
  await page.waitForURL(({ searchParams }) => searchParams.has('at') && searchParams.has('thermometer'))
  expect((await heading(page)).split(' ')[1]).not.toBe(uncorrected)
  expect(await answered(page)).toBe(`${await heading(page)}.`)
}

async function printCard(page: Page, film: string, size: Size) {
  const link = page.getByRole('link', { name: 'Print as a card' })
  const response = await page.request.get(new URL((await link.getAttribute('href')) ?? '', address()).href)
  expect(response.status()).toBe(200)
  const folder = mkdtempSync(join(tmpdir(), 'wetside-card-'))
  try {
    const file = join(folder, 'card.pdf')
    writeFileSync(file, await response.body())
    const [text, info] = await Promise.all([run('pdftotext', ['-layout', file, '-']), run('pdfinfo', [file])])
    const printed = plainSpaces(text.stdout)
    const [, time = ''] = (await heading(page)).split(' ')
    expect(printed, `the card on a ${size}`).toContain(film)
    expect(printed).toContain(`Develop ${time}`)
    // The sheet's own times stand in the small table.
    for (const own of ['11:30', '9:30', '8:00', '6:45']) expect(printed).toContain(own)
    expect(info.stdout).toMatch(/Tagged:\s+yes/)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
