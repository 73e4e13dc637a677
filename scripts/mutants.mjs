// `npm run mutants`: puts one-line faults into a copy of the tree, one at a time, and sees whether the test that was
// named for it fails. Faults are declared in benchmarks/mutants/*.json; the outcome is docs/mutants.md.
// `npm run mutants -- dose` runs those whose file or test holds the word, and writes nothing.
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runToEnd } from './make-ready.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const fewest = 60
const lanes = 2
const patience_ms = 120_000
const copied = ['src', 'test', 'docs', 'scripts', 'package.json', 'vitest.config.ts', 'tsconfig.base.json']

function declared(word) {
  const folder = join(root, 'benchmarks', 'mutants')
  const all = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')))
  return word ? all.filter(({ file, killedBy }) => `${file} ${killedBy.file} ${killedBy.test}`.includes(word)) : all
}

function copyOfTree() {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-mutants-'))
  for (const path of copied) cpSync(join(root, path), join(folder, path), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  return folder
}

/** Every test that ran with its outcome; none when it had to be stopped. */
async function runTests(folder, testFile, testName) {
  const outcome = join(folder, 'outcome.json')
  rmSync(outcome, { force: true })
  const vitest = join(folder, 'node_modules', 'vitest', 'vitest.mjs')
  const project = testFile.startsWith('src/store/') ? 'store' : 'unit'
  const only = testName ? [`--testNamePattern=${testName.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`] : []
  const args = [vitest, 'run', testFile, '--project', project, '--reporter=json', `--outputFile=${outcome}`, ...only]
  const run = await runToEnd(process.execPath, args, folder, { patience_ms })
  const tests = read(outcome)?.testResults.flatMap((file) => file.assertionResults) ?? []
  return { tests, output: run.output }
}

const named = (tests, name, status) => tests.filter((test) => test.status === status && test.fullName.includes(name))

/** Undefined, or what is wrong with the declaration itself. */
function complaintAbout({ file, find }) {
  const text = read(join(root, file), (content) => content)
  if (text === undefined) return `${file} does not exist`
  const times = text.split(find).length - 1
  return times === 1 ? undefined : `the text to change stands ${times} times in ${file}, it must stand once`
}

async function tryMutant(folder, mutant) {
  const wrong = complaintAbout(mutant)
  if (wrong) return { mutant, verdict: 'badly declared', detail: wrong }
  const path = join(folder, mutant.file)
  const text = readFileSync(path, 'utf8')
  writeFileSync(
    path,
    text.replace(mutant.find, () => mutant.replace),
  )
  const { tests, output } = await runTests(folder, mutant.killedBy.file, mutant.killedBy.test)
  writeFileSync(path, text)
  if (named(tests, mutant.killedBy.test, 'failed').length > 0) return { mutant, verdict: 'killed' }
  const passed = named(tests, mutant.killedBy.test, 'passed').length
  const detail = passed > 0 ? `${passed} tests of that name passed` : `the test did not run: ${output.slice(-300)}`
  return { mutant, verdict: 'survived', detail }
}

/** The named tests have to pass while nothing is broken. */
async function baseline(folder, mutants, say) {
  const complaints = []
  for (const file of new Set(mutants.map(({ killedBy }) => killedBy.file))) {
    const { tests, output } = await runTests(folder, file)
    for (const { killedBy } of mutants.filter((mutant) => mutant.killedBy.file === file)) {
      const failing = named(tests, killedBy.test, 'failed').length
      if (failing > 0) complaints.push(`${file}: "${killedBy.test}" fails without any fault`)
      else if (named(tests, killedBy.test, 'passed').length === 0) {
        complaints.push(`${file}: there is no test "${killedBy.test}"${tests.length ? '' : `: ${output.slice(-300)}`}`)
      }
    }
    say(`baseline: ${file}, ${tests.length} tests`)
  }
  return [...new Set(complaints)]
}

async function main(word) {
  const mutants = declared(word)
  const folders = Array.from({ length: lanes }, copyOfTree)
  try {
    const complaints = await baseline(folders[0], mutants, console.log)
    const left = [...mutants]
    const outcomes = []
    const lane = async (folder) => {
      for (let mutant = left.shift(); mutant; mutant = left.shift()) {
        const outcome = await tryMutant(folder, mutant)
        outcomes.push(outcome)
        console.log(`${outcome.verdict}: ${mutant.file}: ${mutant.why}${outcome.detail ? ` (${outcome.detail})` : ''}`)
      }
    }
    await Promise.all(folders.map(lane))
    return conclude(mutants, outcomes, complaints, word)
  } finally {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true })
  }
}

function conclude(mutants, outcomes, complaints, word) {
  const alive = outcomes.filter(({ verdict }) => verdict !== 'killed')
  for (const complaint of complaints) console.log(complaint)
  if (!word && mutants.length < fewest) complaints.push(`only ${mutants.length} faults are declared of ${fewest}`)
  if (!word) writeFileSync(join(root, 'docs', 'mutants.md'), table(mutants, outcomes))
  console.log(`${outcomes.length - alive.length} of ${mutants.length} faults killed, ${complaints.length} complaints`)
  for (const complaint of complaints) console.log(`- ${complaint}`)
  return alive.length > 0 || complaints.length > 0 ? 1 : 0
}

function table(mutants, outcomes) {
  const cell = (text) => text.replaceAll('|', '\\|').replaceAll('\n', ' ').trim()
  const code = (text) => `\`${cell(text)}\``
  const rows = mutants.map((mutant) => {
    const { verdict } = outcomes.find((outcome) => outcome.mutant === mutant)
    const { file, find, replace, why, killedBy } = mutant
    return `| ${file} | ${code(find)} → ${code(replace)} | ${cell(why)} | ${killedBy.file}: ${cell(killedBy.test)} | ${verdict} |`
  })
  const killed = outcomes.filter(({ verdict }) => verdict === 'killed').length
  return `# Faults put in on purpose

Written by \`npm run mutants\`. Each fault is put into a copy of the tree alone, and the named test must fail.
${killed} of ${mutants.length} were killed.

| file | fault | what it would mean | named test | outcome |
|---|---|---|---|---|
${rows.join('\n')}
`
}

function read(path, parse = JSON.parse) {
  try {
    return parse(readFileSync(path, 'utf8'))
  } catch {
    return undefined
  }
}

mkdirSync(join(root, 'docs'), { recursive: true })
process.exitCode = await main(process.argv[2])
