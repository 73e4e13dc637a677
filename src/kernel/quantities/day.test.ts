import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { earliestDay, type Reading, readDay, readPartialDay, writePartialDay, YEARS } from '../index.js'

const SEED = { seed: 20261, numRuns: 400 }
const TODAY = '2026-11-25'
const MONTH_NAMES = 'January February March April May June July August September October November December'.split(' ')

const gives = (reading: Reading<string>) => (reading.kind === 'read' ? reading.value : reading.kind)
const sentenceOf = (reading: Reading<string>) => (reading.kind === 'read' ? '' : reading.problem.sentence)
const partial = (text: string) => gives(readPartialDay(text))

/** A day by the calendar of the machine, not by ours. */
const days = fc
  .date({ min: new Date('1880-01-01'), max: new Date('2199-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10))

describe('a partial date', () => {
  it.each([
    ['2019', '2019'],
    [' summer  2024 ', '2024-22'],
    ['Fall of 1998', '1998-23'],
    ['2024 winter', '2024-24'],
    ['May 2025', '2025-05'],
    ['sept. 2025', '2025-09'],
    ['2025-07', '2025-07'],
    ['7/2025', '2025-07'],
    ['3 May 2025', '2025-05-03'],
    ['3rd of May 2025', '2025-05-03'],
    ['May 3, 2025', '2025-05-03'],
    ['3.5.2025', '2025-05-03'],
    ['2025-05-03', '2025-05-03'],
    ['25/12/2024', '2024-12-25'],
    ['12/25/2024', '2024-12-25'],
    ['4/4/2024', '2024-04-04'],
    ['29 Feb 2024', '2024-02-29'],
  ])('%s is %s', (typed, value) => {
    expect(partial(typed)).toBe(value)
  })

  it('asks when the figures can be a day and a month either way', () => {
    const reading = readPartialDay('3/5/2025')
    expect(reading.kind === 'asked' && reading.choices).toEqual([
      { value: '2025-05-03', label: '3 May 2025' },
      { value: '2025-03-05', label: '5 March 2025' },
    ])
  })

  it.each([
    ['', 'Nothing is typed for a date. Write it like summer 2024, 2019 or 3 May 2025.'],
    ['last year', '“last year” is not a date. Write it like summer 2024, 2019 or 3 May 2025.'],
    ['3 May', '“3 May” leaves the year out. Write a date with it: 3 May 2025.'],
    ['30 February 2025', '“30 February 2025” is not a date: February 2025 has 28 days. Write it like'],
    ['2025-13', '“2025-13” is not a date: there is no month 13. Write it like'],
    ['1750', '“1750” lies outside the years from 1880 to 2199. Write the year with its four digits.'],
    ["summer '24", "“summer '24” is not a date. Write it like"],
  ])('%s is refused in a sentence', (typed, sentence) => {
    expect(sentenceOf(readPartialDay(typed))).toContain(sentence)
  })

  it('refuses what has not come yet, and takes what has begun', () => {
    const read = (text: string) => readPartialDay(text, { today: TODAY })
    expect(sentenceOf(read('3 May 2027'))).toBe(
      '“3 May 2027” has not come yet: today is 25 November 2026. Correct a date.',
    )
    expect(gives(read('2026'))).toBe('2026')
    expect(gives(read('25 Nov 2026'))).toBe(TODAY)
    expect(read('December 2026').kind).toBe('refused')
  })

  it('reads back what it writes, for every kind of date', () => {
    const season = fc
      .tuple(fc.integer({ min: YEARS.low, max: YEARS.high }), fc.integer({ min: 21, max: 24 }))
      .map(([year, number]) => `${year}-${number}`)
    const any = fc.oneof(
      days,
      days.map((day) => day.slice(0, 7)),
      days.map((day) => day.slice(0, 4)),
      season,
    )
    fc.assert(
      fc.property(any, (value) => {
        const written = writePartialDay(value)
        expect(readPartialDay(written)).toEqual({ kind: 'read', value, echo: written })
        expect(earliestDay(value) <= `${value.slice(0, 4)}-12-31`).toBe(true)
      }),
      SEED,
    )
  })

  it('reads a day in every way of writing it, and offers the day itself where it asks', () => {
    fc.assert(
      fc.property(days, (value) => {
        const [year = '', month = '', day = ''] = value.split('-')
        const [d, m] = [Number(day), Number(month)]
        const name = MONTH_NAMES[m - 1] as string
        for (const text of [`${d} ${name} ${year}`, `${name.slice(0, 3)} ${d}, ${year}`, `${d}.${m}.${year}`, value])
          expect(partial(text), text).toBe(value)
        const barred = readPartialDay(`${d}/${m}/${year}`)
        const offered = barred.kind === 'asked' ? barred.choices.map((choice) => choice.value) : [gives(barred)]
        expect(offered).toContain(value)
      }),
      SEED,
    )
  })

  it('never throws, and what it reads it writes and reads the same', () => {
    const words = fc.constantFrom('may', 'summer', '2024', '3', '31', 'of', '-', '/', '.', ' ', 'fall', '١', '13', '2')
    const text = fc.oneof(
      fc.string({ maxLength: 30 }),
      fc.array(words, { maxLength: 6 }).map((parts) => parts.join(' ')),
    )
    fc.assert(
      fc.property(text, (typed) => {
        const reading = readPartialDay(typed)
        if (reading.kind === 'read') expect(partial(reading.echo)).toBe(reading.value)
        // What was typed is quoted, and may itself look like a place that was not filled in.
        else
          expect(
            typed === '' ? reading.problem.sentence : reading.problem.sentence.replaceAll(typed.trim(), ''),
          ).not.toMatch(/\{\w+\}|undefined/)
      }),
      SEED,
    )
  })
})

describe('a day', () => {
  it.each([
    ['3 May 2027', '2027-05-03'],
    ['3 May', '2027-05-03'],
    ['25 Nov', '2026-11-25'],
    ['24 November', '2027-11-24'],
    ['29 Feb', '2028-02-29'],
    ['today', '2026-11-25'],
    ['tomorrow', '2026-11-26'],
    ['in 10 days', '2026-12-05'],
    ['in a week', '2026-12-02'],
    ['in 6 weeks', '2027-01-06'],
    ['3.12.2026', '2026-12-03'],
  ])('%s is %s', (typed, value) => {
    expect(gives(readDay(typed, { today: TODAY }))).toBe(value)
  })

  it.each(['2027', 'May 2027', 'summer 2027', 'soon'])('%s is no day', (typed) => {
    expect(readDay(typed, { today: TODAY }).kind).toBe('refused')
  })

  it('of which the year is left out is the next one that comes', () => {
    fc.assert(
      fc.property(days, days, (today, wanted) => {
        fc.pre(!wanted.endsWith('-02-29') && today < '2198')
        const reading = readDay(writePartialDay(wanted).replace(/ \d{4}$/, ''), { today })
        const value = gives(reading)
        expect(value.slice(5)).toBe(wanted.slice(5))
        expect(value >= today).toBe(true)
        expect(Date.parse(value) - Date.parse(today)).toBeLessThan(366 * 86_400_000)
      }),
      SEED,
    )
  })
})
