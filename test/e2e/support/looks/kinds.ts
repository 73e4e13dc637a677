import type { Page } from 'playwright-core'
import type { Size } from '../browser.js'

/**
 * What a page can be met in: nothing kept, much kept, the server away, something that cannot be right,
 * and what an act brings up (a dialog, a list, a result, a way back).
 */
export const STATES = ['empty', 'full', 'away', 'trouble', 'opened'] as const
export type State = (typeof STATES)[number]

/** Where a look is taken. */
export interface Scene {
  readonly page: Page
  /** A window of its own, for another person or device. */
  readonly open: (path: string, size?: Size) => Promise<Page>
  /**
   * Goes to a path, `:time`, `:thermometer`, `:run` (planned), `:ended`, `:roll` (waiting), `:order`, `:product`, `:lot`, `:bottle` and
   * `:package` standing for one that is kept, and waits for the page's heading.
   */
  readonly go: (path: string) => Promise<void>
  /** The names of the thermometers on the shelf. */
  readonly thermometers: () => Promise<readonly string[]>
  /** The code that the server printed at its start. */
  readonly code: () => string
}

/** Brings the page into a state. */
export type Look = (scene: Scene) => Promise<void>

/** The looks of a state by name; a sentence where the state does not exist says why. */
export type Row = Readonly<Record<State, Readonly<Record<string, Look>> | string>>

/** The page as it comes. */
export const at =
  (path: string, words?: string | RegExp): Look =>
  async ({ page, go }) => {
    await go(path)
    if (words !== undefined) await page.getByText(words).first().waitFor()
  }

export const NO_ANSWER = 'The computer that runs the bench does not answer.'
