export { readNumber } from './amount.js'
export {
  type Day,
  earliestDay,
  type PartialDay,
  readDay,
  readPartialDay,
  writePartialDay,
  YEARS,
} from './day.js'
export { readDuration, writeDuration, writeSpan } from './duration.js'
export { readMass, writeMass } from './mass.js'
export { RATIO_LIMITS, type Ratio, readRatio, writeRatio } from './ratio.js'
export type { Choice, Reading } from './reading.js'
export type { Field } from './scale.js'
export { readTemperature, readTemperatureDifference, writeDegrees, writeTemperature } from './temperature.js'
export { MOST_CHARACTERS } from './text.js'
export { readTimeOfDay, type TimeOfDay, writeTimeOnClock } from './time-of-day.js'
export * from './units.js'
export { readVolume, writeVolume } from './volume.js'
