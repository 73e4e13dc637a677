// Writes the generated two-year bench into a data folder, to look at it or to measure on it:
//   node scripts/two-year.mjs FOLDER [SEED]
//   DATA_DIR=FOLDER npm start
// The generator is TypeScript beside the tests that use it. Node 20 cannot run that, and a copy in plain JavaScript
// over dist/ would be a step behind the sources. Vite is there anyway, since it builds the pages, and loads
// TypeScript the same way on Node 20, 22 and 24.
import { existsSync, mkdirSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { runnerImport } from 'vite'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
export const SEED = 2024

/** Furnishes a data folder that has no data yet; gives what was done. */
export async function writeTwoYears(folder, seed = SEED) {
  const file = join(folder, 'wetside.db')
  if (existsSync(file)) throw new Error(`${file} exists already; give a folder without data.`)
  mkdirSync(folder, { recursive: true })
  const entry = join(root, 'test', 'two-year', 'bench.ts')
  const { module } = await runnerImport(entry, { root, configFile: false, logLevel: 'error' })
  const { store, log } = await module.openTwoYears({ kind: 'sqlite', file }, seed)
  await store.close()
  return log
}

async function main([folder, seed]) {
  if (folder === undefined || (seed !== undefined && !/^\d{1,9}$/.test(seed))) {
    console.error('node scripts/two-year.mjs FOLDER [SEED]: the seed is a whole number.')
    return 64
  }
  const log = await writeTwoYears(resolve(folder), seed === undefined ? SEED : Number(seed))
  const refused = log.filter(({ outcome }) => outcome !== 'done').length
  console.log(
    `${log.length - refused} things done, ${refused} refused. Look at them with DATA_DIR=${folder} npm start.`,
  )
  return 0
}

const asked = process.argv[1]
if (asked !== undefined && import.meta.url === pathToFileURL(asked).href)
  process.exitCode = await main(process.argv.slice(2))
