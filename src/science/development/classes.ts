import type { DeveloperClass, Origin } from './definition.js'

/** A ten-degree coefficient assumed for a class of developers, with its spread. */
export interface ClassDefault {
  /** Time ratio over ten degrees. */
  readonly value: number
  readonly low: number
  readonly high: number
  readonly origin: Origin
}

const assumed = (value: number, low: number, high: number): ClassDefault => ({ value, low, high, origin: 'assumption' })

/**
 * The ten-degree coefficient assumed for a developer whose sheet gives one point only, with its spread.
 * None was found in a source that states one per agent, so all are assumptions. The spread of `unknown`
 * covers both published whole tables (1.92 and 3.79). For p-aminophenol not even a remembered figure was
 * found: it is treated as unknown.
 */
export const DEVELOPER_CLASSES: Readonly<Record<DeveloperClass, ClassDefault>> = {
  unknown: assumed(2.4, 1.6, 3.8),
  metol: assumed(1.28, 1.25, 1.3),
  hydroquinone: assumed(2.5, 2.2, 2.8),
  'metol-hydroquinone': assumed(2.2, 1.9, 2.5),
  'phenidone-ascorbate': assumed(2.05, 1.9, 2.2),
  pyro: assumed(1.7, 1.5, 1.9),
  glycin: assumed(2.3, 2.0, 2.6),
  'p-aminophenol': assumed(2.4, 1.6, 3.8),
}
