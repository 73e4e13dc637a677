import { unusable } from './registered.js'

export const solutionsProblems = {
  // Formulas
  'formula.bad-value': unusable('mixing#formulas', '{what} of {value} is outside {low} to {high}.'),
  'formula.unreadable': unusable(
    'mixing#formulas',
    '“{formula}” cannot be read at place {place}: {reason}. Write it like Na2S2O3·5H2O.',
  ),
  'formula.element-unknown': unusable('mixing#formulas', '“{element}” in “{formula}” is no element known here.'),
  'formula.not-the-same-salt': unusable(
    'mixing#formulas',
    '{wanted} and {have} are different salts, so a swap by mass would change what the bath does: {way}.',
  ),
  'formula.salt-unknown': unusable('mixing#formulas', '“{name}” is not in the table of salts; it has {known}.'),
  'formula.too-little-to-weigh': unusable(
    'mixing#formulas',
    '{amount} g of {name} is below what the scale tells, {least} g. Make a percent solution of it and measure that.',
  ),
  'formula.nothing-to-replace': unusable(
    'mixing#formulas',
    '{have} takes the place of nothing here: by weight the formula calls for {calls}. Name what it is for, or leave it out.',
  ),
  'formula.too-little-for-a-solution': unusable(
    'mixing#formulas',
    '{amount} g of {name} is below what the scale tells, {least} g, and no percent solution of it would be both weighed for and measured. Take a finer scale, or mix {times} times as much at least.',
  ),
  // Washing
  'washing.bad-value': unusable('washing#estimate', '{what} of {value} is outside {low} to {high}.'),
  'washing.no-steps': unusable(
    'washing#estimate',
    'A wash needs one step at least: a change of water, or running water for a time.',
  ),
  // Waste
  'waste.bad-value': unusable('waste#silver', '{what} of {value} is outside {low} to {high}.'),
  'waste.no-balance': unusable(
    'waste#acid-on-sulfite',
    'The charges of this mixture balance at no pH from −1 to 15. Look at the charge of its other ions, {spectators} mol/L.',
  ),
  'waste.pH-out-of-reach': unusable(
    'waste#acid-on-sulfite',
    'That acid does not bring this bath to a pH of {pH}: it is below that already, or the acid is too weak.',
  ),
} as const
