import { unusable } from './registered.js'

export const bathsProblems = {
  // Film and fixer
  'fixing.bad-value': unusable('baths#fixer', '{what} of {value} is outside {low} to {high}.'),
  'fixing.not-whole': unusable('baths#film-as-rolls', '{what} of {value} should be a whole number.'),
  'fixing.format-unknown': unusable('baths#film-as-rolls', '“{format}” is no format known here; they are {known}.'),
  'fixing.silver-limit-too-high': unusable(
    'baths#fixer',
    'A silver limit of {own} g/L is above the {guide} g/L at which a single bath of {kind} ends. Set it at that or lower.',
  ),
  'fixing.too-few-tests': unusable(
    'baths#clearing-tests',
    'A trend needs clearing tests at two counts of rolls or more, the fresh bath being one, and at most {most}; there were {count}.',
  ),
  'fixing.no-trend': unusable(
    'baths#clearing-tests',
    'By these {count} tests the clearing time does not grow, so they do not tell when it will have doubled. Test again after more film.',
  ),
  // Life of baths
  'life.bad-value': unusable('baths#life', '{what} of {value} is outside {low} to {high}.'),
  'life.not-whole': unusable('baths#replenishing', '{what} of {value} should be a whole number.'),
  'life.state-unknown': unusable(
    'baths#life',
    'Nothing is known of how long this keeps when it stands “{state}”. Say how many days, from its label or your own record.',
  ),
  'life.used-up': unusable(
    'baths#replenishing',
    'Within {rolls} rolls the film would use up more of it than the bath holds. Replace more a roll, or take a stronger replenisher.',
  ),
  'life.never-settles': unusable(
    'baths#replenishing',
    'At this rate the film uses up more of it than the replenisher brings, so the bath runs out. Replace more a roll, or take a stronger replenisher.',
  ),
  'life.book-does-not-balance': unusable(
    'baths#replenishing',
    'By entry {entry} the book leaves {volume} mL in the bath, which cannot be. Look for an addition that was not written down.',
  ),
} as const
