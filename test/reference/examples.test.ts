import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, type Seconds, writeDuration } from '../../src/kernel/index.js'
import {
  boilingPoint,
  correctionOf,
  defineBasis,
  developingTime,
  dose,
  effectOfUncorrectedError,
  fitLaw,
  timeForCourse,
} from '../../src/science/index.js'

/** The table between the example marks of a page: what it says by what it is called. */
function exampleOf(page: 'development' | 'thermometry'): Map<string, string> {
  const text = readFileSync(new URL(`../../docs/science/${page}.md`, import.meta.url), 'utf8')
  const part = text.split(`<!-- example: ${page} -->`)[1]?.split('<!-- end -->')[0] ?? ''
  const rows = part
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => line.split('|').map((cell) => cell.trim()))
  return new Map(rows.map(([, name, value]) => [name as string, value as string]))
}

const numbers = (text: string): number[] => [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits))
const pageDevelopment = exampleOf('development')
const pageThermometry = exampleOf('thermometry')
const written = (page: Map<string, string>, name: string): string => {
  const value = page.get(name)
  if (value === undefined) throw new Error(`the page has no row “${name}”`)
  return value
}

/** `18 °C 12:00, 20 °C 9:30` as points. */
const points = written(pageDevelopment, 'sheet')
  .split(', ')
  .map((entry) => {
    const [temperature, minutes, seconds] = numbers(entry) as [number, number, number]
    return { temperature: temperature as Celsius, time: (minutes * 60 + seconds) as Seconds }
  })
const basis = expectOk(defineBasis({ kind: 'ordinary', points }))

describe('worked example of the page on developing times', () => {
  const says = (name: string) => written(pageDevelopment, name)
  const asked = celsius(numbers(says('asked for'))[0] as number)
  const answer = expectOk(developingTime(basis, asked))

  it('coefficient and misfit', () => {
    const fit = fitLaw(basis, 'exponential')
    expect(fit.coefficient.toFixed(3)).toBe(says('K of the fit'))
    const { index, misfit } = fit.worst
    expect(`${(100 * Math.abs(misfit)).toFixed(2)} % at ${basis.points[index]?.temperature} °C`).toBe(
      says('worst misfit'),
    )
  })

  it('time, factor and band', () => {
    expect(answer.factors[0]?.factor.toFixed(4)).toBe(says('temperature factor'))
    expect(writeDuration(answer.time)).toBe(says('time'))
    expect(`${answer.band.byThermometer.toFixed(0)} s`).toBe(says('give or take by the thermometer'))
  })

  it('dose and pouring out', () => {
    const course = says('course')
      .split(', ')
      .map((entry) => {
        const [minutes, seconds, temperature] = numbers(entry) as [number, number, number]
        return { at: (minutes * 60 + seconds) as Seconds, temperature: temperature as Celsius }
      })
    const done = expectOk(dose(basis, course))
    expect(`${done.equivalent.toFixed(0)} s`).toBe(says('dose'))
    expect(done.meanRate.toFixed(4)).toBe(says('mean rate'))
    const held = `pour out, ${course[course.length - 1]?.temperature} °C held`
    expect(writeDuration(expectOk(timeForCourse(basis, course, basis.reference.time)).at)).toBe(says(held))
  })
})

describe('worked example of the page on thermometers', () => {
  const says = (name: string) => written(pageThermometry, name)
  const [read20, true20, read38, true38] = numbers(says('checks by comparison')).map(celsius) as [
    Celsius,
    Celsius,
    Celsius,
    Celsius,
  ]
  const read = celsius(numbers(says('reading'))[0] as number)
  const correction = expectOk(
    correctionOf([
      { read: read20, true: true20, method: 'comparison' },
      { read: read38, true: true38, method: 'comparison' },
    ]),
  )

  it('correction', () => {
    const corrected = correction.at(read)
    expect(`${corrected.correction.toFixed(2).replace('-', '−')} °C`).toBe(says('correction'))
    expect(`${corrected.true.toFixed(2)} °C`).toBe(says('true'))
    expect(`${corrected.band.toFixed(2)} °C`).toBe(says('band'))
  })

  it('cost of the error', () => {
    const effect = expectOk(effectOfUncorrectedError(basis, read, correction.at(read).true))
    expect(writeDuration(effect.byReading)).toBe(says('time by the reading'))
    expect(writeDuration(effect.byTruth)).toBe(says('time by the truth'))
    expect(`${(100 * effect.missingPart).toFixed(1)} %`).toBe(says('too short by'))
  })

  it('boiling water', () => {
    expect(`${expectOk(boilingPoint({ altitude_m: 650 })).toFixed(2)} °C`).toBe(says('boiling point at 650 m'))
  })
})
