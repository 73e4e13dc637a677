import { correctTime, keepTimes, removeTime, undoTime } from '../../../src/lab/index.js'
import type { TimeStatement } from '../../../src/wire/index.js'
import { DAYS, evening } from '../calendar.js'
import { Chance } from '../chance.js'
import type { Darkroom, Episode } from '../darkroom.js'
import { refusedAttempts, slipped } from '../mistakes.js'
import { planSheets, SHEETS, type Sheet } from '../sheets.js'

const nameOf = (sheet: Sheet, place: number): string => `${sheet.number}/${place}`
const spoken = ({ film, developer, exposure_index }: TimeStatement): string =>
  `${film} at ${exposure_index} in ${developer}`

/** What goes wrong with a sheet besides what the program refuses, by the share of sheets out of sixty. */
const TROUBLES = {
  'slip corrected': 8,
  'slip unnoticed': 4,
  'typed twice': 6,
  'wrong one removed': 5,
  'correction taken back': 3,
  'two at once': 2,
} as const
type Trouble = keyof typeof TROUBLES

/** Every sheet comes in on an evening of its own, with its mistakes; the last early enough for them to be noticed. */
export function enteringSheets(seed: number): readonly Episode[] {
  const chance = new Chance(seed, 3)
  const sheets = planSheets(chance)
  const troubles = dealt(sheets, chance)
  const refusals = refusedAttempts(sheets)
  return sheets.flatMap((sheet) => {
    const day = 1 + Math.floor(((DAYS - 8) * sheet.number) / SHEETS) + chance.whole(0, 3)
    const trouble = troubles.get(sheet)
    const refusal = refusals.get(sheet)
    const slip = slipped(sheet.meant[0] as TimeStatement, chance)
    const slips = trouble === 'slip corrected' || trouble === 'slip unnoticed'
    const typed = slips ? [slip, ...sheet.meant.slice(1)] : sheet.meant
    const entry: Episode = {
      at: evening(day),
      happens: async (darkroom) => {
        if (refusal) {
          const { what, code, typed: wrong } = refusal
          await darkroom.isRefused(what, code, (context, rooms) => keepTimes(context, rooms, wrong))
        }
        await enters(darkroom, sheet, typed)
      },
    }
    return [entry, ...(trouble === undefined ? [] : aftermath[trouble](sheet, day, slip))]
  })
}

/** Which sheet has which trouble. Slips need a sheet on which the eye does not catch them at once. */
function dealt(sheets: readonly Sheet[], chance: Chance): Map<Sheet, Trouble> {
  const left = chance.shuffled(sheets.filter(({ meant }) => meant[0]?.kind === 'ordinary'))
  const list = Object.entries(TROUBLES).flatMap(([trouble, count]) => Array<Trouble>(count).fill(trouble as Trouble))
  return new Map(list.map((trouble, place) => [left[place] as Sheet, trouble]))
}

async function enters(darkroom: Darkroom, sheet: Sheet, typed: readonly TimeStatement[]): Promise<void> {
  const what = `enters ${spoken(typed[0] as TimeStatement)} and ${typed.length - 1} more`
  const { times } = await darkroom.does(what, (context, rooms) => keepTimes(context, rooms, typed))
  for (const [place, time] of times.entries()) darkroom.knows(nameOf(sheet, place), time)
}

type Change = typeof removeTime
const changes = async (darkroom: Darkroom, what: string, name: string, change: Change): Promise<void> => {
  const { id, revision } = darkroom.of(name)
  darkroom.knows(name, await darkroom.does(what, (context, rooms) => change(context, rooms, id, revision)))
}
const to =
  (statement: TimeStatement): Change =>
  (context, rooms, id, seen) =>
    correctTime(context, rooms, id, seen, statement)

/** What comes of each trouble, days later. */
const aftermath: Readonly<Record<Trouble, (sheet: Sheet, day: number, slip: TimeStatement) => Episode[]>> = {
  'slip unnoticed': () => [],
  'slip corrected': (sheet, day) => {
    const meant = sheet.meant[0] as TimeStatement
    const fix = (darkroom: Darkroom) =>
      changes(darkroom, `corrects a digit of ${spoken(meant)}`, nameOf(sheet, 0), to(meant))
    return [{ at: evening(day + 1), happens: fix }]
  },
  'typed twice': (sheet, day) => [{ at: evening(day, 70), happens: (darkroom) => typedTwice(darkroom, sheet) }],
  'wrong one removed': (sheet, day) => {
    const said = spoken(sheet.meant[0] as TimeStatement)
    const name = nameOf(sheet, 0)
    return [
      { at: evening(day + 3), happens: (darkroom) => changes(darkroom, `removes ${said}`, name, removeTime) },
      { at: evening(day + 4), happens: (darkroom) => bringsBack(darkroom, sheet) },
    ]
  },
  'correction taken back': (sheet, day, slip) => {
    const name = nameOf(sheet, 0)
    return [
      {
        at: evening(day + 2),
        happens: async (darkroom) => {
          await changes(darkroom, 'corrects the wrong line', name, to(slip))
          await changes(darkroom, 'takes the correction back', name, undoTime)
          await changes(darkroom, 'takes that back too, by a slip of the thumb', name, undoTime)
          await changes(darkroom, 'takes it back for good', name, undoTime)
        },
      },
    ]
  },
  'two at once': (sheet, day, slip) => [
    { at: evening(day + 2), happens: (darkroom) => twoAtOnce(darkroom, sheet, slip) },
  ],
}

async function typedTwice(darkroom: Darkroom, sheet: Sheet): Promise<void> {
  const first = sheet.meant[0] as TimeStatement
  const said = `a second copy of ${spoken(first)}`
  const { times } = await darkroom.does(`enters ${said}`, (context, rooms) => keepTimes(context, rooms, [first]))
  const copy = `${nameOf(sheet, 0)} again`
  for (const time of times) darkroom.knows(copy, time)
  darkroom.clock.advance(600_000)
  await changes(darkroom, `removes ${said}`, copy, removeTime)
}

/** A removed time takes no correction and no second removal until the removal is undone. */
async function bringsBack(darkroom: Darkroom, sheet: Sheet): Promise<void> {
  const meant = sheet.meant[0] as TimeStatement
  const { id, revision } = darkroom.of(nameOf(sheet, 0))
  await darkroom.isRefused(`corrects ${spoken(meant)}, which is removed`, 'record.removed', (context, rooms) =>
    correctTime(context, rooms, id, revision, meant),
  )
  await darkroom.isRefused(`removes ${spoken(meant)} again`, 'record.removed', (context, rooms) =>
    removeTime(context, rooms, id, revision),
  )
  await changes(darkroom, `brings ${spoken(meant)} back`, nameOf(sheet, 0), undoTime)
}

/** Two people had the same line open; the slower one is told. */
async function twoAtOnce(darkroom: Darkroom, sheet: Sheet, slip: TimeStatement): Promise<void> {
  const meant = sheet.meant[0] as TimeStatement
  const name = nameOf(sheet, 0)
  const { id, revision } = darkroom.of(name)
  await changes(darkroom, `adds a note to ${spoken(meant)}`, name, to({ ...meant, note: 'Checked against the sheet.' }))
  await darkroom.isRefused('saves over what a colleague just changed', 'record.changed-meanwhile', (context, rooms) =>
    correctTime(context, rooms, id, revision, slip),
  )
}
