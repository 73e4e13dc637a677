import type { UnitSystem } from '../../../../kernel/index.js'

/** How temperatures are typed: in which unit, and how much the thermometer shows too much, °C. */
export interface Unit {
  readonly system: UnitSystem
  readonly off: number
}
