// Stage `static`: everything that can be said about the code without running it. Each check counts as one.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { buildSteps, finishBuild, runToEnd } from '../make-ready.mjs'
import { buildFingerprint } from '../ready.mjs'

const linesShown = 60

/** A check is a Node program; `alsoNeeds` looks at what it printed and gives a complaint or undefined. */
function checks(root) {
  const tool = (...path) => join(root, 'node_modules', ...path)
  const script = (name, ...args) => ({ name: name.replace('.mjs', ''), file: join(root, 'scripts', name), args })
  const found = [
    { name: 'types of tests', file: tool('typescript', 'bin', 'tsc'), args: ['-p', 'tsconfig.test.json'] },
    {
      name: 'biome',
      file: tool('@biomejs', 'biome', 'bin', 'biome'),
      args: ['ci', '--colors=off', '--error-on-warnings', '--max-diagnostics=50', '.'],
    },
    script('check-layers.mjs'),
    { name: 'knip', file: tool('knip', 'bin', 'knip.js'), args: ['--no-progress'] },
    script('check-names.mjs'),
    script('check-migrations.mjs'),
  ]
  if (existsSync(join(root, 'scripts', 'generate.mjs'))) found.push(script('generate.mjs', '--check'))
  return found
}

export async function staticChecks(root, say) {
  const outcomes = []
  const run = async (check) => outcomes.push(await runCheck(root, check, say))
  const fingerprint = buildFingerprint(root)
  const [types, ...web] = buildSteps(root)
  await run(types)
  for (const step of web) await run(step)
  if (web.length > 0) await run({ name: 'size of first load', file: join(root, 'scripts', 'check-size.mjs'), args: [] })
  if (outcomes.every((outcome) => outcome.ok)) finishBuild(root, fingerprint)
  await twoAtATime(checks(root), run)
  const failed = outcomes.filter((outcome) => !outcome.ok)
  return {
    passed: outcomes.length - failed.length,
    failed: failed.length,
    failures: failed.map(({ name, output }) => `${name}\n${output}`),
  }
}

async function twoAtATime(list, run) {
  const left = [...list]
  const lane = async () => {
    for (let check = left.shift(); check; check = left.shift()) await run(check)
  }
  await Promise.all([lane(), lane()])
}

async function runCheck(root, { name, file, args }, say) {
  const from = performance.now()
  const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' }
  const { code, output } = await runToEnd(process.execPath, [file, ...args], root, { env })
  say(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${((performance.now() - from) / 1000).toFixed(1)} s)`)
  return { name, ok: code === 0, output: firstLines(output) }
}

function firstLines(output) {
  const lines = output.trimEnd().split('\n')
  const rest = lines.length - linesShown
  return rest > 0 ? [...lines.slice(0, linesShown), `… and ${rest} lines more`].join('\n') : lines.join('\n')
}
