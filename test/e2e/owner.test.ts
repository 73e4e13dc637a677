import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { goTo, headed, sees } from './support/steps.js'

const { open } = bench()

it('the owner pairs a phone by its code and ends the pairing again', async () => {
  const owner = await open('/house')
  await owner.getByRole('button', { name: 'Pair a phone' }).click()
  await owner.getByRole('img', { name: 'QR code with the address below' }).waitFor()
  const address = (await owner.getByText(/\/pair\?code=/).textContent()) ?? ''
  const phone = await open(new URL(address).pathname + new URL(address).search, 'phone')
  await phone.getByRole('textbox', { name: 'Name of this device' }).fill('Anna’s phone')
  await phone.getByRole('button', { name: 'Pair' }).click()
  await headed(phone, 'Paired')
  await owner.getByRole('button', { name: 'Remove Anna’s phone' }).click()
  await owner.getByRole('dialog', { name: 'End the pairing of Anna’s phone?' }).waitFor()
  await owner.keyboard.press('Escape')
  await owner.getByRole('button', { name: 'Remove Anna’s phone' }).click()
  await owner.getByRole('button', { name: 'End the pairing' }).click()
  await sees(owner, 'Anna’s phone is no longer paired.')
})

it('a backup is saved, and put back only after asking', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-backup-'))
  try {
    const page = await open('/house')
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Save a backup' }).click(),
    ])
    const file = join(folder, 'saved.ndjson')
    await download.saveAs(file)
    await page.goto('/times/new')
    await page.getByLabel('Film', { exact: true }).fill('After the backup')
    await page.getByLabel('Developer', { exact: true }).fill('metol')
    await page.getByRole('textbox', { name: 'Temperature 1' }).fill('20')
    await page.getByRole('textbox', { name: 'Time 1' }).fill('7:30')
    await page.getByRole('button', { name: 'Keep this time' }).click()
    await headed(page, 'Develop 7:30 as the sheet says')
    await goTo(page, 'House')
    await page.getByLabel('Put a backup back').setInputFiles(file)
    await page.getByRole('button', { name: 'Leave everything as it is' }).click()
    await page.getByLabel('Put a backup back').setInputFiles(file)
    await page.getByRole('button', { name: 'Put it in place' }).click()
    await sees(page, /The backup is in place/)
    await goTo(page, 'Times')
    await sees(page, 'No time is kept yet.')
    expect(await page.getByRole('link', { name: /After the backup/ }).count()).toBe(0)
  } finally {
    rmSync(folder, { recursive: true })
  }
})

it('the dim ground stays on this device', async () => {
  const page = await open('/house')
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor)
  const light = await paper()
  await page.getByRole('radio', { name: /^Dim/ }).check()
  const dim = await paper()
  expect(dim).not.toBe(light)
  await page.reload()
  await headed(page, 'House')
  expect(await paper()).toBe(dim)
})
