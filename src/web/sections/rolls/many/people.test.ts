import { describe, expect, it } from 'vitest'
import { readRollList } from '../../../../planning/index.js'
import type { OrderRecord } from '../../../shared/api/index.js'
import { EMPTY_ORDER } from '../form/order.js'
import { readShare, sharesOf } from './people.js'

const KNOWN = { today: '2026-11-25', processOf: () => undefined }
const lines = readRollList('Tarn 100, 120\nTarn 100, 120, of Ida\nFell 25, 120, of ida\nFell 25, 120, of Jon', KNOWN)
const ida = sharesOf(lines).find(({ person }) => person === 'Ida') ?? expect.fail('Ida has no share.')
const counted = (count: string, orders: OrderRecord[] = [], id = '') =>
  readShare(ida, { ...EMPTY_ORDER, counted: count, id }, orders, KNOWN)

describe('a list of several people', () => {
  it('gives each their share once, however the name is capitalised', () => {
    expect(sharesOf(lines).map(({ person, rolls }) => [person, rolls.length])).toEqual([
      [null, 1],
      ['Ida', 2],
      ['Jon', 1],
    ])
    expect(ida.rolls.map(({ whose }) => whose)).toEqual(['Ida', 'Ida'])
  })

  it('stops at a count that is not what is listed, with both numbers', () => {
    expect(counted('3').trouble?.sentence).toMatch(/^3 rolls of Ida were counted and 2 are listed\./)
    expect(counted('').trouble?.sentence).toMatch(/^The number of rolls that Ida handed over is missing\./)
    expect(counted('2')).toMatchObject({ trouble: null, order: { person: 'Ida', counted_in: 2 } })
  })

  it('goes into an open order where one is chosen, and never into one that was handed back', () => {
    const order = { id: 'a', person: 'IDA', counted_out: null, removed: false, rolls: [], counted_in: 5 }
    const open = order as unknown as OrderRecord
    expect(counted('', [open], 'a')).toMatchObject({ orderId: 'a', trouble: null, order: null })
    expect(counted('', [{ ...open, counted_out: 5 }], 'a').trouble).not.toBeNull()
  })
})
