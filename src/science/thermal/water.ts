import {
  type Celsius,
  type CelsiusDegrees,
  celsius,
  type Millilitres,
  millilitres,
  ok,
  type Result,
} from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { nothingToMix, temperatureOutside, tooManyParts, volumeOutside } from './checked.js'
import { LIQUID_WATER, type Poured, THERMAL_LIMITS } from './definition.js'

/** Liquid water at ordinary pressure. */
export interface Water {
  /** g/mL */
  readonly density: number
  /** J/(g K), at constant pressure. */
  readonly heatCapacity: number
  /** J/g above water at its triple point. */
  readonly enthalpy: number
}

/** Exponents and coefficients I, J, n of liquid water: IAPWS-IF97, region 1, table 2. */
const N: readonly (readonly [i: number, j: number, n: number])[] = [
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -0.3756360367204e1],
  [0, 1, 0.33855169168385e1],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.16616417199501e-1],
  [0, 5, 0.81214629983568e-3],
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
]

/** Specific gas constant, kJ/(kg K), and the reducing pressure and temperature of region 1. */
const [GAS, PRESSURE, TEMPERATURE] = [0.461526, 16.53, 1386]
const ATMOSPHERE_MPA = 0.101325

/** Water at a temperature and a pressure in MPa, by the dimensionless Gibbs energy and its derivatives. */
function byGibbsEnergy(kelvin: number, pressure: number): Water {
  const [pi, tau] = [pressure / PRESSURE, TEMPERATURE / kelvin]
  const [a, b] = [7.1 - pi, tau - 1.222]
  let [byPressure, byTemperature, twice] = [0, 0, 0]
  for (const [i, j, n] of N) {
    byPressure -= n * i * a ** (i - 1) * b ** j
    byTemperature += n * a ** i * j * b ** (j - 1)
    twice += n * a ** i * j * (j - 1) * b ** (j - 2)
  }
  return {
    density: (pressure * 1000) / (GAS * kelvin * pi * byPressure) / 1000,
    heatCapacity: -GAS * tau * tau * twice,
    enthalpy: GAS * kelvin * tau * byTemperature,
  }
}

/**
 * Density, heat capacity and enthalpy of water at 101.325 kPa, 0–99.9 °C; outside it is ice or steam, and refused.
 * At 20 °C: 0.99821 g/mL and 4.1848 J/(g K). Source: IAPWS-IF97 region 1, within 0.05 % of IAPWS-95.
 */
export function waterAt(temperature: Celsius): Result<Water> {
  return (
    temperatureOutside('the temperature of water', temperature, LIQUID_WATER) ??
    ok(byGibbsEnergy(temperature + 273.15, ATMOSPHERE_MPA))
  )
}

/** What volumes of water come to when the balance of their heat is struck in full. */
export interface HeatBalance {
  readonly temperature: Celsius
  /** Less than the sum of the volumes: warm water shrinks as it cools more than cold water grows. */
  readonly volume: Millilitres
  /** What the simple rule, the mean by volume, says. */
  readonly simple: Celsius
  /** The simple rule minus the balance. */
  readonly off: CelsiusDegrees
}

/**
 * How wrong the simple rule of mixing is: one to twelve volumes, each measured at its own temperature, by mass and
 * enthalpy. 500 mL at 10 °C and 500 mL at 50 °C stand at 29.87 °C, not at 30. Nothing is lost to vessel or air.
 */
export function heatBalance(parts: readonly Poured[]): Result<HeatBalance> {
  const many = tooManyParts(parts.length)
  if (many) return many
  for (const [i, { volume, temperature }] of parts.entries()) {
    const refused =
      volumeOutside(volume, { low: 0, high: THERMAL_LIMITS.volume.high }, `parts[${i}].volume`) ??
      temperatureOutside('the temperature of water', temperature, LIQUID_WATER, `parts[${i}].temperature`)
    if (refused) return refused
  }
  const total = sum(parts.map(({ volume }) => volume))
  if (total === 0) return nothingToMix()
  const states = parts.map(({ temperature }) => byGibbsEnergy(temperature + 273.15, ATMOSPHERE_MPA))
  const masses = parts.map(({ volume }, i) => volume * (states[i] as Water).density)
  const mass = sum(masses)
  const enthalpy = sum(masses.map((one, i) => one * (states[i] as Water).enthalpy)) / mass
  const temperatures = parts.map(({ temperature }) => temperature)
  const temperature = withEnthalpy(enthalpy, Math.min(...temperatures), Math.max(...temperatures))
  const simple = sum(parts.map((part) => part.volume * part.temperature)) / total
  return ok({
    temperature: celsius(temperature),
    volume: millilitres(mass / byGibbsEnergy(temperature + 273.15, ATMOSPHERE_MPA).density),
    simple: celsius(simple),
    off: (simple - temperature) as CelsiusDegrees,
  })
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** The temperature of an enthalpy that lies between those of two temperatures. */
function withEnthalpy(enthalpy: number, low: number, high: number): number {
  const over = (temperature: number) => byGibbsEnergy(temperature + 273.15, ATMOSPHERE_MPA).enthalpy - enthalpy
  // Waters of one temperature differ from their own mean in the last digit only.
  if (over(low) >= 0) return low
  if (over(high) <= 0) return high
  return brent(over, low, high, 1e-9)
}
