import { z } from 'zod'
import type { Agitation as ScoreAgitation } from '../../score/index.js'
import { DegreesCelsius, InSeconds, Token } from './branded.js'
import { InstantText, Revision, Seen, Text } from './common.js'

export const Origin = z.enum(['measured', 'sheet', 'law', 'practice', 'assumption'])
const Length = z.strictObject({ seconds: InSeconds, origin: Origin }).meta({ id: 'Length' })

const TimeLaw = z
  .discriminatedUnion('law', [
    z.strictObject({ law: z.literal('by-developing-time') }),
    z.strictObject({ law: z.literal('fixed'), seconds: InSeconds, origin: Origin }),
    z.strictObject({
      law: z.literal('by-clearing'),
      multiple: z.number(),
      assumed: InSeconds,
      least: InSeconds,
      most: InSeconds,
      origin: Origin,
    }),
  ])
  .meta({ id: 'TimeLaw' })

const Turn = z
  .discriminatedUnion('by', [
    z.strictObject({ by: z.literal('seconds'), seconds: InSeconds }),
    z.strictObject({ by: z.literal('inversions'), count: z.int().min(0).max(1000), secondsEach: z.number() }),
  ])
  .meta({ id: 'Turn' })

const simpleAgitations = [
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('continuous') }),
  z.strictObject({ kind: z.literal('rotary') }),
  z.strictObject({
    kind: z.literal('turns'),
    opening: Turn.nullable(),
    turn: Turn,
    every: InSeconds,
    first: InSeconds.optional(),
  }),
  z.strictObject({
    kind: z.literal('moments'),
    opening: Turn.nullable(),
    moments: z.array(z.strictObject({ at: InSeconds, turn: Turn })).max(500),
  }),
] as const

/** What goes on without a stop later was something simple before: one level, so that no request can nest for ever. */
const Agitation: z.ZodType<ScoreAgitation> = z
  .discriminatedUnion('kind', [
    ...simpleAgitations,
    z.strictObject({
      kind: z.literal('then-continuous'),
      before: z.discriminatedUnion('kind', simpleAgitations),
      from: InSeconds,
    }),
  ])
  .meta({ id: 'Agitation' })

const Caution = z.enum([
  'dark-until-fixed',
  'never-into-developer',
  'acid-splash',
  'bleach-oxidiser',
  'bleach-never-meets-fixer',
  'no-rinse-between',
  'keep-temperature',
  'do-not-touch-emulsion',
  'even-light',
  'gloves',
])

// The rules of a list of baths (`checkRecipe`) say more than lengths can; these only bound what comes in.
const stepBase = { id: Token, name: Text(200), reason: Text(2000), cautions: z.array(Caution).max(20) }

export const Bath = z
  .strictObject({
    ...stepBase,
    step: z.literal('bath'),
    kind: z.enum([
      'pre-wet',
      'developer',
      'single-bath',
      'bath-a',
      'bath-b',
      'first-developer',
      'colour-developer',
      'second-developer',
      'stop',
      'rinse',
      'reversal',
      'pre-bleach',
      'bleach',
      'clear',
      'fix',
      'wash',
      'wash-aid',
      'wetting',
    ]),
    time: TimeLaw,
    agitation: Agitation,
    window: z.strictObject({ from: DegreesCelsius, to: DegreesCelsius, origin: Origin }).nullable(),
    convention: z.strictObject({
      starts: z.enum(['start-of-pour', 'end-of-pour']),
      ends: z.enum(['start-of-drain', 'end-of-drain']),
    }),
    handling: z.strictObject({ pour: Length, drain: Length, cap: Length, tap: Length.nullable() }),
    goesTo: z.enum(['bottle', 'away', 'waste-jug']),
    neverPartFromNext: z.boolean(),
    mayStay: InSeconds,
  })
  .meta({ id: 'Bath' })

export const Act = z
  .strictObject({
    ...stepBase,
    step: z.literal('act'),
    kind: z.enum(['lid-off', 'look', 'squeeze', 're-expose', 'hang-up']),
    length: Length,
    within: InSeconds.nullable(),
  })
  .meta({ id: 'Act' })

/** A list of baths as a person states it; its id is given here. */
export const RecipeStatement = z
  .strictObject({
    name: Text(200),
    process: z.enum(['black-and-white', 'black-and-white-reversal', 'colour-negative', 'colour-reversal']),
    steps: z.array(z.discriminatedUnion('step', [Bath, Act])).max(200),
    about: Text(2000),
  })
  .meta({ id: 'RecipeStatement' })
/** `id` is a word for a list that comes with the program, a UUID for one's own. */
export const Recipe = RecipeStatement.extend({ id: Token }).meta({ id: 'Recipe' })

/** A list on the shelf. One that came with the program has no revision: it is copied, never changed. */
export const RecipeRecord = z
  .object({
    id: Token,
    shipped: z.boolean(),
    revision: Revision.nullable(),
    saved_at: InstantText.nullable(),
    removed: z.boolean(),
    copied_from: z.string().nullable().describe('Id of the list that this one began as.'),
    recipe: Recipe,
  })
  .meta({ id: 'RecipeRecord' })
export const RecipeRecords = z.object({ recipes: z.array(RecipeRecord) }).meta({ id: 'RecipeRecords' })
export const KeepRecipe = z
  .strictObject({ copied_from: Token.nullable().default(null), statement: RecipeStatement })
  .meta({ id: 'KeepRecipe' })
export const CorrectRecipe = Seen.extend({ statement: RecipeStatement }).meta({ id: 'CorrectRecipe' })
/** A word for a list that comes with the program, a UUID for one's own. */
export const RecipeParams = z.object({ id: Token })
