// Our least squares beside scipy's on the same contrast laws, in the same run, where Python has scipy. The answers must
// agree to a millionth, else the row fails.
import { execFileSync, spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'

const dataFile = fileURLToPath(new URL('../test/reference/data/scipy-fits.json', import.meta.url))
const script = fileURLToPath(new URL('fits.py', import.meta.url))
const hasScipy = spawnSync('python3', ['-c', 'import scipy']).status === 0
const rounds = 20
let fitContrast
let data

function ours() {
  const laws = []
  const from = performance.now()
  for (let i = 0; i < rounds; i++)
    for (const [at, family] of data.families.entries()) {
      const points = family.times.map((time, j) => ({
        time,
        contrast: family.contrasts[j],
        standardError: family.errors[j],
      }))
      const found = fitContrast(points, data.scatter)
      if (!found.ok) throw new Error(found.problem.sentence)
      laws[at] = found.value.law
    }
  return { ms: (performance.now() - from) / (rounds * data.families.length), laws }
}

function theirs() {
  const { ms, values } = JSON.parse(execFileSync('python3', [script, dataFile], { encoding: 'utf8' }))
  for (const [i, { most, rate }] of ours().laws.entries()) {
    const apart = Math.max(Math.abs(values[i][0] / most - 1), Math.abs(values[i][1] / rate - 1))
    if (!(apart < 1e-6)) throw new Error(`family ${i + 1} differs by ${apart}`)
  }
  return ms
}

export const rows = [
  {
    name: 'a contrast law through four to seven strips',
    // No figure was asked for; a screen that redraws with every typed strip has this long.
    bound: { value: 16, unit: 'ms' },
    setUp: async () => {
      ;({ fitContrast } = await import(new URL('../dist/science/index.js', import.meta.url).href))
      data = JSON.parse(readFileSync(dataFile, 'utf8'))
    },
    run: () => ours().ms,
    ...(hasScipy ? { baseline: { name: 'scipy curve_fit, same answers to 1e-6', run: theirs } } : {}),
    repeats: 5,
  },
]
