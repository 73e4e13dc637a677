import { seconds } from '../../../kernel/index.js'
import { act, bath, CONTINUOUS, fixedFor } from '../build.js'
import { inversions, turns } from '../defaults.js'
import type { Act, Bath, Step } from '../definition.js'

/** Steps that several lists share. Times with origin `sheet` are from US Army SS0509-8 and NAVEDTRA 14209. */

export const developer: Bath = bath({
  id: 'developer',
  name: 'Developer',
  kind: 'developer',
  time: { law: 'by-developing-time' },
  reason: 'It turns the light the film has seen into silver; its seconds and its warmth set the contrast.',
  cautions: ['dark-until-fixed'],
  neverPartFromNext: true,
})

export const acidStop: Bath = bath({
  id: 'stop',
  name: 'Stop',
  kind: 'stop',
  time: fixedFor(30, 'sheet'),
  agitation: CONTINUOUS,
  mayStay: seconds(30),
  reason: 'Its acid ends development at once and keeps alkali out of the fixer.',
  cautions: ['acid-splash', 'never-into-developer'],
})

export const waterStop: Bath = bath({
  id: 'stop',
  name: 'Water stop',
  kind: 'stop',
  time: fixedFor(60, 'practice'),
  agitation: CONTINUOUS,
  goesTo: 'away',
  mayStay: seconds(60),
  reason: 'Water thins the developer until it no longer works; it suits alkaline fixers and staining developers.',
})

/** Twice the clearing time by an old cyclopedia and every manual since; five minutes until the film has been seen to clear. */
export const fix: Bath = bath({
  id: 'fix',
  name: 'Fix',
  kind: 'fix',
  time: {
    law: 'by-clearing',
    multiple: 2,
    assumed: seconds(150),
    least: seconds(180),
    most: seconds(600),
    origin: 'practice',
  },
  agitation: turns(15, 5, 30),
  mayStay: seconds(300),
  reason: 'It dissolves the silver that was not developed; after it the film may see light and will keep.',
  cautions: ['never-into-developer'],
})

export const lidOff: Act = act('lid-off', {
  id: 'lid-off',
  name: 'Lid off',
  takes: 5,
  within: 125,
  reason: 'After two minutes in the fixer light does no harm any more, and you can look.',
})

export const look: Act = act('look', {
  id: 'look',
  name: 'Look for clearing',
  takes: 10,
  within: 150,
  reason: 'The moment the milky look is gone is the clearing time; the film stays in for twice as long.',
  cautions: ['do-not-touch-emulsion'],
})

export const washAid: Bath = bath({
  id: 'wash-aid',
  name: 'Wash aid',
  kind: 'wash-aid',
  time: fixedFor(120, 'sheet'),
  agitation: turns(30, 5, 30),
  mayStay: seconds(60),
  reason: 'A salt bath that drives the fixer out of the gelatin, so that the wash is short.',
})

/** Named apart, so that nobody at the sink has to remember which fill this is. */
export const wash = (id: string, name: string, count: number, time: number, reason: string): Bath =>
  bath({
    id,
    name,
    kind: 'wash',
    time: fixedFor(time),
    agitation: {
      kind: 'moments',
      opening: inversions(count, 1.5),
      moments: [],
    },
    goesTo: 'away',
    mayStay: seconds(300),
    reason,
  })

/** Fresh water five times; the counts of inversions rise, and the rests let the gelatin give off its fixer. */
export const fillsOfWater: readonly Bath[] = [
  wash(
    'wash-1',
    'Wash 1',
    5,
    60,
    'The first fill takes off what clings to film and walls; pour it with the silver waste if you collect.',
  ),
  wash('wash-2', 'Wash 2', 10, 240, 'Resting matters as much as turning: fixer has to seep out of the gelatin.'),
  wash('wash-3', 'Wash 3', 20, 300, 'Each fill starts clean and draws out more.'),
  wash('wash-4', 'Wash 4', 20, 300, 'By now little is left; time still counts.'),
  wash('wash-5', 'Wash 5', 20, 300, 'The last fill; what stays now stays for good.'),
]

export const wetting: Bath = bath({
  id: 'wetting',
  name: 'Wetting agent',
  kind: 'wetting',
  time: fixedFor(60, 'sheet'),
  agitation: { kind: 'none' },
  goesTo: 'away',
  mayStay: seconds(120),
  reason: 'Water then runs off as a film and leaves no drops to dry into marks. Do not shake it to foam.',
})

export const hangUp: Act = act('hang-up', {
  id: 'hang-up',
  name: 'Hang up',
  takes: 60,
  reason: 'A weight below and moving clean air; wet gelatin takes every fingerprint and every grain of dust.',
  cautions: ['do-not-touch-emulsion'],
})

export const squeeze: Act = act('squeeze', {
  id: 'squeeze',
  name: 'Wipe or let run off',
  takes: 20,
  reason: 'Two clean wet fingers or nothing at all; a dry or gritty wiper scratches the whole roll.',
  cautions: ['do-not-touch-emulsion'],
})

export const reExpose: Act = act('re-expose', {
  id: 're-expose',
  name: 'Re-expose',
  takes: 120,
  reason: 'Light makes all that is left developable: a minute to each side of the reel, close to a bright lamp.',
  cautions: ['even-light'],
})

/** From the fixer to the line. */
export const fromFixer: readonly Step[] = [fix, lidOff, look, ...fillsOfWater, wetting, squeeze, hangUp]
