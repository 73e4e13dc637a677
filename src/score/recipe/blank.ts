import { act, bath, CONTINUOUS, fixedFor } from './build.js'
import { inversions } from './defaults.js'
import type { ActKind, Agitation, Bath, BathKind, Caution, Step } from './definition.js'

export const BATH_KINDS: readonly BathKind[] = [
  'pre-wet',
  'developer',
  'single-bath',
  'bath-a',
  'bath-b',
  'first-developer',
  'colour-developer',
  'second-developer',
  'stop',
  'rinse',
  'reversal',
  'pre-bleach',
  'bleach',
  'clear',
  'fix',
  'wash-aid',
  'wash',
  'wetting',
]
export const ACT_KINDS: readonly ActKind[] = ['lid-off', 'look', 'squeeze', 're-expose', 'hang-up']

export const CAUTIONS: readonly Caution[] = [
  'dark-until-fixed',
  'never-into-developer',
  'acid-splash',
  'bleach-oxidiser',
  'bleach-never-meets-fixer',
  'no-rinse-between',
  'keep-temperature',
  'do-not-touch-emulsion',
  'even-light',
  'gloves',
]

const WATER: readonly BathKind[] = ['pre-wet', 'rinse', 'wash']
const DARK: readonly BathKind[] = [
  'developer',
  'single-bath',
  'bath-a',
  'bath-b',
  'first-developer',
  'colour-developer',
]
const GENTLE: Agitation = { kind: 'moments', opening: inversions(10, 1.5), moments: [] }

/** Seconds that a fresh step begins with; all of them are placeholders, marked as assumptions. */
const MINUTE = 60

/** A fresh step to fill in, with what is usual for its kind; its figures are assumptions until somebody says better. */
export function newStep(kind: BathKind | ActKind, id: string, name: string): Step {
  return isAct(kind) ? act(kind, { id, name, reason: '', takes: MINUTE }) : newBath(kind, id, name)
}

const isAct = (kind: BathKind | ActKind): kind is ActKind => (ACT_KINDS as readonly string[]).includes(kind)

function newBath(kind: BathKind, id: string, name: string): Bath {
  const timed = kind === 'developer' || kind === 'single-bath'
  return bath({
    id,
    name,
    kind,
    reason: '',
    time: timed ? { law: 'by-developing-time' } : fixedFor(MINUTE, 'assumption'),
    ...(kind === 'wash' ? { agitation: GENTLE } : kind === 'stop' || kind === 'rinse' ? { agitation: CONTINUOUS } : {}),
    goesTo: WATER.includes(kind) ? 'away' : 'bottle',
    cautions: DARK.includes(kind) ? ['dark-until-fixed'] : [],
  })
}
