import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import type { bench } from '../browser.js'
import type { Scene } from './kinds.js'

type Kept = { readonly id: string; readonly name?: string; readonly state?: string }

type Kind = 'times' | 'thermometers' | 'runs' | 'orders' | 'rolls' | 'products' | 'lots' | 'bottles' | 'packages'

/** The address of something that was never kept. */
const NOBODY = '00000000-0000-7000-8000-000000000000'

/** A scene on a page; `bare` where nothing can be asked for, as nothing is kept or the server is away. */
export function sceneOn(page: Page, { open, printed }: ReturnType<typeof bench>, { bare }: { bare: boolean }): Scene {
  const kept = async (kind: Kind): Promise<readonly Kept[]> => {
    const asked =
      kind === 'rolls' || kind === 'lots'
        ? page.request.post(`/api/${kind}/find`, { data: {} })
        : page.request.get(kind === 'bottles' || kind === 'packages' ? '/api/shelf' : `/api/${kind}`)
    const answer = (await (await asked).json()) as Record<typeof kind, Kept[]>
    return answer[kind]
  }
  const first = async (kind: Kind, state?: string) =>
    bare
      ? NOBODY
      : ((await kept(kind)).find((one) => state === undefined || one.state === state)?.id ??
        expect.fail(`The bench has no ${kind}.`))
  const filled = async (path: string) => {
    let whole = path
    for (const [word, kind, state] of [
      [':time', 'times', undefined],
      [':thermometer', 'thermometers', undefined],
      [':run', 'runs', 'planned'],
      [':ended', 'runs', 'finished'],
      [':roll', 'rolls', 'taken-in'],
      [':order', 'orders', undefined],
      [':product', 'products', undefined],
      [':lot', 'lots', undefined],
      [':bottle', 'bottles', undefined],
      [':package', 'packages', undefined],
    ] as const)
      if (new RegExp(`${word}\\b`).test(whole))
        whole = whole.replace(new RegExp(`${word}\\b`), await first(kind, state))
    return whole
  }
  return {
    page,
    open,
    go: async (path) => {
      await page.context().setOffline(false)
      await page.goto(await filled(path))
      await page.getByRole('heading', { level: 1 }).or(page.getByRole('alert')).first().waitFor()
      const waiting = page.getByText(/^(Reading the bench|Opening the page) …$/)
      await expect.poll(() => waiting.count(), { timeout: 20_000 }).toBe(0)
    },
    thermometers: async () => (await kept('thermometers')).map(({ name = '' }) => name),
    code: () => /[?&]code=([A-Z0-9-]+)/.exec(printed())?.[1] ?? expect.fail('No code was printed at the start.'),
  }
}
