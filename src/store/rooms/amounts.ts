import { type Celsius, celsius, type Seconds, seconds } from '../../kernel/index.js'

// SQL holds whole thousandths; what people state is kept to 0.001 °C and 0.001 s.
const thousandths = (value: number): number => Math.round(value * 1000)

export const toMilliCelsius = (value: Celsius): number => thousandths(value)
export const fromMilliCelsius = (value: number): Celsius => celsius(value / 1000)
export const toMilliseconds = (value: Seconds): number => thousandths(value)
export const fromMilliseconds = (value: number): Seconds => seconds(value / 1000)
export const toFlag = (value: boolean): 0 | 1 => (value ? 1 : 0)
