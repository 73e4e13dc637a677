import { readDay, writePartialDay } from '../../../../kernel/index.js'
import type { RollSearch, RollSearchInput } from '../../../shared/api/index.js'
import { HERE, MISHAPS, type State, WAY } from '../states.js'

/** What is looked for, as it is typed; it stands in the address, so that it can be kept, shared and loaded again. */
export interface Look {
  readonly words: string
  readonly state: string
  readonly film: string
  readonly whose: string
  readonly process: string
  readonly from: string
  readonly to: string
  readonly due: string
}

/** Everything on the bench. */
export const EVERYTHING_HERE: Look = {
  words: '',
  state: 'here',
  film: '',
  whose: '',
  process: '',
  from: '',
  to: '',
  due: '',
}

const GROUPS: Readonly<Record<string, readonly State[]>> = { here: HERE, mishaps: MISHAPS, all: [] }
export const STATE_CHOICES: readonly (readonly [string, string])[] = [
  ['here', 'on the bench'],
  ['taken-in', 'waiting'],
  ['loaded', 'in a tank'],
  ['developed', 'developed'],
  ['hung', 'hanging'],
  ['sleeved', 'sleeved'],
  ['scanned', 'scanned'],
  ['handed-back', 'handed back'],
  ['mishaps', 'lost or ruined'],
  ['all', 'any'],
]
const PROCESSES = ['black-and-white', 'colour-negative', 'colour-reversal'] as const
const NAMES = Object.keys(EVERYTHING_HERE) as (keyof Look)[]

export const isEverythingHere = (look: Look): boolean => NAMES.every((name) => look[name] === EVERYTHING_HERE[name])

export const lookOf = (search: URLSearchParams): Look =>
  Object.fromEntries(NAMES.map((name) => [name, search.get(name) ?? EVERYTHING_HERE[name]])) as unknown as Look

/** The address of the list with this look; what is as usual is left out. */
export function addressOf(look: Look, more: Readonly<Record<string, string>> = {}): string {
  const search = new URLSearchParams(more)
  for (const name of NAMES) if (look[name] !== EVERYTHING_HERE[name]) search.set(name, look[name])
  return search.size === 0 ? '/rolls' : `/rolls?${search}`
}

/** What the server is asked, and the dates that could not be read and are left out of it. */
export function askedOf(look: Look, today: string): { asked: RollSearchInput; unread: string[] } {
  const unread: string[] = []
  const day = (text: string): string | null => {
    if (text.trim() === '') return null
    const reading = readDay(text, { today })
    if (reading.kind === 'read') return reading.value
    unread.push(text)
    return null
  }
  const process = PROCESSES.find((one) => one === look.process) ?? null
  const asked = {
    words: look.words.slice(0, 200),
    state: [...(GROUPS[look.state] ?? WAY.filter((state) => state === look.state))],
    film: look.film.slice(0, 120),
    whose: look.whose.slice(0, 120),
    process,
    due_by: day(look.due),
    taken_in_from: day(look.from),
    taken_in_to: day(look.to),
  }
  return { asked, unread }
}

/** A saved search as it would have been typed. */
export function typedLook(saved: RollSearch): Look {
  const same = (states: readonly State[]) =>
    states.length === saved.state.length && states.every((one) => saved.state.includes(one))
  const group = Object.entries(GROUPS).find(([, states]) => same(states))?.[0]
  const day = (value: string | null) => (value === null ? '' : writePartialDay(value))
  return {
    words: saved.words,
    state: group ?? saved.state[0] ?? 'all',
    film: saved.film,
    whose: saved.whose,
    process: saved.process ?? '',
    from: day(saved.taken_in_from),
    to: day(saved.taken_in_to),
    due: day(saved.due_by),
  }
}
