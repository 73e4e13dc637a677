import type { Instant } from '../../kernel/index.js'
import type { OrderStatement, RollStatement } from '../../wire/index.js'
import type { PaperName } from '../setting/page.js'

/** A roll as paper names it. */
export interface PaperRoll extends Pick<RollStatement, 'film' | 'format' | 'frames' | 'sheets' | 'treatment'> {
  readonly number: string
  /** The number of its paired stickers; null for one's own film. */
  readonly twin: number | null
}

/** What a slip is printed from. */
export interface SlipInput {
  readonly bench: { readonly name: string; readonly zone: string }
  readonly order: Pick<OrderStatement, 'person' | 'counted_in' | 'deposit' | 'agreed_on_loss' | 'due'> & {
    readonly rolls: readonly PaperRoll[]
  }
  readonly handedOver: Instant
  /** The private link, where one was made for this slip. */
  readonly link: { readonly address: string; readonly expiresAt: Instant } | null
  readonly paper: PaperName
  readonly printedAt: Instant
}

/** What a sheet of paired stickers is printed from. */
export interface StickersInput {
  readonly rolls: readonly PaperRoll[]
  /** Where this bench is reached; the codes lead there. */
  readonly base: string
  readonly paper: PaperName
  /** Places of the first sheet that are used up. */
  readonly used: number
  readonly printedAt: Instant
}

/** What a roll's code holds: the page of that roll. */
export const rollAddress = (base: string, number: string): string => `${base}/r/${encodeURIComponent(number)}`

/** Where the holder of a private link reads how far the film is. */
export const linkAddress = (base: string, token: string): string => `${base}/o/${token}`
