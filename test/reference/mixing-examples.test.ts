import { describe, expect, it } from 'vitest'
import {
  celsius,
  expectOk,
  grams,
  type Millilitres,
  millilitres,
  seconds,
  writeDuration,
  writeRatio,
} from '../../src/kernel/index.js'
import {
  blendOf,
  chained,
  coldFixing,
  coldWashing,
  colonReadings,
  concentrateAndStock,
  constantFrom,
  crissCross,
  dilutedAcetic,
  dropsFor,
  dryFor,
  floorFor,
  fromTheTaps,
  iceFor,
  intoOrUpTo,
  measuresFor,
  mix,
  mostFromStocks,
  pourAt,
  reachesAt,
  readAgainAfter,
  startForMean,
  weighedFor,
  worthInWater,
} from '../../src/science/index.js'
import { exampleOf, numbersOf } from './page-example.js'

const mL = millilitres
const two = (value: number) => value.toFixed(2)

describe('worked example of the page on warm and cold', () => {
  const says = exampleOf('thermal')
  const numbers = (name: string) => numbersOf(says(name))

  it('taps and a jug', () => {
    const [hot, cold] = numbers('taps').map(celsius) as [never, never]
    const [volume, wanted] = numbers('wanted') as [number, number]
    const [mass, warmth] = numbers('in a jug of') as [number, number]
    const vessel = { water: expectOk(worthInWater(grams(mass), 'glass')), temperature: celsius(warmth) }
    const found = expectOk(fromTheTaps({ volume: mL(volume), wanted: celsius(wanted), hot, cold, vessel }))
    expect(`${found.hot.toFixed(1)} mL`).toBe(says('hot'))
    expect(`${found.forVessel.toFixed(1)} mL`).toBe(says('of it for the jug'))
    expect(`${two(found.off)} °C`).toBe(says('rule off by'))
  })

  it('pour', () => {
    const [worth, at] = numbers('tank, reels and film worth') as [number, number]
    const [solution, wanted] = numbers('poured') as [number, number]
    const tank = { water: grams(worth), temperature: celsius(at) }
    expect(`${two(expectOk(pourAt(celsius(wanted), grams(solution), [tank])).pour)} °C`).toBe(says('pour at'))
  })

  it('standing', () => {
    const around = celsius(numbers('a tank in a room of')[0] as number)
    const readings = says('readings')
      .split(', ')
      .map((entry) => {
        const [minutes, second, temperature] = numbersOf(entry) as [number, number, number]
        return { at: seconds(minutes * 60 + second), temperature: celsius(temperature) }
      })
    const { value: constant, low, high } = expectOk(constantFrom(readings, around))
    expect(writeDuration(constant)).toBe(says('time constant'))
    expect(`${writeDuration(low as never)} and ${writeDuration(high as never)}`).toBe(says('between'))
    const standing = { from: celsius(readings.at(-1)?.temperature as number), around, constant }
    expect(`${writeDuration(expectOk(reachesAt(standing, celsius(21))))} after the last`).toBe(says('it reaches 21 °C'))
    expect(writeDuration(expectOk(readAgainAfter(standing)) as never)).toBe(says('read again after'))
    const start = expectOk(startForMean(celsius(20), around, constant, seconds(600)))
    expect(`${two(start)} °C`).toBe(says('start for a mean of 20 °C over 10:00'))
  })

  it('ice and the cold', () => {
    const { ice } = expectOk(iceFor(grams(2000), celsius(23), celsius(20)))
    expect(`${ice.toFixed(1)} g`).toBe(says('ice for 2 L from 23 to 20 °C'))
    const factors = [coldFixing, coldWashing].map((of) => expectOk(of(celsius(12))).factor.toFixed(3))
    expect(factors.join(' and ')).toBe(says('fixing and washing at 12 °C'))
  })
})

describe('worked example of the page on dilution', () => {
  const says = exampleOf('dilution')

  it('ratios', () => {
    expect(
      `${expectOk(mix([1, 31], mL(600)))
        .parts.map(two)
        .join(' and ')} mL`,
    ).toBe(says('1 + 31 in 600 mL'))
    const { plus, within, stronger } = expectOk(colonReadings(14, mL(600)))
    const both = [plus, within].map(({ parts }) => two(parts[0] as number))
    expect(`${both.join(' or ')} mL`).toBe(says('1:14 in 600 mL, both ways'))
    expect(`${((stronger - 1) * 100).toFixed(1)} %`).toBe(says('stronger by'))
    const { mixture, left } = expectOk(mostFromStocks([1, 1, 50], [mL(14), mL(12), null]))
    const most = `${mixture.total.toFixed(0)} mL, ${left[0]?.toFixed(0)} mL of A left`
    expect(most).toBe(says('A, B and water 1 + 1 + 50 from 14 and 12 mL'))
    expect(
      writeRatio({
        parts: expectOk(
          chained([
            [1, 3],
            [1, 7],
          ]),
        ),
      }),
    ).toBe(says('1 + 3 and then 1 + 7'))
    const into = expectOk(intoOrUpTo(mL(30), mL(600)))
    const ways = [into.madeUpTo, into.pouredInto].map(({ parts }) => writeRatio({ parts }))
    expect(ways.join(' or ')).toBe(says('30 mL to 600 mL'))
    const named = expectOk(concentrateAndStock([1, 2], [1, 47]))
    const stock = `${writeRatio({ parts: named.fromStock })}, factor ${named.factor}`
    expect(stock).toBe(says('1 + 47 of the concentrate, from a stock of 1 + 2'))
  })

  it('floor', () => {
    const asked = { parts: [1, 39], volume: mL(400), floor: mL(5), rolls: 3 }
    const { held, needed, rolls, volumeNeeded, dilutionNeeded } = expectOk(floorFor(asked))
    expect(`${held} of ${needed} mL, ${rolls} rolls`).toBe(says('1 + 39 in 400 mL, 5 mL a roll, three rolls'))
    const [first, water] = dilutionNeeded as [number, number]
    expect(`${volumeNeeded.toFixed(0)} mL, or ${first} + ${two(water)}`).toBe(says('they need'))
  })

  it('strengths', () => {
    const { strong, weak } = expectOk(crissCross(36, 4, 12))
    expect(`${strong} and ${weak} parts`).toBe(says('36 % and 4 % to 12 %'))
    expect(expectOk(blendOf(36, 4, 12, mL(400))).strong).toBeCloseTo(100, 9)
    expect(`${expectOk(dryFor(8, mL(300)))} g`).toBe(says('300 mL of 8 % weight in volume'))
    const { dissolved, water } = expectOk(weighedFor(20, 1.08, mL(250)))
    expect(`${dissolved.toFixed(0)} g in ${water.toFixed(0)} g`).toBe(says('250 mL of 20 % by weight at 1.08 g/mL'))
    const acid = expectOk(dilutedAcetic(80, 10, mL(500)))
    expect(`${two(acid.acid)} g, ${two(acid.acidVolume)} mL`).toBe(says('500 mL of 10 % acetic acid from 80 %'))
  })

  it('measuring', () => {
    const marked = (marks: number) => ({
      name: '',
      kind: 'syringe' as const,
      holds: mL(5),
      marks: marks as Millilitres,
    })
    const errors = [1, 0.2].map((marks) => expectOk(measuresFor(mL(4), [marked(marks)]))[0]?.error as number)
    const said = errors.map((error) => `${(error * 100).toFixed(1)} %`).join(' or ')
    expect(said).toBe(says('4 mL by marks of 1 mL and of 0.2 mL'))
    expect(String(expectOk(dropsFor(mL(1.5))).drops)).toBe(says('1.5 mL in drops'))
  })
})
