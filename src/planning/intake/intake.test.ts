import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatIn } from './format.js'
import { readFormat, readRollList, readWanted, writeFormat } from './index.js'
import { rowsOf } from './rows.js'
import type { Known } from './taken.js'

const KNOWN: Known = {
  today: '2026-11-25',
  processOf: (film) => (film === 'Weir colour 200' ? 'colour-negative' : undefined),
}
const read = (text: string) => readRollList(text, KNOWN)
const rolls = (text: string) => read(text).flatMap((line) => line.rolls)
const troubles = (text: string) =>
  read(text).flatMap(({ line, troubles }) => troubles.map(({ sentence }) => `${line}: ${sentence}`))

describe('a format', () => {
  it.each([
    ['135', '135-36'],
    ['135-24', '135-24'],
    ['35 mm', '135-36'],
    ['37 exp', '135-37'],
    ['135-72', '135-72'],
    ['120', '120'],
    ['4×5', '4×5'],
    ['12 sheets 4x5', '12 sheets 4×5'],
    ['4x5 ×12', '12 sheets 4×5'],
    ['9 x 12 cm', '9×12 cm'],
    ['9x12', '9×12 cm'],
  ])('%s is %s', (typed, written) => {
    const cut = readFormat(typed)
    expect(cut.ok && writeFormat(cut.value)).toBe(written)
    const again = cut.ok && readFormat(writeFormat(cut.value))
    expect(again).toEqual(cut)
  })

  it.each([
    ['135-400', '“135-400” has 400 frames; a length of 135 has 1 to 100.'],
    ['6x6', '“6x6” is no format that is taken in here.'],
    ['0 sheets 4x5', '“0 sheets 4x5” is 0 sheets; one entry holds 1 to 500.'],
    ['large', '“large” is no format that is taken in here.'],
  ])('%s is refused', (typed, sentence) => {
    const cut = readFormat(typed)
    expect(cut.ok ? '' : cut.problem.sentence).toContain(sentence)
  })

  it.each(['400', '3 May', 'EI 120', 'push 1'])('%s does not look like one', (typed) => {
    expect(formatIn(typed)).toBeUndefined()
  })
})

describe('what is wanted', () => {
  it.each([
    ['', 400, { as: 'normal' }],
    ['normal', null, { as: 'normal' }],
    ['as 800', null, { as: 'index', index: 800 }],
    ['push to 1600', 400, { as: 'index', index: 1600 }],
    ['push 1', 400, { as: 'index', index: 800 }],
    ['+2', 400, { as: 'index', index: 1600 }],
    ['pull 1', 125, { as: 'index', index: 64 }],
    ['−1', 400, { as: 'index', index: 200 }],
    ['N+1', 100, { as: 'index', index: 200 }],
    ['push 1 1/3 stops', 400, { as: 'index', index: 1000 }],
    ['pull ⅓', 400, { as: 'index', index: 320 }],
    ['contrast 0,62', null, { as: 'contrast', contrast: 0.62 }],
  ] as const)('%s at %s', (typed, index, wanted) => {
    expect(readWanted(typed, index)).toEqual({ ok: true, value: wanted })
  })

  it.each([
    ['push 1', null, 'intake.stops-need-index'],
    ['as 400', 400, 'roll.push-to-own-index'],
    ['contrast 7', null, 'intake.contrast-out-of-range'],
    ['crispy', 400, 'intake.wanted-unknown'],
    ['push 9', 400, 'intake.wanted-unknown'],
    ['push 5', 3200, 'intake.index-unusable'],
  ] as const)('%s at %s is refused', (typed, index, code) => {
    const wanted = readWanted(typed, index)
    expect(wanted.ok ? 'read' : wanted.problem.code).toBe(code)
  })
})

describe('a list without column names', () => {
  it('is read by what its cells look like, one line by another', () => {
    const list = `3 × Tarn 100, 135-24, EI 100, exposed summer 2024
Ida:
Corvane 400, 120, 400, push 1, due in 2 weeks, note: light leak
Old one, 120, found, expired since 1998

mine:
Weir colour 200, 135`
    expect(troubles(list)).toEqual([])
    expect(rolls(list)).toHaveLength(6)
    expect(rolls(list)[0]).toEqual({
      film: 'Tarn 100',
      process: 'black-and-white',
      format: '135',
      frames: 24,
      sheets: 1,
      whose: null,
      exposure_index: 100,
      treatment: { as: 'normal' },
      exposed: '2024-22',
      expired_since: null,
      remarks: [],
      due: null,
      note: '',
    })
    expect(rolls(list)[3]).toMatchObject({
      whose: 'Ida',
      treatment: { as: 'index', index: 800 },
      due: '2026-12-09',
      note: 'light leak',
    })
    expect(rolls(list)[4]).toMatchObject({ whose: 'Ida', remarks: ['found', 'expired'], expired_since: '1998' })
    expect(rolls(list)[5]).toMatchObject({ whose: null, process: 'colour-negative' })
  })

  it('names the line, the value and what would be right', () => {
    const list =
      'Tarn 100, 120\nTarn 100, 120, blue\n\nTarn 100, 120, 120\nTarn 100\nLode colour, 120\nTarn 100, 120, 3/5/2026\nTarn 100, 120, 2000'
    const [unknown, twice, missing, colour, asked, year] = troubles(list)
    expect(unknown).toMatch(/^2: “blue” is not understood\. Write a format/)
    expect(twice).toBe('4: This line says the format twice. Leave one of them out.')
    expect(missing).toBe('5: The format is missing. Write it like 135-36, 120 or 4×5.')
    expect(colour).toMatch(/^6: “Lode colour” sounds like colour film/)
    expect(asked).toMatch(/^7: “3\/5\/2026” can be 3 May 2026 or 5 March 2026/)
    expect(year).toBe('8: “2000” can be an index or a year. Write EI 2000 or exposed 2000.')
    expect(rolls(list)).toHaveLength(1)
  })
})

describe('a list with column names', () => {
  it('goes by them, with quotes, whatever parts the cells', () => {
    const list = 'Film;Format;EI;Whose;Wanted;Note\n"Tarn; the old one";120;100;Ida;as 200;"two\nlines, ""so"""\n'
    expect(troubles(list)).toEqual([])
    expect(rolls(list)).toMatchObject([
      { film: 'Tarn; the old one', whose: 'Ida', treatment: { as: 'index', index: 200 }, note: 'two\nlines, "so"' },
    ])
  })

  it('says which column is not known, and where a line goes on beyond them', () => {
    const list = 'film,format,colour of the box\nTarn 100,120,blue\nTarn 100,120,,more'
    expect(troubles(list)[0]).toMatch(/^1: No column is called “colour of the box”/)
    expect(troubles(list)[1]).toMatch(/^3: “more” stands beyond the last column/)
  })
})

describe('any text', () => {
  const SEED = { seed: 20261, numRuns: 300 }

  it('gives back the cells that were quoted into it', () => {
    const cell = fc
      .string({ maxLength: 12 })
      .filter((text) => text.trim() === text && text !== '' && !/[\r\uFEFF]/.test(text))
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 }), (rows) => {
        fc.pre(!rows.flat().some((text) => /[\t;]/.test(text)))
        const text = rows.map((cells) => cells.map(quoted).join(',')).join('\n')
        expect(rowsOf(text).map(({ cells }) => cells)).toEqual(rows)
      }),
      SEED,
    )
  })

  it('is read or refused in whole sentences, and never throws', () => {
    const word = fc.constantFrom(
      'Tarn 100',
      '120',
      ',',
      '\n',
      '135-',
      'of ',
      'Ida:',
      'push 1',
      '"',
      '4x5',
      'film',
      ';',
      '2000',
      'due 3 May',
    )
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(word, { maxLength: 14 }).map((words) => words.join('')),
    )
    fc.assert(
      fc.property(text, (typed) => {
        for (const line of read(typed)) {
          expect(line.rolls.length === 0 || line.troubles.length === 0).toBe(true)
          // What was typed is quoted, and may itself look like a place that was not filled in.
          const sentences = line.troubles.map(({ sentence }) => sentence.replace(/“.*”/gs, ''))
          for (const sentence of sentences) expect(sentence).not.toMatch(/\{\w+\}|undefined|NaN/)
        }
      }),
      SEED,
    )
  })
})
