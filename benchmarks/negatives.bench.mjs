// How long people wait for curves: one strip of 21 steps, a drawer of fifty, a family of five, all with intervals.
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'

const science = () => import(pathToFileURL(fileURLToPath(new URL('../dist/science/index.js', import.meta.url))).href)
let library

const stepOf = (gamma, i) => {
  const logExposure = -3 + 0.15 * i
  const density = 0.22 + gamma * 0.15 * Math.log1p(Math.exp((logExposure + 2.1847) / 0.15))
  return { logExposure, density: Math.round(100 * density) / 100 }
}
const stripOf = (gamma) => ({
  steps: Array.from({ length: 21 }, (_, i) => stepOf(gamma, i)),
  baseFog: { density: 0.22 },
  exposure: 'lux-seconds',
})

/** The value of a result; a refusal is an error of the benchmark. */
const accepted = (result) => {
  if (!result.ok) throw new Error(result.problem.sentence)
  return result.value
}

function readStrip(gamma) {
  const curve = accepted(library.characteristicCurve(stripOf(gamma)))
  return [library.filmSpeed(curve), library.namedGradient(curve, 'g-bar'), library.contrastIndex(curve)].map(accepted)
}

const times = [240, 330, 480, 660, 960]
function family() {
  const curves = times.map((time) => {
    const gamma = 0.95 * (1 - Math.exp(-0.0028 * time))
    return { time, curve: accepted(library.characteristicCurve(stripOf(gamma))) }
  })
  return accepted(library.answerOf(accepted(library.familyOf(curves, 'g-bar')), 0.62))
}

const took_ms = (work) => {
  const from = performance.now()
  work()
  return performance.now() - from
}
const setUp = async () => {
  library = await science()
}

export const rows = [
  {
    name: 'a 21-step curve: speed, gradient and contrast index with intervals',
    bound: { value: 20, unit: 'ms' },
    setUp,
    run: () => took_ms(() => readStrip(0.65)),
    repeats: 40,
  },
  {
    name: 'fifty strips of 21 steps, the same',
    bound: { value: 1000, unit: 'ms' },
    setUp,
    run: () =>
      took_ms(() => {
        for (let i = 0; i < 50; i++) readStrip(0.55 + i / 400)
      }),
    repeats: 7,
  },
  {
    name: 'a family of five strips: own time, speed and intervals',
    bound: { value: 200, unit: 'ms' },
    setUp,
    run: () => took_ms(family),
    repeats: 25,
  },
]
