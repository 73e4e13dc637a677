import { describe, expect, it } from 'vitest'
import { expectOk, millilitres, seconds, writeDuration } from '../../src/kernel/index.js'
import {
  afterRolls,
  ageOf,
  balanceOf,
  clearingVerdict,
  type FilmFormat,
  fitting,
  fixerLeft,
  KEEPING,
  plateau,
  replenisherFor,
  rollsOf,
  rollsToPlateau,
  silverAfter,
  stopCapacity,
  stopMolarity,
  twoBaths,
} from '../../src/science/index.js'
import { exampleOf, numbersOf } from './page-example.js'

const clock = (text: string) => {
  const [minutes = 0, last = 0] = numbersOf(text)
  return seconds(60 * minutes + last)
}
const litre = millilitres(1000)

describe('worked example of the page on fixing', () => {
  const says = exampleOf('fixing')

  it('film as rolls', () => {
    const film = says('film')
      .split(' ')
      .map((one) => {
        const [name = '', count] = one.split('=')
        return { format: name.replace('135-36', '135') as FilmFormat, count: Number(count) }
      })
    const { exact, tally } = expectOk(rollsOf(film))
    expect(exact.toFixed(3)).toBe(says('rolls'))
    expect(String(tally)).toBe(says('tally'))
    expect(String(expectOk(fitting(20 - exact, '4x5')))).toBe(says('4×5 that still fit into 20'))
  })

  it('clearing', () => {
    const [fresh = '', now = ''] = says('fresh and now').split(' ')
    const [ordinary, tabular] = (['ordinary', 'tabular'] as const).map((family) =>
      expectOk(clearingVerdict(clock(fresh), clock(now), family)),
    )
    expect([ordinary, tabular].map((one) => one && writeDuration(one.fixFor)).join(' ')).toBe(
      says('fix for, ordinary and tabular'),
    )
    expect(ordinary && writeDuration(ordinary.finishedAt)).toBe(says('finished at'))
  })

  it('what is left by count, silver and tests', () => {
    const [ordinary = 0, tabular = 0] = numbersOf(says('in 600 mL at 20 a litre'))
    const left = expectOk(
      fixerLeft({
        kind: 'ammonium-thiosulfate',
        volume: millilitres(600),
        rollsPerLitre: 20,
        fixed: [
          { rolls: ordinary, family: 'ordinary' },
          { rolls: tabular, family: 'tabular' },
        ],
      }),
    )
    expect(`${left.whole.ordinary} or ${left.whole.tabular}`).toBe(says('leave, ordinary or tabular'))
    const film = { gramsPerM2: 5, share: 0.6 }
    const silver = expectOk(silverAfter(20, litre, film))
    expect(`${silver.usual.toFixed(2)} g/L`).toBe(says('20 rolls at 5 g/m² × 0.6 in a litre'))
    const sodium = { kind: 'sodium-thiosulfate', volume: litre, rollsPerLitre: 20, fixed: [] } as const
    const ends = expectOk(fixerLeft({ ...sodium, film }))
    expect(`${ends.rolls.toFixed(1)} rolls, by ${ends.decides}`).toBe(says('sodium bath of that litre ends after'))
    const made = says('tests')
      .split(', ')
      .filter((one) => one.includes('rolls'))
      .map((one) => one.split(' rolls '))
      .map(([rolls, time = '']) => ({ rolls: Number(rolls), clearing: clock(time) }))
    const { trend } = expectOk(fixerLeft({ ...sodium, tests: { fresh: seconds(30), made } }))
    expect(`${trend?.endsAt.toFixed(1)} rolls, ${trend?.low?.toFixed(1)} to ${trend?.high?.toFixed(1)}`).toBe(
      says('end by tests'),
    )
  })

  it('two baths', () => {
    const [done = 0, capacity = 0, sheets = 0, of = 0] = numbersOf(says('first of two baths'))
    const pair = [
      { done, capacity },
      { done: sheets, capacity: of },
    ]
    expect(expectOk(twoBaths(pair)).used.toFixed(2)).toBe(says('used'))
  })
})

describe('worked example of the page on the life of baths', () => {
  const says = exampleOf('life')

  it('age', () => {
    const [full = 0, half = 0] = numbersOf(says('stock developer'))
    const stood = [
      { state: 'full', days: full },
      { state: 'half-full', days: half },
    ] as const
    const age = expectOk(ageOf(stood, KEEPING['stock-developer'].days))
    expect(age.used.toFixed(3)).toBe(says('used'))
    expect(age.daysLeft.toFixed(1)).toBe(says('days left, half-full'))
  })

  it('replenishing', () => {
    const bath = { volume: litre, rate: millilitres(70), perRoll: 0.05, replenisher: 0, start: 0 }
    const after = [1, 2, 20].map((rolls) => (1000 * expectOk(afterRolls(bath, rolls))).toFixed(1)).join(', ')
    expect(`after 1, 2, 20 rolls: ${after} mg/L`).toBe(says('litre with 70 mL and 50 mg of bromide a roll'))
    const { beforeTopping, afterTopping } = expectOk(plateau(bath))
    expect(`${beforeTopping.toFixed(3)} g/L before topping up, ${afterTopping.toFixed(3)} g/L after`).toBe(
      says('settles at'),
    )
    expect(expectOk(rollsToPlateau(bath)).toFixed(1)).toBe(says('rolls to 95 % of the way'))
    const strength = expectOk(replenisherFor(2, 0.1, millilitres(50)))
    expect(`${strength.toFixed(2)} g/L`).toBe(says('replenisher for 2 g/L, 0.1 g used a roll, 50 mL'))
  })

  it('the book', () => {
    const entries = [
      { added: millilitres(70), discarded: millilitres(50), carriedOut: millilitres(20) },
      { carriedOut: millilitres(40) },
    ]
    const { volume } = expectOk(balanceOf(litre, entries))
    expect(`${volume} mL`).toBe(says('book from 1000 mL: +70 −50 −20, then −40 carried'))
  })

  it('stop', () => {
    const bath = { volume: litre, molarity: expectOk(stopMolarity(1)) }
    const { takes, byAcid, toPurple } = expectOk(stopCapacity(bath))
    expect(`${takes.toFixed(4)} mol`).toBe(says('litre of 1 % acetic acid takes'))
    expect(`${byAcid.toFixed(1)} ${toPurple.toFixed(1)}`).toBe(says('rolls to the turning, and to purple'))
    const published = expectOk(stopCapacity({ ...bath, published: 12, rolls: 4 }))
    expect(`${published.left} left`).toBe(says('published at 12 a litre, after 4 rolls'))
  })
})
