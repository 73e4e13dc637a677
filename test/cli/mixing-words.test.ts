import { describe, expect, it } from 'vitest'
import { command } from '../support/commands.js'
import { type Refused, refuses } from '../support/refusals.js'

const [USAGE, DATA] = [64, 65]

describe('what is typed wrongly ends with its exit code and a sentence', () => {
  const taps = ['temper', '--for', 'taps', '--volume', '1L', '--hot', '50C', '--cold', '12C']
  const standing = ['temper', '--for', 'standing', '--around', '18C']
  const cases: Refused[] = [
    ['nothing', ['temper'], USAGE, /--for taps/],
    ['a question nobody answers', ['temper', '--for', 'magic'], USAGE, /taps/],
    ['no wanted temperature', taps, USAGE, /--want/],
    ['a temperature out of reach', [...taps, '--want', '10C'], DATA, /10 °C.*12 °C to 50 °C.*ice/],
    ['two vessels', [...taps, '--want', '20C', '-t', '80g 20C', '-t', '80g 20C'], USAGE, /one --thing/],
    ['a thing without warmth', [...taps, '--want', '20C', '-t', 'steel'], USAGE, /“steel”.*steel 240g 18C/],
    ['ice that warms', ['temper', '--for', 'ice', '--volume', '1L', '--from', '20C', '--want', '24C'], DATA, /24 °C/],
    ['a bath without temperature', ['temper', '--for', 'baths', '-b', 'Fix'], USAGE, /“Fix”/],
    ['standing without anything', standing, USAGE, /two readings/],
    ['a constant and no start', [...standing, '--constant', '2:00:00'], USAGE, /--from/],
    ['a constant of a second', [...standing, '--constant', '0:01', '--from', '20C'], DATA, /30/],
    ['readings that go away', [...standing, '-'], DATA, /18 °C/, '0:00 20C\n9:00 21C\n'],
    [
      'a temperature never reached',
      [...standing, '--constant', '2:00:00', '--from', '24C', '--want', '17C'],
      DATA,
      /17 °C/,
    ],
    ['JSON of another shape', ['temper', '-'], USAGE, /ask/, '{"ask":"magic"}'],
    ['no ratio', ['dilute'], USAGE, /--ratio 1\+9/],
    ['a ratio of letters', ['dilute', '-r', 'x', '--total', '1L'], DATA, /“x”/],
    ['no total and no stock', ['dilute', '-r', '1+4'], USAGE, /--total/],
    ['a colon and a stock', ['dilute', '-r', '1:4', '-s', '50mL'], USAGE, /two ways/],
    [
      'more stocks than parts',
      ['dilute', '-r', '1+4', '-s', '5mL', '-s', '5mL', '-s', '5mL'],
      DATA,
      /3 stocks.*2 parts/,
    ],
    ['an ambiguous ratio in a chain', ['dilute', '--for', 'chain', '-r', '1:4'], DATA, /1 \+ 4.*1 \+ 3/],
    [
      'a blend out of reach',
      ['dilute', '--for', 'blend', '--from', '5', '--want', '6', '--total', '1L'],
      DATA,
      /6 %.*between/,
    ],
    ['a blend without strengths', ['dilute', '--for', 'blend', '--total', '1L'], USAGE, /--from 28 --want 2/],
    ['one ratio for a stock', ['dilute', '--for', 'stock', '-r', '1+3', '--total', '1L'], USAGE, /--ratio 1\+31/],
    [
      'a bath stronger than its stock',
      ['dilute', '--for', 'stock', '-r', '1+9', '-r', '1+3', '--total', '1L'],
      DATA,
      /stock/,
    ],
    [
      'a tank without rolls',
      ['dilute', '--for', 'floor', '-r', '1+9', '--total', '1L', '--floor', '5mL', '--rolls', '1', '--tank', 'x'],
      USAGE,
      /two-reel 600mL 2/,
    ],
    [
      'a floor without rolls',
      ['dilute', '--for', 'floor', '-r', '1+9', '--total', '1L', '--floor', '5mL'],
      USAGE,
      /--rolls/,
    ],
    ['a graduate without marks', ['dilute', '--for', 'measure', '--amount', '5mL', '-g', '100mL'], USAGE, /100mL 2mL/],
    ['lines for dilute', ['dilute', '-'], USAGE, /JSON/, '1+4\n'],
  ]
  refuses(cases)
})

describe('said as a person would', () => {
  const lines = async (...argv: string[]) => (await command(argv)).out
  it('a warm vessel spares hot water, a cold one takes it', async () => {
    const taps = ['temper', '--for', 'taps', '--volume', '800mL', '--want', '20C', '--hot', '50C', '--cold', '10C']
    expect((await lines(...taps, '-t', '40g 30C'))[1]).toMatch(/warm and spares 10 mL/)
    expect((await lines(...taps, '-t', '40g 10C'))[1]).toMatch(/10 mL of the hot water only warms/)
    expect(await lines(...taps, '-t', '2g 18C')).toHaveLength(1)
  })
  it('waters too far apart for the rule are said', async () => {
    const [, said] = await lines(
      'temper',
      '--for',
      'taps',
      '--volume',
      '1L',
      '--want',
      '30C',
      '--hot',
      '60C',
      '--cold',
      '5C',
    )
    expect(said).toMatch(/0\.3 °C colder/)
  })
  it('baths that lie close are said to, and a chain is', async () => {
    expect(await lines('temper', '--for', 'baths', '-b', 'Developer 20C', '-b', 'Fix 20.5C')).toEqual([
      'The baths lie close enough together.',
    ])
    const chain = ['-b', 'Soak 21.5C', '-b', 'Developer 20C', '-b', 'Fix 18.6C'].map(String)
    expect((await lines('temper', '--for', 'baths', ...chain)).at(-1)).toMatch(/From Soak to Fix it is 2\.9 °C/)
  })
  it('what is enough, what keeps its temperature, and what nothing measures', async () => {
    expect(
      await lines('dilute', '--for', 'floor', '-r', '1+9', '--total', '500mL', '--floor', '6mL', '--rolls', '2'),
    ).toEqual(['It holds 50 mL of concentrate, and the rolls need 12 mL: enough.'])
    expect(
      await lines('temper', '--for', 'standing', '--around', '20C', '--from', '20.4C', '--constant', '1:00:00'),
    ).toContain('It moves by less than half a degree however long it stands.')
    expect((await lines('dilute', '--for', 'measure', '--amount', '0.3mL', '-g', '100mL 2mL'))[0]).toMatch(
      /finer syringe/,
    )
  })
  it('in Fahrenheit and fluid ounces for who reads them', async () => {
    const [said] = await lines(
      'temper',
      '--for',
      'pour',
      '--us',
      '--volume',
      '17',
      '--want',
      '68',
      '-t',
      'steel 12oz 60F',
    )
    expect(said).toMatch(/68\.\d °F/)
  })
})
