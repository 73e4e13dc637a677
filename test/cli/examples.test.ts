import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { examples } from '../../src/cli/examples/index.js'
import { exampleParts } from '../../src/cli/examples/parts.js'
import { helpPages, run } from '../../src/cli/main.js'
import { command } from '../support/commands.js'
import { dataFolders } from '../support/program.js'

const { folder } = dataFolders()

/** An example with the files it names lying in the test's folder. */
function placed(example: string) {
  const { program, argv, input, printed } = exampleParts(example)
  const inFolder = (text: string) =>
    text.replaceAll(/(?<!\S)bench\.(?:backup\.ndjson|rolls\.csv)/g, (name) => join(folder(), name))
  return { program, argv: argv.map(inFolder), input, printed: printed.map(inFolder) }
}

/** What the launcher loads: the same sources, put together into few files. */
const built: { run: typeof run } = await import(new URL('../../dist/cli-app/main.js', import.meta.url).href)

describe.each([
  ['as written', run],
  ['as built', built.run],
])('the worked example, %s, of', (_, runs) => {
  it.each(Object.entries(examples))('%s prints what it says', async (name, example) => {
    const { program, argv, input, printed } = placed(example)
    expect([program, argv[0]]).toEqual(['wetside', name])
    const { out, err } = await command(argv, input, runs)
    expect([...out, ...err]).toEqual(printed)
  })
})

describe('the help', () => {
  it('shows every command with its example', async () => {
    const pages = await helpPages()
    for (const [name, example] of Object.entries(examples))
      expect(pages.find((page) => page.name === `wetside ${name}`)?.help).toContain(example)
    expect(pages.map((page) => page.name)).toContain('wetside')
  })
})
