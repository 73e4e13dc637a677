import type { Result } from '../../kernel/index.js'
import type { MixAsked, MixSheet } from './definition.js'
import { liquidSheet } from './liquid.js'
import { packetSheet } from './packet.js'
import { weighedSheet } from './weighed.js'

/**
 * A numbered sheet for a mix: by weight where the product has a formula, by whole packets where it is a powder, else by
 * volume. What cannot be begun so, or is doubtful, comes first. Volumes as its sciences take them (10 mL or 1 mL to
 * 100 L); outside, refused. Example: 1 + 4 in 1000 mL is 750 mL of water, 200 mL of concentrate, topped up.
 */
export function mixSheet(asked: MixAsked): Result<MixSheet> {
  const { formula, form } = asked.product
  if (formula !== null) return weighedSheet(asked, formula)
  return form === 'powder' ? packetSheet(asked) : liquidSheet(asked)
}
