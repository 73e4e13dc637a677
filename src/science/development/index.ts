export { defineBasis } from './basis.js'
export { type ClassDefault, DEVELOPER_CLASSES } from './classes.js'
export { type CourseTime, timeForCourse } from './course.js'
export type * from './definition.js'
export { developingTime, type TimeQuestion } from './developing-time.js'
export { type Dose, dose } from './dose.js'
export { fitLaw } from './fit.js'
export { coefficientFromEnergy, coefficientOverTen, energyFromCoefficient } from './law.js'
export { LIMITS } from './limits.js'
export {
  type Agitation,
  agitationFactor,
  type Indexes,
  isOwnIndex,
  PRACTICE_FACTORS,
  type PracticeFactor,
  pushFactor,
  repeatUseFactor,
} from './practice.js'
export { type RateAnswer, rateAt, rateOf, type TimeAnswer, timeAt } from './time-at.js'
