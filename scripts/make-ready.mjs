// Installs from the lockfile and builds, once, even when two starts ask for it in the same second.
import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { takeLock } from './lock.mjs'
import {
  buildFingerprint,
  buildStamp,
  bundles,
  exitCodes,
  installFingerprint,
  installStamp,
  whatIsMissing,
} from './ready.mjs'

const toStderr = (line) => console.error(line)

/**
 * Does what is missing, under the lock of this clone. Gives undefined, or `{ sentence, exitCode }`.
 * `withDev` also wants the tools of the tests; `only: 'install'` leaves the build to the caller.
 */
export async function makeReady(root, { withDev = false, only, say = toStderr } = {}) {
  const letGo = await takeLock(root, {
    onWait: (pid) => say(`Another start (process ${pid ?? 'unknown'}) is installing or building here; waiting for it.`),
  })
  if (!letGo) {
    return problem(
      exitCodes.busy,
      'Another start has been installing or building for 15 minutes. Stop it and try again.',
    )
  }
  const onSignal = (signal) => {
    letGo()
    process.exit(signal === 'SIGINT' ? 130 : 143)
  }
  process.once('SIGINT', onSignal).once('SIGTERM', onSignal)
  try {
    for (const task of whatIsMissing(root, { withDev })) {
      if (only && task !== only) continue
      const failure = task === 'install' ? await install(root, withDev, say) : await build(root, say)
      if (failure) return failure
    }
    return undefined
  } finally {
    process.off('SIGINT', onSignal).off('SIGTERM', onSignal)
    letGo()
  }
}

const problem = (exitCode, sentence) => ({ exitCode, sentence })

/** npm as this process was started by it, else the one in PATH. */
export function npmCommand() {
  const cli = process.env.npm_execpath
  if (cli && basename(cli) === 'npm-cli.js' && existsSync(cli)) return [process.execPath, cli]
  return ['npm']
}

async function install(root, withDev, say) {
  if (await isInstalledByHand(root, withDev)) {
    say('The packages of the lockfile are already here.')
    writeFileSync(installStamp(root), installFingerprint(root))
    return undefined
  }
  say('Installing from the lockfile (the database module is compiled here, which takes about a minute) …')
  rmSync(installStamp(root), { force: true })
  const dev = withDev ? ['--include=dev'] : []
  const [command, ...first] = npmCommand()
  const run = await runToEnd(command, [...first, 'ci', '--no-audit', '--no-fund', ...dev], root)
  if (run.missing) {
    return problem(exitCodes.installFailed, 'npm was not found. It comes with Node; put it in PATH and start again.')
  }
  if (run.code !== 0) return installProblem(run)
  if (!(await databaseOpens(root))) {
    return problem(
      exitCodes.installFailed,
      'The packages are here, but the database module better-sqlite3 was not compiled. Allow install scripts (npm config get ignore-scripts must say false), see that python3, make and a C++ compiler are installed, and start again.',
    )
  }
  writeFileSync(installStamp(root), installFingerprint(root))
  return undefined
}

/** `npm install` by hand leaves no stamp of ours: then npm's own record is held against the lockfile. */
async function isInstalledByHand(root, withDev) {
  const record = packagesIn(join(root, 'node_modules', '.package-lock.json'))
  const wanted = packagesIn(join(root, 'package-lock.json'))
  if (!record || !wanted) return false
  const present = Object.entries(wanted).every(
    ([path, { version, optional, dev }]) =>
      path === '' || optional || (dev && !withDev) || record[path]?.version === version,
  )
  return present && databaseOpens(root)
}

function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages
  } catch {
    return undefined
  }
}

/** Whether the compiled module loads in this very Node: files alone do not tell. */
async function databaseOpens(root) {
  const { code } = await runToEnd(process.execPath, ['-e', "new (require('better-sqlite3'))(':memory:').close()"], root)
  return code === 0
}

function installProblem({ code, output }) {
  const network = /\b(ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH|network)\b/.test(
    output,
  )
  const compiler = /gyp ERR!/.test(output)
  const why = network
    ? 'the package registry could not be reached. Connect to the network, or set npm’s registry and proxy'
    : compiler
      ? 'a native module could not be compiled. Install python3, make and a C++ compiler'
      : 'see the lines above. Correct what they name'
  return problem(
    exitCodes.installFailed,
    `${output.trimEnd()}\nnpm ci ended with code ${code}: ${why}, and start again.`,
  )
}

/** The steps of a build, each a Node program of an installed package. */
export function buildSteps(root) {
  const tool = (...path) => join(root, 'node_modules', ...path)
  const force = existsSync(join(root, 'dist', 'kernel', 'index.js')) ? [] : ['--force']
  const steps = [{ name: 'tsc -b', file: tool('typescript', 'bin', 'tsc'), args: ['-b', ...force] }]
  for (const config of bundles(root).filter((file) => existsSync(file))) {
    steps.push({ name: 'vite build', file: tool('vite', 'bin', 'vite.js'), args: ['build', '-c', config] })
  }
  return steps
}

async function build(root, say) {
  say('Building …')
  const fingerprint = buildFingerprint(root)
  for (const step of buildSteps(root)) {
    const run = await runToEnd(process.execPath, [step.file, ...step.args], root)
    if (run.code !== 0) {
      return problem(
        exitCodes.buildFailed,
        `${run.output.trimEnd()}\nThe build stopped: ${step.name} ended with code ${run.code}.`,
      )
    }
  }
  finishBuild(root, fingerprint)
  return undefined
}

/** Takes away what was built from files that are gone, then notes what the build was made from. */
export function finishBuild(root, fingerprint) {
  for (const folder of readdirSync(join(root, 'src'))) prune(join(root, 'dist', folder), join(root, 'src', folder))
  mkdirSync(dirname(buildStamp(root)), { recursive: true })
  writeFileSync(buildStamp(root), fingerprint)
}

function prune(outFolder, sourceFolder) {
  if (!existsSync(outFolder)) return
  for (const entry of readdirSync(outFolder, { withFileTypes: true })) {
    const out = join(outFolder, entry.name)
    if (entry.isDirectory()) {
      prune(out, join(sourceFolder, entry.name))
      continue
    }
    const stem = join(sourceFolder, entry.name.replace(/(\.d\.ts|\.js)$/, ''))
    if (stem.endsWith(entry.name)) continue
    if (!existsSync(`${stem}.ts`) && !existsSync(`${stem}.tsx`)) rmSync(out)
  }
}

/** Runs a program to its end, or kills it when `patience_ms` is over: its code and everything it printed. */
export function runToEnd(command, args, cwd, { env = process.env, onLine = () => {}, patience_ms } = {}) {
  return new Promise((resolve) => {
    const shell = process.platform === 'win32' && command === 'npm'
    const child = spawn(command, args, {
      cwd,
      env,
      shell,
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: patience_ms,
      killSignal: 'SIGKILL',
    })
    let output = ''
    let line = ''
    const take = (chunk) => {
      output += chunk
      const lines = (line + chunk).split('\n')
      line = lines.pop()
      for (const whole of lines) onLine(whole)
    }
    child.stdout.setEncoding('utf8').on('data', take)
    child.stderr.setEncoding('utf8').on('data', take)
    child.on('error', (fault) => resolve({ code: 127, output: String(fault), missing: fault.code === 'ENOENT' }))
    child.on('close', (code, signal) => {
      if (line) onLine(line)
      resolve({ code: code ?? 1, output: signal ? `${output}\nended by ${signal}` : output, missing: false })
    })
  })
}
