// The plots of docs/science on washing, on standing baths and on replenishing, drawn from the functions that answer.
import { expectOk } from '../../dist/kernel/index.js'
import * as science from '../../dist/science/index.js'
import { along, plot } from './axes.mjs'

/** Seven changes of three minutes, one roll, fixer of 110 g/L: milligrams by their powers of ten. */
function wash() {
  const every = 180
  const after = (time) => {
    const begun = Math.floor(time / every)
    const change = (length) => ({ kind: 'change', volume: 300, time: length, moved: true })
    const steps = [...Array.from({ length: begun }, () => change(every)), change(time - begun * every)]
    const asked = { after: { state: 'unknown' }, steps, fixer: 110, rolls: 1, temperature: 20 }
    return expectOk(science.estimateWash(asked))
  }
  const power = (of) => (minutes) => Math.log10(of(after(Math.min(minutes * 60, 7 * every - 1))))
  const together = power(({ perRoll }) => perRoll)
  const limit = Math.log10(science.RESIDUE_LIMIT.gramsPerM2 * (science.ROLL_AREA_CM2 / 10))
  return plot({
    title: 'A wash of seven changes',
    description: `Milligrams of thiosulfate in a roll, as powers of ten: both together come to ${(10 ** together(21)).toFixed(4)}, the limit is ${(10 ** limit).toFixed(2)}.`,
    x: { from: 0, to: 21, step: 3, decimals: 0, label: 'time, minutes; each three a change of 300 mL' },
    y: { from: -8, to: 3, step: 1, decimals: 0, label: 'log10 of milligrams a roll' },
    levels: [{ at: limit, tone: 'accent' }],
    curves: [
      {
        through: along(
          0,
          21,
          power(({ left }) => left.water.milligramsPerRoll),
          1260,
        ),
        tone: 'ink',
        weight: 1.5,
        dash: [3, 3],
      },
      {
        through: along(
          0,
          21,
          power(({ left }) => left.diffusion.milligramsPerRoll),
        ),
        tone: 'ink',
        weight: 1.5,
        dash: [6, 4],
      },
      { through: along(0, 21, together, 210) },
    ],
    notes: [
      { at: [21, limit], words: 'at most', anchor: 'end', dx: -4, dy: -6 },
      { at: [3, -5], words: 'water alone', dx: -40, dy: 0 },
      { at: [15, together(15)], words: 'both together', dx: 6, dy: -8 },
      {
        at: [18, power(({ left }) => left.diffusion.milligramsPerRoll)(18)],
        words: 'diffusion alone',
        anchor: 'end',
        dx: -6,
        dy: 26,
      },
    ],
  })
}

/** The page's tank in a room, through its readings, drawn on to where it will be. */
function standing() {
  const around = 17
  const readings = [
    { at: 0, temperature: 23 },
    { at: 600, temperature: 22.3 },
    { at: 1500, temperature: 21.4 },
  ]
  const found = expectOk(science.constantFrom(readings, around))
  const at = (constant) => (minutes) =>
    around + (readings[0].temperature - around) * Math.exp((-minutes * 60) / constant)
  return plot({
    title: 'A tank that stands in a cool room',
    description: `Three readings give a time constant of ${(found.value / 60).toFixed(0)} minutes; its interval opens to both sides.`,
    x: { from: 0, to: 120, step: 20, decimals: 0, label: 'time, minutes' },
    y: { from: 16, to: 24, step: 1, decimals: 0, label: 'temperature, °C' },
    levels: [{ at: around }],
    curves: [
      { through: along(0, 120, at(found.low)), tone: 'ink', weight: 1, dash: [3, 4] },
      { through: along(0, 120, at(found.high)), tone: 'ink', weight: 1, dash: [3, 4] },
      { through: along(0, 120, at(found.value)) },
    ],
    points: readings.map((reading) => ({ at: [reading.at / 60, reading.temperature] })),
    notes: [{ at: [120, around], words: 'the room', anchor: 'end', dx: -4, dy: -6 }],
  })
}

/** Bromide of the page's litre, roll by roll, towards where it settles; without topping up beside it. */
function replenishing() {
  const bath = { volume: 1000, rate: 70, perRoll: 0.05, replenisher: 0, start: 0 }
  const { beforeTopping: before, afterTopping: after } = expectOk(science.plateau(bath))
  const rolls = Array.from({ length: 61 }, (_, n) => [n, expectOk(science.afterRolls(bath, n))])
  return plot({
    title: 'A replenished bath settles',
    description: `Bromide in a litre, 50 mg and 70 mL a roll: it settles at ${after.toFixed(3)} g/L after topping up, ${before.toFixed(3)} before.`,
    x: { from: 0, to: 60, step: 10, decimals: 0, label: 'rolls' },
    y: { from: 0, to: 1, step: 0.2, decimals: 1, label: 'bromide, g/L, just after topping up' },
    levels: [{ at: after }],
    curves: [{ through: along(0, 20, (n) => 0.05 * n), tone: 'ink', weight: 1.5, dash: [3, 4] }, { through: rolls }],
    points: [1, 2, 20].map((n) => ({ at: rolls[n] })),
    notes: [
      { at: [14, 0.7], words: 'never topped up', anchor: 'end', dx: -8, dy: -6 },
      { at: [60, after], words: 'where it settles', anchor: 'end', dx: -4, dy: -6 },
    ],
  })
}

/** These plots by their names under docs/science. */
export const plotsOfBaths = { wash, standing, replenishing }
