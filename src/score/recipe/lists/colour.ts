import { seconds } from '../../../kernel/index.js'
import { act, bath, CONTINUOUS, fixedFor, window } from '../build.js'
import { turns } from '../defaults.js'
import type { Bath, Recipe, Step } from '../definition.js'
import { hangUp } from './shared.js'

/** Common practice at 38 °C; developers have one time at one temperature. Every step is drained within its time. */

const HALF_MINUTES = turns(30, 5, 30)

const preWarm: Bath = bath({
  id: 'pre-warm',
  name: 'Warm water',
  kind: 'pre-wet',
  time: fixedFor(60),
  window: window(38, 41),
  agitation: CONTINUOUS,
  goesTo: 'away',
  mayStay: seconds(60),
  reason: 'A cold tank would chill the developer; a minute of warm water brings film and tank to its temperature.',
  cautions: ['dark-until-fixed'],
})

type Colour = Pick<Bath, 'id' | 'name' | 'kind' | 'reason'> & Partial<Bath>

const warm = (minutesLong: number, parts: Colour): Bath =>
  bath({
    time: fixedFor(minutesLong * 60),
    window: window(24, 41),
    agitation: HALF_MINUTES,
    mayStay: seconds(60),
    ...parts,
  })

const water = (id: string, minutesLong: number, reason: string): Bath =>
  warm(minutesLong, { id, name: 'Wash', kind: 'wash', goesTo: 'away', reason })

const ending: readonly Step[] = [
  warm(1.5, {
    id: 'final-rinse',
    name: 'Final rinse',
    kind: 'wetting',
    agitation: { kind: 'none' },
    reason: 'It keeps the dyes and lets the water run off without drops.',
  }),
  act('squeeze', {
    id: 'squeeze',
    name: 'Let run off',
    takes: 20,
    reason: 'Colour film is soft when warm; do not wipe it.',
    cautions: ['do-not-touch-emulsion'],
  }),
  hangUp,
]

export const colourNegative: Recipe = {
  id: 'colour-negative',
  name: 'Colour negative, 38 °C',
  process: 'colour-negative',
  about:
    'Film for prints. The developer has one time at one temperature, held to a sixth of a degree; the rest is easy.',
  steps: [
    preWarm,
    warm(3.25, {
      id: 'developer',
      name: 'Colour developer',
      kind: 'colour-developer',
      window: window(37.65, 37.95),
      mayStay: seconds(0),
      neverPartFromNext: true,
      reason:
        'Three layers must keep step with each other; time or warmth of your own gives a cast that no print removes.',
      cautions: ['dark-until-fixed', 'keep-temperature', 'gloves'],
    }),
    warm(6.5, {
      id: 'bleach',
      name: 'Bleach',
      kind: 'bleach',
      mayStay: seconds(120),
      reason: 'It ends development and turns the silver back, so that only dye stays after the fixer.',
      cautions: ['bleach-oxidiser', 'gloves'],
    }),
    water('wash-1', 3.25, 'Bleach must not reach the fixer.'),
    warm(6.5, {
      id: 'fix',
      name: 'Fix',
      kind: 'fix',
      mayStay: seconds(120),
      reason: 'It dissolves all the silver; film that looks milky needs longer.',
      cautions: ['never-into-developer', 'bleach-never-meets-fixer'],
    }),
    water('wash-2', 3.25, 'Fixer that stays behind fades the dyes.'),
    ...ending,
  ],
}

export const colourReversal: Recipe = {
  id: 'colour-reversal',
  name: 'Colour reversal, 38 °C',
  process: 'colour-reversal',
  about: 'Slides. The first developer decides how light they are, the colour developer their colour; both are fixed.',
  steps: [
    preWarm,
    warm(6, {
      id: 'first-developer',
      name: 'First developer',
      kind: 'first-developer',
      window: window(37.7, 38.3),
      mayStay: seconds(0),
      neverPartFromNext: true,
      reason: 'It makes a black-and-white negative; what it leaves over becomes the slide.',
      cautions: ['dark-until-fixed', 'keep-temperature', 'gloves'],
    }),
    water('wash-1', 2, 'It ends the first development; start it promptly and keep it warm.'),
    warm(2, {
      id: 'reversal',
      name: 'Reversal bath',
      kind: 'reversal',
      reason: 'It does by chemistry what light would do: everything left becomes developable. No washing after it.',
      cautions: ['dark-until-fixed', 'no-rinse-between'],
      neverPartFromNext: true,
    }),
    warm(6, {
      id: 'colour-developer',
      name: 'Colour developer',
      kind: 'colour-developer',
      window: window(37.4, 38.6),
      mayStay: seconds(0),
      neverPartFromNext: true,
      reason: 'It makes the dyes of the positive picture.',
      cautions: ['dark-until-fixed', 'keep-temperature', 'gloves'],
    }),
    warm(2, {
      id: 'pre-bleach',
      name: 'Pre-bleach',
      kind: 'pre-bleach',
      reason: 'It readies the silver for the bleach.',
    }),
    warm(6.5, {
      id: 'bleach',
      name: 'Bleach',
      kind: 'bleach',
      mayStay: seconds(120),
      reason: 'It turns both silver pictures back, so that only dye stays after the fixer.',
      cautions: ['bleach-oxidiser', 'gloves'],
    }),
    warm(4, {
      id: 'fix',
      name: 'Fix',
      kind: 'fix',
      mayStay: seconds(120),
      reason: 'It dissolves all the silver.',
      cautions: ['never-into-developer'],
    }),
    water('wash-2', 4, 'Fixer that stays behind fades the dyes.'),
    ...ending,
  ],
}
