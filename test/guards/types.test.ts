import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { brokenTree, runNode, tool } from './broken-tree.js'

const pureFolders = ['kernel', 'science', 'score', 'planning', 'words', 'wire', 'lab']
const tsconfigs = pureFolders.map((folder) => `src/${folder}/tsconfig.json`)

const unknownNames = ['document', 'window', 'process', 'Buffer', 'setTimeout', 'performance', 'crypto']

/** Importer and what its project has no reference to. */
const noReference: [string, string][] = [
  ['kernel', 'science'],
  ['science', 'score'],
  ['score', 'planning'],
  ['planning', 'lab'],
  ['words', 'wire'],
]

const tree = brokenTree()
let printed = ''
beforeAll(() => {
  tree.take('tsconfig.base.json', ...tsconfigs)
  for (const folder of pureFolders) {
    tree.write({
      [`src/${folder}/index.ts`]: 'export const x: number = 1\n',
      [`src/${folder}/here.ts`]: unknownNames.map((name, i) => `export const n${i}: unknown = ${name}\n`).join(''),
    })
  }
  for (const [from, to] of noReference) {
    tree.write({ [`src/${from}/up.ts`]: `import { x } from '../${to}/index.js'\nexport const y: number = x\n` })
  }
  printed = runNode(
    [tool('typescript', 'bin', 'tsc'), '-b', '--pretty', 'false', ...pureFolders.map((name) => `src/${name}`)],
    tree.folder,
  ).printed
})
afterAll(() => tree.remove())

describe.each(pureFolders)('%s compiles without a page and without Node', (folder) => {
  it.each(unknownNames)('so %s is unknown', (name) => {
    const line = 1 + unknownNames.indexOf(name)
    expect(printed).toMatch(
      new RegExp(`src/${folder}/here\\.ts\\(${line},\\d+\\): error TS25?\\d+: Cannot find name '${name}'`),
    )
  })
})

describe('a project without the reference', () => {
  it.each(noReference)('%s may not import %s', (from, to) => {
    expect(printed).toMatch(new RegExp(`src/${from}/up\\.ts.*error TS(6059|6307).*src/${to}/index`))
  })
})
