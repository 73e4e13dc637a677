// What a phone must fetch before a screen stands: the entry of the built page, and for a screen that is loaded apart
// also that part, each with all it imports at once.
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

const budget_kB = 150
/** Loaded apart, and bound all the same: what stands in front of someone with wet hands. */
const apart = { 'the run screen': 'sections/runs/sink.ts' }
const built = process.argv[2] ?? join(dirname(dirname(fileURLToPath(import.meta.url))), 'dist', 'web-app')

process.exitCode = check()

function check() {
  const manifestFile = join(built, '.vite', 'manifest.json')
  if (!existsSync(manifestFile)) {
    console.log('There is no .vite/manifest.json: set build.manifest to true in src/web/vite.config.ts.')
    return 1
  }
  const manifest = JSON.parse(readFileSync(manifestFile, 'utf8'))
  const entries = Object.keys(manifest).filter((key) => manifest[key].isEntry)
  if (entries.length === 0) {
    console.log('The manifest has no entry, so nothing was measured: that is a failure.')
    return 1
  }
  const missing = Object.entries(apart).filter(([, key]) => !manifest[key])
  for (const [name, key] of missing) console.log(`The manifest has no ${key}, so ${name} was not measured.`)
  if (missing.length > 0) return 1
  const loads = [['any page', []], ...Object.entries(apart).map(([name, key]) => [name, [key]])]
  const totals = loads.map(([name, more]) => totalOf(name, firstLoad(manifest, [...entries, ...more])))
  return totals.some((total) => total > budget_kB) ? 1 : 0
}

function totalOf(name, files) {
  const sizes = [...files].map((file) => ({ file, kB: gzippedSize_kB(file) }))
  const total = sizes.reduce((sum, { kB }) => sum + kB, 0)
  for (const { file, kB } of sizes) console.log(`${kB.toFixed(1).padStart(7)} kB  ${file}`)
  console.log(`${total.toFixed(1)} kB of ${budget_kB} kB on the first load of ${name}, compressed`)
  return total
}

/** Scripts and styles of the entries and of everything they import statically. */
function firstLoad(manifest, entries) {
  const files = new Set()
  const seen = new Set()
  const visit = (key) => {
    if (seen.has(key)) return
    seen.add(key)
    const chunk = manifest[key]
    files.add(chunk.file)
    for (const style of chunk.css ?? []) files.add(style)
    for (const next of chunk.imports ?? []) visit(next)
  }
  for (const entry of entries) visit(entry)
  return files
}

function gzippedSize_kB(file) {
  return gzipSync(readFileSync(join(built, file)), { level: 9 }).length / 1000
}
