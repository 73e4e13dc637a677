// Who imports whom (.dependency-cruiser.cjs). A cruise over nothing passes too, so nothing is a failure here.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runToEnd } from './make-ready.mjs'

const here = dirname(dirname(fileURLToPath(import.meta.url)))
const root = process.argv[2] ?? here

const cruiser = join(here, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs')
const args = ['src', '--config', join(here, '.dependency-cruiser.cjs'), '--output-type', 'json']
const { output } = await runToEnd(process.execPath, [cruiser, ...args], root)
const { modules, summary } = read(output)
const ours = modules.filter(({ source }) => source.startsWith('src/')).length

for (const { rule, from, to, cycle } of summary.violations) {
  console.log(`${rule.name}: ${from} → ${cycle ? cycle.map((step) => step.name).join(' → ') : to}`)
}
console.log(`${summary.violations.length} forbidden imports in ${ours} modules`)
if (ours === 0) console.log('Not one module was cruised, so nothing was checked: that is a failure.')
process.exitCode = summary.violations.length > 0 || ours === 0 ? 1 : 0

function read(text) {
  try {
    return JSON.parse(text)
  } catch {
    console.log(text)
    return { modules: [], summary: { violations: [] } }
  }
}
