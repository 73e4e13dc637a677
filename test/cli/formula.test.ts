import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { published } from '../../src/wire/index.js'
import { command } from '../support/commands.js'
import { tempFolders } from '../support/folders.js'
import { type Refused, refuses } from '../support/refusals.js'

const [USAGE, DATA, NO_INPUT] = [64, 65, 66]
const newFolder = tempFolders()

/** A developer of one's own, with caustic and too little bromide for a scale. */
const OWN = {
  name: 'Hydroquinone–caustic developer',
  role: 'developer',
  additions: [
    { salt: 'sulfite-anhydrous', grams_per_l: 50 },
    { salt: 'hydroquinone', grams_per_l: 10 },
    { salt: 'bromide-potassium', grams_per_l: 0.5 },
    { salt: 'hydroxide-sodium', grams_per_l: 10 },
  ],
  source: 'a note on the wall',
}

async function answered(argv: string[], input = '') {
  const { code, out, err } = await command(['formula', ...argv, '--json'], input)
  expect([code, err]).toEqual([0, []])
  const read = published['formula-answer'].safeParse(JSON.parse(out.join('\n')))
  expect(read.error?.issues ?? []).toEqual([])
  return read.data as NonNullable<typeof read.data>
}
const ask = (question: object) => answered(['-'], JSON.stringify(question))
const said = async (...argv: string[]) => (await command(['formula', ...argv])).out

describe('a bath mixed by weight', () => {
  it('by composition or by its name, scaled, in its order, with its cautions at their lines', async () => {
    const found = await answered(['--mix', 'metol-hydroquinone-borax', '--volume', '3L'])
    expect(found.lines.map(({ salt, grams }) => [salt, Number(grams?.toFixed(9))])).toEqual([
      ['metol', 6],
      ['sulfite-anhydrous', 300],
      ['hydroquinone', 15],
      ['borax', 6],
    ])
    expect(found.lines[0]?.cautions.map(({ code }) => code)).toEqual([
      'pinch-of-sulfite-first',
      'sensitiser',
      'no-dust',
      'dissolve-before-next',
    ])
    expect(found.water).toMatchObject({ first_ml: 2250, low_c: 32, high_c: 52, cold: false })
    expect(found.formula).toMatchObject({ id: 'metol-hydroquinone-borax', tag: 'memory' })
    expect(await answered(['--mix', 'metol–hydroquinone–borax developer', '--volume', '3L'])).toEqual(found)
    expect(found.sentences[1]).toMatch(/from memory/)
  })

  it('JSON asks what options ask', async () => {
    const options = ['--mix', 'plain-hypo', '--all-of', 'hypo-anhydrous=320g', '--have', 'hypo=hypo-anhydrous']
    const byOptions = await answered([...options, '--scale', '1g'])
    expect(
      await ask({
        formula: 'plain-hypo',
        all_of: { salt: 'hypo-anhydrous', grams: 320 },
        at_hand: [{ salt: 'hypo-anhydrous', instead: 'hypo' }],
        scale_step_g: 1,
      }),
    ).toEqual(byOptions)
    const { lines, volume_ml, water } = byOptions
    // 240 g/L of crystals are 152.9 g/L without their water.
    expect(volume_ml).toBeCloseTo(320 / 0.152891, 0)
    expect(lines).toMatchObject([{ salt: 'hypo-anhydrous', called_for: { salt: 'hypo', kind: 'hydrate' } }])
    expect(lines[0]?.grams).toBeCloseTo(320, 9)
    expect(water.high_c).toBe(27)
  })

  it('one’s own, out of a file: caustic into cold water, and a solution of what the scale does not tell', async () => {
    const file = join(newFolder(), 'mine.json')
    writeFileSync(file, JSON.stringify(OWN))
    const found = await answered(['--mix', file, '--volume', '1L'])
    expect(await ask({ formula: OWN, volume_ml: 1000 })).toEqual(found)
    expect(found.formula).toEqual({ id: null, name: OWN.name, role: 'developer', tag: 'own', source: OWN.source })
    expect(found.water).toMatchObject({ cold: true, high_c: 20 })
    expect(found.lines[2]?.solution).toEqual({ percent: 10, measured_ml: 5, grams: 10, made_up_to_ml: 100 })
    expect(found.lines.map(({ solution }) => solution === null)).toEqual([true, true, false, true])
    const lines = await said('--mix', file, '--volume', '1L')
    const caustic = lines.findIndex((line) => line.startsWith('4. 10.0 g of sodium hydroxide'))
    expect(lines[caustic + 1]).toMatch(/^ {3}Caustic: .*Never water onto it/)
    expect(lines.join(' ')).toMatch(/measure 5.0 mL of it; count that into the water/)
  })

  it('acid into water at its line, and what is doubtful at the end', async () => {
    const lines = await said('--mix', 'acid-hardening-fixer', '--volume', '1L')
    const acid = lines.findIndex((line) => line.includes('48 mL of acetic acid of 28 %'))
    expect(lines[acid + 1]).toMatch(/acid goes into the water/)
    const wrong = { ...OWN, role: 'fixer', additions: [{ salt: 'hypo', grams_per_l: 200 }] }
    const acidFirst = [...wrong.additions, { salt: 'acetic-acid', ml_per_l: 40, percent: 28 }]
    const found = await ask({ formula: { ...wrong, additions: acidFirst }, volume_ml: 1000 })
    expect(found.doubts.map(({ code }) => code)).toEqual(['acid-fixer-without-sulfite'])
    expect(found.sentences.at(-1)).toBe(found.doubts[0]?.sentence)
    expect(found.water).toMatchObject({ low_c: 32, high_c: 40 })
  })

  it('another salt comes with its companion, and says why', async () => {
    const formula = {
      name: 'Ascorbate developer',
      role: 'developer',
      additions: [
        { salt: 'ascorbate', grams_per_l: 10 },
        { salt: 'metaborate-octa', grams_per_l: 20 },
      ],
    }
    const found = await ask({ formula, volume_ml: 1000, at_hand: [{ salt: 'ascorbic-acid' }] })
    expect(found.lines.map(({ salt }) => salt)).toEqual(['ascorbic-acid', 'bicarbonate', 'metaborate-octa'])
    expect(found.lines[0]?.called_for).toMatchObject({ salt: 'ascorbate', kind: 'published' })
    expect(found.sentences.join(' ')).toMatch(/neutralised/)
  })

  it('the working has the source of every number', async () => {
    const file = join(newFolder(), 'mine.json')
    writeFileSync(file, JSON.stringify(OWN))
    for (const argv of [
      ['--mix', file, '--volume', '1L'],
      ['--mix', 'plain-hypo', '--all-of', 'hypo-anhydrous=320g', '--have', 'hypo-anhydrous'],
      ['--mix', 'sulfate-stop', '--volume', '1L', '--have', 'sulfate-crystal', '--scale', '0.5g'],
    ]) {
      const { working } = await answered(argv)
      for (const { line, source } of working) {
        expect(`${line} ${source}`).not.toMatch(/undefined|NaN|\[object/)
        expect(source).not.toBe('')
      }
    }
    const told = (await said('--mix', file, '--volume', '1L', '--explain')).join('\n')
    expect(told).toMatch(/50 g\/L × 1000 mL = 50\.0 g +\[your own: a note on the wall\]/)
    expect(told).toMatch(/20 × 0\.1 g = 2 g +\[step assumed; twenty of them by common practice\]/)
    const swap = await said('--mix', 'plain-hypo', '--volume', '1L', '--have', 'hypo-anhydrous', '--explain')
    expect(swap.join('\n')).toMatch(/240\.0 g × 158\.097\/248\.172 g\/mol = 152\.9 g +\[molar masses; IUPAC/)
  })

  it('in ounces for those who ask', async () => {
    const lines = await said('--mix', 'plain-hypo', '--volume', '32oz', '--us')
    expect(lines.join(' ')).toMatch(/8\.012 oz of sodium thiosulfate \(crystalline\)/)
    expect(lines.join(' ')).toMatch(/°F/)
  })
})

describe('refused', () => {
  const MIX = ['--mix', 'plain-hypo', '--volume', '1L']
  const developer = ['--mix', 'metol-hydroquinone-borax', '--volume']
  const cases: Refused[] = [
    ['no formula', [], USAGE, /--mix plain-hypo/],
    ['a formula nobody knows', ['--mix', 'soup', '--volume', '1L'], USAGE, /“soup”.*citric-stop/],
    ['no volume', ['--mix', 'plain-hypo'], USAGE, /--volume 600mL/],
    ['two volumes', [...MIX, '--all-of', 'hypo=100g'], USAGE, /--all-of hypo=500g/],
    ['all of nothing', ['--mix', 'plain-hypo', '--all-of', 'hypo'], USAGE, /“hypo”.*hypo=500g/],
    ['all of what is not in it', ['--mix', 'plain-hypo', '--all-of', 'borax=50g'], DATA, /“borax”.*hypo/],
    ['a jar without a name', [...MIX, '--have', 'hypo='], USAGE, /“hypo=”/],
    ['a jar nobody knows', [...MIX, '--have', 'salt'], DATA, /“salt”/],
    ['another salt', [...MIX, '--have', 'hypo=ammonium-thiosulfate'], DATA, /different salts.*no published swap/],
    ['a jar for nothing', [...MIX, '--have', 'borax'], DATA, /place of nothing.*calls for hypo/],
    ['a volume of a drop', ['--mix', 'plain-hypo', '--volume', '5mL'], DATA, /5 is outside 10/],
    [
      'less than the scale tells, and no room for a solution',
      [...developer, '200mL', '--scale', '1g'],
      DATA,
      /20 g.*finer scale, or mix/,
    ],
    ['JSON that is none', ['-'], USAGE, /the question is not JSON/, 'plain hypo'],
    ['JSON of another question', ['-'], USAGE, /the question: formula/, '{ "volume_ml": 500 }'],
    [
      'an addition of both',
      ['-'],
      USAGE,
      /“hypo” should have grams_per_l/,
      JSON.stringify({
        formula: { name: 'x', additions: [{ salt: 'hypo', grams_per_l: 1, ml_per_l: 1 }] },
        volume_ml: 500,
      }),
    ],
    ['a file that is not there', ['--mix', 'missing.json', '--volume', '1L'], NO_INPUT, /missing\.json/],
  ]
  refuses(cases, ['formula'])
})
