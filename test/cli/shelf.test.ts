import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { command } from '../support/commands.js'
import { dataFolders } from '../support/program.js'

const { folder } = dataFolders()

/** What a command prints; it must end well. */
const says = async (argv: string[], input?: string): Promise<readonly string[]> => {
  const { code, out, err } = await command(argv, input)
  expect([argv[0], code, err]).toEqual([argv[0], 0, []])
  return out
}
const json = async (argv: string[], input?: string) => JSON.parse((await says([...argv, '--json'], input)).join('\n'))
const refused = async (argv: string[]): Promise<string> => {
  const { code, err } = await command(argv)
  expect(code).toBeGreaterThan(0)
  return err.join('\n')
}

const FIXER = {
  name: 'Ammonium fixer',
  role: 'fixer',
  use: 'reusable',
  rolls_per_litre: 20,
  hazards: ['fumes'],
  fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
}

/** A fixer with a package, two bottles and a jug; its first lot stands in the first bottle. */
async function bench() {
  const { id } = await json(['keep-product', '-'], JSON.stringify(FIXER))
  await says(['add-container', 'package', 'Concentrate', '--holds', '1L', '--product', id, '--price', '15 EUR'])
  for (const name of ['Brown 1', 'Brown 2']) await says(['add-container', 'bottle', name, '--holds', '1L'])
  await says(['add-container', 'jug', 'Silver', '--holds', '5L'])
  await says(['mix', 'Ammonium fixer', '600mL', '--parts', '1+4', '--into', 'Brown 1'])
}

// Every command opens the data anew, which is slow on a busy machine.
describe('the shelf at a terminal', { timeout: 120_000 }, () => {
  it('tells a mix step by step, and what stands against it; done, it is a lot with its price', async () => {
    await bench()
    const sheet = await says(['mix', 'ammonium fixer', '1L', '--parts', '1+4'])
    expect(sheet[0]).toMatch(/^1\. Pour in 750 mL of water/)
    expect(sheet.join('\n')).toMatch(/2\. Add 200 mL of Ammonium fixer\.\n {3}.*[Ff]umes|2\. Add 200 mL/)
    const short = await says(['mix', 'Ammonium fixer', '5L', '--parts', '1+4'])
    expect(short.slice(0, 2)).toEqual([
      'Before you begin:',
      expect.stringMatching(/^- There are 880 mL of Ammonium fixer; it takes 1(?:000 mL| L)\./),
    ])
    expect(await refused(['mix', 'Ammonium fixer', '5L', '--parts', '1+4', '--into', 'Brown 2'])).toMatch(/880 mL/)
    const lot = await says(['lot', '26-001'].map((one) => one.replace('26', String(new Date().getFullYear()).slice(2))))
    expect(lot[0]).toMatch(/600 mL of Ammonium fixer, 1 \+ 4, mixed /)
    expect(lot).toContain('It cost 1.80 EUR, 0.15 EUR a roll.')
    expect(lot.at(-1)).toMatch(/: mixed, /)
  })

  it('books uses and tests, and says what is left and what decides', async () => {
    await bench()
    const [line] = await says([
      'use-bath',
      'brown 1',
      '--film',
      '120=5',
      '--film',
      'tabular:120=3',
      '--poured',
      '500mL',
    ])
    expect(line).toMatch(/^Brown 1: 440 mL of Ammonium fixer, lot \d\d-001; .*decides/)
    expect(await refused(['use-bath', 'Brown 1', '--film', '120=3', '--poured', '400mL'])).toMatch(
      /carries 2 more rolls/,
    )
    expect(await refused(['use-bath', 'Brown 1', '--role', 'developer', '--poured', '1mL'])).toMatch(/Put it back/)
    await says(['test-bath', 'Brown 1', 'clearing', '35', '--fresh'])
    const tested = await json(['test-bath', 'Brown 1', 'clearing', '55s'])
    expect(tested.containers[0].left.clearing).toEqual({ fresh_s: 35, now_s: 55, fix_for_s: 110, finished: false })
    expect(await refused(['test-bath', 'Brown 1', 'indicator', 'purple'])).toMatch(/stop/)
    const { entry } = await json(['measure-bath', 'Brown 1', '400mL'])
    await says(['take-back', entry.id, '--note', 'misread'])
    expect((await says(['shelf']))[0]).toMatch(/^Brown 1: 440 mL/)
  })

  it('rotates two baths, hands the waste over, and writes the log', async () => {
    await bench()
    await says(['mix', 'Ammonium fixer', '600mL', '--parts', '1+4', '--into', 'Brown 2'])
    await says(['station', 'Brown 1', 'first'])
    await says(['station', 'Brown 2', 'second'])
    await says(['use-bath', 'Brown 1', '--film', '120=6', '--poured', '300mL'])
    expect(await says(['two-baths', 'Brown 1', 'Brown 2'])).toEqual([
      'Carry on: 50 % of the first bath are used, 6 rolls are left.',
    ])
    const rotated = await json(['two-baths', 'Brown 1', 'Brown 2', '--rotate', '--jug', 'Silver'])
    expect(rotated.entries.map(({ told }: { told: { kind: string } }) => told.kind)).toEqual(['discarded', 'stationed'])
    expect((await says(['shelf'])).at(-1)).toMatch(/^Silver: 480 mL of 5(?:000 mL| L); about 0\.93 g of silver/)
    await says(['hand-over', 'Silver', 'The town'])
    const file = join(folder(), 'waste.csv')
    await says(['waste-log', file])
    expect(readFileSync(file, 'utf8').trimEnd().split('\r\n')).toHaveLength(3)
    expect(await refused(['discard', 'Brown 2', '--where', 'as-allowed'])).toMatch(/never goes down a drain/)
  })

  it('pours one-shot developer away by itself and tops a bath up', async () => {
    const said = { name: 'Seasoned', role: 'developer', use: 'replenished', replenish_ml_per_roll: 70 }
    await json(['keep-product', '-'], JSON.stringify(said))
    const [{ id }] = (await json(['products'])).products
    await says(['add-container', 'package', 'Replenisher', '--holds', '1L', '--product', id])
    await says(['add-container', 'bottle', 'Tank', '--holds', '1L', '--shape', 'tank'])
    await says(['mix', 'Seasoned', '500mL', '--into', 'Tank'])
    await says(['use-bath', 'Tank', '--film', '120', '--poured', '500mL'])
    const topped = await json(['pour-over', 'Replenisher', 'Tank', '--amount', '70mL', '--top-up'])
    const tank = topped.containers.find(({ statement }: { statement: { name: string } }) => statement.name === 'Tank')
    expect([tank.held, tank.left.due_ml]).toEqual([550, 0])
    expect(await says(['lots', 'seasoned'])).toHaveLength(2)
  })
})
