import { describe, expect, it } from 'vitest'
import { celsius, expectOk, millilitres, seconds, writeDuration } from '../../src/kernel/index.js'
import {
  acidToReach,
  clearingVerdict,
  estimateWash,
  type FixerVerdict,
  fixerByClearing,
  type JugPour,
  partAfterRinse,
  pHOf,
  pouredTogether,
  silverHeld,
  stopMolarity,
  sulfiteBath,
  sulfiteIn,
  type WashStep,
} from '../../src/science/index.js'
import { exampleOf } from './page-example.js'

describe('worked example of the page on washing', () => {
  const says = exampleOf('washing')
  const step: WashStep = { kind: 'change', volume: millilitres(300), time: seconds(60) }
  const wash = (after: FixerVerdict) =>
    expectOk(
      estimateWash({
        after,
        steps: Array.from({ length: Number(says('changes of 300 mL, a minute each')) }, () => step),
        fixer: Number(says('fixer g/L')),
        rolls: 1,
        temperature: celsius(20),
      }),
    )
  it('what water and diffusion leave', () => {
    const { left, perRoll, residue, diffusionNeeds } = wash({ state: 'usable', by: 'count' })
    expect(left.water.milligramsPerRoll.toFixed(8)).toBe(says('water alone, mg a roll'))
    expect(String(left.diffusion.milligramsPerRoll)).toBe(says('diffusion alone, mg a roll'))
    expect(perRoll.toFixed(2)).toBe(says('both together, mg a roll'))
    expect(residue.toFixed(3)).toBe(says('g/m²'))
    expect(writeDuration(seconds(Math.ceil(diffusionNeeds)))).toBe(says('diffusion needs'))
    expect(expectOk(partAfterRinse('film-and-walls')).toFixed(1)).toBe(says('part after rinsing film and walls'))
  })
  it('no verdict after a finished fixer', () => {
    const finished = fixerByClearing(expectOk(clearingVerdict(seconds(30), seconds(60))))
    expect(wash(finished).verdict.says).toBe(says('the same after a clearing time that doubled'))
  })
})

describe('worked example of the page on waste', () => {
  const says = exampleOf('waste')
  it('silver of rolls, and what water does to it', () => {
    const rolls = Number(says('rolls through a litre'))
    const fixer: JugPour = { volume: millilitres(1000), silver: { by: 'rolls', rolls } }
    const water: JugPour = { volume: millilitres(10_000), silver: { by: 'none' } }
    const { grams, rule } = expectOk(silverHeld([fixer, water]))
    expect(grams.usual.toFixed(2)).toBe(says('grams'))
    expect(`${grams.low.toFixed(2)} and ${grams.high.toFixed(2)}`).toBe(says('between'))
    expect(rule.says).toBe(says('against 5.0 mg/L, with 10 L of water poured in'))
  })
  it('acid on a sulfite bath', () => {
    const bath = expectOk(sulfiteBath(Number(says('sulfite g/L'))))
    const acid = { acids: [{ acid: 'acetic' as const, molarity: expectOk(stopMolarity(5)) }], spectators: 0 }
    expect(expectOk(pHOf(bath)).toFixed(1)).toBe(says('pH of the bath'))
    const needed = expectOk(acidToReach(bath, acid, 5))
    expect(needed.toFixed(0)).toBe(says('5 % acetic acid to pH 5, mL a litre'))
    const sour = expectOk(sulfiteIn(expectOk(pouredTogether(bath, 1000, acid, needed))))
    expect((sour.sulfurDioxide * 10_000).toFixed(1)).toBe(says('sulfur dioxide at pH 5, of ten thousand'))
  })
})
