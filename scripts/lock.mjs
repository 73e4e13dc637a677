// One process at a time in this clone: a folder that only one can make, with the maker's number in it.
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'

const unwrittenIsStaleAfter_ms = 10_000
const askAgainAfter_ms = 200

/**
 * Takes the lock `dist/.lock` of this clone, waiting while a living process holds it; the lock of a dead one is
 * taken over. Gives the function that lets go, or undefined when `patience_ms` ran out.
 */
export async function takeLock(root, { onWait = () => {}, patience_ms = 900_000 } = {}) {
  mkdirSync(join(root, 'dist'), { recursive: true })
  const lock = join(root, 'dist', '.lock')
  const until = Date.now() + patience_ms
  let told = false
  while (!tryTake(lock)) {
    if (clearIfStale(lock)) continue
    if (Date.now() > until) return undefined
    if (!told) onWait(holder(lock)?.split(' ')[0])
    told = true
    await wait(askAgainAfter_ms)
  }
  return () => rmSync(lock, { recursive: true, force: true })
}

function tryTake(folder) {
  try {
    mkdirSync(folder)
  } catch (fault) {
    if (fault.code === 'EEXIST') return false
    throw fault
  }
  writeFileSync(join(folder, 'holder'), `${process.pid} ${bornAt(process.pid)}`)
  return true
}

/**
 * Looking and clearing must not be torn apart: a second taker could clear the lock that a third has just made.
 * So the clearing itself is done by one at a time, and looks again once it is alone.
 */
function clearIfStale(lock) {
  if (!isStale(lock)) return false
  const alone = `${lock}-clearing`
  if (!tryTake(alone)) {
    if (isStale(alone)) rmSync(alone, { recursive: true, force: true })
    return false
  }
  const stale = isStale(lock)
  if (stale) rmSync(lock, { recursive: true, force: true })
  rmSync(alone, { recursive: true, force: true })
  return stale
}

function isStale(folder) {
  const who = holder(folder)
  if (who) {
    const [pid, born] = who.split(' ')
    return bornAt(Number(pid)) !== born
  }
  try {
    return Date.now() - statSync(folder).mtimeMs > unwrittenIsStaleAfter_ms
  } catch {
    return false
  }
}

function holder(folder) {
  try {
    return readFileSync(join(folder, 'holder'), 'utf8')
  } catch {
    return undefined
  }
}

/** Numbers are used again, above all in containers: on Linux the start of the process tells two of them apart. */
function bornAt(pid) {
  try {
    process.kill(pid, 0)
  } catch (fault) {
    if (fault.code !== 'EPERM') return 'dead'
  }
  try {
    const afterName = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]
    return `born-${afterName.split(' ')[19]}`
  } catch {
    return 'alive'
  }
}
