// `npm test`: everything the project asks of itself, in stages. `npm test -- static unit` runs only those.
// The last line printed is `N passed, N failed, N skipped`; the exit code is 1 when anything failed.
import { dirname } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import { install } from './gate/install.mjs'
import { printSummary } from './gate/report.mjs'
import { staticChecks } from './gate/static.mjs'
import { testStage } from './gate/tests.mjs'
import { exitCodes, nodeProblem } from './ready.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** The stages with their budgets on two cores. Stages with the same lane number run side by side. */
const stages = [
  { name: 'install', budget_s: 120, lane: 0, run: install },
  { name: 'static', budget_s: 50, lane: 1, run: staticChecks },
  { name: 'unit', budget_s: 180, lane: 2, run: testStage('unit') },
  { name: 'store', budget_s: 60, lane: 2, run: testStage('store') },
  { name: 'browser', budget_s: 300, lane: 3, run: testStage('browser') },
  { name: 'crash', budget_s: 120, lane: 4, run: testStage('crash') },
]

async function timed(stage) {
  const from = performance.now()
  const outcome = await stage
    .run(root, (line) => console.log(`${stage.name.padEnd(7)} │ ${line}`))
    .catch((fault) => ({
      passed: 0,
      failed: 1,
      failures: [`the stage itself broke: ${fault.stack}`],
    }))
  const result = { ...stage, wall_s: (performance.now() - from) / 1000, skipped: [], ...outcome }
  console.log(`${stage.name.padEnd(7)} │ ${result.failed ? 'FAILED' : 'done'} in ${result.wall_s.toFixed(1)} s`)
  return result
}

async function runStages(chosen) {
  const results = []
  for (const lane of new Set(chosen.map((stage) => stage.lane))) {
    results.push(...(await Promise.all(chosen.filter((stage) => stage.lane === lane).map(timed))))
    if (results[0].name === 'install' && results[0].failed > 0) break
  }
  return results
}

async function main(args) {
  const wrongNode = nodeProblem(process.versions.node)
  if (wrongNode) {
    console.error(wrongNode)
    return exitCodes.wrongNode
  }
  if (args.includes('--long')) return (await import('./long.mjs')).longRun(root)
  const unknown = args.filter((name) => !stages.some((stage) => stage.name === name))
  if (unknown.length > 0) {
    console.error(`There is no stage ${unknown.join(', ')}; the stages are ${stages.map((s) => s.name).join(', ')}.`)
    return 64
  }
  const chosen = stages.filter((stage) => args.length === 0 || args.includes(stage.name) || stage.name === 'install')
  const from = performance.now()
  const results = await runStages(chosen)
  return printSummary(results, chosen, (performance.now() - from) / 1000)
}

process.exitCode = await main(process.argv.slice(2))
