import type { AddCheck, ThermometerStatement, TimeStatement } from '../../wire/index.js'

/**
 * The demo bench of a community darkroom, Millrace. Everything here is invented: no such film is sold, and no
 * figure may be used on real film.
 */
type Time = Pick<TimeStatement, 'film' | 'developer'> & Partial<TimeStatement>

const MINUTE = 60
const INVENTED = 'Invented for the demo bench'
const at = (temperature_c: number, minutes: number) => ({ temperature_c, time_s: minutes * MINUTE })
const USUAL = 'turn for the first 30 s, then 5 s each minute'

const time = (given: Time): TimeStatement => ({
  exposure_index: null,
  dilution_parts: null,
  agitation: USUAL,
  kind: 'ordinary',
  law: 'exponential',
  developer_class: 'unknown',
  coefficient: null,
  usable: null,
  window: null,
  points: [],
  source_words: INVENTED,
  source_origin: 'sheet',
  note: '',
  ...given,
})

export const DEMO_BENCH = 'Millrace darkroom'

export const DEMO_TIMES: readonly TimeStatement[] = [
  time({
    film: 'Corvane 400',
    exposure_index: 400,
    developer: 'ascorbate',
    dilution_parts: [1, 3],
    developer_class: 'phenidone-ascorbate',
    points: [at(18, 11.5), at(20, 9.5), at(22, 8), at(24, 6.75)],
  }),
  time({
    film: 'Corvane 400',
    exposure_index: 800,
    developer: 'ascorbate',
    dilution_parts: [1, 3],
    developer_class: 'phenidone-ascorbate',
    points: [at(18, 13.5), at(20, 11.25), at(22, 9.5), at(24, 8)],
  }),
  time({
    film: 'Tarn 100',
    exposure_index: 100,
    developer: 'MQ–borax',
    dilution_parts: [1],
    developer_class: 'metol-hydroquinone',
    points: [at(18, 10.25), at(20, 8.5), at(22, 7), at(24, 6)],
  }),
  time({
    film: 'Fell 25',
    exposure_index: 25,
    developer: 'p-aminophenol',
    dilution_parts: [1, 50],
    developer_class: 'p-aminophenol',
    points: [at(20, 9)],
    note: 'One time on the sheet. A second one at 24 °C would settle how it answers to temperature.',
  }),
  time({
    film: 'Tarn 100',
    exposure_index: 100,
    developer: 'single bath',
    kind: 'single-bath',
    agitation: 'turn four times each minute',
    points: [at(24, 6), at(25, 6), at(26, 6.5), at(27, 7)],
  }),
  time({
    film: 'Weir colour 200',
    exposure_index: 200,
    developer: 'colour negative developer',
    kind: 'fixed',
    agitation: 'turn four times every 30 s',
    points: [at(37.8, 3.25)],
    window: { from_c: 37.65, to_c: 37.95 },
  }),
]

interface DemoThermometer {
  readonly statement: ThermometerStatement
  readonly checks: readonly AddCheck[]
}

export const DEMO_THERMOMETERS: readonly DemoThermometer[] = [
  {
    statement: {
      name: 'Brass-cased spirit',
      kind: 'spirit',
      scale_low_c: -10,
      scale_high_c: 50,
      note: 'The one over the sink.',
    },
    checks: [
      { method: 'ice', read_c: 0.2 },
      { method: 'comparison', read_c: 20.4, true_c: 20 },
    ],
  },
  {
    statement: { name: 'Dial, long stem', kind: 'dial', scale_low_c: 0, scale_high_c: 60, note: '' },
    checks: [{ method: 'comparison', read_c: 21.6, true_c: 20 }],
  },
  { statement: { name: 'Digital probe', kind: 'digital', scale_low_c: -40, scale_high_c: 120, note: '' }, checks: [] },
]
