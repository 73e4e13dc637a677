// Stage `install`: packages from the lockfile, a Chromium for the browser tests, pdftoppm for looking at PDFs.
import { existsSync } from 'node:fs'
import { chromiumNames, findProgram } from '../chromium.mjs'
import { makeReady, runToEnd } from '../make-ready.mjs'

/** Each thing present counts as one check. */
export async function install(root, say) {
  const failures = []
  const packages = await makeReady(root, { withDev: true, only: 'install', say })
  if (packages) return { passed: 0, failed: 1, failures: [packages.sentence] }
  const browser = await present('Chromium', chromiumNames, 'chromium', process.env['CHROMIUM_PATH'], say, failures)
  if (browser) process.env['CHROMIUM_PATH'] = browser
  await present('pdftoppm', ['pdftoppm'], 'poppler-utils', undefined, say, failures)
  return { passed: 3 - failures.length, failed: failures.length, failures }
}

async function present(what, names, debianPackage, named, say, failures) {
  if (named && !existsSync(named)) {
    failures.push(`CHROMIUM_PATH says ${named}, but there is no such file. Point it at a Chromium, or unset it.`)
    return undefined
  }
  const found = named ?? findProgram(names)
  if (found) {
    say(`${what}: ${found}`)
    return found
  }
  const refusal = await aptInstall(debianPackage, say)
  const now = findProgram(names)
  if (!now) failures.push(`${what} is missing: none of ${names.join(', ')} is in PATH. ${refusal}`)
  return now
}

/** A sentence saying why nothing was installed, or what went wrong. */
async function aptInstall(debianPackage, say) {
  const byHand = `Install it (on Debian: apt-get install ${debianPackage}) and run npm test again.`
  if (!findProgram(['apt-get'])) return `This machine has no apt-get. ${byHand}`
  if (process.getuid?.() !== 0) return `Only root may install it. ${byHand}`
  say(`installing ${debianPackage} with apt-get …`)
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', debianPackage]]) {
    const run = await runToEnd('apt-get', args, '/', { env })
    if (run.code !== 0)
      return `apt-get ${args[0]} ended with code ${run.code}: ${run.output.trim().slice(-400)}. ${byHand}`
  }
  return byHand
}
