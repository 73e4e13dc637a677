// `npm run measure`: every row of benchmarks/*.bench.mjs against its bound and against a bare baseline that runs in
// turn with it, so that a busy machine slows both. Writes docs/measured.md. `-- times` runs the rows with that word.
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

/**
 * A row is `{ name, bound: { value, unit }, run, baseline?: { name, run }, repeats?, setUp?, tearDown? }`;
 * `run` gives one figure in the bound's unit (usually milliseconds). The median has to meet the bound.
 */
async function rowsIn(folder) {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.bench.mjs'))
    .sort()
  const modules = await Promise.all(files.map((name) => import(pathToFileURL(join(folder, name)).href)))
  return modules.flatMap(({ rows }) => rows)
}

async function measured(row) {
  const figures = { subject: [], baseline: [] }
  try {
    await row.setUp?.()
    await row.run()
    for (let i = 0; i < (row.repeats ?? 15); i++) {
      figures.subject.push(await row.run())
      if (row.baseline) figures.baseline.push(await row.baseline.run())
    }
  } catch (fault) {
    return { row, fault: String(fault.message ?? fault).split('\n')[0] }
  } finally {
    await row.tearDown?.()
  }
  const median = quantile(figures.subject, 0.5)
  const bare = row.baseline && quantile(figures.baseline, 0.5)
  return { row, median, p95: quantile(figures.subject, 0.95), bare, met: median <= row.bound.value }
}

/** The smallest figure that at least this share of all figures does not exceed. */
function quantile(figures, share) {
  const sorted = [...figures].sort((a, b) => a - b)
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]
}

function line({ row, fault, median, p95, bare, met }) {
  const unit = row.bound.unit
  const says = (value) => `${value.toPrecision(3)} ${unit}`
  if (fault)
    return `| ${row.name} | ${row.bound.value} ${unit} | | | | | not measured: ${fault.replaceAll('|', '\\|')} |`
  const baseline = bare === undefined ? '| ' : `${row.baseline.name}: ${says(bare)} | ${(median / bare).toFixed(2)}`
  return `| ${row.name} | ${row.bound.value} ${unit} | ${says(median)} | ${says(p95)} | ${baseline} | ${met ? 'met' : 'missed'} |`
}

async function main(word) {
  const rows = (await rowsIn(join(root, 'benchmarks'))).filter(({ name }) => !word || name.includes(word))
  const results = []
  for (const row of rows) {
    results.push(await measured(row))
    console.log(line(results.at(-1)))
  }
  const text = `# Measured

Written by \`npm run measure\` on ${availableParallelism()} shared cores, Node ${process.versions.node}. The baseline is the barest program that
does the like, run in turn with ours; the ratio says more than the figure, because it travels between machines.

| what | bound | median | 95 % within | bare baseline | ratio | |
|---|---|---|---|---|---|---|
${results.map(line).join('\n')}
`
  mkdirSync(join(root, 'docs'), { recursive: true })
  if (!word) writeFileSync(join(root, 'docs', 'measured.md'), text)
  const missed = results.filter(({ met }) => !met).length
  console.log(`${results.length - missed} of ${results.length} bounds met`)
  return missed > 0 || results.length === 0 ? 1 : 0
}

process.exitCode = await main(process.argv[2])
