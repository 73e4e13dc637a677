const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
]

/** A small count as a word, as it stands in running text: `four times`; from thirteen up a figure. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${NUMBERS[count] ?? count} ${count === 1 ? one : many}`

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A name inside a sentence; one that is an abbreviation or a letter keeps its capitals. */
export const uncapital = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name
