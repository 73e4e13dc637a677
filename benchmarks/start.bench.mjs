// How long people wait before anything happens: a command, and the second start of the server.
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import { examples } from '../dist/cli/examples/index.js'
import { keeping as keepers } from '../dist/cli/examples/keeping.js'
import { exampleParts } from '../dist/cli/examples/parts.js'
import { rolls } from '../dist/cli/examples/rolls.js'
import { shelf } from '../dist/cli/examples/shelf.js'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const launcher = join(root, 'bin', 'wetside.js')

/** Milliseconds until the program ends; an exit code other than 0 is an error. */
function untilEnd_ms(args, input = '') {
  return new Promise((resolve, reject) => {
    const from = performance.now()
    const child = spawn(process.execPath, args, { stdio: ['pipe', 'ignore', 'pipe'] })
    child.stdin.end(input)
    let said = ''
    child.stderr.on('data', (chunk) => {
      said += chunk
    })
    child.on('close', (code) => {
      if (code === 0) resolve(performance.now() - from)
      else reject(new Error(`ended with code ${code}: ${said.slice(0, 200)}`))
    })
  })
}

/** Milliseconds until the program prints a line that starts with "Listening on"; it is stopped then. */
function untilListening_ms(args, env = {}) {
  return new Promise((resolve, reject) => {
    const from = performance.now()
    const child = spawn(process.execPath, args, {
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: 60_000,
    })
    let said = ''
    let took
    const take = (chunk) => {
      said += chunk
      if (took !== undefined || !/^Listening on /m.test(said)) return
      took = performance.now() - from
      child.kill('SIGTERM')
    }
    child.stdout.on('data', take)
    child.stderr.on('data', take)
    child.on('close', (code) => {
      if (took === undefined) reject(new Error(`ended with code ${code} before it listened: ${said.slice(0, 200)}`))
      else resolve(took)
    })
  })
}

const bareServer =
  "require('node:http').createServer().listen(0,'127.0.0.1',function(){console.log('Listening on '+this.address().port)})"

/** Every command that reckons, asked what its worked example asks; those that keep or give out data are left out. */
const keeping = new Set(Object.keys({ ...keepers, ...rolls, ...shelf }))
const reckoning = Object.entries(examples)
  .filter(([name]) => !keeping.has(name))
  .map(([, example]) => exampleParts(example))

/** The command that kept one waiting longest, each run once. */
async function slowest_ms() {
  const took = []
  for (const { argv, input } of reckoning) took.push(await untilEnd_ms([launcher, ...argv], input))
  return Math.max(...took)
}

let dataFolder

export const rows = [
  {
    name: 'a warm command (--help), start to end',
    bound: { value: 250, unit: 'ms' },
    run: () => untilEnd_ms([launcher, '--help']),
    baseline: { name: 'node -e 0', run: () => untilEnd_ms(['-e', '0']) },
    repeats: 25,
  },
  {
    name: `the slowest of ${reckoning.length} commands that reckon, start to end`,
    bound: { value: 250, unit: 'ms' },
    run: slowest_ms,
    repeats: 7,
  },
  {
    name: 'the second start of the server, until it listens',
    bound: { value: 2000, unit: 'ms' },
    setUp: () => {
      dataFolder = mkdtempSync(join(tmpdir(), 'wetside-start-'))
    },
    run: () => untilListening_ms([launcher, 'start'], { PORT: '0', HOST: '127.0.0.1', DATA_DIR: dataFolder }),
    baseline: { name: 'a bare Node server', run: () => untilListening_ms(['-e', bareServer]) },
    repeats: 15,
    tearDown: () => rmSync(dataFolder, { recursive: true, force: true }),
  },
]
