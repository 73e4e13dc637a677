import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it, vi } from 'vitest'

const root = fileURLToPath(new URL('../..', import.meta.url))

const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(test\.tsx?|test-support\.ts|ts)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))

/** Every file that tests are made of, with its text: those beside the code, and all of test/. */
const texts = [...filesIn('src').filter((path) => /\.test/.test(path)), ...filesIn('test')]
  .filter((path) => path !== fileURLToPath(import.meta.url))
  .map((path) => ({ path: path.slice(root.length), text: readFileSync(path, 'utf8') }))
const withProperties = texts.filter(({ text }) => text.includes("from 'fast-check'"))

/** What would run a property behind the back of the module that stands in during the long run. */
const ESCAPES: readonly [what: string, pattern: RegExp][] = [
  ['fast-check by another name or path', /from 'fast-check\/|require\('fast-check|import\('fast-check/],
  ['a property that is checked and not asserted', /\bfc\.(check|sample|statistics)\(/],
  ['a seed or a number of runs set for all', /configureGlobal/],
  ['a path or an end that cuts the runs short', /\b(path|endOnFailure|interruptAfterTimeLimit|skipAllAfterTimeLimit):/],
]

describe('the long run multiplies every property', () => {
  it('finds the properties of the tree', () => {
    expect(withProperties.length).toBeGreaterThan(40)
  })

  it.each(ESCAPES)('none by %s', (_, pattern) => {
    expect(withProperties.filter(({ text }) => pattern.test(text)).map(({ path }) => path)).toEqual([])
  })

  it.each([
    ["import { check } from 'fast-check/lib/x.js'", 0],
    ['fc.check(property)', 1],
    ['fc.sample(arbitrary, 10)', 1],
    ['fc.configureGlobal({ numRuns: 5 })', 2],
    ['fc.assert(property, { endOnFailure: true })', 3],
  ])('would be told of %s', (line, which) => {
    expect(ESCAPES[which]?.[1].test(line)).toBe(true)
  })

  it('with its own seed, ten times what was asked, and ten times a hundred where nothing was', {
    timeout: 60_000,
  }, () => {
    const standIn = join(root, 'scripts', 'gate', 'fast-check-long.mjs')
    const script = `
      import fc, { assert } from ${JSON.stringify(standIn)}
      const count = async (run) => { let times = 0; await run(fc.property(fc.integer(), () => { times++ })); return times }
      console.log(JSON.stringify([
        await count((property) => fc.assert(property, { seed: 1, numRuns: 30 })),
        await count((property) => assert(property, { numRuns: 7 })),
        await count((property) => fc.assert(property)),
      ]))`
    const ran = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
      env: { ...process.env, WETSIDE_SEED: '5', WETSIDE_FUZZ: '10' },
      encoding: 'utf8',
    })
    expect([ran.stderr, ran.stdout.trim()]).toEqual(['', '[300,70,1000]'])
  })

  it.each([
    ['5', ['fast-check']],
    [undefined, []],
  ])('stands in by its name in every project when the seed is %s', async (seed, names) => {
    vi.stubEnv('WETSIDE_SEED', seed)
    try {
      // A name of its own for each reading, as the settings are read once only.
      const { default: config } = await import(`${join(root, 'vitest.config.ts')}?seed=${seed}`)
      expect(Object.keys(config.resolve.alias)).toEqual(names)
      expect(config.test.projects.length).toBeGreaterThan(3)
      for (const project of config.test.projects) expect(project).toMatchObject({ extends: true })
    } finally {
      vi.unstubAllEnvs()
    }
  })
})
