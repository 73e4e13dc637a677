import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { expectOk, SeededRandom } from '../../kernel/index.js'
import { type Context, importRegister, readRegister, registerTable, rollRegister, type Store } from '../../lab/index.js'
import type { RollRegister } from '../../wire/index.js'
import { benchNamed, newBench, type Open, world } from './house.js'
import { randomRegister } from './random-register.js'

/** 300 registers in the gate; ten thousand in the long run, which brings a seed of its own. */
const LONG = process.env['WETSIDE_FUZZ'] !== undefined
const REGISTERS = LONG ? 10_000 : 300
/** Looked at by a second reader, letter by letter. */
const TABLES = 60
const seed = Number(process.env['WETSIDE_SEED'] ?? 20261)

/** What somebody writes who does not know of quotes: rows at line ends, cells at commas. */
const naiveCells = (table: string): string[][] => table.split(/\r?\n/).map((line) => line.split(','))

/** A second reader of RFC 4180, letter by letter, that takes nothing back of what guards against formulas. */
function cellsByLetters(table: string): string[][] {
  const rows: string[][] = [['']]
  let inside = false
  for (let i = 0; i < table.length; i++) {
    const row = rows.at(-1) as string[]
    const letter = table[i] as string
    if (letter === '"' && inside && table[i + 1] === '"') row.push(`${row.pop()}${table[i++]}`)
    else if (letter === '"') inside = !inside
    else if (letter === ',' && !inside) row.push('')
    else if (letter === '\r' && table[i + 1] === '\n' && !inside) {
      i++
      rows.push([''])
    } else row.push(`${row.pop()}${letter}`)
  }
  return rows.slice(0, -1)
}

/** Export and import of the whole register. */
export function registersBehave(open: Open): void {
  const at = world(9)
  let store: Store
  beforeAll(async () => {
    store = await open()
  })
  afterAll(() => store.close())

  /** What an empty bench exports after taking the file in. */
  async function through(file: string): Promise<RollRegister> {
    const context: Context = { actor: { role: 'owner', id: 'owner' }, bench: at.ids.next(), ...at }
    const register = expectOk(await readRegister(file))
    const taken = await store.write(context, null, async (rooms) => {
      await rooms.house.addBench(benchNamed(context.bench, 'Cellar'))
      return importRegister(context, rooms, register)
    })
    expectOk(taken)
    return store.read(context.bench, rollRegister)
  }

  describe('a register of rolls', () => {
    it(`comes through JSON and through a table as it was: ${REGISTERS} at random`, { timeout: 3_600_000 }, async () => {
      const random = new SeededRandom(seed)
      for (let i = 0; i < REGISTERS; i++) {
        const register = randomRegister(random)
        const where = `register ${i} of seed ${seed}`
        const once = await through(JSON.stringify(register))
        expect(once, where).toEqual(register)
        const table = registerTable(once)
        const twice = await through(table)
        expect(JSON.stringify(twice), where).toBe(JSON.stringify(once))
        expect(registerTable(twice), where).toBe(table)
      }
    })

    it('is a table that any reader of RFC 4180 parts alike, without formulas; splitting at commas is not enough', () => {
      const random = new SeededRandom(seed + 1)
      let naivelyRight = 0
      for (let i = 0; i < TABLES; i++) {
        const table = registerTable(randomRegister(random))
        const cells = cellsByLetters(table)
        expect(new Set(cells.map((row) => row.length)).size).toBe(1)
        expect(cells.flat().filter((cell) => /^[=+\-@\t\r＝＋－＠]/.test(cell))).toEqual([])
        if (JSON.stringify(naiveCells(table).slice(0, -1)) === JSON.stringify(cells)) naivelyRight++
      }
      expect(naivelyRight).toBeLessThan(TABLES / 2)
    })

    it('taken in twice is there once, and the numbers go on after it', async () => {
      const register = someRegister()
      const context = await newBench(store, at)
      const take = () => store.write(context, null, (rooms) => importRegister(context, rooms, register))
      expect(expectOk(await take())).toMatchObject({ rolls: register.rolls.length, there: 0 })
      expect(expectOk(await take())).toEqual({ rolls: 0, orders: 0, films: 0, there: register.rolls.length })
      const { kind, year, last } = register.counters[0] as RollRegister['counters'][number]
      const next = await store.write(context, null, async (rooms) => ({
        ok: true as const,
        value: await rooms.rolls.nextNumbers(kind, year, 1),
      }))
      expect(expectOk(next)).toBe(last + 1)
    })

    it('whose number another roll has here leaves nothing behind', async () => {
      const register = someRegister()
      const context = await newBench(store, at)
      const take = (one: RollRegister) => store.write(context, null, (rooms) => importRegister(context, rooms, one))
      expectOk(await take(register))
      const before = await store.read(context.bench, rollRegister)
      const [first] = register.rolls
      const other = { ...register, films: [], orders: [], counters: [] }
      const clashing = { ...first, id: at.ids.next(), order_id: null, steps: [] } as RollRegister['rolls'][number]
      const fresh = { ...clashing, id: at.ids.next(), number: 'fresh', n: 9_999 }
      const refused = await take({ ...other, rolls: [fresh, clashing] })
      expect(refused).toMatchObject({ ok: false, problem: { code: 'register.number-taken' } })
      expect(await store.read(context.bench, rollRegister)).toEqual(before)
    })

    it.each([
      ['neither table nor JSON', 'hello', 'line 1'],
      ['broken JSON', '{"register":', 'the file'],
      ['a roll twice', twice, /^roll /],
      ['an order that is not in it', withoutOrders, /^roll /],
      ['a state that there is none of', wetRolls, /^rolls\.\d+\.steps\.\d+\.state$/],
      ['a process that there is none of', greyRolls, /^line \d+, process$/],
    ])('with %s is refused, with its place', async (_, make, where) => {
      const register = someRegister()
      const text = typeof make === 'string' ? make : make(register)
      const context = await newBench(store, at)
      const read = await readRegister(text)
      const refused = read.ok
        ? await store.write(context, null, (rooms) => importRegister(context, rooms, read.value))
        : read
      expect(refused).toMatchObject({ ok: false, problem: { code: 'register.unreadable' } })
      if (!refused.ok) expect(String(refused.problem.details?.['where'])).toMatch(where)
    })
  })
}

const twice = (register: RollRegister) => JSON.stringify({ ...register, rolls: [...register.rolls, register.rolls[0]] })
const wetRolls = (register: RollRegister) => JSON.stringify(register).replace('"state":"hung"', '"state":"wet"')
const greyRolls = (register: RollRegister) => registerTable(register).replaceAll(',black-and-white,', ',grey,')
const withoutOrders = (register: RollRegister) => JSON.stringify({ ...register, orders: [] })

/** One with several rolls, a hung one, and one that belongs to an order. */
function someRegister(): RollRegister {
  const random = new SeededRandom(7)
  for (;;) {
    const register = randomRegister(random)
    const hung = JSON.stringify(register).includes('"hung"')
    const ordered = register.rolls.some(({ order_id }) => order_id !== null)
    const grey = registerTable(register).includes(',black-and-white,')
    if (register.rolls.length > 2 && hung && ordered && grey) return register
  }
}
