import { type Problem, problem } from '../problems/problem.js'

/** Longer than any quantity that a person writes; what is longer is refused unread. */
export const MOST_CHARACTERS = 40

/** How a field is spoken of in sentences: `a volume`, and an example that it would read. */
export interface Naming {
  readonly what: string
  readonly example: string
}

/** Signs that keyboards and pasted texts put for the plain ones. */
const PLAIN_SIGNS: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '‐': '-',
  º: '°',
  '˚': '°',
  '⁄': '/',
  '∶': ':',
  '：': ':',
  '＋': '+',
  '％': '%',
  '，': ',',
}

/**
 * Makes a typed text ready to be read: one space for every run of spaces, control and invisible characters,
 * none at the ends, plain signs for their look-alikes. Refuses what is empty, too long or written with the
 * digits of another script, because a look-alike digit must not be half understood.
 */
export function tidy(text: string, { what, example }: Naming): { text: string } | { problem: Problem } {
  const spaced = text.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim()
  if (spaced === '') return { problem: problem('quantity.empty', { what, example }) }
  if (spaced.length > MOST_CHARACTERS)
    return { problem: problem('quantity.too-long', { length: spaced.length, most: MOST_CHARACTERS, what, example }) }
  if (/(?![0-9])\p{Nd}/u.test(spaced)) return { problem: problem('quantity.digits', { text: spaced, what, example }) }
  return { text: spaced.replace(/[−–‐º˚⁄∶：＋％，]/g, (sign) => PLAIN_SIGNS[sign] ?? sign) }
}

/**
 * A unit as its table spells it: lower case, no full stops or spaces, full-width and squared letters plain:
 * `Fl. Oz.` → `floz`, `cm³` → `cm3`, `℃` → `°c`.
 */
export const plainUnit = (written: string): string =>
  written
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(?<=\p{L})\./gu, '')
    .replace(/ /g, '')
