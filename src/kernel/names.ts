/** A name as it is compared and looked for: capitals and blanks around it do not matter. */
export const nameKey = (text: string): string => text.trim().toLowerCase()

// People look names up: capitals and accents do not matter, and 100 comes before 1000.
const byEye = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/** The order in which people look names up; names that look alike in the order of their signs. */
export const compareNames = (a: string, b: string): number => byEye.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0)
