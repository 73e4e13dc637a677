import { randomUUID } from 'node:crypto'
import type { Page } from 'playwright-core'

/** What another device sends to the bench, from this page. */
export const send = <T>(page: Page, path: string, body: unknown): Promise<T> =>
  page.evaluate(
    async ([to, text, key]) => {
      const headers = { 'content-type': 'application/json', 'idempotency-key': key as string }
      const answer = await fetch(to as string, { method: 'POST', headers, body: text as string })
      if (!answer.ok) throw new Error(await answer.text())
      return answer.json()
    },
    [path, JSON.stringify(body), randomUUID()],
  )

type Taken = { readonly rolls: readonly { readonly id: string; readonly number: string }[] }

/** Takes in rolls of black-and-white film, each with what else is said of it. */
export const takeIn = async (page: Page, ...statements: readonly object[]): Promise<Taken['rolls']> => {
  const plain = { film: 'Tarn 100', process: 'black-and-white', format: '135', exposure_index: 100 }
  const rolls = statements.map((statement) => ({ statement: { ...plain, ...statement } }))
  return (await send<Taken>(page, '/api/rolls', { rolls })).rolls
}

/** A kept time of a film at an index: so many seconds at 20 °C. */
export const timeOf = (film: string, exposure_index: number, time_s: number) => ({
  film,
  exposure_index,
  developer: 'ascorbate',
  dilution_parts: [1, 3],
  agitation: '',
  kind: 'ordinary',
  law: 'exponential',
  developer_class: 'unknown',
  coefficient: 2.5,
  usable: null,
  window: null,
  points: [{ temperature_c: 20, time_s }],
  source_words: 'an invented sheet',
  source_origin: 'sheet',
  note: '',
})
