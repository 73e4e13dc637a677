import { celsius, expectOk } from '../../../src/kernel/index.js'
import { boilingPoint, classSet } from '../../../src/science/index.js'
import data from '../data/thermometers.json' with { type: 'json' }
import type { Check } from './check.js'

const { tolerance, set, precision, boiling, altitudes } = data
const readings = (reads: readonly number[]) =>
  reads.map((read, index) => ({ name: `thermometer ${index + 1}`, read: celsius(read) }))
const together = expectOk(classSet(readings(set.reads_C), null))

export const thermometers: readonly Check[] = [
  {
    rows: [set.row],
    says: 'I: spread of seven thermometers in one bath, °C',
    tolerance: tolerance.spread_C,
    errors: () => [Math.abs(together.spread - set.spread_C)],
  },
  {
    rows: [set.row],
    says: 'I: their mean, °C',
    tolerance: tolerance.mean_C,
    errors: () => [Math.abs(together.mean - set.mean_C)],
  },
  {
    rows: [set.row],
    says: 'I: scatter of one of them, °C',
    tolerance: tolerance.standardDeviation_C,
    errors: () => [Math.abs(together.standardDeviation - set.standardDeviation_C)],
  },
  {
    rows: [precision.row],
    says: 'I: the two precise ones apart, °C',
    tolerance: tolerance.spread_C,
    errors: () => [Math.abs(expectOk(classSet(readings(precision.reads_C), 0)).spread - precision.apart_C)],
  },
  {
    rows: [boiling.row],
    says: 'W: boiling point at 1000 hPa, °C',
    tolerance: tolerance.boiling_C,
    errors: () => [Math.abs(expectOk(boilingPoint({ pressure_hPa: boiling.pressure_hPa })) - boiling.celsius)],
  },
  {
    rows: altitudes.map(({ row }) => row),
    says: 'W: boiling point by altitude agrees with the tabulated pressure there, °C',
    tolerance: tolerance.altitude_C,
    errors: () =>
      altitudes.map(({ altitude_m, pressure_hPa }) =>
        Math.abs(expectOk(boilingPoint({ altitude_m })) - expectOk(boilingPoint({ pressure_hPa }))),
      ),
  },
]
