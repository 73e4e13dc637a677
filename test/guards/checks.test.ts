import { createHash, randomBytes } from 'node:crypto'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type BrokenTree, brokenTree, root, runNode, script, tool } from './broken-tree.js'

let tree: BrokenTree
beforeEach(() => {
  tree = brokenTree()
})
afterEach(() => tree.remove())

describe('the size of the first load', () => {
  const build = (entry_kB: number, shared_kB: number, later_kB: number, sink_kB = 1) => {
    const bytes = (kB: number) => randomBytes(kB * 1000).toString('latin1')
    tree.write({
      '.vite/manifest.json': JSON.stringify({
        'index.html': {
          file: 'entry.js',
          isEntry: true,
          imports: ['_shared.js'],
          dynamicImports: ['later.ts'],
          css: ['entry.css'],
        },
        '_shared.js': { file: 'shared.js' },
        'later.ts': { file: 'later.js', isDynamicEntry: true },
        'sections/runs/sink.ts': { file: 'sink.js', isDynamicEntry: true, imports: ['_shared.js'] },
      }),
      'entry.css': 'body{}',
      'entry.js': bytes(entry_kB),
      'shared.js': bytes(shared_kB),
      'later.js': bytes(later_kB),
      'sink.js': bytes(sink_kB),
    })
    return runNode([script('check-size.mjs'), tree.folder], root)
  }

  it('passes a small page and does not count what is fetched later', () => {
    expect(build(20, 20, 400).code).toBe(0)
  })
  it('fails when the entry and what it imports are too much together', () => {
    const { code, printed } = build(80, 80, 0)
    expect(code).toBe(1)
    expect(printed).toMatch(/1\d\d\.\d kB of 150 kB/)
  })
  it('fails when the run screen is too much, though it is loaded apart', () => {
    const { code, printed } = build(60, 60, 0, 60)
    expect(code).toBe(1)
    expect(printed).toMatch(/1[2-4]\d\.\d kB of 150 kB on the first load of any page/)
    expect(printed).toMatch(/2\d\d\.\d kB of 150 kB on the first load of the run screen/)
  })
  it('fails when the run screen is not to be found', () => {
    tree.write({ '.vite/manifest.json': JSON.stringify({ 'index.html': { file: 'entry.js', isEntry: true } }) })
    expect(runNode([script('check-size.mjs'), tree.folder], root).printed).toContain('was not measured')
  })
  it('fails when nothing was built', () => {
    expect(runNode([script('check-size.mjs'), tree.folder], root).code).toBe(1)
  })
  it('fails when there is no entry', () => {
    tree.write({ '.vite/manifest.json': '{}' })
    expect(runNode([script('check-size.mjs'), tree.folder], root).printed).toContain('nothing was measured')
  })
})

describe('migrations', () => {
  const first = 'export const up = 1\n'
  const hash = (text: string) => createHash('sha256').update(text).digest('hex')
  const check = (...args: string[]) => runNode([script('check-migrations.mjs'), tree.folder, ...args], root)
  const landed = (list: Record<string, string>) =>
    tree.write({ 'src/store/migrations/landed.json': JSON.stringify(list) })

  it('pass when those that landed are as they were', () => {
    tree.write({ 'src/store/migrations/0001-first.ts': first, 'src/store/migrations/index.ts': 'anything' })
    landed({ '0001-first.ts': hash(first) })
    expect(check().code).toBe(0)
  })
  it('fail when a landed one was changed', () => {
    tree.write({ 'src/store/migrations/0001-first.ts': `${first}// changed\n` })
    landed({ '0001-first.ts': hash(first) })
    expect(check()).toMatchObject({
      code: 1,
      printed: expect.stringContaining('0001-first.ts has landed and was changed'),
    })
    expect(check('--land').code).toBe(1)
  })
  it('fail when a landed one is gone', () => {
    landed({ '0001-first.ts': hash(first) })
    expect(check()).toMatchObject({ code: 1, printed: expect.stringContaining('is gone') })
  })
  it('fail when a new one was not landed, until it is', () => {
    tree.write({ 'src/store/migrations/0001-first.ts': first })
    expect(check().code).toBe(1)
    expect(check('--land').code).toBe(0)
    expect(check().code).toBe(0)
  })
  it('fail when a new one comes before one that landed', () => {
    tree.write({ 'src/store/migrations/0001-late.ts': first, 'src/store/migrations/0002-first.ts': first })
    landed({ '0002-first.ts': hash(first) })
    expect(check('--land')).toMatchObject({ code: 1, printed: expect.stringContaining('number it after') })
  })
})

describe('dead code', () => {
  const knip = () => runNode([tool('knip', 'bin', 'knip.js'), '--no-progress', '--directory', tree.folder], tree.folder)
  beforeEach(() => {
    tree.take('knip.json')
    tree.write({
      'package.json': JSON.stringify({ name: 'tree', version: '1.0.0', type: 'module' }),
      'src/kernel/index.ts': "import { used } from './used.js'\nexport const sum = used + 1\n",
      'src/kernel/used.ts': 'export const used = 1\n',
    })
  })

  it('is not seen where there is none', () => {
    expect(knip().code).toBe(0)
  })
  it('is found when a file is used by nobody', () => {
    tree.write({ 'src/kernel/orphan.ts': 'export const orphan = 1\n' })
    expect(knip()).toMatchObject({ code: 1, printed: expect.stringContaining('src/kernel/orphan.ts') })
  })
  it('is found when an export is used by nobody', () => {
    tree.write({ 'src/kernel/used.ts': 'export const used = 1\nexport const spare = 2\n' })
    expect(knip()).toMatchObject({ code: 1, printed: expect.stringContaining('spare') })
  })
  it('is found when a package is used by nobody', () => {
    tree.write({
      'package.json': JSON.stringify({
        name: 'tree',
        version: '1.0.0',
        type: 'module',
        dependencies: { spare: '1.0.0' },
      }),
    })
    expect(knip()).toMatchObject({ code: 1, printed: expect.stringContaining('spare') })
  })
})
