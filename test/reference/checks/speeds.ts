import { expectOk } from '../../../src/kernel/index.js'
import {
  averageGradient,
  deltaX,
  GRADIENTS,
  logSpeedPoint,
  NAMED_SPEEDS,
  nameSpeed,
  riseFromSpeedPoint,
  SPEED_CRITERION,
  speedsNamed,
} from '../../../src/science/index.js'
import data from '../data/speeds.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { pairs, bounds, traps, formula, criterion, tolerance } = data
const named = (speed: number): number => expectOk(nameSpeed(speed)).arithmetic

/** A straight line from no density that has 0.10 at `logHm` and the stated rise over 1.30. */
const straight = (logHm: number, rise = criterion.rise) => {
  const slope = rise / criterion.distance
  return {
    at: (x: number) => Math.max(0, criterion.speedPoint + slope * (x - logHm)),
    slopeAt: () => slope,
    baseFog: 0,
    from: logHm - 1,
    to: logHm + 2,
  }
}

export const filmSpeeds: readonly Check[] = [
  {
    rows: pairs.map(([arithmetic]) => `A3.${arithmetic}`),
    says: 'A3: every named speed with its degrees, named by itself',
    tolerance: tolerance.exact,
    errors: () => [
      Math.abs(NAMED_SPEEDS.length - pairs.length),
      ...pairs.flatMap(([arithmetic, degrees]) => {
        const found = expectOk(nameSpeed(arithmetic as number))
        return differences([found.arithmetic, found.degrees], [arithmetic as number, degrees as number])
      }),
      ...pairs.map(([arithmetic, degrees], i) =>
        NAMED_SPEEDS[i]?.name === `${arithmetic}/${degrees}°` &&
        NAMED_SPEEDS[i].assigned === ((arithmetic as number) >= 4 && (arithmetic as number) <= 3200)
          ? 0
          : 1,
      ),
    ],
  },
  {
    rows: bounds.map(({ name }) => `A3.bounds-${name}`),
    says: 'A3: from where to where a speed carries its name, as a part of it',
    tolerance: tolerance.speed,
    errors: () =>
      bounds.flatMap(({ name, from, to }) => {
        const found = NAMED_SPEEDS.find((speed) => speed.name === name)
        if (!found) return [Number.NaN]
        const { low, high } = speedsNamed(found)
        return [Math.abs(low / from - 1), Math.abs(high / to - 1)]
      }),
  },
  {
    rows: bounds.map(({ name }) => `A3.bounds-${name}`),
    says: 'A3: the same as log exposures of the speed point',
    tolerance: tolerance.log,
    errors: () =>
      bounds.flatMap(({ name, logHmFrom, logHmTo }) => {
        const found = NAMED_SPEEDS.find((speed) => speed.name === name)
        if (!found) return [Number.NaN]
        const { low, high } = speedsNamed(found)
        return differences([Math.log10(0.8 / high), Math.log10(0.8 / low)], [logHmFrom, logHmTo])
      }),
  },
  {
    rows: bounds.map(({ name }) => `A3.bounds-${name}`),
    says: 'A3: a hair inside each bound carries the name, a hair outside does not',
    tolerance: tolerance.exact,
    errors: () =>
      bounds.flatMap(({ name }) => {
        const found = NAMED_SPEEDS.find((speed) => speed.name === name)
        if (!found) return [Number.NaN]
        const { low, high } = speedsNamed(found)
        const says = (speed: number) => (expectOk(nameSpeed(speed)).name === name ? 1 : 0)
        return differences([low * 1.0001, high * 0.9999, low * 0.9999, high * 1.0001].map(says), [1, 1, 0, 0])
      }),
  },
  {
    rows: ['A3.formula-degrees', 'A3.formula-arithmetic'],
    says: 'A3: by degrees and then the list, never by the nearest number',
    tolerance: tolerance.exact,
    errors: () => [
      ...formula.map(([speed, degrees]) =>
        Math.abs(expectOk(nameSpeed(speed as number)).degrees - (degrees as number)),
      ),
      ...traps.map(([speed, name]) => Math.abs(named(speed as number) - (name as number))),
    ],
  },
  {
    rows: ['A4.speed-point', 'A4.second-point', 'A4.difference', 'A4.tolerance', 'A4.speed'],
    says: 'A4: the figures of the criterion',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        [
          SPEED_CRITERION.speedPoint,
          SPEED_CRITERION.distance,
          SPEED_CRITERION.rise,
          SPEED_CRITERION.tolerance,
          SPEED_CRITERION.numerator,
        ],
        [criterion.speedPoint, criterion.distance, criterion.rise, criterion.tolerance, criterion.numerator],
      ),
  },
  {
    rows: ['A4.average-gradient'],
    says: 'A4: the average gradient that the triangle implies',
    tolerance: criterion.gradientTolerance,
    errors: () => [
      Math.abs(expectOk(averageGradient(straight(-2), GRADIENTS['iso-triangle'])) - criterion.gradient),
      Math.abs(expectOk(riseFromSpeedPoint(straight(-2))) - criterion.rise),
    ],
  },
  {
    rows: ['A4.exact-hits'],
    says: 'A4: exposures that give a named speed exactly',
    tolerance: criterion.speedTolerance,
    errors: () =>
      criterion.hits.flatMap(([exposure, speed]) => {
        const curve = straight(Math.log10(exposure as number))
        const found = SPEED_CRITERION.numerator / 10 ** expectOk(logSpeedPoint(curve))
        return [Math.abs(found - (speed as number)), Math.abs(named(found) - (speed as number))]
      }),
  },
  {
    rows: ['A4.delta-x'],
    says: 'A4: Δ-X by the density gained, and its constant',
    tolerance: criterion.tolerance2,
    errors: () => [
      ...criterion.deltaX.map(([rise, distance]) => Math.abs(expectOk(deltaX(rise as number)) - (distance as number))),
      Math.abs(0.8 * 10 ** -0.296 - criterion.constant),
    ],
  },
]
