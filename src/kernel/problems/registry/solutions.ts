import { unusable } from './registered.js'

export const solutionsProblems = {
  // Fixing
  'fixing.bad-value': unusable('baths#fixer', '{what} of {value} is outside {low} to {high}.'),
  'fixing.format-unknown': unusable('baths#film-as-rolls', '“{format}” is no format known here; they are {known}.'),
  'fixing.too-few-tests': unusable(
    'baths#fixer',
    'A trend needs clearing tests at two counts of rolls or more; {count} were given.',
  ),
  'fixing.no-trend': unusable(
    'baths#fixer',
    'By these tests the clearing time does not grow, so they do not tell when it will have doubled. Test again after more film.',
  ),
  // Life of baths
  'life.bad-value': unusable('baths#life', '{what} of {value} is outside {low} to {high}.'),
  'life.state-unknown': unusable(
    'baths#life',
    'Nothing is known of how long this keeps when it stands “{state}”. Say how many days, from its label or your own record.',
  ),
  // Formulas
  'formula.bad-value': unusable('mixing#formulas', '{what} of {value} is outside {low} to {high}.'),
  'formula.unreadable': unusable(
    'mixing#formulas',
    '“{formula}” cannot be read at place {place}: {reason}. Write it like Na2S2O3·5H2O.',
  ),
  'formula.element-unknown': unusable('mixing#formulas', '“{element}” in “{formula}” is no element known here.'),
  'formula.not-the-same-salt': unusable(
    'mixing#formulas',
    '{wanted} and {have} are different salts: a swap by mass would change what the bath does. {way}',
  ),
  'formula.salt-unknown': unusable('mixing#formulas', '“{name}” is not in the table of salts; it has {known}.'),
  'formula.too-little-to-weigh': unusable(
    'mixing#formulas',
    '{amount} g of {name} is below what the scale tells, {least} g. Make a percent solution of it and measure that.',
  ),
  // Washing
  'washing.bad-value': unusable('washing#estimate', '{what} of {value} is outside {low} to {high}.'),
  'washing.no-steps': unusable(
    'washing#estimate',
    'A wash needs one step at least: a change of water, or running water for a time.',
  ),
  // Waste
  'waste.bad-value': unusable('waste#silver', '{what} of {value} is outside {low} to {high}.'),
} as const
