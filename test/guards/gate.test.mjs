import { spawnSync } from 'node:child_process'
import { readFileSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { printSummary } from '../../scripts/gate/report.mjs'
import { judge } from '../../scripts/gate/tests.mjs'
import { brokenTree, root, tool } from './broken-tree.js'

const result = (parts) => ({ passed: 3, failures: [], skipped: [], ...parts })

describe('a stage of tests', () => {
  it('passes when all tests passed', () => {
    expect(judge(result({}), 0)).toMatchObject({ passed: 3, failed: 0 })
  })
  it('counts a test that failed', () => {
    expect(judge(result({ failures: [{ test: 'a', message: 'b' }] }), 1)).toMatchObject({ passed: 3, failed: 1 })
  })
  it('fails when there is no test in it', () => {
    expect(judge(result({ passed: 0 }), 0).failed).toBe(1)
  })
  it('fails when vitest fell over', () => {
    expect(judge(undefined, 137).failed).toBe(1)
    expect(judge(result({}), 1).failed).toBe(1)
  })
  it('lists a skip with its reason and fails one without', () => {
    const skipped = [{ test: 'a', reason: 'no printer here' }]
    expect(judge(result({ skipped }), 0)).toMatchObject({ failed: 0, skipped })
    expect(judge(result({ skipped: [{ test: 'a', reason: '' }] }), 0)).toMatchObject({ failed: 1, skipped: [] })
  })
})

describe('the summary', () => {
  const stage = { name: 'unit', budget_s: 10 }
  const said = (results, total_s = 1) => {
    const log = vi.spyOn(console, 'log').mockImplementation(() => {})
    const code = printSummary(results, [stage], total_s)
    const lines = log.mock.calls.map(([line]) => line)
    log.mockRestore()
    return { code, lines, last: lines.at(-1) }
  }
  const ran = (parts) => ({ ...stage, wall_s: 1, passed: 2, failed: 0, skipped: [], ...parts })

  it('ends with the counts alone', () => {
    expect(said([ran({})])).toMatchObject({ code: 0, last: '2 passed, 0 failed, 0 skipped' })
    const one = ran({ failed: 1, failures: ['why'], skipped: [{ test: 'a', reason: 'b' }] })
    expect(said([one])).toMatchObject({ code: 1, last: '2 passed, 1 failed, 1 skipped' })
  })
  it('tells of a stage over its budget without failing', () => {
    const { code, lines } = said([ran({ wall_s: 11 })])
    expect(code).toBe(0)
    expect(lines).toContain('over budget: unit took 11.0 s of 10 s')
  })
  it('fails when all together took more than 15 minutes', () => {
    expect(said([ran({})], 901)).toMatchObject({ code: 1, last: '2 passed, 1 failed, 0 skipped' })
  })
  it('names skipped tests with their reasons', () => {
    expect(said([ran({ skipped: [{ test: 'a', reason: 'no printer' }] })]).lines.join()).toContain('a (no printer)')
  })
})

describe('the reporter', () => {
  const tree = brokenTree()
  afterEach(() => tree.remove())

  it('writes down passes, failures, skips and files that do not load', () => {
    const test = "import { expect, it } from 'vitest'\n"
    tree.write({
      'mixed.test.js': `${test}it('passes', () => expect(1).toBe(1))\nit('fails', () => expect(1).toBe(2))\nit('waits', (c) => c.skip('no printer'))\nit.skip('is silent', () => {})\n`,
      'broken.test.js': `${test}throw new Error('does not load')\n`,
    })
    symlinkSync(tool(), join(tree.folder, 'node_modules'))
    const file = join(tree.folder, 'result.json')
    const reporter = join(root, 'scripts', 'gate', 'reporter.mjs')
    const { status } = spawnSync(process.execPath, [tool('vitest', 'vitest.mjs'), 'run', `--reporter=${reporter}`], {
      cwd: tree.folder,
      env: { ...process.env, WETSIDE_TEST_RESULT: file },
    })
    expect(status).toBe(1)
    const { passed, failures, skipped } = JSON.parse(readFileSync(file, 'utf8'))
    expect(passed).toBe(1)
    expect(failures.map(({ test }) => test).sort()).toEqual(['broken.test.js', 'mixed.test.js > fails'])
    expect(skipped).toEqual([
      { test: 'mixed.test.js > waits', reason: 'no printer' },
      { test: 'mixed.test.js > is silent', reason: '' },
    ])
  })
})
