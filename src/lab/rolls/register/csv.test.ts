import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk } from '../../../kernel/index.js'
import { readCsv, writeCsv } from './csv.js'

const cellsOf = (text: string) => expectOk(readCsv(text)).map(({ cells }) => cells)
const NASTY = [
  ',',
  ';',
  '"',
  '""',
  "'",
  '\n',
  '\r\n',
  '\r',
  '\t',
  ' ',
  '=',
  '+',
  '-',
  '@',
  '＝',
  'x',
  '0',
  'ё',
  'שלום',
  '現像',
  '\u200f',
  '🎞',
]
const cell = fc.array(fc.constantFrom(...NASTY), { maxLength: 6 }).map((parts) => parts.join(''))

describe('a table by RFC 4180', () => {
  // The heading comes first, as in every register: the separator is looked for there.
  it('comes back as it was, whatever stands in its cells', () => {
    const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 })
    fc.assert(
      fc.property(rows, (body) => {
        const table = [['a', 'b', 'c'], ...body]
        expect(cellsOf(writeCsv(table))).toEqual(table)
      }),
      { seed: 20261, numRuns: 400 },
    )
  })

  it('is written with CRLF after every row, and quotes only where they are needed', () => {
    expect(
      writeCsv([
        ['a', 'b, c', 'say "d"'],
        ['', ' e', 'f\ng'],
      ]),
    ).toBe('a,"b, c","say ""d"""\r\n," e","f\ng"\r\n')
  })

  it('holds nothing that a table program would run as a formula', () => {
    for (const text of ['=1+1', '+1', '-1', '@x', '\t=1', '\r=1', '＝1', '＋1', '－1', '＠x', "'=1"]) {
      const written = writeCsv([
        ['a', 'b'],
        ['x', text],
      ])
      const plain = written.split('\r\n')[1]?.slice(2).replace(/^"/, '')
      expect(plain?.startsWith("'"), text).toBe(true)
      expect(cellsOf(written)[1]).toEqual(['x', text])
    }
  })

  it('is read as table programs write it: LF, semicolons or tabs, a byte order mark, no end of the last row', () => {
    const table = [
      ['a', 'b'],
      ['1', 'x,y'],
    ]
    for (const text of ['a,b\n1,"x,y"', '\ufeffa;b\r\n1;x,y\r\n', 'a\tb\n1\tx,y\n', 'a,b\r\n1,"x,y"\r'])
      expect(cellsOf(text), JSON.stringify(text)).toEqual(table)
  })

  it.each([
    ['a,b\r\n1,"x', 'line 2'],
    ['a,b\r\n1,x"y\r\n', 'line 2'],
    ['a,b\r\n"1\n2",x\r\n3,"x"y\r\n', 'line 4'],
  ])('that cannot be right is refused with its line: %j', (text, where) => {
    expect(readCsv(text)).toMatchObject({ ok: false, problem: { code: 'register.unreadable', details: { where } } })
  })
})
