import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Grams, type Millilitres, type Result, readRatio } from '../../src/kernel/index.js'
import * as dilution from '../../src/science/dilution/index.js'
import * as fixing from '../../src/science/fixing/index.js'
import * as formulas from '../../src/science/formulas/index.js'
import * as left from '../../src/science/left/index.js'
import * as life from '../../src/science/life/index.js'
import * as thermal from '../../src/science/thermal/index.js'
import * as washing from '../../src/science/washing/index.js'
import * as waste from '../../src/science/waste/index.js'
import { answers, any, sound } from './sound.js'
import { seeded } from './support.js'

const MANY = seeded(10_000)
/** As the science takes it: a number that nobody has looked at yet. */
const value = any as fc.Arbitrary<never>
const few = <T>(one: fc.Arbitrary<T>, most = 5) => fc.array(one, { maxLength: most })
const { SALTS } = formulas

/** Signs that formulas are made of, in any order, and formulas that are right, one time in three. */
const formula = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(...SALTS).map((salt) => salt.formula) },
  {
    weight: 1,
    arbitrary: few(
      fc.constantFrom('Na', 'H2O', 'S', 'O3', '(', ')', '[', ']', '2', '0', '12', '·', '.', '^2-', '+', ' ', 'Xx'),
      9,
    ).map((pieces) => pieces.join('')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 140 }) },
)
const salt = fc.oneof(
  fc.constantFrom(...SALTS).map(({ id }) => id),
  fc.constantFrom('', 'nothing', 'constructor'),
)
const additions = few(
  fc.record({ salt, gramsPerLitre: any, millilitresPerLitre: any, percent: any }, { requiredKeys: ['salt'] }),
)
const bath = fc
  .tuple(fc.constantFrom(...formulas.SHIPPED_FORMULAS), additions)
  .map(([shipped, own]) => ({ ...shipped, additions: own }))
const acidName = fc.constantFrom(...(Object.keys(waste.ACIDS) as waste.AcidName[]))
const solution = fc.record({ acids: few(fc.record({ acid: acidName, molarity: any }), 3), spectators: any })

/** A number of washing thirty times, anything once. */
const mostly = (min: number, max: number) =>
  fc.oneof(
    { weight: 30, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: any },
  ) as unknown as fc.Arbitrary<never>
const step = fc.record(
  {
    kind: fc.constantFrom('change', 'running'),
    volume: mostly(50, 2000),
    time: mostly(0, 900),
    perMinute: mostly(0, 4000),
    moved: fc.boolean(),
  },
  { requiredKeys: ['kind', 'volume', 'time', 'perMinute'] },
) as unknown as fc.Arbitrary<washing.WashStep>
const wet = fc.record({ emulsion: mostly(0, 10), surface: mostly(0, 10), walls: mostly(0, 30) })
const reading = fc.record({
  test: fc.constantFrom('residual-hypo' as const, 'residual-silver' as const),
  passed: fc.boolean(),
  washed: fc.record({
    scheme: fc.constantFrom('changes' as const, 'running' as const, 'after-aid' as const),
    time: value,
    changes: any,
    temperature: value,
    waterPerRoll: value,
  }),
})
const asked = fc.record(
  {
    after: fc.constantFrom<washing.FixerVerdict>(
      { state: 'usable', by: 'count' },
      { state: 'finished', because: 'silver-loaded' },
      { state: 'unknown' },
    ),
    steps: few(step, 6),
    fixer: mostly(1, 400),
    rolls: mostly(0.1, 10),
    temperature: mostly(1, 40),
    rinse: fc.constantFrom(...washing.RINSES),
    hardened: fc.boolean(),
    washAid: fc.boolean(),
    wet,
    halfLife: mostly(1, 3600),
    readings: few(reading, 3),
  },
  { requiredKeys: ['after', 'steps', 'fixer', 'rolls', 'temperature'] },
)
const pour = fc.record({
  volume: value,
  silver: fc.oneof(
    fc.record({ by: fc.constant('rolls' as const), rolls: any }),
    fc.record({ by: fc.constant('reading' as const), gramsPerLitre: any, offBy: any }),
    fc.constant({ by: 'none' as const }),
  ),
})

type Case = readonly [name: string, property: fc.IRawProperty<unknown>]
const asks = <T>(name: string, given: fc.Arbitrary<T>, ask: (one: T) => Result<unknown>): Case => [
  name,
  fc.property(given, (one) => answers(ask(one))) as fc.IRawProperty<unknown>,
]
const two = fc.tuple(any, any)
const three = fc.tuple(any, any, any)
const text = fc.tuple(salt, salt, any)
const ofWash: readonly Case[] = [
  asks('afterChanges', three, ([n, volume, carried]) => washing.afterChanges(n, volume, carried)),
  asks('afterFlow', three, ([flow, time, volume]) => washing.afterFlow(flow, time, volume)),
  asks('afterDiffusion', two, ([time, halfLife]) => washing.afterDiffusion(time, halfLife)),
  asks('firstFill', three, ([held, volume, part]) => washing.firstFill(held, volume, part)),
  asks('partAfterRinse', fc.tuple(fc.constantFrom(...washing.RINSES), any, wet), ([rinse, rolls, film]) =>
    washing.partAfterRinse(rinse, rolls, film),
  ),
]
const ofFormulas: readonly Case[] = [
  asks('readFormula', formula, (one) => formulas.readFormula(one)),
  asks('molarMass', formula, (one) => formulas.molarMass(one)),
  asks('hydrateFactor', fc.tuple(formula, formula), ([one, other]) => formulas.hydrateFactor(one, other)),
  asks('saltNamed', fc.oneof(salt, fc.string()), (name) => formulas.saltNamed(name)),
  asks('substitute', text, ([one, other, amount]) => formulas.substitute(one, other, amount as Grams)),
  asks('mixingSheet', fc.tuple(bath, value), ([one, volume]) => formulas.mixingSheet(one, volume)),
  asks('volumeFrom', fc.tuple(bath, salt, value), ([one, of, amount]) => formulas.volumeFrom(one, of, amount)),
  asks(
    'withAtHand',
    fc.tuple(bath, few(fc.record({ salt, instead: salt }, { requiredKeys: ['salt'] }), 3)),
    ([one, jars]) => formulas.withAtHand(one, jars),
  ),
  asks('weighingOf', fc.tuple(fc.constantFrom(...SALTS), value, value, value), ([one, amount, scale, volume]) =>
    formulas.weighingOf(one, amount, scale, volume),
  ),
  asks('weighable', fc.tuple(salt, value, value), ([name, amount, scale]) => formulas.weighable(name, amount, scale)),
]
const ofWaste: readonly Case[] = [
  asks('pHOf', solution, (one) => waste.pHOf(one)),
  asks('sulfurDioxideShare', any, (pH) => waste.sulfurDioxideShare(pH)),
  asks('sulfiteBath', any, (grams) => waste.sulfiteBath(grams)),
  asks('sulfiteIn', solution, (one) => waste.sulfiteIn(one)),
  asks('pouredTogether', fc.tuple(solution, any, solution, any), (all) => waste.pouredTogether(...all)),
  asks('acidToReach', fc.tuple(solution, solution, any), (all) => waste.acidToReach(...all)),
  asks('ppmInRoom', two, ([grams, room]) => waste.ppmInRoom(grams, room)),
  asks('fanFor', two, ([room, changes]) => waste.fanFor(room, changes)),
  asks('generatorOf', any, (kilograms) => waste.generatorOf(kilograms)),
  asks('silverHeld', fc.tuple(few(pour), fc.option(any, { nil: undefined })), (all) => waste.silverHeld(...all)),
  asks('foldsToLimit', two, ([grams, limit]) => waste.foldsToLimit(grams, limit)),
]
const ofOthers: readonly Case[] = [
  asks(
    'takenOfCount',
    few(fc.record({ rolls: any, family: fc.constantFrom(...fixing.FIXING_FAMILY_NAMES), capacity: any })),
    (all) => fixing.takenOfCount(all),
  ),
  asks('silverLimit', fc.tuple(fc.constantFrom(...fixing.FIXER_KINDS), any), (all) => fixing.silverLimit(...all)),
  asks('silverOfARoll', two, (all) => fixing.silverOfARoll(...all)),
  asks('eachReading', value, (total) => {
    const read = readRatio('1:4')
    const ratios = read.kind === 'asked' ? read.choices.map((choice) => choice.value) : []
    return dilution.eachReading(ratios, total as Millilitres)
  }),
]

describe('formulas, washing and waste, asked anything', () => {
  it.each([...ofWash, ...ofFormulas, ...ofWaste, ...ofOthers])('%s answers or refuses', (_, property) => {
    fc.assert(property, MANY)
  })

  it('estimateWash answers or refuses, and answers often enough to be tried', () => {
    let accepted = 0
    fc.assert(
      fc.property(asked, (one) => {
        const found = washing.estimateWash(one)
        answers(found)
        if (found.ok) accepted++
      }),
      MANY,
    )
    expect(accepted).toBeGreaterThan(2000)
  })

  it('doubtsAbout and writeFormula answer whatever was typed or read', () => {
    fc.assert(
      fc.property(bath, formula, (one, typed) => {
        expect(new Set(formulas.doubtsAbout(one)).size).toBe(formulas.doubtsAbout(one).length)
        const read = formulas.readFormula(typed)
        if (read.ok) expect(formulas.writeFormula(read.value).length).toBeGreaterThan(0)
      }),
      MANY,
    )
  })

  it('fixerByLeft and fixerByClearing say one of three things, leastOf nothing below none', () => {
    fc.assert(
      fc.property(few(any, 4), ([taken, carries, silver, tests]) => {
        const held = { low: 0, usual: silver ?? 0, high: silver ?? 0 }
        const by = { count: 1, silver: 1, tests: tests ?? null, volume: null }
        const found = washing.fixerByLeft({
          by,
          taken: taken ?? 0,
          carries: carries ?? 0,
          silver: held,
          silverLimit: 2,
        })
        expect(['usable', 'finished', 'unknown']).toContain(found.state)
        if ((silver ?? 0) >= 2) expect(found.state).toBe('finished')
        const least = left.leastOf({ taken: taken ?? null, carries: carries ?? null })
        if (least !== null && !Number.isNaN(least.amount)) expect(least.amount).toBeGreaterThanOrEqual(0)
      }),
      MANY,
    )
    expect(washing.fixerByClearing({ verdict: 'finished' }).state).toBe('finished')
    expect(washing.fixerByClearing({ verdict: 'usable' }).state).toBe('usable')
  })

  it('chargeAt and formsAt stay parts of a whole between pH −1 and 15', () => {
    fc.assert(
      fc.property(acidName, fc.double({ min: -1, max: 15, noNaN: true }), (name, pH) => {
        const forms = waste.formsAt(waste.ACIDS[name], pH)
        sound(forms)
        expect(forms.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 9)
        expect(waste.chargeAt(waste.ACIDS[name], pH)).toBeGreaterThanOrEqual(0)
        expect(waste.chargeAt(waste.ACIDS[name], pH)).toBeLessThanOrEqual(waste.ACIDS[name].pKa.length)
      }),
      MANY,
    )
  })
})

/** Functions that take only what was checked before, or choices of a list; each with who checks it. */
const TRUSTING: Readonly<Record<string, string>> = {
  areaOf: 'rollsOf checks format and frames',
  frameAreaOf: 'rollsOf checks frames',
  capacityOf: 'takenOfCount checks the part of the count',
  drawnToward: 'standsAt checks the standing; the score takes its own checked numbers',
  leastMeasurable: 'measuresFor checks the marks',
  mixingWaterFor: 'a choice of lists, no number',
  stopFor: 'a choice of lists, no number',
}

describe('no calculation is left out', () => {
  const here = new URL('.', import.meta.url)
  const files = readdirSync(here).filter((name) => name.endsWith('fuzz.test.ts'))
  const texts = files.map((name) => readFileSync(new URL(name, here), 'utf8')).join('\n')
  const doors = { dilution, fixing, formulas, left, life, thermal, washing, waste }

  it.each(Object.entries(doors))('every function of %s is asked anything, or says who checks for it', (_, door) => {
    const names = Object.entries(door).flatMap(([name, thing]) => (typeof thing === 'function' ? [name] : []))
    expect(names.length).toBeGreaterThan(0)
    const called = (name: string) => new RegExp(`\\b${name}\\(`).test(texts)
    expect(names.filter((name) => !called(name) && !(name in TRUSTING))).toEqual([])
  })

  it('trusts nothing that is gone', () => {
    const names = Object.values(doors).flatMap((door) => Object.keys(door))
    expect(Object.keys(TRUSTING).filter((name) => !names.includes(name))).toEqual([])
  })
})
