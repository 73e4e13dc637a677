import { headed, sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

const restoring: Look = async ({ page, go }) => {
  await go('/house')
  await page
    .getByLabel('Put a backup back')
    .setInputFiles({ name: 'x.ndjson', mimeType: 'text/plain', buffer: Buffer.from('{}') })
  await page.getByRole('dialog').waitFor()
}

const pairingCode: Look = async ({ page, go }) => {
  await go('/house')
  await page.getByRole('button', { name: 'Pair a phone' }).click()
  await page.getByRole('img', { name: 'QR code with the address below' }).waitFor()
}

const house: Row = {
  empty: { 'as it comes': at('/house', 'Save a backup') },
  full: { 'as it comes': at('/house', 'Save a backup') },
  away: { 'as it comes': at('/house', NO_ANSWER) },
  trouble: {
    'settings that cannot be': async ({ page, go }) => {
      await go('/house')
      await page.getByRole('textbox', { name: 'Name of the bench' }).fill('')
      await page.getByLabel('Time zone').fill('Nowhere/At all')
      await sees(page, /Nowhere\/At all/)
    },
    'a backup refused': async (scene) => {
      await restoring(scene)
      await scene.page.getByRole('button', { name: 'Put it in place' }).click()
      await sees(scene.page, /This file is not a backup/)
    },
  },
  opened: {
    'the restore that asks': restoring,
    'the code for a phone': pairingCode,
    'the end of a pairing that asks': async (scene) => {
      const { page, open, go } = scene
      await pairingCode(scene)
      const { pathname, search } = new URL((await page.getByText(/\/pair\?code=/).textContent()) ?? '')
      const phone = await open(pathname + search, 'phone')
      await phone.getByRole('textbox', { name: 'Name of this device' }).fill('Sink phone')
      await phone.getByRole('button', { name: 'Pair' }).click()
      await headed(phone, 'Paired')
      await go('/house')
      await page.getByRole('button', { name: 'Remove Sink phone' }).click()
      await page.getByRole('dialog', { name: 'End the pairing of Sink phone?' }).waitFor()
    },
  },
}

const pairing =
  (code: string, answer: string | RegExp): Look =>
  async ({ page, go }) => {
    await go('/pair')
    await page.getByRole('textbox', { name: 'Name of this device' }).fill('Guest')
    await page.getByRole('textbox', { name: 'Code' }).fill(code)
    await page.getByRole('button', { name: 'Pair' }).click()
    await sees(page, answer)
  }

const pair: Row = {
  empty: { 'without a code': at('/pair', 'Pair this device') },
  full: { 'with the code of its address': at('/pair?code=ABCD-EFGH', 'Pair this device') },
  away: { 'sent in vain': pairing('ABCD-EFGH', NO_ANSWER) },
  trouble: {
    'a wrong code': pairing('WRONG-CODE', 'That code is not valid'),
    'nothing filled in': async ({ page, go }) => {
      await go('/pair')
      await page.getByRole('button', { name: 'Pair' }).click()
      await page.getByRole('textbox', { name: 'Code', description: /\S/ }).waitFor()
    },
  },
  opened: {
    paired: async ({ page, code, go }) => {
      await go(`/pair?code=${code()}`)
      await page.getByRole('textbox', { name: 'Name of this device' }).fill('Guest')
      await page.getByRole('button', { name: 'Pair' }).click()
      await headed(page, 'Paired')
    },
  },
}

/** The holder of a link is a stranger to the bench; what the server would say of film is said in its place. */
const standing =
  (states: readonly string[]): Look =>
  async ({ page, go }) => {
    const sentence = 'It is hanging up to dry.'
    const rolls = states.map((state, i) => ({ number: `2026-${String(i + 1).padStart(4, '0')}`, state, sentence }))
    const ready = states.every((state) => state !== 'hung')
    await page.route('**/api/order-links/**', (route) => route.fulfill({ json: { rolls, ready } }), { times: 1 })
    await go(LINK)
    await page.getByText('and nothing else').waitFor()
  }

const LINK = '/o/a-token-that-nobody-has-been-given'

const orderLink: Row = {
  empty: { 'an order without rolls': standing([]) },
  full: {
    'some under way': standing(['hung', 'sleeved', 'hung']),
    ready: standing(['sleeved', 'lost']),
    'handed back': standing(['handed-back']),
  },
  away: { 'as it comes': at(LINK, NO_ANSWER) },
  trouble: { 'a link that shows nothing': at(LINK, 'This link shows nothing') },
  opened: 'nothing opens and nothing is sent',
}

export const houseRows = { house, pair, 'order-link': orderLink }
