/**
 * Who may call. Loopback is the owner; a paired device works at the bench; an order link shows one order
 * and nothing else; anybody else is nobody.
 */
export const ROLES = ['owner', 'device', 'order-link', 'nobody'] as const
export type Role = (typeof ROLES)[number]
export const BENCH: readonly Role[] = ['owner', 'device']
export const OWNER: readonly Role[] = ['owner']
export const ANYBODY: readonly Role[] = [...ROLES]
