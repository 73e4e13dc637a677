import { expectOk, minutes, type Seconds, seconds } from '../../../src/kernel/index.js'
import {
  coefficientFromEnergy,
  coefficientOverTen,
  contrastAfter,
  fitContrast,
  hurterDriffieldSpeed,
  lawFromTwoStrips,
  ownTime,
  timeForContrast,
  watkinsFactorOfMixture,
  watkinsTime,
} from '../../../src/science/index.js'
import data from '../data/contrast.json' with { type: 'json' }
import fits from '../data/scipy-fits.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { developers, tolerance, twoStrips } = data
const lawOf = ({ most, perMinute }: { most: number; perMinute: number }) => ({ most, rate: perMinute / 60, start: 0 })

export const contrasts: readonly Check[] = [
  {
    rows: ['A6.most', 'A6.velocity', 'E1.contrast-law'],
    says: 'A6: contrast of both developers from 1 to 12 minutes',
    tolerance: tolerance.contrast,
    errors: () =>
      developers.flatMap((developer) =>
        differences(
          data.minutes.map((at) => expectOk(contrastAfter(lawOf(developer), (60 * at) as Seconds))),
          developer.contrast,
        ),
      ),
  },
  {
    rows: ['A6.inverse'],
    says: 'A6: minutes for a contrast; at and above the most there are none',
    tolerance: tolerance.minutes,
    errors: () =>
      developers.flatMap((developer) => [
        ...developer.inverse.map(([contrast, at]) =>
          Math.abs(expectOk(timeForContrast(lawOf(developer), contrast as number)) / 60 - (at as number)),
        ),
        ...[developer.most, developer.most + 0.1].map((contrast) => {
          const refused = timeForContrast(lawOf(developer), contrast)
          return !refused.ok && refused.problem.code === 'contrast.above-most' ? 0 : 1
        }),
      ]),
  },
  {
    rows: ['A6.two-strips', 'G.derived-method'],
    says: 'A6: the law back from contrasts at two and four minutes',
    tolerance: tolerance.recovered,
    errors: () =>
      developers.flatMap((developer) => {
        const [first, second] = [2, 4].map((at) => expectOk(contrastAfter(lawOf(developer), minutes(at))))
        const { most, rate } = expectOk(lawFromTwoStrips(minutes(2), first as number, second as number))
        return differences([most, rate * 60], [developer.most, developer.perMinute])
      }),
  },
  {
    rows: ['A6.hurter-driffield'],
    says: 'A6: the old scale of speed',
    tolerance: tolerance.speed,
    errors: () => [Math.abs(expectOk(hurterDriffieldSpeed(data.inertia[0] as number)) - (data.inertia[1] as number))],
  },
  {
    rows: data.watkins.map(({ row }) => row),
    says: 'A7: worked examples of the appearance factor, s',
    tolerance: tolerance.seconds,
    errors: () =>
      data.watkins.map(({ appearance, factor, seconds: total }) =>
        Math.abs(expectOk(watkinsTime(seconds(appearance), factor)) - total),
      ),
  },
  {
    rows: data.mixtures.map(({ row }) => row),
    says: 'A7: factor of a mixture by parts',
    tolerance: tolerance.exact,
    errors: () =>
      data.mixtures.map(({ agents, factor }) => Math.abs(expectOk(watkinsFactorOfMixture(agents)) - factor)),
  },
  {
    rows: ['G.example'],
    says: 'G: rate and most of the example',
    tolerance: tolerance.rate,
    errors: () => {
      const { law } = expectOk(fitContrast(exampleStrips()))
      return differences([law.rate * 60, law.most, law.start], [twoStrips.perMinute, twoStrips.most, 0])
    },
  },
  {
    rows: ['G.example'],
    says: 'G: minutes for the wanted contrast of the example',
    tolerance: tolerance.minutes,
    errors: () => [
      Math.abs(
        expectOk(ownTime(expectOk(fitContrast(exampleStrips())), twoStrips.wanted)).time / 60 - twoStrips.answer_min,
      ),
    ],
  },
  {
    rows: ['E1.ten-degree'],
    says: 'E1: K is b to the tenth',
    tolerance: tolerance.exact,
    errors: () => [Math.abs(expectOk(coefficientOverTen(data.perDegree, 1)) - data.perDegree ** 10)],
  },
  {
    rows: ['E1.low-energies'],
    says: 'E1: 9.6 kJ/mol would mean almost no effect of temperature, against every table: shown, not used',
    tolerance: tolerance.ten,
    errors: () => [Math.abs(expectOk(coefficientFromEnergy(data.energy[0] as number)) - (data.energy[1] as number))],
  },
]

export const fitsOfAnother: readonly Check[] = [
  {
    rows: ['S.fits'],
    says: 'S: contrast laws by least squares against scipy, as parts of the values',
    tolerance: fits.tolerance.fit,
    errors: () =>
      fits.families.flatMap(({ times, contrasts: measured, errors, most, rate, start }) => {
        const points = times.map((time, i) => ({
          time: time as Seconds,
          contrast: measured[i] as number,
          standardError: errors[i] as number,
        }))
        const { law } = expectOk(fitContrast(points, fits.scatter))
        // A start near 0 has no digits of its own: it is compared as a part of the first strip's time.
        return [law.most / most - 1, law.rate / rate - 1, (law.start - start) / (times[0] as number)].map(Math.abs)
      }),
  },
]

const exampleStrips = () => [
  { time: minutes(twoStrips.minutes), contrast: twoStrips.first },
  { time: minutes(2 * twoStrips.minutes), contrast: twoStrips.second },
]
