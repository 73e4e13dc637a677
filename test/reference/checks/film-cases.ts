import { expectOk } from '../../../src/kernel/index.js'
import {
  calibrationOf,
  densityByEnlarger,
  indexOfFrame,
  ownIndex,
  printGamma,
  readZones,
  roomBetween,
} from '../../../src/science/index.js'
import data from '../data/film-cases.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, enlarger, scanner, zones, inCamera, paper } = data

export const filmCases: readonly Check[] = [
  {
    rows: ['P17'],
    says: 'P17: densities by times under the enlarger',
    tolerance: tolerance.density,
    errors: () =>
      enlarger.map(([blank, matched, density]) =>
        Math.abs(expectOk(densityByEnlarger(blank as number, matched as number)).density - (density as number)),
      ),
  },
  {
    rows: ['P18'],
    says: 'P18: a scanner put right by one known step, and only near it',
    tolerance: tolerance.density,
    errors: () => {
      const { correct } = expectOk(calibrationOf([{ read: scanner.known * (1 - scanner.low), true: scanner.known }]))
      const far = correct(scanner.far)
      return [
        Math.abs(expectOk(correct(scanner.says)).density - scanner.true),
        !far.ok && far.problem.code === 'curve.outside-calibration' ? 0 : 1,
      ]
    },
  },
  {
    rows: ['P19'],
    says: 'P19: speed met at zone I, mean gradient from I to VIII',
    tolerance: tolerance.gradient,
    errors: () => {
      const { speedMet, gradient } = expectOk(readZones(zones.densities))
      return [Math.abs(gradient - zones.gradient), speedMet ? 0 : 1]
    },
  },
  {
    rows: ['P19'],
    says: 'P19: the trade’s stop of 0.30 would have said 0.510',
    tolerance: tolerance.gradient,
    errors: () => [Math.abs((expectOk(readZones(zones.densities)).gradient * Math.log10(2)) / 0.3 - zones.byTradeStop)],
  },
  {
    rows: ['P20'],
    says: 'P20: index that each frame stands for',
    tolerance: tolerance.index,
    errors: () =>
      differences(
        inCamera.apertures.map((aperture) =>
          expectOk(
            indexOfFrame(
              inCamera.index,
              inCamera.normal,
              {
                aperture,
                time: inCamera.normal.time / 2 ** inCamera.stopsUnder,
              },
              { stopsUnder: inCamera.stopsUnder },
            ),
          ),
        ),
        inCamera.indexes,
      ),
  },
  {
    rows: ['P20'],
    says: 'P20: the frame with 0.10 over base and fog is one’s own index',
    tolerance: { value: 4, reason: 'a stop is read to a hundredth of a density on a slope of half a density a stop' },
    errors: () => {
      const netDensities = [0.21, 0.15, 0.1, 0.06, 0.03]
      const frames = inCamera.indexes.map((index, i) => ({ index, netDensity: netDensities[i] as number }))
      return [Math.abs(expectOk(ownIndex(frames)).index - 400)]
    },
  },
  {
    rows: ['P21'],
    says: 'P21: film and paper multiply; the subject that fits between two densities',
    tolerance: tolerance.room,
    errors: () => {
      const { logRange, stops } = expectOk(roomBetween(paper.from, paper.to, paper.film))
      return differences(
        [expectOk(printGamma(paper.film, paper.paper)), logRange, Math.round(stops * 10) / 10],
        [paper.product, paper.log, paper.stops],
      )
    },
  },
]
