import { type Reading, readDuration, readTemperature } from '../../src/kernel/index.js'
import type { Chance } from './chance.js'

const understood = <T>(text: string, reading: Reading<T>): T => {
  if (reading.kind === 'read') return reading.value
  throw new Error(`“${text}” is not read: ${reading.problem.sentence}`)
}

/** A temperature as people type it, read as the program reads it. */
export function typeTemperature(value: number, unit: 'C' | 'F', chance: Chance): number {
  const number = chance.happens(0.2) ? `${value}`.replace('.', ',') : `${value}`
  const text = `${number}${chance.pick(['', ' ', ' °', '°'])}${unit}`
  return understood(text, readTemperature(text, { system: unit === 'F' ? 'us' : 'metric' }))
}

/** A time as people type it (`9:30`, `9.5 min`, `9½`, `570 s`), read as the program reads it. */
export function typeTime(seconds: number, chance: Chance): number {
  const minutes = Math.floor(seconds / 60)
  const rest = seconds - minutes * 60
  const ways = [
    `${minutes}:${String(rest).padStart(2, '0')}`,
    `${seconds / 60} min`,
    `${seconds} s`,
    rest === 30 && minutes > 0 ? `${minutes}½ min` : `${minutes} min ${rest} s`,
  ]
  const text = chance.pick(ways)
  return understood(text, readDuration(text))
}
