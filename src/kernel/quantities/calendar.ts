/** Seasons in the order of ISO 8601-2, where 21 is spring. */
export const SEASONS = ['spring', 'summer', 'autumn', 'winter'] as const
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

/** The number of a season by its word, `fall` too; undefined for any other word. */
export function seasonOf(word: string): number | undefined {
  const plain = word.toLowerCase()
  const place = SEASONS.findIndex((season) => season === (plain === 'fall' ? 'autumn' : plain))
  return place < 0 ? undefined : 21 + place
}

/** The number of a month by its name or the first three letters of it or more: `sept` is 9. */
export function monthOf(word: string): number | undefined {
  if (word.length < 3) return undefined
  const place = MONTHS.findIndex((month) => month.toLowerCase().startsWith(word.toLowerCase()))
  return place < 0 ? undefined : place + 1
}

export const monthName = (month: number): string => MONTHS[month - 1] ?? ''

/** Days of a month in the Gregorian calendar; 0 for a month there is not. */
export function daysOfMonth(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28
  if (month < 1 || month > 12) return 0
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}
