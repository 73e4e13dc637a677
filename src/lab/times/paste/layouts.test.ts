import { describe, expect, it } from 'vitest'
import { expectOk } from '../../../kernel/index.js'
import { writerFor } from '../../../words/index.js'
import { readTable } from './index.js'

const read = (text: string, units: 'metric' | 'us' = 'metric') => expectOk(readTable(text, writerFor(units)))

/** `film|developer|index|dilution: 18=11:30 20=9:30`, one for each film and index. */
const short = (text: string, units: 'metric' | 'us' = 'metric'): string[] =>
  read(text, units).times.map((time) => {
    const points = time.points.map(({ temperature_c, time_s }) => {
      const seconds = String(Math.round(time_s % 60)).padStart(2, '0')
      return `${Math.round(temperature_c * 100) / 100}=${Math.floor(time_s / 60)}:${seconds}`
    })
    const dilution = time.dilution_parts?.join('+') ?? ''
    return `${time.film}|${time.developer}|${time.exposure_index ?? ''}|${dilution}: ${points.join(' ')}`
  })
const troubles = (text: string, units: 'metric' | 'us' = 'metric') =>
  read(text, units).lines.flatMap((line) => line.trouble.map((one) => [line.number, one.cell, one.sentence] as const))

describe('a table as people paste it', () => {
  const two = ['Corvane 400||400|: 18=11:30 20=9:30 22=8:00', 'Corvane 400||800|: 18=13:30 20=11:15 22=9:30']
  const cases: [layout: string, text: string, expected: string[]][] = [
    ['tabs', 'Corvane 400\t18C\t20C\t22C\nEI 400\t11:30\t9:30\t8:00\nEI 800\t13:30\t11:15\t9:30', two],
    ['wide gaps', 'Corvane 400\n       18°C   20°C   22°C\n400   11.5   9.5   8\n800   13.5   11:15   9.5', two],
    ['single spaces', 'Corvane 400 18C 20C 22C\n400 11:30 9:30 8:00\n800 13:30 11:15 9:30', two],
    ['a wide gap, then single spaces', 'Corvane 400  18C 20C 22C\nEI 400  11:30 9:30 8\nEI 800  13½ 11¼ 9½', two],
    ['semicolons', 'Corvane 400;18C;20C;22C\n400;11:30;9:30;8:00\n800;13:30;11:15;9:30', two],
    [
      'bars with a heading and a rule',
      '| Film | EI | 18 °C | 20 °C | 22 °C |\n|---|:-:|---|---|---:|\n| Corvane 400 | 400 | 11:30 | 9:30 | 8:00 |\n| Corvane 400 | 800 | 13:30 | 11:15 | 9:30 |',
      two,
    ],
    [
      'commas',
      'film,developer,EI,18C,20C\nTarn 100,borax,100,10:15,8:30\nFell 25,borax,25,9:00,7:30',
      ['Tarn 100|borax|100|: 18=10:15 20=8:30', 'Fell 25|borax|25|: 18=9:00 20=7:30'],
    ],
    [
      'one time a line',
      'Tarn 100 in MQ–borax 1+1\n18 °C 10:15\n20 °C 8:30',
      ['Tarn 100|MQ–borax||1+1: 18=10:15 20=8:30'],
    ],
    ['equals signs', 'Tarn 100\n20C = 8:30\n24 °C=6:00', ['Tarn 100|||: 20=8:30 24=6:00']],
    ['colons', 'Tarn 100\n20C: 8:30\n24 °C : 6:00', ['Tarn 100|||: 20=8:30 24=6:00']],
    ['the time first', 'Tarn 100\n8:30 at 20C\n6 min @ 24 °C', ['Tarn 100|||: 20=8:30 24=6:00']],
    ['everything on one line', 'Corvane 400, 20 °C 9:30, 24 °C 6:45', ['Corvane 400|||: 20=9:30 24=6:45']],
    ['headings of columns', 'Tarn 100\n°C\tmin\n18\t10:15\n20\t8:30', ['Tarn 100|||: 18=10:15 20=8:30']],
    ['columns side by side in °F', 'Tarn 100\n°F, min, °F, min\n68, 9, 77, 6', ['Tarn 100|||: 20=9:00 25=6:00']],
    ['degrees Fahrenheit', 'Tarn 100\n68F 77°F\n9:00 6:00', ['Tarn 100|||: 20=9:00 25=6:00']],
    ['both units in a cell', 'Tarn 100\n20 °C (68 °F) 8:30', ['Tarn 100|||: 20=8:30']],
    ['both units in two cells', 'Tarn 100\n20C  68F  8:30', ['Tarn 100|||: 20=8:30']],
    ['signs for degrees of one letter', 'Tarn 100\n20℃ 8:30\n77℉ 6:00', ['Tarn 100|||: 20=8:30 25=6:00']],
    ['fractions', 'Fell 25\n18C 20C 22C 24C\n11 1/2 9½ 8 ¼ 6¾', ['Fell 25|||: 18=11:30 20=9:30 22=8:15 24=6:45']],
    ['minutes and seconds in words', 'Fell 25\n20C 8 min 30 s\n24C 6 min', ['Fell 25|||: 20=8:30 24=6:00']],
    ['decimal commas', 'Fell 25\n18 °C 20,5 °C\n11,5 9,5', ['Fell 25|||: 18=11:30 20.5=9:30']],
    [
      'dashes where there is none',
      'Fell 25\n18C 20C 22C\n– 9:30 —\n11:30 n/a 8',
      ['Fell 25|||: 20=9:30 18=11:30 22=8:00'],
    ],
    [
      'an empty cell between others',
      'Fell 25\t18C\t20C\t22C\nEI 25\t11:30\t\t8:00',
      ['Fell 25||25|: 18=11:30 22=8:00'],
    ],
    ['line ends of other systems', 'Tarn 100\r20C 8:30\r\n24C 6:00', ['Tarn 100|||: 20=8:30 24=6:00']],
    [
      'an index above its times',
      'Corvane\nEI 400\n20C 9:30\nEI 800\n20C 11:15',
      ['Corvane||400|: 20=9:30', 'Corvane||800|: 20=11:15'],
    ],
    [
      'all in the name',
      'Corvane 400 at 800 in ascorbate 1 + 3\n20 °C 11:15',
      ['Corvane 400|ascorbate|800|1+3: 20=11:15'],
    ],
    ['undiluted', 'Tarn 100 in borax, stock\n20C 8:30', ['Tarn 100|borax||1: 20=8:30']],
    [
      'two films in two blocks',
      'Corvane 400 18C 20C\n400 11:30 9:30\n\nTarn 100 18C 20C\n100 10:15 8:30',
      ['Corvane 400||400|: 18=11:30 20=9:30', 'Tarn 100||100|: 18=10:15 20=8:30'],
    ],
    [
      'two films, the second without the developer of the first',
      'Corvane 400 in ascorbate 1+3\nEI 800\n20C 9:30\n\nTarn 100\n20C 8:30',
      ['Corvane 400|ascorbate|800|1+3: 20=9:30', 'Tarn 100|||: 20=8:30'],
    ],
    [
      'one film in two developers',
      'Corvane 400\nascorbate 1+3\n20C 9:30\nborax\n20C 10:30',
      ['Corvane 400|ascorbate||1+3: 20=9:30', 'Corvane 400|borax||1+3: 20=10:30'],
    ],
    ['another script beside the numbers', '現像 100\n20C 8:30', ['現像 100|||: 20=8:30']],
  ]
  it.each(cases)('%s', (_, text, expected) => {
    expect(short(text)).toEqual(expected)
    expect(troubles(text)).toEqual([])
  })

  it('takes agitation and source from lines of their own', () => {
    const { times, lines } = read('Tarn 100\nAgitation: 5 s each minute\nSource: own card, page 3\n20C 8:30')
    expect(times[0]).toMatchObject({ film: 'Tarn 100', agitation: '5 s each minute', source_words: 'own card, page 3' })
    expect(lines.map((line) => line.read_as)).toEqual([
      'The film: Tarn 100.',
      'Agitation: 5 s each minute.',
      'The source: own card, page 3.',
      '8:30 at 20\u202f°C.',
    ])
  })

  it('says back every name, dilution and index it took', () => {
    const [line] = read('Corvane 400 at 800 in ascorbate 1 + 3\n20C 11:15').lines
    expect(line?.read_as?.replace(/\s/g, ' ')).toBe(
      'The film: Corvane 400. The developer: ascorbate. Diluted 1 + 3. Exposed at 800.',
    )
  })

  it('reads bare numbers as degrees of the bench, where they can be', () => {
    expect(short('Tarn 100\n20 8:30\n25 6:00', 'metric')).toEqual(['Tarn 100|||: 20=8:30 25=6:00'])
    expect(short('Tarn 100\n68 8:30\n77 6:00', 'us')).toEqual(['Tarn 100|||: 20=8:30 25=6:00'])
  })

  it('counts single times, and keeps the numbers of the lines', () => {
    const { count, lines } = read('\n\nTarn 100\n\n20C 8:30\n24C 6:00')
    expect(count).toBe(2)
    expect(lines.map(({ number }) => number)).toEqual([3, 5, 6])
  })
})

it('says how many times are missing in a row set close together, and uses none of it', () => {
  const text = 'Corvane 400  18C 20C 22C\nEI 400  11:30 9:30 8\nEI 800  13½ 11¼'
  expect(short(text)).toEqual(['Corvane 400||400|: 18=11:30 20=9:30 22=8:00'])
  expect(troubles(text)).toEqual([[3, '', expect.stringContaining('2 times for 3 temperatures')]])
})

describe('what cannot be read is said and not guessed', () => {
  it('a misspelt cell is named, with what the other times make likely, and left out', () => {
    const text = 'Fell 25  18C  20C  22C\n400  1o  9:30  8:00'
    expect(short(text)).toEqual(['Fell 25||400|: 20=9:30 22=8:00'])
    const [line, cell, sentence] = troubles(text)[0] as readonly [number, string, string]
    expect([line, cell]).toEqual([2, '1o'])
    // A law through 9:30 at 20 °C and 8:00 at 22 °C has 11:17 at 18 °C.
    expect(sentence).toContain('near 11:15')
  })

  it('11.25 is eleven and a quarter or 11:25, so it is asked about, and the advice does not repeat it', () => {
    const [, cell, sentence] = troubles('Fell 25\n18C 20C 22C\n13:30 11.25 9:30')[0] as readonly [
      number,
      string,
      string,
    ]
    expect(cell).toBe('11.25')
    expect(sentence.split('Write')[0]).not.toContain('or 11.25')
  })

  it.each([
    ['an index swallowed as a time', 'Tarn 100 18C 20C 22C\n100 10:15 8:30', '2 times for 3'],
    ['a row that ends too early', 'Tarn 100\t18C\t20C\t22C\nEI 100\t10:15\t8:30', '2 times for 3'],
    ['a row that goes on too long', 'Tarn 100 18C 20C\n100 11:30 9:30 8:00', '3 times for 2'],
    ['numbers without temperatures', '11:30 9:30 8:00', 'without a temperature'],
    ['a range of times', 'Tarn 100\n20C 8-9', 'is not a time'],
    ['seconds without a unit', 'Tarn 100\n20C 510', 'is not a time'],
    ['a time of weeks', 'Tarn 100\n20C 99999:00', 'is not a time'],
  ])('%s gives no time at all', (_, text, sentence) => {
    expect(short(text)).toEqual([])
    expect(
      troubles(text)
        .map(([, , words]) => words)
        .join(' '),
    ).toContain(sentence)
  })

  it('a dilution with a colon is left out and asked about', () => {
    const text = 'Tarn 100 in borax 1:1\n20C 8:30'
    expect(short(text)).toEqual(['Tarn 100|borax||: 20=8:30'])
    expect(troubles(text)).toMatchObject([[1, '1:1', expect.stringContaining('two readings')]])
  })

  it.each([
    ['two times at one temperature', 'Tarn 100\n20C 8:30\n20C 9:30', 3],
    ['slower when warmer', 'Tarn 100\n20C 8:30\n24C 9:30\nAgitation: none', 3],
    ['a temperature no developer has', 'Tarn 100\n80C 8:30', 2],
  ])('%s is said at the last line that went into it', (_, text, line) => {
    expect(troubles(text).map(([number]) => number)).toEqual([line])
  })

  it('such faults are said in the units of the bench', () => {
    const [, , sentence] = troubles('Tarn 100\n68F 8:30\n75F 9:30', 'us')[0] as readonly [number, string, string]
    expect(sentence).toContain('68\u202f°F')
    expect(sentence).not.toContain('°C')
  })

  it.each(['', '   \n\n', 'the quick brown fox', '!!! ??? ...', 'فيلم\n٢٠C ٨:٣٠', '\u0000\u0001', '<td></td>'])(
    '%j holds no time',
    (text) =>
      expect(readTable(text, writerFor('metric'))).toMatchObject({ ok: false, problem: { code: 'times.table-empty' } }),
  )

  it('20 000 characters are read and one more is not', () => {
    const text = 'Tarn 100\n20C 8:30\n'.padEnd(20_000, 'x')
    expect(readTable(text, writerFor('metric')).ok).toBe(true)
    expect(readTable(`${text}x`, writerFor('metric'))).toMatchObject({
      ok: false,
      problem: { code: 'times.table-too-long', details: { length: 20_001, most: 20_000 } },
    })
  })
})
