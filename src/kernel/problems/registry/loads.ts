import { registered, unusable } from './registered.js'

/** What goes into a tank together, and what must not. */
export const loadsProblems = {
  'loads.no-films': unusable('times#mixed', 'A shared time needs at least one film with a time; {count} were given.'),
  'loads.times-too-far-apart': unusable(
    'rolls#one-tank',
    '{film} wants {wants} and would get {gets}: {departs}, where it bears {bears}. Put it in a tank of its own.',
  ),
  'loads.impossible': unusable('times#mixed', 'No arrangement meets all limits at once.'),
  'loads.out-of-time': registered(
    503,
    75,
    'times#mixed',
    'No arrangement was found within {limit} s. Allow more time, or plan fewer rolls at once.',
  ),
  'loads.cancelled': registered(503, 75, 'times#mixed', 'The search for an arrangement was cancelled.'),
  'loads.wrong-process': unusable(
    'rolls#wrong-process',
    '{number} is {film} film and this list is for {list}: it would be spoilt. Choose a list for it, or write why your own film goes through this one.',
  ),
  'loads.wrong-process-of-others': unusable(
    'rolls#wrong-process',
    '{number} of {person} is {film} film and this list is for {list}. Film of somebody else never goes through the wrong process.',
  ),
  'loads.carbon-backing': unusable(
    'rolls#backing',
    '{number} has a carbon-black backing, which comes off and fouls every bath. Soften it in an alkaline bath, rinse it off before the developer, and confirm that this will be done.',
  ),
  'loads.infrared': unusable(
    'rolls#infrared',
    '{number} is infrared film: load it in full darkness, without any viewer, into a tank that lets no infrared through. Confirm that this tank does not.',
  ),
  'loads.time-unknown': unusable(
    'rolls#one-tank',
    'Nothing says how long {film} wants in this developer, so nobody can say whether it shares a tank. Keep its time, or type what it wants.',
  ),
  'loads.tank-holds-too-little': unusable('rolls#kit', '{tank} does not hold {load}: {others}.'),
  'loads.tank-does-not-cover': unusable(
    'rolls#kit',
    '{tank} needs {covers} mL to cover {load} and {volume} mL are planned: {others}.',
  ),
} as const
