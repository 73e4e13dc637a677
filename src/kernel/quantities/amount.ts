/** A number as typed, with whatever follows it. */
export interface Amount {
  readonly value: number
  /** Set when a comma stands before exactly three digits: `1,500` may also be fifteen hundred. */
  readonly grouped?: number
  readonly rest: string
}

const SIGN = '(?<sign>[+-]?) ?'
const MIXED = '(?:(?<whole>\\d+) )?(?<over>\\d+) ?/ ?(?<under>\\d+)'
const VULGAR = '(?<before>\\d*) ?(?<vulgar>[¼½¾⅐-⅞])'
const DECIMAL = '(?<decimal>\\d*[.,]\\d+|\\d+)'
const AMOUNT = new RegExp(`^${SIGN}(?:${MIXED}|${VULGAR}|${DECIMAL}) ?(?<rest>.*)$`, 'u')

/**
 * Reads the number that a tidied text begins with: `20`, `20,5`, `.5`, `½`, `9½`, `9 1/2`, with or without a sign.
 * Undefined when there is none. Numbers with an exponent, two decimal marks or a name (Infinity) leave a rest that
 * no unit is called, so they are refused by whoever looks the unit up.
 */
export function readAmount(text: string): Amount | undefined {
  const groups = AMOUNT.exec(text)?.groups
  if (groups === undefined) return undefined
  const size = sizeOf(groups)
  if (size === undefined || !Number.isFinite(size)) return undefined
  const sign = groups.sign === '-' ? -1 : 1
  const thousands = /^[1-9]\d{0,2},\d{3}$/.test(groups.decimal ?? '')
  return {
    // Adding zero turns a typed −0 into plain zero.
    value: sign * size + 0,
    ...(thousands ? { grouped: sign * size * 1000 } : {}),
    rest: groups.rest ?? '',
  }
}

/** A number with nothing behind it; undefined when there is anything else. */
export function readNumber(text: string): number | undefined {
  const amount = readAmount(text)
  return amount?.rest === '' ? amount.value : undefined
}

function sizeOf(groups: Readonly<Record<string, string | undefined>>): number | undefined {
  if (groups.under !== undefined) return fraction(groups.whole, groups.over, groups.under)
  if (groups.vulgar !== undefined) {
    const [over, under] = groups.vulgar.normalize('NFKD').split('⁄')
    return fraction(groups.before, over, under)
  }
  return Number(groups.decimal?.replace(',', '.'))
}

function fraction(whole = '', over = '', under = ''): number | undefined {
  return Number(under) === 0 ? undefined : Number(whole) + Number(over) / Number(under)
}
