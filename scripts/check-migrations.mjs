// Migrations go forward only: one that has landed may never change, because data folders out there have run it.
// `--land` adds the migrations that are new to landed.json; changed or missing ones are refused either way.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const args = process.argv.slice(2)
const land = args.includes('--land')
const root = args.find((arg) => !arg.startsWith('--')) ?? dirname(dirname(fileURLToPath(import.meta.url)))
const folder = join(root, 'src', 'store', 'migrations')
const list = join(folder, 'landed.json')

/** Migrations are numbered (0001-….ts); other files of the folder are helpers and may change. */
const present = existsSync(folder)
  ? readdirSync(folder)
      .filter((name) => /^\d+.*(?<!\.test)\.ts$/.test(name))
      .sort()
  : []
const landed = existsSync(list) ? JSON.parse(readFileSync(list, 'utf8')) : {}
const hashOf = (name) =>
  createHash('sha256')
    .update(readFileSync(join(folder, name)))
    .digest('hex')

const complaints = []
for (const [name, hash] of Object.entries(landed)) {
  if (!present.includes(name))
    complaints.push(`${name} has landed and is gone: put it back, and undo what it did in a new migration.`)
  else if (hashOf(name) !== hash)
    complaints.push(`${name} has landed and was changed: put it back, and write a new migration.`)
}
const fresh = present.filter((name) => !(name in landed))
const last = Object.keys(landed).sort().at(-1) ?? ''
for (const name of fresh.filter((name) => name < last)) {
  complaints.push(`${name} comes before ${last}, which has landed: number it after.`)
}
if (land && complaints.length === 0) {
  for (const name of fresh) landed[name] = hashOf(name)
  writeFileSync(list, `${JSON.stringify(landed, null, 2)}\n`)
} else {
  for (const name of fresh)
    complaints.push(`${name} is not in landed.json: run node scripts/check-migrations.mjs --land when it is final.`)
}
for (const complaint of complaints) console.log(complaint)
console.log(`${present.length} migrations, ${Object.keys(landed).length} landed`)
process.exitCode = complaints.length > 0 ? 1 : 0
