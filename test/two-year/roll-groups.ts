import type { RollStatement } from '../../src/wire/index.js'
import type { Chance } from './chance.js'
import { COLOUR_NEGATIVES, FILMS } from './names.js'

/** Rolls that come in together: one person's, or the house's own. */
export interface RollGroup {
  readonly number: number
  /** Null for the house's own. */
  readonly person: string | null
  readonly statements: readonly RollStatement[]
}

const PEOPLE = ['Ida', 'Jon', 'Zoë', "Nan O'Shea", 'Łucja', 'the Thursday class', 'Per "Pelle" B.'] as const
/** How many groups, and how many rolls in each: six hundred in all. */
export const GROUPS = 100
export const IN_A_GROUP = 6

const FORMATS: readonly Pick<RollStatement, 'format' | 'frames' | 'sheets'>[] = [
  { format: '135', frames: null, sheets: 1 },
  { format: '135', frames: 24, sheets: 1 },
  { format: '135', frames: 37, sheets: 1 },
  { format: '135', frames: 72, sheets: 1 },
  { format: '120', frames: null, sheets: 1 },
  { format: '220', frames: null, sheets: 1 },
  { format: '127', frames: null, sheets: 1 },
  { format: '4x5', frames: null, sheets: 12 },
  { format: '9x12cm', frames: null, sheets: 4 },
]
const WHEN = [null, '2024', '2023-22', '2024-05', '2024-09-14', '1998'] as const

/** Every second group belongs to somebody else; each roll is dealt a film, a cut and what little is known of it. */
export function planGroups(chance: Chance): readonly RollGroup[] {
  return Array.from({ length: GROUPS }, (_, number) => {
    const person = number % 2 === 0 ? null : (PEOPLE[((number - 1) / 2) % PEOPLE.length] as string)
    const statements = Array.from({ length: IN_A_GROUP }, () => rollOf(person, chance))
    return { number, person, statements }
  })
}

function rollOf(whose: string | null, chance: Chance): RollStatement {
  const colour = chance.happens(0.08)
  const film = chance.pick(colour ? COLOUR_NEGATIVES : FILMS)
  const pushed = !colour && chance.happens(0.15)
  const old = chance.happens(0.05)
  return {
    film: film.name,
    process: colour ? 'colour-negative' : 'black-and-white',
    ...chance.pick(FORMATS),
    whose,
    exposure_index: chance.happens(0.8) ? film.index : null,
    treatment: pushed ? { as: 'index', index: film.index * 2 } : { as: 'normal' },
    exposed: chance.pick(WHEN),
    expired_since: old ? '1998' : null,
    remarks: old ? ['found', 'expired'] : [],
    due: null,
    note: chance.happens(0.1) ? 'Frame 12 is torn; “careful”; 50% light leak' : '',
  }
}
