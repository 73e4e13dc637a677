import { seconds } from '../../../kernel/index.js'
import { bath, CONTINUOUS, fixedFor, window } from '../build.js'
import { inversions, turnFor } from '../defaults.js'
import type { Recipe } from '../definition.js'
import {
  acidStop,
  developer,
  fillsOfWater,
  fix,
  fromFixer,
  hangUp,
  lidOff,
  look,
  reExpose,
  squeeze,
  wash,
  washAid,
  waterStop,
  wetting,
} from './shared.js'

export const threeBathAcid: Recipe = {
  id: 'three-bath-acid-stop',
  name: 'Three baths, acid stop',
  process: 'black-and-white',
  about: 'Developer, stop, fixer: the ordinary way for black-and-white film. Take it when nothing speaks against it.',
  steps: [developer, acidStop, ...fromFixer],
}

export const threeBathWater: Recipe = {
  id: 'three-bath-water-stop',
  name: 'Three baths, water stop',
  process: 'black-and-white',
  about: 'For alkaline fixers, staining developers and developers strong in carbonate, which acid would make gas in.',
  steps: [developer, waterStop, ...fromFixer],
}

export const shortWash: Recipe = {
  id: 'three-bath-wash-aid',
  name: 'Three baths, wash aid',
  process: 'black-and-white',
  about: 'As three baths with an acid stop, but a salt bath after the fixer makes the wash short and saves water.',
  steps: [
    developer,
    acidStop,
    fix,
    lidOff,
    look,
    wash('rinse', 'Rinse', 5, 30, 'It takes off the fixer that clings to film and walls, so that the aid lasts.'),
    washAid,
    wash('wash-1', 'Wash 1', 20, 150, 'Fresh water; the aid has loosened what is left.'),
    wash(
      'wash-2',
      'Wash 2',
      20,
      150,
      'The second half of five minutes; change the water once more when the tank smells of fixer.',
    ),
    wetting,
    squeeze,
    hangUp,
  ],
}

export const singleBath: Recipe = {
  id: 'single-bath',
  name: 'Single bath',
  process: 'black-and-white',
  about: 'One bath develops and fixes. It has its own sheet and only that counts: cold gives more development here.',
  steps: [
    bath({
      id: 'single-bath',
      name: 'Single bath',
      kind: 'single-bath',
      time: { law: 'by-developing-time' },
      reason: 'Development and fixing race each other; warmth and turning decide who is ahead, so keep to the sheet.',
      cautions: ['dark-until-fixed', 'keep-temperature'],
      mayStay: seconds(120),
    }),
    ...fillsOfWater,
    wetting,
    squeeze,
    hangUp,
  ],
}

export const twoBath: Recipe = {
  id: 'two-bath',
  name: 'Two-bath development',
  process: 'black-and-white',
  about: 'The film soaks up agent in bath A and develops in bath B until it is used up: highlights stop first.',
  steps: [
    bath({
      id: 'bath-a',
      name: 'Bath A',
      kind: 'bath-a',
      time: fixedFor(240),
      window: window(18, 24),
      reason: 'The gelatin drinks developing agent; nearly nothing develops yet, so seconds matter little.',
      cautions: ['dark-until-fixed', 'no-rinse-between'],
      neverPartFromNext: true,
    }),
    bath({
      id: 'bath-b',
      name: 'Bath B',
      kind: 'bath-b',
      time: fixedFor(240),
      window: window(18, 24),
      agitation: { kind: 'turns', opening: turnFor(10), turn: inversions(2), every: seconds(60) },
      reason: 'Alkali sets off what the gelatin holds; move it gently, or the agent is washed out.',
      cautions: ['dark-until-fixed'],
      neverPartFromNext: true,
    }),
    waterStop,
    ...fromFixer,
  ],
}

export const stand: Recipe = {
  id: 'stand',
  name: 'Stand development',
  process: 'black-and-white',
  about: 'A very thin developer, turned at the beginning only. Shadows gain, and edges; uneven skies are the risk.',
  steps: [
    bath({
      id: 'developer',
      name: 'Developer',
      kind: 'developer',
      time: fixedFor(3600),
      agitation: { kind: 'moments', opening: turnFor(60), moments: [] },
      reason: 'It uses itself up where the film is dense and works on where it is thin; leave it standing.',
      cautions: ['dark-until-fixed'],
      neverPartFromNext: true,
      goesTo: 'away',
    }),
    acidStop,
    ...fromFixer,
  ],
}

const reversalStep = { agitation: CONTINUOUS, mayStay: seconds(60) } as const

export const reversal: Recipe = {
  id: 'black-and-white-reversal',
  name: 'Black-and-white reversal',
  process: 'black-and-white-reversal',
  about: 'The negative is bleached away and what is left becomes the positive: slides straight from the camera.',
  steps: [
    bath({
      id: 'first-developer',
      name: 'First developer',
      kind: 'first-developer',
      time: fixedFor(720),
      window: window(19.7, 20.3),
      reason: 'It makes the negative that will be removed; whatever it leaves becomes the picture.',
      cautions: ['dark-until-fixed', 'keep-temperature'],
      neverPartFromNext: true,
    }),
    bath({
      id: 'rinse',
      name: 'Rinse',
      kind: 'rinse',
      time: fixedFor(120),
      agitation: CONTINUOUS,
      goesTo: 'away',
      reason: 'Developer must not reach the bleach.',
    }),
    bath({
      id: 'bleach',
      name: 'Bleach',
      kind: 'bleach',
      time: fixedFor(300),
      ...reversalStep,
      goesTo: 'waste-jug',
      reason: 'It dissolves the negative silver and leaves the undeveloped halide.',
      cautions: ['bleach-oxidiser', 'gloves'],
    }),
    bath({
      id: 'rinse-2',
      name: 'Rinse',
      kind: 'rinse',
      time: fixedFor(60),
      agitation: CONTINUOUS,
      goesTo: 'away',
      reason: 'Bleach must not reach the clearing bath.',
    }),
    bath({
      id: 'clear',
      name: 'Clearing bath',
      kind: 'clear',
      time: fixedFor(120),
      ...reversalStep,
      reason: 'It takes the stain of the bleach away; from here on the film may see light.',
    }),
    bath({
      id: 'rinse-3',
      name: 'Rinse',
      kind: 'rinse',
      time: fixedFor(60),
      agitation: CONTINUOUS,
      goesTo: 'away',
      reason: 'The clearing bath would spoil the second developer.',
    }),
    reExpose,
    bath({
      id: 'second-developer',
      name: 'Second developer',
      kind: 'second-developer',
      time: fixedFor(300),
      mayStay: seconds(120),
      reason: 'It blackens everything that is left; a minute more does nothing.',
    }),
    { ...acidStop, time: fixedFor(30) },
    ...fromFixer.filter((step) => step.id !== 'lid-off' && step.id !== 'look'),
  ],
}
