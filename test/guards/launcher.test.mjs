import { spawn } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { takeLock } from '../../scripts/lock.mjs'
import {
  buildFingerprint,
  buildStamp,
  installFingerprint,
  installStamp,
  nodeProblem,
  whatIsMissing,
} from '../../scripts/ready.mjs'
import { brokenTree, root } from './broken-tree.js'

let tree
beforeEach(() => {
  tree = brokenTree()
})
afterEach(() => tree.remove())

describe('the Node it runs on', () => {
  it.each(['20.20.2', '20.21.0', '22.0.0', '24.21.0'])('may be %s', (version) => {
    expect(nodeProblem(version)).toBeUndefined()
  })
  it.each(['18.19.1', '20.9.0', '20.20.1', '21.7.3', '23.1.0'])(
    'may not be %s, and the sentence says so',
    (version) => {
      expect(nodeProblem(version)).toContain(`this is Node ${version}`)
    },
  )
})

describe('what is missing', () => {
  const install = () => {
    mkdirSync(join(tree.folder, 'node_modules'), { recursive: true })
    writeFileSync(installStamp(tree.folder), installFingerprint(tree.folder))
  }
  const build = () => {
    tree.write({ 'dist/kernel/index.js': '' })
    writeFileSync(buildStamp(tree.folder), buildFingerprint(tree.folder))
  }
  beforeEach(() => {
    tree.write({
      'package-lock.json': '{}',
      'tsconfig.json': '{}',
      'tsconfig.base.json': '{}',
      'src/kernel/index.ts': '',
    })
  })

  it('is everything in a fresh clone', () => {
    expect(whatIsMissing(tree.folder)).toEqual(['install', 'build'])
  })
  it('is the build after the install, and then nothing', () => {
    install()
    expect(whatIsMissing(tree.folder)).toEqual(['build'])
    build()
    expect(whatIsMissing(tree.folder)).toEqual([])
  })
  it('is the build again when a source changed, came or went, but not for a test', () => {
    install()
    build()
    tree.write({ 'src/kernel/index.test.ts': '' })
    expect(whatIsMissing(tree.folder)).toEqual([])
    tree.write({ 'src/kernel/more.ts': '' })
    expect(whatIsMissing(tree.folder)).toEqual(['build'])
    rmSync(join(tree.folder, 'src/kernel/more.ts'))
    expect(whatIsMissing(tree.folder)).toEqual([])
    utimesSync(join(tree.folder, 'src/kernel/index.ts'), 1, 1)
    expect(whatIsMissing(tree.folder)).toEqual(['build'])
  })
  it('is the install again when the lockfile changed or the tests need their tools', () => {
    install()
    build()
    expect(whatIsMissing(tree.folder, { withDev: true })).toEqual(['install', 'build'])
    tree.write({ 'package-lock.json': '{"changed":true}' })
    expect(whatIsMissing(tree.folder)).toEqual(['install', 'build'])
  })
})

describe('the lock of a clone', () => {
  it('lets the second wait for the first', async () => {
    const letGo = await takeLock(tree.folder)
    expect(await takeLock(tree.folder, { patience_ms: 300 })).toBeUndefined()
    letGo()
    const again = await takeLock(tree.folder, { patience_ms: 300 })
    expect(again).toBeTypeOf('function')
    again()
  })

  it('is taken over from a process that is gone', async () => {
    const gone = spawn(process.execPath, ['-e', '0'])
    await new Promise((resolve) => gone.on('close', resolve))
    tree.write({ 'dist/.lock/holder': `${gone.pid} born-1` })
    expect(await takeLock(tree.folder, { patience_ms: 300 })).toBeTypeOf('function')
  })

  it('is held by one at a time however many want it', async () => {
    const worker = `
      import { appendFileSync } from 'node:fs'
      const { takeLock } = await import(process.argv[1])
      const letGo = await takeLock(process.argv[2])
      appendFileSync(process.argv[2] + '/log', 'in ')
      await new Promise((r) => setTimeout(r, 30))
      appendFileSync(process.argv[2] + '/log', 'out ')
      letGo()`
    tree.write({ 'dist/.lock/holder': '1 born-never' })
    const lock = join(root, 'scripts', 'lock.mjs')
    const workers = Array.from({ length: 4 }, () =>
      spawn(process.execPath, ['--input-type=module', '-e', worker, lock, tree.folder], { stdio: 'inherit' }),
    )
    await Promise.all(workers.map((child) => new Promise((resolve) => child.on('close', resolve))))
    expect(readFileSync(join(tree.folder, 'log'), 'utf8')).toBe('in out '.repeat(4))
  })
})
