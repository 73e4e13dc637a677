import { say, type Writer } from '../../../../words/index.js'
import type { ContainerStatement } from '../../../shared/api/index.js'

type Package = Extract<ContainerStatement, { kind: 'package' }>

/** `14.50 EUR` */
export const writePrice = ({ minor, currency }: NonNullable<Package['price']>): string =>
  `${(minor / 100).toFixed(2)}\u202f${currency}`

/** `14.50 EUR`, `14,5 eur`; null for what is no price. */
export function readPrice(text: string): Package['price'] {
  const found = /^(\d{1,6})(?:[.,](\d{1,2}))?\s*([A-Za-z]{3})$/.exec(text.trim())
  if (found === null) return null
  const [, whole = '0', part = '', currency = ''] = found
  return { minor: Number(whole) * 100 + Number(part.padEnd(2, '0')), currency: currency.toUpperCase() }
}

/** Its dates and its price, in a line. */
export const packageFacts = ({ use_by, opened, price }: Package, writer: Writer): string =>
  say('bottle.package', { useBy: use_by, opened, price: price === null ? null : writePrice(price) }, writer)
