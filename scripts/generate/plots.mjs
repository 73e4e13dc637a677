// The plots of docs/science, drawn from the functions that answer: a changed law changes its picture.
import { expectOk } from '../../dist/kernel/index.js'
import * as science from '../../dist/science/index.js'
import { along, plot } from './axes.mjs'
import { plotsOfBaths } from './plots-of-baths.mjs'
import { svgOf } from './svg.mjs'

/** Rate against temperature by both laws of a developer whose ten-degree coefficient is 2.5. */
function rateLaws() {
  const byLaw = (law) => {
    const points = [{ temperature: 20, time: 480 }]
    const basis = expectOk(science.defineBasis({ kind: 'ordinary', law, points, coefficient: 2.5 }))
    return (temperature) => expectOk(science.rateAt(basis, temperature)).rate
  }
  const [exponential, arrhenius] = [byLaw('exponential'), byLaw('arrhenius')]
  return plot({
    title: 'Rate of development against temperature by two laws',
    description: `K 2.5, 20 °C as reference: at 30 °C the exponential law gives ${exponential(30).toFixed(2)}, Arrhenius ${arrhenius(30).toFixed(2)}.`,
    x: { from: 12, to: 32, step: 4, decimals: 0, label: 'temperature, °C' },
    y: { from: 0, to: 3, step: 0.5, decimals: 1, label: 'rate; 1 is the reference at 20 °C' },
    levels: [{ at: 1 }],
    curves: [
      { through: along(12, 32, exponential) },
      { through: along(12, 32, arrhenius), tone: 'ink', weight: 1.5, dash: [6, 4] },
    ],
    points: [{ at: [20, 1] }],
    notes: [
      { at: [30, exponential(30)], words: 'exponential', anchor: 'end', dx: -8, dy: -6 },
      { at: [30, arrhenius(30)], words: 'Arrhenius', dx: 0, dy: 32 },
    ],
  })
}

/** The strip of the page's worked example, with the points that its measures look at. */
function characteristic() {
  const densities = [
    0.22, 0.22, 0.22, 0.23, 0.24, 0.27, 0.32, 0.39, 0.48, 0.57, 0.67, 0.76, 0.86, 0.96, 1.05, 1.15, 1.25, 1.34, 1.44,
    1.54, 1.64,
  ]
  const steps = densities.map((density, i) => ({ logExposure: -3 + 0.15 * i, density }))
  const strip = expectOk(science.characteristicCurve({ steps, baseFog: { density: 0.22 }, exposure: 'lux-seconds' }))
  const { curve } = strip
  const m = expectOk(science.logSpeedPoint(curve))
  const gauge = expectOk(science.contrastIndexOf(curve))
  const n = m + 1.3
  const { centre, low, high } = gauge
  return plot({
    title: 'A characteristic curve with its points',
    description: `Speed point m at log H ${m.toFixed(2)}, n 1.30 further; the gauge of the contrast index ${gauge.index.toFixed(2)}.`,
    x: { from: -3, to: 0, step: 0.5, decimals: 1, label: 'log10 H, lux-seconds' },
    y: { from: 0, to: 1.8, step: 0.3, decimals: 1, label: 'density' },
    levels: [{ at: curve.baseFog }],
    curves: [
      {
        through: [
          [centre, curve.baseFog],
          [high.logExposure, high.density],
        ],
        tone: 'ink',
        weight: 1,
        dash: [3, 4],
      },
      { through: along(-3, 0, curve.at) },
    ],
    points: [
      ...steps.map(({ logExposure, density }) => ({ at: [logExposure, density], tone: 'edge' })),
      { at: [m, curve.at(m)], fill: 'accent' },
      { at: [n, curve.at(n)], fill: 'accent' },
      { at: [low.logExposure, low.density], fill: 'ink' },
      { at: [high.logExposure, high.density], fill: 'ink' },
    ],
    notes: [
      { at: [m, curve.at(m)], words: 'm, 0.10 over base and fog', dx: 10, dy: 20 },
      { at: [n, curve.at(n)], words: 'n, 1.30 further', dx: 10, dy: 10 },
      { at: [high.logExposure, high.density], words: 'the far arc', dx: -10, dy: -8, anchor: 'end' },
    ],
  })
}

/** Three strips, the law through them, and the time for a wanted contrast with its interval. */
function contrastInTime() {
  const wanted = 0.62
  const points = [
    { time: 240, contrast: 0.44 },
    { time: 480, contrast: 0.63 },
    { time: 960, contrast: 0.8 },
  ]
  const fitted = expectOk(science.fitContrast(points))
  const { time, low, high } = expectOk(science.ownTime(fitted, wanted))
  const grown = (minutes) => expectOk(science.contrastAfter(fitted.law, 60 * minutes))
  return plot({
    title: 'Contrast against developing time',
    description: `Three strips and the law through them; ${wanted} needs ${(time / 60).toFixed(1)} minutes, ${(low / 60).toFixed(1)} to ${(high / 60).toFixed(1)}.`,
    x: { from: 0, to: 18, step: 3, decimals: 0, label: 'time, minutes' },
    y: { from: 0, to: 1, step: 0.2, decimals: 1, label: 'average gradient' },
    levels: [{ at: fitted.law.most }],
    curves: [
      {
        through: [
          [low / 60, wanted],
          [high / 60, wanted],
        ],
        tone: 'edge',
        weight: 6,
      },
      { through: along(0, 18, grown) },
      {
        through: [
          [0, wanted],
          [time / 60, wanted],
          [time / 60, 0],
        ],
        tone: 'ink',
        weight: 1.5,
        dash: [3, 3],
      },
    ],
    points: points.map((strip) => ({ at: [strip.time / 60, strip.contrast] })),
    notes: [{ at: [0.2, fitted.law.most], words: 'the most it can reach', dy: -6 }],
  })
}

/** The page's ten values as a chart of individuals, the moving average through them. */
function controlChart() {
  const values = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
  const { centre, lower, upper, deviation } = expectOk(science.individualsChart(values))
  const { averages } = expectOk(science.ewmaChart(values, { start: centre, deviation }))
  const numbered = (series) => series.map((value, i) => [i + 1, value])
  return plot({
    title: 'A control chart',
    description: `Ten plots about ${centre.toFixed(2)}, limits ${lower.toFixed(2)} and ${upper.toFixed(2)}; the moving average runs more quietly.`,
    x: { from: 0, to: 11, step: 1, decimals: 0, label: 'strip' },
    y: { from: 44, to: 58, step: 2, decimals: 0, label: 'reading' },
    levels: [{ at: centre }, { at: lower, tone: 'accent' }, { at: upper, tone: 'accent' }],
    curves: [
      { through: numbered(values), tone: 'ink', weight: 1.5 },
      { through: numbered(averages), weight: 2.5 },
    ],
    points: numbered(values).map((at) => ({ at })),
    notes: [
      { at: [0, upper], words: 'three standard deviations', dy: -6 },
      { at: [1, averages[0]], words: 'moving average', dy: -24, dx: -14 },
    ],
  })
}

/** Every plot by its file under docs/science. */
export const plots = () => ({
  'docs/science/rate-laws.svg': svgOf(rateLaws()),
  'docs/science/characteristic-curve.svg': svgOf(characteristic()),
  'docs/science/contrast-in-time.svg': svgOf(contrastInTime()),
  'docs/science/control-chart.svg': svgOf(controlChart()),
  ...Object.fromEntries(Object.entries(plotsOfBaths).map(([name, of]) => [`docs/science/${name}.svg`, svgOf(of())])),
})
