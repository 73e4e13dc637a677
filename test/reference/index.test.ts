import { describe, expect, it } from 'vitest'
import { groups } from './checks/all.js'
import index from './index.json' with { type: 'json' }

const claimed = new Set(Object.values(groups).flatMap((checks) => checks.flatMap(({ rows }) => rows)))
const listed = index.tables.flatMap(({ tested }) => tested)

describe('index of the reference tables', () => {
  it('names every table once and every tested row once', () => {
    const names = index.tables.map(({ table }) => table)
    expect(new Set(names).size).toBe(names.length)
    expect(new Set(listed).size).toBe(listed.length)
  })

  it.each(index.tables)(
    '$table: tested and left make all its rows, and what is left has a reason',
    ({ rows, tested, left }) => {
      const leftOver = left.reduce((total, { count }) => total + count, 0)
      expect(tested.length + leftOver).toBe(rows)
      for (const { count, reason } of left) {
        expect(count).toBeGreaterThan(0)
        expect(reason.length).toBeGreaterThan(10)
      }
    },
  )

  it('lists as tested exactly the rows that the checks run', () => {
    expect([...claimed].sort()).toEqual([...listed].sort())
  })

  it('covers the tables A to J, the cases, chemistry and the regression problems', () => {
    const names = index.tables.map(({ table }) => table)
    const wanted = [
      'A1',
      'A2',
      'A3',
      'A4',
      'A5',
      'A6',
      'A7',
      'A8',
      'A9',
      'B',
      'C1',
      'C2',
      'C3',
      'C4',
      'D',
      'E1',
      'E2',
      'E3',
      'F',
      'G',
      'H',
      'I',
      'J',
      'P',
    ]
    expect(names).toEqual(expect.arrayContaining(wanted))
    expect(names.filter((name) => name.startsWith('chemistry-')).length).toBe(29)
    expect(names.filter((name) => name.startsWith('nist-')).length).toBe(5)
  })
})
