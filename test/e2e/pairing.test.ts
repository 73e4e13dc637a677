import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { headed, sees } from './support/steps.js'

// Here the computer itself counts as a stranger, as a phone on the house network does.
const { open, printed } = bench({ LOOPBACK_OWNER: 'no', SHOW_QR: 'yes' })

it('a stranger is told how to pair, and a code works once', async () => {
  const stranger = await open('/times', 'phone')
  await headed(stranger, 'This device is not paired yet')
  await stranger.getByRole('link', { name: 'Type the code instead' }).click()
  await stranger.getByRole('textbox', { name: 'Name of this device' }).fill('Phone of a guest')
  await stranger.getByRole('textbox', { name: 'Code' }).fill('WRONG-CODE')
  await stranger.getByRole('button', { name: 'Pair' }).click()
  await sees(stranger, 'That code is not valid')

  const code = /[?&]code=([A-Z0-9-]+)/.exec(printed())?.[1] ?? expect.fail('No code was printed at the start.')
  const phone = await open(`/pair?code=${code}`, 'phone')
  await headed(phone, 'Pair this device')
  await phone.getByRole('textbox', { name: 'Name of this device' }).fill('Phone at the sink')
  await phone.getByRole('button', { name: 'Pair' }).click()
  await headed(phone, 'Paired')
  await phone.getByRole('link', { name: 'To the bench' }).click()
  await headed(phone, 'Today')
  await sees(phone, 'The bench is bare.')

  await stranger.getByRole('textbox', { name: 'Code' }).fill(code)
  await stranger.getByRole('button', { name: 'Pair' }).click()
  await sees(stranger, 'a code works once and for ten minutes')
})
