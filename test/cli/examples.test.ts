import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { examples } from '../../src/cli/examples/index.js'
import { helpPages } from '../../src/cli/main.js'
import { command, wordsOf } from '../support/commands.js'
import { tempFolders } from '../support/folders.js'

const newFolder = tempFolders()
let folder: string
beforeEach(() => {
  folder = newFolder()
  vi.stubEnv('DATA_DIR', folder)
  vi.stubEnv('DATABASE_URL', undefined)
})
afterEach(() => vi.unstubAllEnvs())

/** An example in its parts. Files it names lie in the test's folder. */
function partsOf(example: string) {
  const lines = example.split('\n').map((line) => line.replace(/^ {2}/, ''))
  const input = lines[0]?.startsWith('< ') ? (lines.shift() as string).slice(2).replaceAll('\\n', '\n') : ''
  const [program, ...argv] = wordsOf((lines.shift() as string).replace(/^\$ /, ''))
  const placed = (text: string) => text.replaceAll(/(?<!\S)bench\.backup\.ndjson/g, join(folder, 'bench.backup.ndjson'))
  return { program, argv: argv.map(placed), input, printed: lines.map(placed) }
}

describe('the worked example of', () => {
  it.each(Object.entries(examples))('%s prints what it says', async (name, example) => {
    const { program, argv, input, printed } = partsOf(example)
    expect([program, argv[0]]).toEqual(['wetside', name])
    const { out, err } = await command(argv, input)
    expect([...out, ...err]).toEqual(printed)
  })

  it('every command stands in its help', async () => {
    const pages = await helpPages()
    for (const [name, example] of Object.entries(examples))
      expect(pages.find((page) => page.name === `wetside ${name}`)?.help).toContain(example)
    expect(pages.map((page) => page.name)).toContain('wetside')
  })
})
