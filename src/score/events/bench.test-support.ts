import { celsius, expectOk, minutes, seconds } from '../../kernel/index.js'
import { defineBasis } from '../../science/index.js'
import type { Score } from '../plan/definition.js'
import { plan } from '../plan/plan.js'
import { bath, CONTINUOUS, fixedFor } from '../recipe/build.js'
import type { Recipe } from '../recipe/definition.js'

/** Four baths with round figures: 15 s to pour, 10 s to drain, 3 s for the cap, no tapping. */
const handling = {
  pour: { seconds: seconds(15), origin: 'practice' },
  drain: { seconds: seconds(10), origin: 'practice' },
  cap: { seconds: seconds(3), origin: 'practice' },
  tap: null,
} as const
const common = { handling, reason: 'A bath of a test.' }

export const FOUR_BATHS: Recipe = {
  id: 'four',
  name: 'Four baths',
  process: 'black-and-white',
  about: 'For tests.',
  steps: [
    bath({
      ...common,
      id: 'developer',
      name: 'Developer',
      kind: 'developer',
      time: { law: 'by-developing-time' },
      neverPartFromNext: true,
    }),
    bath({ ...common, id: 'stop', name: 'Stop', kind: 'stop', time: fixedFor(30), agitation: CONTINUOUS }),
    bath({ ...common, id: 'fix', name: 'Fix', kind: 'fix', time: fixedFor(300), agitation: { kind: 'none' } }),
    bath({ ...common, id: 'wash', name: 'Wash', kind: 'wash', time: fixedFor(120), agitation: { kind: 'none' } }),
  ],
}

/** Twice and a half as fast for ten degrees more, 8:00 at 20 °C. */
export const COEFFICIENT = 2.5
export const REFERENCE = 480
export const basis = expectOk(
  defineBasis({
    kind: 'ordinary',
    points: [{ temperature: celsius(20), time: minutes(8) }],
    coefficient: COEFFICIENT,
  }),
)

export const score: Score = expectOk(
  plan([
    {
      recipe: FOUR_BATHS,
      conditions: { tank: 'A', development: { from: 'basis', basis, temperature: celsius(20) } },
    },
  ]),
)
