import { spawnSync } from 'node:child_process'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type BrokenTree, brokenTree, root, runNode, script } from './broken-tree.js'

const refused: [what: string, text: string][] = [
  ['a home folder', 'see /home/somebody/notes.txt'],
  ['the folder of root', "const data = '/root/data'"],
  ['a home folder of another system', '/Users/somebody/notes.txt'],
  ['a home folder with a drive', 'C:\\Users\\somebody'],
  ['a temporary file by name', "open('/tmp/some-file')"],
  ['an unfinished merge', `${'<'.repeat(7)} ours`],
  ['a private registry', '"resolved": "http://registry.somewhere.example:4873/x.tgz"'],
]

let tree: BrokenTree
beforeEach(() => {
  tree = brokenTree()
  spawnSync('git', ['init', '-q'], { cwd: tree.folder })
})
afterEach(() => tree.remove())
const check = () => runNode([script('check-names.mjs'), tree.folder], root)

describe('committed files may not hold', () => {
  it.each(refused)('%s', (_what, text) => {
    tree.write({ 'notes.md': `first line\n${text}\n` })
    expect(check()).toMatchObject({ code: 1, printed: expect.stringContaining('notes.md:2: ') })
  })

  it('but addresses of pages and relative paths are fine', () => {
    tree.write({ 'notes.md': 'https://example.org/home/page, src/film/shop, ~/film, "https://example.org/x"\n' })
    expect(check().printed).toContain('0 forbidden')
  })

  it('and nothing read is a failure', () => {
    expect(check()).toMatchObject({ code: 1, printed: expect.stringContaining('nothing was checked') })
  })
})
