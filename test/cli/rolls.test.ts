import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { registry } from '../../src/kernel/index.js'
import { published } from '../../src/wire/index.js'
import { NOON } from '../support/bench.js'
import { command } from '../support/commands.js'
import { codesOn, readerOfCodes, wordsOn } from '../support/paper.js'
import { dataFolders } from '../support/program.js'

const { folder, start } = dataFolders()
// Commands that open the data themselves take the year from this device.
beforeEach(() => void vi.useFakeTimers({ now: NOON, toFake: ['Date'] }))
afterEach(() => void vi.useRealTimers())

const LIST = 'film,format,whose\nCorvane 400,135-24,Ida\n"Tarn, 100",120,\n'
const BASE = ['--base', 'http://192.168.1.20:4717']

/** What a command prints as JSON, held to its published shape. */
async function json(schema: keyof typeof published, argv: string[], input = '') {
  const { code, out, err } = await command([...argv, '--json'], input)
  expect([argv, code, err]).toEqual([argv, 0, []])
  const parsed = published[schema].safeParse(JSON.parse(out.join('\n')))
  expect(parsed.error?.issues ?? []).toEqual([])
  return JSON.parse(out.join('\n'))
}
const numbers = (answer: { rolls: { number: string }[] }) => answer.rolls.map(({ number }) => number.slice(4))

describe('rolls at the command line', () => {
  it('are taken in from a list, found, moved on and shown, without the program and through it', async () => {
    const first = await json('take-in-answer', ['take-in', '-'], LIST)
    expect(numbers(first)).toEqual(['-0001', '-0002'])
    const served = await start()
    const second = await json('take-in-answer', ['take-in', '-'], LIST)
    expect(numbers(second)).toEqual(['-0003', '-0004'])
    const found = await json('found-rolls', ['find-rolls', 'tarn', '100'])
    expect(numbers(found)).toEqual(['-0004', '-0002'])
    const [one, other] = [...first.rolls, ...second.rolls].map(({ number }: { number: string }) => number) as [
      string,
      string,
    ]
    await json('moved-rolls', ['move-rolls', 'hung', one, other, '--hook', '3'])
    const shown = await command(['roll', one])
    await served.stop()
    expect(await command(['roll', one])).toEqual(shown)
    expect(shown.out.join('\n')).toMatch(/135, 24 frames, of Ida, as usual: hung\n.*taken in\n.*hung on 3$/)
    expect(numbers(await json('found-rolls', ['find-rolls', '--state', 'hung,loaded']))).toEqual(['-0002', '-0001'])
    expect((await json('roll-answer', ['roll', one])).state).toBe('hung')
  })

  it('one by one from options, or from a question in JSON', async () => {
    const one = ['take-in', '--film', 'Say "Tarn"', '--format', '4x5', '--index', '100', '--wanted', 'contrast 0.62']
    expect((await json('take-in-answer', one)).rolls[0]).toMatchObject({
      film: 'Say "Tarn"',
      format: '4x5',
      exposure_index: 100,
      treatment: { as: 'contrast', contrast: 0.62 },
    })
    const asked = { rolls: [{ statement: { film: 'Fell 25', process: 'black-and-white', format: '127' } }] }
    expect((await json('take-in-answer', ['take-in', '-'], JSON.stringify(asked))).rolls[0].film).toBe('Fell 25')
  })

  it('with a wrong line are all refused, each wrong line with what is wrong', async () => {
    const { code, out, err } = await command(['take-in', '-'], `${LIST}Fell 25,126,\nFell 25,120-12,\n`)
    expect([code, out]).toEqual([registry['roll.lines-wrong'].exit, []])
    expect(err.filter((line) => /^[45]: /.test(line))).toHaveLength(2)
    expect(await json('found-rolls', ['find-rolls'])).toMatchObject({ found: 0 })
  })

  it('are only looked at with --dry-run', async () => {
    const { code, out } = await command(['take-in', '-', '--dry-run'], LIST)
    expect([code, out.at(-1)]).toEqual([0, '2 would be taken in; nothing was kept.'])
    expect(await json('take-in-question', ['take-in', '-', '--dry-run'], LIST)).toMatchObject({ rolls: [{}, {}] })
    expect(await json('found-rolls', ['find-rolls'])).toMatchObject({ found: 0 })
  })

  it.each([
    [['ruined'], 'roll.reason-missing'],
    [['taken-in'], 'roll.not-forwards'],
    [['wet'], 'command.usage'],
  ] as const)('are not moved to %s', async (argv, code) => {
    const { rolls } = await json('take-in-answer', ['take-in', '--film', 'Tarn 100'])
    const refused = await command(['move-rolls', ...argv, rolls[0].number])
    expect(refused.code).toBe(registry[code].exit)
    expect((await json('roll-answer', ['roll', rolls[0].number])).history).toEqual([])
  })
})

describe('the register as a file', () => {
  it.each(['csv', 'json'])('comes through %s into an empty bench as it was', async (ending) => {
    const file = join(folder(), `out.${ending}`)
    const { rolls } = await json('take-in-answer', ['take-in', '-'], LIST)
    await json('moved-rolls', ['move-rolls', 'lost', rolls[0].number, '--reason', '=SUM(A1), "lost"'])
    expect((await command(['export-rolls', file])).code).toBe(0)
    const before = readFileSync(file, 'utf8')
    expect(ending === 'json' ? published['roll-register'].safeParse(JSON.parse(before)).success : true).toBe(true)
    const again = async () => {
      expect((await command(['export-rolls', `${file}.${ending}`])).code).toBe(0)
      return readFileSync(`${file}.${ending}`, 'utf8')
    }
    // Through the program that has them already, then without one into a folder that is empty.
    const served = await start()
    expect(await json('imported-register', ['import-rolls', file])).toMatchObject({ rolls: 0, there: 2 })
    expect(await again()).toBe(before)
    await served.stop()
    vi.stubEnv('DATA_DIR', join(folder(), 'another'))
    expect(await json('imported-register', ['import-rolls', file])).toMatchObject({ rolls: 2, there: 0 })
    expect(await again()).toBe(before)
  })

  it('that is none is refused with its place, and one that cannot be written leaves nothing', async () => {
    const file = join(folder(), 'no-register.csv')
    writeFileSync(file, 'record,id\nroll,"x\n')
    const refused = await command(['import-rolls', file])
    expect(refused.code).toBe(registry['register.unreadable'].exit)
    expect(refused.err.join(' ')).toContain('line 2')
    const nowhere = join(folder(), 'nowhere', 'x.csv')
    expect((await command(['export-rolls', nowhere])).code).toBe(registry['house.file-unwritable'].exit)
    expect(existsSync(nowhere)).toBe(false)
  })
})

describe('paper', () => {
  beforeAll(readerOfCodes)

  it('of rolls is set here and by the running program alike, with codes that lead to the rolls', async () => {
    const file = join(folder(), 'stickers.pdf')
    const { rolls } = await json('take-in-answer', ['take-in', '-'], LIST)
    const all = rolls.map(({ number }: { number: string }) => number)
    expect((await command(['stickers', file, ...all, ...BASE])).code).toBe(0)
    const codes = (await codesOn(readFileSync(file))).map(({ text }) => text)
    expect(codes.sort()).toEqual(all.flatMap((number: string) => Array(2).fill(`${BASE[1]}/r/${number}`)))
    const served = await start()
    expect((await command(['stickers', file, ...all])).code).toBe(0)
    const there = (await codesOn(readFileSync(file))).map(({ text }) => text)
    expect(there.every((text) => text.startsWith(served.house.address()))).toBe(true)
    expect(there).toHaveLength(4)
  })

  it('of an order is its slip, and orders are listed', async () => {
    const served = await start()
    const asked = { person: 'Ida', counted_in: 1, deposit: '20' }
    const { id } = (await served.ask({ method: 'POST', url: '/api/orders', body: asked })).json
    await json('take-in-answer', ['take-in', '--film', 'Tarn 100', '--whose', 'Ida', '--order', id])
    expect((await json('orders', ['orders'])).orders).toHaveLength(1)
    expect((await command(['orders', id])).out[0]).toBe(`${id}  Ida: 1 of 1 taken in`)
    const file = join(folder(), 'slip.pdf')
    expect((await command(['slip', id, file, '--paper', 'Letter'])).code).toBe(0)
    const through = (await wordsOn(readFileSync(file))).map(({ text }) => text).join(' ')
    expect(through).toContain('One roll counted when handed over.')
    await served.stop()
    expect((await command(['slip', id, file, '--paper', 'Letter', ...BASE])).code).toBe(0)
    // Only the day of printing may differ: the program of the test has a clock of its own.
    const here = (await wordsOn(readFileSync(file))).map(({ text }) => text).join(' ')
    const undated = (text: string) => text.replace(/Printed \d+ \w+ \d{4}/, '')
    expect(undated(here)).toBe(undated(through))
  })

  it('says what is missing where nobody runs', async () => {
    const refused = await command(['stickers', join(folder(), 'x.pdf'), '--base', 'here'])
    expect(refused.code).toBe(registry['command.usage'].exit)
    expect(existsSync(join(folder(), 'x.pdf'))).toBe(false)
  })
})
