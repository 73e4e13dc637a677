import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { tempFolders } from '../support/folders.js'

const root = fileURLToPath(new URL('../..', import.meta.url))
const newFolder = tempFolders()
const door = `${root}src/science/index.ts`

/** What stands before a declaration as its doc block, joined. */
const docOf = (symbol: ts.Symbol, checker: ts.TypeChecker): string =>
  ts.displayPartsToString(symbol.getDocumentationComment(checker)).trim()

/** Exports without a doc block, of the folders that `counted` lets through. */
const undocumented = (file: string, counted: (declared: string) => boolean = () => true): string[] => {
  const program = ts.createProgram([file], {
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    skipLibCheck: true,
    noLib: true,
    types: [],
  })
  const checker = program.getTypeChecker()
  const source = program.getSourceFile(file)
  const module = source && checker.getSymbolAtLocation(source)
  if (!module) throw new Error(`${file} exports nothing`)
  return checker
    .getExportsOfModule(module)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
    .filter((symbol) => counted(symbol.declarations?.[0]?.getSourceFile().fileName ?? ''))
    .filter((symbol) => docOf(symbol, checker) === '')
    .map((symbol) => symbol.name)
    .sort()
}

/** A concept counts from the day its page stands. */
const concepts = readdirSync(`${root}src/science`, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(`${root}docs/science/${entry.name}.md`))
  .map(({ name }) => name)

describe('the public door of the science', () => {
  it('says of everything it exports what it means', { timeout: 60_000 }, () => {
    const counted = (declared: string) => concepts.some((name) => declared.includes(`/science/${name}/`))
    expect(undocumented(door, counted)).toEqual([])
  })

  it('would be told of an export that says nothing', { timeout: 60_000 }, () => {
    const file = join(newFolder(), 'undocumented.ts')
    writeFileSync(file, '/** Says what it is. */\nexport const spoken = 1\nexport const silent = 2\n')
    expect(undocumented(file)).toEqual(['silent'])
  })
})

describe('the page of every concept', () => {
  it('stands for six at least', () => {
    expect(concepts.length).toBeGreaterThanOrEqual(6)
  })

  it.each(concepts)('%s has an example that is run', (name) => {
    const page = readFileSync(`${root}docs/science/${name}.md`, 'utf8')
    expect(page).toContain(`<!-- example: ${name} -->`)
  })
})
