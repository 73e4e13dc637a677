import type { Instant } from '../../kernel/index.js'
import type { OrderStatement } from '../../wire/index.js'
import type { StatementsPort } from '../statements.js'

export interface OrderLink {
  readonly id: string
  readonly orderId: string
  readonly tokenHash: string
  readonly madeAt: Instant
  readonly expiresAt: Instant
  readonly revokedAt: Instant | null
}

export interface CountedOut {
  readonly orderId: string
  readonly count: number
  readonly at: Instant
  readonly by: string
}

export interface OrdersPort extends StatementsPort<OrderStatement> {
  /** Notes what was counted when an order was handed back; `there` when that was noted before. */
  countOut(counted: CountedOut): Promise<'noted' | 'there'>
  countsOut(orderIds: readonly string[]): Promise<CountedOut[]>
  addLink(link: OrderLink): Promise<void>
  links(orderIds: readonly string[]): Promise<OrderLink[]>
  link(id: string): Promise<OrderLink | null>
  linkByHash(tokenHash: string): Promise<OrderLink | null>
  revokeLink(id: string, at: Instant): Promise<void>
}
