import { describe, expect, it } from 'vitest'
import { command } from '../support/commands.js'

describe('options and JSON ask the same', () => {
  const pairs: [argv: string[], question: object, input?: string][] = [
    [
      [
        'temper',
        '--for',
        'taps',
        '--volume',
        '800mL',
        '--want',
        '68F',
        '--hot',
        '50C',
        '--cold',
        '10C',
        '-t',
        'glass 200g 30C',
      ],
      {
        ask: 'taps',
        volume_ml: 800,
        wanted_c: 20,
        hot_c: 50,
        cold_c: 10,
        vessel: { mass_g: 200, temperature_c: 30, material: 'glass' },
      },
    ],
    [
      ['temper', '--for', 'pour', '--volume', '0.5L', '--want', '20C', '--thing', '80g 26C', '-t', 'film 20g 26C'],
      {
        ask: 'pour',
        volume_ml: 500,
        wanted_c: 20,
        things: [
          { mass_g: 80, temperature_c: 26 },
          { mass_g: 20, temperature_c: 26, material: 'film' },
        ],
      },
    ],
    [
      ['temper', '--for', 'ice', '--volume', '1L', '--from', '24C', '--want', '20C'],
      { ask: 'ice', volume_ml: 1000, from_c: 24, wanted_c: 20 },
    ],
    [['temper', '--for', 'cold', '--at', '50F'], { ask: 'cold', temperature_c: 10 }],
    [
      ['temper', '-', '--for', 'standing', '--around', '18C', '--want', '20C', '--reading-error', '0.1'],
      {
        ask: 'standing',
        around_c: 18,
        wanted_c: 20,
        reading_error_c: 0.1,
        readings: [
          { at_s: 0, temperature_c: 24 },
          { at_s: 900, temperature_c: 23 },
        ],
      },
      '0:00 24C\n15:00 23C\n',
    ],
    [
      [
        'temper',
        '--for',
        'standing',
        '--around',
        '18C',
        '--material',
        'glass',
        '--in',
        'water',
        '--volume',
        '1L',
        '--from',
        '24C',
        '--after',
        '5:00',
      ],
      {
        ask: 'standing',
        around_c: 18,
        from_c: 24,
        after_s: 300,
        vessel: { volume_ml: 1000, material: 'glass', stands_in: 'water' },
      },
    ],
    [
      ['temper', '--for', 'baths', '-b', 'Developer 20C', '-b', 'Fix=21.5C'],
      {
        ask: 'baths',
        baths: [
          { name: 'Developer', temperature_c: 20, develops: true },
          { name: 'Fix', temperature_c: 21.5 },
        ],
      },
    ],
    [['dilute', '-r', '1:4', '--total', '300mL'], { ask: 'ratio', ratio: '1:4', total_ml: 300 }],
    [
      ['dilute', '-r', '1+1+100', '-s', 'enough', '-s', '5mL'],
      { ask: 'ratio', ratio: [1, 1, 100], stocks_ml: [null, 5] },
    ],
    [
      ['dilute', '--for', 'chain', '-r', '1+1', '-r', '1+4'],
      {
        ask: 'chain',
        ratios: [
          [1, 1],
          [1, 4],
        ],
      },
    ],
    [['dilute', '--for', 'into', '--amount', '50mL', '--total', '1L'], { ask: 'into', amount_ml: 50, volume_ml: 1000 }],
    [
      ['dilute', '--for', 'stock', '-r', '1+3', '-r', '1+31', '--total', '1L'],
      { ask: 'stock', stock: [1, 3], working: [1, 31], total_ml: 1000 },
    ],
    [
      ['dilute', '--for', 'blend', '--from', '28', '--weak', '5', '--want', '10', '--total', '1L'],
      { ask: 'blend', strong: 28, weak: 5, wanted: 10, total_ml: 1000 },
    ],
    [
      ['dilute', '--for', 'percent', '--want', '10', '--density', '1,03', '--total', '250mL'],
      { ask: 'percent', percent: 10, density: 1.03, total_ml: 250 },
    ],
    [
      ['dilute', '--for', 'acetic', '--from', '99.5', '--want', '28', '--total', '1L'],
      { ask: 'acetic', from: 99.5, wanted: 28, total_ml: 1000 },
    ],
    [
      [
        'dilute',
        '--for',
        'floor',
        '-r',
        '1+25',
        '-r',
        '1+15',
        '--total',
        '250mL',
        '--floor',
        '6mL',
        '--rolls',
        '2',
        '--tank',
        'two reel 600mL 2',
      ],
      {
        ask: 'floor',
        ratio: [1, 25],
        others: [[1, 15]],
        volume_ml: 250,
        floor_ml: 6,
        rolls: 2,
        tanks: [{ name: 'two reel', holds_ml: 600, rolls: 2 }],
      },
    ],
    [
      ['dilute', '--for', 'measure', '--amount', '12mL', '-g', '100mL 2mL', '-g', 'syringe 10mL 0.5mL'],
      {
        ask: 'measure',
        volume_ml: 12,
        graduates: [
          { kind: 'graduate', holds_ml: 100, marks_ml: 2 },
          { kind: 'syringe', holds_ml: 10, marks_ml: 0.5 },
        ],
      },
    ],
    [
      ['dilute', '--for', 'drops', '--amount', '5mL', '--drops-each', '25'],
      { ask: 'drops', volume_ml: 5, drops_each: 25 },
    ],
  ]
  it.each(pairs)('%j', async (argv, question, input) => {
    const typed = await command([...argv, '--explain'], input)
    expect([typed.code, typed.err]).toEqual([0, []])
    const name = argv[0] as string
    expect(typed).toEqual(await command([name, '-', '--explain'], JSON.stringify(question)))
  })
})
