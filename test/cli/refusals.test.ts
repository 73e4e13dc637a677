import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, vi } from 'vitest'
import { command } from '../support/commands.js'
import { dataFolders } from '../support/program.js'
import { type Refused, refuses } from '../support/refusals.js'

/** As sysexits(3) names them. */
const [USAGE, DATA, NO_INPUT, CANNOT_CREATE] = [64, 65, 66, 73]
const { folder } = dataFolders()

const POINT = ['--point', '20C 9:30']
const PUSH = ['--of-index', '400', '--exposed-at']
const at = (...argv: string[]) => ['time', '--at', ...argv]

describe('what is typed wrongly ends with its exit code and a sentence', () => {
  const cases: Refused[] = [
    ['an unknown command', ['develop'], USAGE, /develop/],
    ['an unknown option', at('20C', '--temperature', '3'), USAGE, /--temperature/],
    ['an option without its value', ['time', '--at'], USAGE, /--at/],
    ['a file name missing', ['backup'], USAGE, /file/],
    ['a word too many', ['backup', 'a', 'b'], USAGE, /argument/],
    ['no temperature asked', ['time', ...POINT], USAGE, /--at 21\.6C/],
    ['a law nobody knows', at('20C', ...POINT, '--law', 'linear'), USAGE, /linear.*exponential/],
    ['a class nobody knows', at('20C', ...POINT, '--class', 'magic'), USAGE, /“magic”.*metol/],
    ['a coefficient in words', at('20C', ...POINT, '--coefficient', 'two'), USAGE, /“two”.*number/],
    ['a factor of nothing', at('20C', ...POINT, '--factor', ''), USAGE, /“”.*number/],
    ['a point without a time', at('20C', '--point', '20C'), USAGE, /“20C”.*20C 9:30/],
    ['a check without its truth', ['thermometer', '--read', '20C', '--check', '20.4'], USAGE, /“20\.4”.*20\.4=20\.0/],
    ['a check with three parts', ['thermometer', '--read', '20C', '--check', '1=2=3'], USAGE, /“1=2=3”/],
    ['no reading', ['thermometer'], USAGE, /--read/],
    ['readings of one word', ['dose', ...POINT], USAGE, /“20C”/, '20C\n'],
    ['a restore without saying so', ['restore', 'x'], USAGE, /--replace/],
    ['no points', at('20C'), DATA, /at least one/],
    ['a temperature in words', at('warm', ...POINT), DATA, /“warm”/],
    ['a temperature with two readings', at('100', ...POINT), DATA, /100.*°[CF].*, or /],
    ['a temperature of steam', at('99C', ...POINT), DATA, /99/],
    ['a time of nonsense', at('20C', '--point', '20C 1::4'), DATA, /“1::4”/],
    ['two times at one temperature', at('20C', ...POINT, '--point', '20C 9:00'), DATA, /9:30 and 9:00/],
    ['slower when warmer', at('20C', ...POINT, '--point', '24C 10:00'), DATA, /10:00.*9:30/],
    ['a coefficient of 40', at('22C', ...POINT, '--coefficient', '40'), DATA, /40.*outside/],
    ['a factor below nothing', at('20C', ...POINT, '--factor', '-1'), DATA, /-1|−1/],
    ['a push without its start', at('20C', ...POINT, '--exposed-at', '800'), USAGE, /--of-index 400/],
    ['a push nobody practises', at('20C', ...POINT, ...PUSH, '3200'), DATA, /3 stops/],
    ['a push counted twice', at('20C', ...POINT, ...PUSH, '400', '--push', '1.4'), DATA, /count it twice/],
    ['a use that is none', at('20C', ...POINT, '--use', '0'), DATA, /1 is fresh/],
    ['a broken thermometer', ['thermometer', '--read', '20C', '-c', '30=20'], DATA, /broken/],
    ['one reading only', ['dose', ...POINT], DATA, /at least two/, '0:00 20C\n'],
    ['JSON that is none', ['dose'], USAGE, /the question is not JSON/, '{ "time": '],
    ['JSON of another question', ['dose'], USAGE, /the question: readings/, '{ "time": { "points": [] } }'],
    ['densities without a tablet', ['strip'], USAGE, /--tablet 21-step/, '0.2\n0.3\n0.4\n0.5\n'],
    ['a density in words', ['strip'], USAGE, /“0.2 thick”/, '0.2 thick\n'],
    ['a tablet nobody knows', ['strip', '--tablet', '9-step'], USAGE, /9-step/, '0.2\n'],
    ['a strip of three steps', ['strip'], DATA, /at least 4/, '0.1 0.9\n0.4 0.6\n0.7 0.3\n'],
    ['fewer densities than steps', ['strip', '--tablet', '11-step'], DATA, /11 steps/, '0.9\n0.6\n'],
    ['no contrast wanted', ['contrast'], USAGE, /--wanted 0.62/, '4:00 0.50\n'],
    ['a contrast past the most', ['contrast', '--wanted', '1.2'], DATA, /1.2/, '4:00 0.50\n8:00 0.75\n'],
    ['one strip only', ['contrast', '--wanted', '0.6'], DATA, /2 strips/, '4:00 0.50\n'],
    ['a frame without its time', ['index', '--iso', '400', '--meter', 'f/11 1/15'], USAGE, /“f\/8 ”/, 'f/8\n'],
    ['no meter', ['index'], USAGE, /--iso 400/, 'f/8 1/15\n'],
    ['nothing read', ['density'], USAGE, /--enlarger 10=13/],
    ['an enlarger backwards', ['density', '-e', '13=10'], DATA, /matching time of 10/],
    ['a range without its model', ['zones', '--range', '0.8'], USAGE, /one model/],
    ['a range of nothing', ['range'], USAGE, /--subject 160/],
    ['room without a gradient', ['range', '--from', '0.4', '--to', '1.4'], USAGE, /--gradient/],
    ['densities asked in anything but JSON', ['density', '-'], USAGE, /the question is not JSON/, '0.085 0.10\n'],
    ['a density of another question', ['density', '-'], USAGE, /the question: known/, '{ "known": 3 }'],
    ['nothing read, in JSON', ['density', '-'], USAGE, /--enlarger 10=13/, '{}'],
    ['a range without its model, in JSON', ['zones', '-'], USAGE, /one model/, '{ "density_range": 0.8 }'],
    ['a zone that was not read', ['zones', '-'], DATA, /outside 0 to 0/, '{ "densities": [0.02, 0.11] }'],
    ['a subject in words', ['range', '-'], USAGE, /the question: subject/, '{ "subject": "wide" }'],
    ['nothing known, in JSON', ['range', '-'], USAGE, /--subject 160/, '{}'],
    ['a control strip of two numbers', ['control'], USAGE, /“0.12 0.60”/, '0.12 0.60\n'],
    ['one control strip', ['control'], DATA, /at least 2/, '0.12 0.60 0.60\n'],
    ['an aim of nothing known', ['control', '--aim', 'grain=1'], USAGE, /“grain=1”/, '0.12 0.60 0.60\n'],
    ['a curve nobody knows', ['fit', 'wave'], USAGE, /“wave”.*rise/, '1 2\n'],
    ['a fit without pairs enough', ['fit', 'rise'], DATA, /at least 2/, '1 2\n'],
    ['a fit without its start', ['fit', 'quotient'], DATA, /4/, '1 2\n2 3\n3 4\n4 5\n'],
    ['readings back in time', ['dose', ...POINT], DATA, /not later/, '2:00 20C\n1:00 21C\n'],
    ['a table of nothing', ['table'], DATA, /holds no time/, 'hello\n'],
    ['a list that is too long', ['dose', ...POINT], DATA, /longer than 1 MB/, '0:00 20C\n'.repeat(120_000)],
    ['a stored time on an empty bench', at('20C', '--stored', 'Corvane'), NO_INPUT, /Corvane/],
  ]
  refuses(cases)

  it('asking for help is no mistake', async () => {
    for (const argv of [[], ['--help'], ['time', '--help']]) expect((await command(argv)).code).toBe(0)
  })

  it('with --us a refusal speaks of degrees Fahrenheit', async () => {
    const { err } = await command(at('68F', '--us', '--point', '68F 9:30', '--point', '75F 10:00'))
    expect(err.join(' ')).toMatch(/68 °F/)
    expect(err.join(' ')).not.toContain('°C')
  })
})

describe('files', () => {
  it.each(['dose', 'table', 'strip'])('%s of a file that is not there', async (name) => {
    const missing = join(folder(), 'missing.txt')
    const ran = await command([name, missing, ...(name === 'dose' ? POINT : [])])
    expect(ran.code).toBe(NO_INPUT)
    expect(ran.err.join(' ')).toContain(missing)
  })

  it('a restore of a file that is not there', async () => {
    const missing = join(folder(), 'missing.ndjson')
    const ran = await command(['restore', missing, '--replace'])
    expect(ran.code).toBe(NO_INPUT)
    expect(ran.err.join(' ')).toContain(missing)
  })

  it('a restore of a file that is no backup', async () => {
    const file = join(folder(), 'letter.txt')
    writeFileSync(file, 'Dear all,\n')
    const ran = await command(['restore', file, '--replace'])
    expect(ran.code).toBe(DATA)
    expect(ran.err.join(' ')).toMatch(/not a backup/)
  })

  it('a backup to a folder that is not there leaves nothing', async () => {
    const ran = await command(['backup', join(folder(), 'nowhere', 'x.ndjson')])
    expect(ran.code).toBe(CANNOT_CREATE)
    expect(ran.err.join(' ')).toContain('nowhere')
  })

  it('a data folder that cannot be', async () => {
    const file = join(folder(), 'a-file')
    writeFileSync(file, '')
    vi.stubEnv('DATA_DIR', join(file, 'below'))
    expect((await command(['backup', join(folder(), 'x.ndjson')])).code).toBe(CANNOT_CREATE)
  })

  it('a database address that is none', async () => {
    vi.stubEnv('DATABASE_URL', 'mysql://x')
    const ran = await command(['backup', join(folder(), 'x.ndjson')])
    expect(ran.code).toBe(USAGE)
    expect(ran.err.join(' ')).toContain('“mysql://x”')
  })
})
