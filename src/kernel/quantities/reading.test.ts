import { describe, expect, it } from 'vitest'
import {
  celsius,
  type Field,
  fahrenheit,
  grams,
  type Millilitres,
  millilitres,
  minutes,
  type Reading,
  readDuration,
  readMass,
  readRatio,
  readTemperature,
  readTemperatureDifference,
  readVolume,
  seconds,
} from './index.js'

const metric = { system: 'metric' } as const
const us = { system: 'us' } as const

function value<T>(reading: Reading<T>): T {
  if (reading.kind !== 'read') throw new Error(`${reading.kind}: ${reading.problem.sentence}`)
  return reading.value
}

function choices<T>(reading: Reading<T>): T[] {
  if (reading.kind !== 'asked') throw new Error(`${reading.kind}, not asked`)
  return reading.choices.map((choice) => choice.value)
}

function code(reading: Reading<unknown>): string {
  if (reading.kind !== 'refused') throw new Error(`${reading.kind}, not refused`)
  return reading.problem.code
}

describe('a typed temperature', () => {
  it.each([
    ['68F', 20],
    ['68 °F', 20],
    ['20', 20],
    ['20,5 °C', 20.5],
    ['20.5C', 20.5],
    ['-5 °C', -5],
    ['−5 °C', -5],
    ['20 ℃', 20],
    ['20º', 20],
    ['  20\u2009°C\u3000', 20],
    ['100 °C', 100],
    ['68½ F', (36.5 * 5) / 9],
  ])('%s in a °C field', (text, expected) => {
    expect(value(readTemperature(text, metric))).toBeCloseTo(expected, 9)
  })

  it('takes a bare number in the unit of the field', () => {
    expect(value(readTemperature('60', metric))).toBe(60)
    expect(value(readTemperature('68', us))).toBe(20)
    expect(value(readTemperature('45', us))).toBe(fahrenheit(45))
  })

  it('asks about a bare number that belongs to the other unit', () => {
    expect(choices(readTemperature('100', metric))).toEqual([100, fahrenheit(100)])
    expect(choices(readTemperature('60.1', metric))).toHaveLength(2)
    expect(choices(readTemperature('20', us))).toEqual([fahrenheit(20), 20])
    expect(choices(readTemperature('44.9', us))).toHaveLength(2)
  })

  it('offers only what the field can hold, and still asks', () => {
    const field: Field<ReturnType<typeof celsius>> = { ...metric, low: celsius(10), high: celsius(40) }
    expect(choices(readTemperature('100', field))).toEqual([fahrenheit(100)])
    expect(code(readTemperature('200', field))).toBe('quantity.out-of-range')
  })

  it('names the bounds in the unit of the field', () => {
    const reading = readTemperature('99 C', { ...us, what: 'the fixer', low: celsius(10), high: celsius(24) })
    expect(reading).toMatchObject({
      kind: 'refused',
      problem: { sentence: '99 C is outside what the fixer can be here: 50.0\u202f°F to 75.2\u202f°F.' },
    })
  })

  it('lets a bound in that only a conversion misses', () => {
    for (let tenths = 500; tenths <= 1000; tenths += 1) {
      const high = celsius(Number(((tenths / 10 - 32) / 1.8).toFixed(12)))
      expect(value(readTemperature(`${tenths / 10} °F`, { ...metric, high }))).toBeLessThanOrEqual(high)
    }
  })
})

describe('a typed difference of temperature', () => {
  it('keeps its sign and takes the unit of the field', () => {
    expect(value(readTemperatureDifference('+0.4', metric))).toBe(0.4)
    expect(value(readTemperatureDifference('−1 °F', metric))).toBeCloseTo(-5 / 9, 12)
    expect(value(readTemperatureDifference('1.8', us))).toBeCloseTo(1, 12)
    expect(value(readTemperatureDifference('-0', metric))).toBe(0)
  })
})

describe('a typed time', () => {
  it.each([
    ['9:30', 570],
    ['1:02:30', 3750],
    ['75:00', 4500],
    ['9.5 min', 570],
    ['9,5 min', 570],
    ['9½', 570],
    ['9 1/2 min', 570],
    ['9.5', 570],
    ['570 s', 570],
    ['9 min 30 s', 570],
    ['9\'30"', 570],
    ['9′30″', 570],
    ['9’30', 570],
    ["9' 30''", 570],
    ['1 h', 3600],
    ['1h30', 5400],
    ['1 h 2 min 30 sec.', 3750],
    ['59', 3540],
    ['9.00', 540],
  ])('%s', (text, expected) => {
    expect(value(readDuration(text))).toBe(expected)
  })

  it('asks whether a large bare number is minutes or seconds', () => {
    expect(choices(readDuration('570'))).toEqual([minutes(570), seconds(570)])
    expect(choices(readDuration('60'))).toEqual([minutes(60), seconds(60)])
  })

  it('asks whether a point parts minutes from seconds', () => {
    expect(choices(readDuration('9.30'))).toEqual([minutes(9.3), seconds(570)])
    expect(value(readDuration('9.75'))).toBe(585)
  })

  it.each([
    ['9:75', 'after a colon the count ends at 59'],
    ['1:75:00', 'after a colon the count ends at 59'],
    ['9:5', 'after a colon there are two digits'],
    ['9 min 75 s', 'after a larger unit the count ends at 59'],
    ['9.5 min 3 s', 'only the smallest unit can have a fraction'],
  ])('refuses %s with the reason', (text, reason) => {
    const reading = readDuration(text)
    expect(code(reading)).toBe('quantity.impossible')
    expect(reading).toMatchObject({ problem: { details: { text, reason } } })
  })

  it.each([
    '30 s 9 min',
    '9 min"',
    '9 min 30 s 4',
    '9 min -30 s',
    '-9 min 30 s',
    'min',
    '1:30 h',
    '9:30:',
    '1 min 2 min',
  ])('refuses %s', (text) => {
    expect(code(readDuration(text))).toBe('quantity.unreadable')
  })

  it('refuses what is outside the field', () => {
    expect(code(readDuration('-5 min'))).toBe('quantity.out-of-range')
    expect(code(readDuration('169 h'))).toBe('quantity.out-of-range')
    expect(code(readDuration('2 min', { low: minutes(3) }))).toBe('quantity.out-of-range')
  })
})

describe('a typed volume', () => {
  it.each([
    ['500ml', 500],
    ['17 oz', 17 * 29.5735295625],
    ['17 Fl. Oz.', 17 * 29.5735295625],
    ['½ l', 500],
    ['1.5 L', 1500],
    ['1 quart', 946.352946],
    ['1 gal', 3785.411784],
    ['250 cm³', 250],
    ['500', 500],
    ['4', 4],
  ])('%s in a mL field', (text, expected) => {
    expect(value(readVolume(text, metric))).toBeCloseTo(expected, 9)
  })

  it('asks about bare numbers from the other system', () => {
    expect(choices(readVolume('500', us))).toEqual([500 * 29.5735295625, 500])
    expect(choices(readVolume('1.5', metric))).toEqual([1.5, 1500])
    expect(value(readVolume('64', us))).toBeCloseTo(64 * 29.5735295625, 9)
  })

  it('asks whether a comma before three digits parts thousands', () => {
    expect(choices(readVolume('1,500 ml', metric))).toEqual([1.5, 1500])
    expect(value(readVolume('0,500 ml', metric))).toBe(0.5)
    expect(value(readVolume('1,500 ml', { ...metric, low: millilitres(0), high: millilitres(100) }))).toBe(1.5)
  })

  it('refuses less than nothing', () => {
    expect(code(readVolume('-5 mL', metric))).toBe('quantity.out-of-range')
  })
})

describe('a typed mass', () => {
  it.each([
    ['12,5 g', 12.5],
    ['1 kg', 1000],
    ['250 mg', 0.25],
    ['4 oz', 113.3980925],
    ['1 lb', 453.59237],
    ['7000 gr', 453.59237],
  ])('%s', (text, expected) => {
    expect(value(readMass(text, us))).toBeCloseTo(expected, 9)
  })

  it('takes bare grams in a gram field and asks in an ounce field', () => {
    expect(value(readMass('5', metric))).toBe(5)
    expect(choices(readMass('5', us))).toEqual([grams(5 * 28.349523125), grams(5)])
  })
})

describe('a typed mixing ratio', () => {
  it.each([
    ['1+4', [1, 4]],
    ['1 + 1 + 100', [1, 1, 100]],
    ['1:1:100', [1, 1, 100]],
    ['1+1,5', [1, 1.5]],
    ['1:1', [1, 1]],
    ['stock', [1]],
    ['Undiluted', [1]],
    ['25 %', [1, 3]],
    ['12.5%', [1, 7]],
    ['30 %', [30, 70]],
    ['100 %', [1]],
  ])('%s', (text, parts) => {
    expect(value(readRatio(text))).toEqual({ parts })
  })

  it('asks which of the two ways of reading a colon is meant, in millilitres', () => {
    const reading = readRatio('1:4')
    expect(choices(reading)).toEqual([{ parts: [1, 4] }, { parts: [1, 3] }])
    expect(reading).toMatchObject({
      choices: [
        { label: '1 + 4: 60\u202fmL and 240\u202fmL in 300\u202fmL' },
        { label: '1 + 3: 75\u202fmL and 225\u202fmL in 300\u202fmL' },
      ],
    })
    expect(choices(readRatio('4:1'))).toEqual([{ parts: [4, 1] }, { parts: [1, 4] }])
  })

  it.each(['1::4', '1+', '+1+4', '1+-4', '1', '1:4:', 'one to four', '1 4', '%'])('refuses %s', (text) => {
    expect(code(readRatio(text))).toBe('quantity.unreadable')
  })

  it.each(['1+5000', '1+0+0', '150 %', '0 %', '1+1+1+1+1', '1:0', '1/0'])('refuses %s as impossible', (text) => {
    expect(code(readRatio(text))).toBe('quantity.impossible')
  })
})

const readers: Record<string, (text: string) => Reading<unknown>> = {
  temperature: (text) => readTemperature(text, metric),
  difference: (text) => readTemperatureDifference(text, us),
  time: (text) => readDuration(text),
  volume: (text) => readVolume(text, us satisfies Field<Millilitres>),
  mass: (text) => readMass(text, metric),
  ratio: (text) => readRatio(text),
}

describe.each(Object.entries(readers))('nonsense for a %s', (_, read) => {
  it.each([
    'NaN',
    'Infinity',
    '-Infinity',
    '1e9',
    '..5',
    '5.',
    '1,2,3',
    '1.2.3',
    '0x10',
    '1 1/0',
    '½½',
    '5²',
    'null',
    '→',
  ])('%s is unreadable', (text) => {
    expect(code(read(text))).toBe('quantity.unreadable')
  })

  it('nothing, too much, and the digits of another script have their own sentence', () => {
    expect(code(read(''))).toBe('quantity.empty')
    expect(code(read(' \u00a0\u200b\t'))).toBe('quantity.empty')
    expect(code(read('1'.repeat(1000)))).toBe('quantity.too-long')
    for (const digits of ['٢٠', '２０', '२०', '2０ mL', '1+٤']) expect(code(read(digits))).toBe('quantity.digits')
  })
})
