import { addThermometer, correctThermometer, removeThermometer, undoThermometer } from '../../../src/lab/index.js'
import { evening, TERMS } from '../calendar.js'
import { Chance } from '../chance.js'
import type { Darkroom, Episode } from '../darkroom.js'
import { againstItself, compares, readsSet, refusedChecks, standsInIce, standsInSteam } from '../thermometer-checks.js'
import { type Instrument, planInstruments, REFERENCE } from '../thermometers.js'

const SET_SIZE = 7

/** Twelve thermometers come in on the first evening; each term seven go into one beaker, the rest one by one. */
export function thermometerTerms(seed: number): readonly Episode[] {
  const chance = new Chance(seed, 2)
  const instruments = planInstruments(chance)
  return [
    { at: evening(0, 20), happens: (darkroom) => comeIn(darkroom, instruments) },
    { at: evening(0, 90), happens: (darkroom) => refusedChecks(darkroom, instruments) },
    { at: evening(11), happens: (darkroom) => againstItself(darkroom, instruments[8] as Instrument, chance) },
    { at: evening(300), happens: (darkroom) => aSpareOne(darkroom) },
    ...TERMS.flatMap((day, term) => termChecks(instruments, day, term, chance)),
  ]
}

async function comeIn(darkroom: Darkroom, instruments: readonly Instrument[]): Promise<void> {
  for (const { statement } of instruments) {
    const what = `enters ${statement.name}`
    darkroom.knows(
      statement.name,
      await darkroom.does(what, (context, rooms) => addThermometer(context, rooms, statement)),
    )
  }
  const { statement } = instruments[1] as Instrument
  await darkroom.isRefused(`enters ${statement.name} twice`, 'record.name-taken', (context, rooms) =>
    addThermometer(context, rooms, { ...statement, name: statement.name.toUpperCase() }),
  )
}

/** One that was brought along, entered with a wrong scale, and taken home again. */
async function aSpareOne(darkroom: Darkroom): Promise<void> {
  const statement = { name: 'Brought along', kind: 'other' as const, scale_low_c: 0, scale_high_c: 50, note: '' }
  await darkroom.isRefused('enters a scale upside down', 'thermometer.bad-scale', (context, rooms) =>
    addThermometer(context, rooms, { ...statement, scale_low_c: 50, scale_high_c: 0 }),
  )
  const added = await darkroom.does('enters one brought along', (context, rooms) =>
    addThermometer(context, rooms, statement),
  )
  const corrected = await darkroom.does('corrects its scale', (context, rooms) =>
    correctThermometer(context, rooms, added.id, added.revision, { ...statement, scale_low_c: -10 }),
  )
  const gone = await darkroom.does('removes it when its owner takes it home', (context, rooms) =>
    removeThermometer(context, rooms, added.id, corrected.revision),
  )
  const other = await darkroom.does('enters another one under its name', (context, rooms) =>
    addThermometer(context, rooms, statement),
  )
  await darkroom.isRefused('brings the first one back beside it', 'record.name-taken', (context, rooms) =>
    undoThermometer(context, rooms, gone.id, gone.revision),
  )
  await darkroom.does('takes the entry of the other one back', (context, rooms) =>
    undoThermometer(context, rooms, other.id, other.revision),
  )
}

function termChecks(instruments: readonly Instrument[], day: number, term: number, chance: Chance): Episode[] {
  const reference = instruments[REFERENCE] as Instrument
  const others = chance.shuffled(instruments.filter((one) => one !== reference))
  // Every second term the reference is at another club and the median has to do.
  const trusted = term % 2 === 0 ? reference : null
  const set = [...(trusted ? [trusted] : []), ...others].slice(0, SET_SIZE)
  const rest = others.filter((one) => !set.includes(one))
  // In the first term one of the seven is misread by three degrees, found out the next evening.
  const misread = term === 0 ? (set[3] as Instrument) : null
  return [
    { at: evening(day + 2), happens: (darkroom) => readsSet(darkroom, set, { trusted, misread, chance }) },
    {
      at: evening(day + 4),
      happens: async (darkroom) => {
        for (const one of rest) await compares(darkroom, one, chance)
        for (const one of set.filter((member) => member !== trusted)) await compares(darkroom, one, chance, 24)
      },
    },
    ...(term % 3 === 1 ? [yearly(instruments, day + 6, chance)] : []),
  ]
}

/** Once a year ice for those that reach it, steam for those that bear it. */
const yearly = (instruments: readonly Instrument[], day: number, chance: Chance): Episode => ({
  at: evening(day),
  happens: async (darkroom) => {
    for (const one of instruments) {
      if (one.statement.scale_low_c <= 0) await standsInIce(darkroom, one, chance)
      if (one.statement.scale_high_c > 100) await standsInSteam(darkroom, one)
    }
  },
})
