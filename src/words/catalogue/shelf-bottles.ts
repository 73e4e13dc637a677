import type { Grams, Millilitres } from '../../kernel/index.js'
import { writePartialDay } from '../../kernel/index.js'
import { capital, counted } from '../counted.js'
import type { Writer } from '../writer.js'

type By = 'volume' | 'count' | 'silver' | 'tests' | 'acid' | 'age'
type Limit = {
  readonly by: By
  readonly rolls: number | null
  readonly days: number | null
  readonly part: number
}
type Unit = 'ml' | 'g'
type Held = { readonly held: number; readonly unit: Unit }

const amount = ({ held, unit }: Held, w: Writer): string =>
  unit === 'ml' ? w.volume(held as Millilitres) : w.mass(held as Grams)
const whole = (value: number): number => Math.floor(value + 1e-6)
const tenths = (value: number): string => String(Number(value.toFixed(1)))
const rolls = (value: number): string => figured(whole(value), 'roll')
const days = (value: number): string => figured(whole(value), 'day')
/** Beside bars and figures a count is a figure too. */
const figured = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

const THEN: Readonly<Record<By, string>> = {
  volume: 'volume',
  count: 'the count',
  silver: 'silver',
  tests: 'the clearing tests',
  acid: 'its acid',
  age: 'age',
}
/** What is said where a limit is met. */
const ENDED: Readonly<Record<By, string>> = {
  volume: 'too little is left to fill a tank',
  count: 'its count of rolls is used',
  silver: 'it holds as much silver as it may',
  tests: 'clearing takes twice as long as when fresh',
  acid: 'its acid is used up',
  age: 'it is too old',
}

function ends({ by, rolls: left, part }: Limit, halfFull: boolean): string {
  const few = rolls(left ?? 0)
  switch (by) {
    case 'count':
      return `${whole(left ?? 0)} of ${part > 0 ? whole((left ?? 0) / part) : 0} rolls left`
    case 'silver':
      return `silver ends it first, after ${few}`
    case 'tests':
      return `by its clearing tests ${few} left`
    case 'acid':
      return `its acid carries ${few} more`
    case 'volume':
      return `its volume fills for ${few} more`
    case 'age':
      return halfFull ? 'air in the bottle ends it first' : 'its age ends it first'
  }
}

/** Sentences of the shelf: bottles, packages, jugs, and what is left. */
export const shelfBottlesWords = {
  'bottle.none': (_: object) => 'Nothing stands on the shelf yet.',
  'bottle.none.how': (_: object) =>
    'Keep a product from its label, add a bottle for it, and mix. From then on the shelf counts by itself what is left: volume, rolls, silver and age.',
  'bottle.none-found': (_: object) => 'No bottle here has these words. Lots of all times are on a page of their own.',
  'bottle.no-bath': (_: object) => 'No bottle holds a bath now. Mix one, and it stands here.',
  'bottle.find-hint': (_: object) => 'A name; or the code of a label, and Enter.',
  'bottle.left': (p: { first: Limit; next: By | null; silver: number | null; halfFull: boolean }) => {
    if (p.first.part <= 0) return `finished: ${ENDED[p.first.by]}`
    const silver = p.next === 'silver' && p.silver !== null ? `, about ${tenths(p.silver)}\u202fg/L` : ''
    const then = p.next === null ? '' : `, then ${THEN[p.next]}${silver}`
    return `${ends(p.first, p.halfFull)}${then}`
  },
  'bottle.left-unknown': (p: { inPackage: boolean }) =>
    p.inPackage
      ? 'no date is known of it'
      : 'nothing says how long this lasts: put its label’s figures into its product',
  'bottle.sub': (p: {
    code: string
    bottle: string
    full: 'full' | 'half' | 'rest'
    station: 'first' | 'second' | null
    clearing: { now_s: number; fresh_s: number } | null
  }) =>
    [
      `lot ${p.code} in ${p.bottle}, ${{ full: 'full', half: 'partly full', rest: 'little left' }[p.full]}`,
      ...(p.station === null ? [] : [`${p.station} of two baths`]),
      ...(p.clearing === null ? [] : [`clears in ${p.clearing.now_s}\u202fs, ${p.clearing.fresh_s}\u202fs fresh`]),
    ].join('; '),
  'bottle.holds': (p: { bottle: string; held: Held }, w: Writer) => `${amount(p.held, w)} in ${p.bottle}`,
  'bottle.amount': (p: Held, w: Writer) => amount(p, w),
  'bottle.of-full': (p: { held: Held; full: Held }, w: Writer) => `${amount(p.held, w)} of ${amount(p.full, w)}`,
  'bottle.empties': (p: { names: readonly string[]; more: number }) =>
    `Empty: ${p.names.join(', ')}${p.more > 0 ? ` and ${p.more} more` : ''}.`,
  'bottle.page': (p: { shown: number; found: number }) => `${p.shown} of ${p.found} bottles.`,

  // What to do next with one
  'bottle.next.discard': (_: object) => 'into the waste',
  'bottle.next.discard-why': (p: { by: By }) => ENDED[p.by],
  'bottle.next.test': (p: { rolls: number }) => `test it: ${rolls(p.rolls)} since it was mixed`,
  'bottle.next.decant': (p: { days: number }) => `Pour it into smaller bottles: full ones keep it ${days(p.days)}.`,
  'bottle.next.top-up': (p: { due: number }, w: Writer) => `top up ${w.volume(p.due as Millilitres)}`,
  'bottle.next.fresh': (p: { rolls: number }) =>
    p.rolls === 0 ? 'mix it fresh' : `mix it fresh: ${rolls(p.rolls)} left`,
  'bottle.next.soon': (p: { day: string }) => `Use it before ${p.day}.`,
  'bottle.next.nothing': (_: object) => 'nothing to do',

  // The sentence above them all
  'bottle.lead.short': (p: { left: number; wait: number }) => {
    const wait = `${p.wait} ${p.wait === 1 ? 'waits' : 'wait'}`
    return p.left < 1
      ? `Mix fixer before the next runs: nothing that stands here takes another roll, and ${wait}.`
      : `Mix fixer before the next runs: what stands here takes ${rolls(p.left)} more, and ${wait}.`
  },
  'bottle.lead.finished': (p: { name: string; code: string; more: number; by: By }) =>
    `${p.name}, lot ${p.code}, is finished: ${ENDED[p.by]}.${p.more > 0 ? ` So ${p.more === 1 ? 'is one other' : `are ${p.more} others`}.` : ''}`,
  'bottle.lead.first': (p: { name: string; code: string; by: By; day: string }) =>
    `${p.name}, lot ${p.code}, ends first: on ${p.day} at the present pace, by ${THEN[p.by]}.`,
  'bottle.lead.calm': (p: { count: number }) =>
    `${capital(counted(p.count, 'bottle'))} ${p.count === 1 ? 'stands' : 'stand'} here, and none is at its end.`,

  // One limit of a bath
  'bottle.limit': (p: Limit) =>
    p.part <= 0 ? ENDED[p.by] : p.days !== null ? `${days(p.days)} left` : `${rolls(p.rolls ?? 0)} left`,
  'bottle.limit-name': (p: { by: By }) =>
    ({
      volume: 'Volume',
      count: 'Count of rolls',
      silver: 'Silver',
      tests: 'Clearing tests',
      acid: 'Acid',
      age: 'Age',
    })[p.by],
  'bottle.limit-from': (p: { origin: string; source: string }) => `${FROM[p.origin] ?? p.origin}: ${p.source}`,
  'bottle.limit-ends': (p: { day: string }) => `until ${p.day} at the present pace`,
  'bottle.families': (p: { ordinary: number; tabular: number; 'high-iodide': number }) =>
    `${capital(counted(p.ordinary, 'ordinary roll'))}, or ${p.tabular} tabular, or ${p['high-iodide']} high-iodide.`,
  'bottle.next-time': (p: { factor: number }) =>
    `The next developing time is ${p.factor.toFixed(2)} times the first one.`,

  // Adding and correcting
  'bottle.new.bottle': (_: object) => 'Whatever a bath stands in: a bottle, a tank with a lid, a tray.',
  'bottle.new.jug': (_: object) => 'Where spent baths wait for whoever takes them. It never empties into a drain.',
  'bottle.new.package': (_: object) => 'As it was bought. What is mixed is taken from it.',
  'bottle.added': (p: { name: string }) => `${p.name} stands on the shelf.`,
  'bottle.corrected': (p: { name: string }) => `${p.name} is corrected.`,
  'bottle.missing': (_: object) => 'This is still empty.',
  'bottle.package': (p: { useBy: string | null; opened: string | null; price: string | null }) =>
    [
      ...(p.useBy === null ? [] : [`use by ${writePartialDay(p.useBy)}`]),
      ...(p.opened === null ? [] : [`opened ${writePartialDay(p.opened)}`]),
      ...(p.price === null ? [] : [p.price]),
    ].join('; ') || 'no dates are known',
  'bottle.price-unread': (p: { text: string }) => `“${p.text}” is no price. Write one like 14.50 EUR.`,
  'bottle.choose-product': (_: object) => 'No product is kept yet. Keep one first; its packages come after it.',

  // Jugs
  'jug.silver': (p: { low: number; usual: number; high: number }) =>
    p.high < 0.05
      ? 'no silver to speak of'
      : `about ${tenths(p.usual)}\u202fg of silver, somewhere from ${tenths(p.low)} to ${tenths(p.high)}`,
  'jug.since': (p: { opened: string | null; fullOn: string | null }) =>
    p.opened === null
      ? 'empty'
      : `begun ${p.opened}${p.fullOn === null ? '' : `; full about ${p.fullOn} at this pace`}`,
  'jug.next': (p: { full: boolean; held: number }) =>
    p.full ? 'arrange a hand-over' : p.held > 0 ? 'room is left' : 'waits for the first bath',
} as const

const FROM: Readonly<Record<string, string>> = {
  measured: 'measured here',
  sheet: 'label or sheet',
  law: 'published law',
  practice: 'common practice',
  assumption: 'assumed',
}
