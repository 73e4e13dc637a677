import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'

const POINTS = ['--point', '18C 11:30', '--point', '20C 9:30', '--point', '24C 6:45']
const READINGS = 's temperature\n0:00 20.0C\n8:00 24.0C\n'

describe('--json prints what its published schema says', () => {
  const cases: [schema: keyof typeof published, argv: string[], input?: string][] = [
    ['time-answer', ['time', '--at', '21.6C', ...POINTS, '--json']],
    ['time-answer', ['time', '--at', '70.9F', '--us', '--factor', '1,1', ...POINTS, '--json', '--explain']],
    ['time-answer', ['time', '--at', '37.8C', '--kind', 'fixed', '--point', '37.8C 3:15', '--json']],
    ['time-answer', ['time', '--at', '30C', '--law', 'arrhenius', ...POINTS, '--json']],
    ['dose-answer', ['dose', '--point', '20C 8:00', '--json'], READINGS],
    ['thermometer-answer', ['thermometer', '--read', '21C', '--json']],
    ['thermometer-answer', ['thermometer', '--read', '40C', '-c', '20.4=20.0', '-c', '30.1=30', '--json']],
    ['score-answer', ['score', 'colour-negative', '--json']],
    ['score-answer', ['score', 'three-bath-acid-stop', '--at', '19C', ...POINTS, '--json']],
    ['pasted-reading', ['table', '--json'], 'Tarn 100 18C 20C\n100 10:15 1o\n'],
  ]
  it.each(cases)('%s: %j', async (schema, argv, input) => {
    const { code, out, err } = await command(argv, input)
    expect([code, err]).toEqual([0, []])
    const parsed = published[schema].safeParse(JSON.parse(out.join('\n')))
    expect(parsed.error?.issues ?? []).toEqual([])
  })

  it('a problem is JSON too, with its code, sentence and values', async () => {
    const { code, out, err } = await command([
      'time',
      '--at',
      '21C',
      '--point',
      '20C 9:30',
      '--point',
      '24C 11:00',
      '--json',
    ])
    expect([code, err]).toEqual([65, []])
    expect(JSON.parse(out.join('\n'))).toMatchObject({
      problem: {
        code: 'times.slower-when-warmer',
        sentence: expect.stringContaining('11:00'),
        details: { first: '9:30' },
      },
    })
  })
})

describe('the answers agree with each other', () => {
  it('a time in either unit is the same', async () => {
    const seconds = async (...argv: string[]) =>
      JSON.parse((await command(['time', ...argv, ...POINTS, '--json'])).out.join('\n')).time_s
    expect(await seconds('--at', '71.6F')).toBeCloseTo(await seconds('--at', '22C'), 6)
    expect(await seconds('--at', '71.6', '--us')).toBeCloseTo(await seconds('--at', '22'), 6)
  })

  it('a bath that stays at the temperature of the sheet has a dose of its own time', async () => {
    const { out } = await command(['dose', '--point', '20C 8:00', '--json'], '0:00 20C\n4:00 20C\n8:00 20C\n')
    const answer = JSON.parse(out.join('\n'))
    expect(answer.equivalent_s).toBeCloseTo(480, 6)
    expect(answer.fraction).toBeCloseTo(1, 9)
  })
})
