// Stages that run a vitest project. The reporter beside this file writes what happened; nothing is read off the screen.
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { runToEnd } from '../make-ready.mjs'

/** A stage for the vitest project of that name. */
export const testStage = (project) => (root, say) => runProject(root, project, say)

/** Runs a project with `node`; gives passed, failed, skipped and the failures. */
export async function runProject(
  root,
  project,
  say,
  { node = process.execPath, env = process.env, resultName = project } = {},
) {
  const folder = join(root, 'test-output')
  const file = join(folder, `${resultName}.json`)
  mkdirSync(folder, { recursive: true })
  rmSync(file, { force: true })
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs')
  const reporter = join(root, 'scripts', 'gate', 'reporter.mjs')
  const { code, output } = await runToEnd(node, [vitest, 'run', '--project', project, `--reporter=${reporter}`], root, {
    env: { ...env, WETSIDE_TEST_RESULT: file, NO_COLOR: '1', FORCE_COLOR: '0' },
    onLine: (line) => line.startsWith('· ') && say(line.slice(2)),
  })
  return judge(read(file), code, output)
}

/** Counts, and everything that must not pass silently: no result, no tests, a skip without a reason, a stray error. */
export function judge(result, code, output = '') {
  if (!result) return oneFailure(`vitest ended with code ${code} and no result.\n${output.trimEnd().slice(-4000)}`)
  const failures = result.failures.map(({ test, message }) => `${test}\n${message}`)
  for (const { test, reason } of result.skipped) {
    if (!reason) failures.push(`${test}\nis skipped without a reason; say it: context.skip('why')`)
  }
  if (result.passed + failures.length + result.skipped.length === 0)
    failures.push('there is not one test in this stage')
  if (code !== 0 && failures.length === 0)
    failures.push(`vitest ended with code ${code} though no test failed.\n${output.slice(-4000)}`)
  const skipped = result.skipped.filter(({ reason }) => reason)
  return { passed: result.passed, failed: failures.length, failures, skipped }
}

const oneFailure = (message) => ({ passed: 0, failed: 1, failures: [message], skipped: [] })

function read(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return undefined
  }
}
