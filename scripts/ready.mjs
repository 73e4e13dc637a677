// Is this clone installed and built? The question is asked at every start, so it may cost a few milliseconds only:
// stamps are compared, nothing is run. `make-ready.mjs` does the work when the answer is no.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join, relative } from 'node:path'

/** Exit codes of the launcher (the numbers of sysexits): what a script that calls us can tell apart. */
export const exitCodes = { installFailed: 69, buildFailed: 70, busy: 75, wrongNode: 78 }

export const installStamp = (root) => join(root, 'node_modules', '.wetside-stamp')
export const buildStamp = (root) => join(root, 'dist', '.stamp')
/** What is put together after compiling: the pages, and the commands. */
export const bundles = (root) => ['web', 'cli'].map((folder) => join(root, 'src', folder, 'vite.config.ts'))

const oldest = [20, 20, 2]
const majors = [20, 22, 24]

/** A sentence when this Node cannot run Wetside, otherwise undefined. */
export function nodeProblem(version) {
  const parts = version.split('.').map((part) => Number.parseInt(part, 10))
  const fits = majors.includes(parts[0]) && (parts[0] > oldest[0] || compare(parts, oldest) >= 0)
  if (fits) return undefined
  return `Wetside needs Node ${oldest.join('.')} or later in 20, 22 or 24; this is Node ${version}. Install one of those and run the same command again.`
}

function compare(a, b) {
  const place = a.findIndex((part, i) => part !== b[i])
  return place < 0 ? 0 : a[place] - b[place]
}

/** Lockfile and the Node that compiled the native module: another of either means another install. */
export function installFingerprint(root) {
  const hash = createHash('sha256').update(readFileSync(join(root, 'package-lock.json')))
  return `${hash.digest('hex')} ${process.platform}-${process.arch} abi ${process.versions.modules}`
}

/** Name, size and time of change of everything the build reads; file contents are not read, to be quick. */
export function buildFingerprint(root) {
  const hash = createHash('sha256')
  const inputs = ['package-lock.json', 'tsconfig.base.json', 'tsconfig.json'].map((name) => join(root, name))
  for (const file of [...inputs, ...sources(join(root, 'src'))]) {
    const { mtimeMs, size } = statSync(file)
    hash.update(`${relative(root, file)} ${size} ${mtimeMs}\n`)
  }
  return hash.digest('hex')
}

function* sources(folder) {
  const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))
  for (const entry of entries) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) yield* sources(path)
    else if (!/\.test\.tsx?$|\.md$/.test(entry.name)) yield path
  }
}

/** Some of 'install' and 'build', in the order they have to be done; empty when all is ready. */
export function whatIsMissing(root, { withDev = false } = {}) {
  if (!isInstalled(root, withDev)) return ['install', 'build']
  return isBuilt(root) ? [] : ['build']
}

function isInstalled(root, withDev) {
  if (read(installStamp(root)) !== installFingerprint(root)) return false
  return !withDev || existsSync(join(root, 'node_modules', 'vitest', 'package.json'))
}

function isBuilt(root) {
  return read(buildStamp(root)) === buildFingerprint(root) && existsSync(join(root, 'dist', 'kernel', 'index.js'))
}

function read(file) {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return undefined
  }
}
