import { unusable } from './registered.js'

/** Runs that were done on paper and typed in. */
export const paperProblems = {
  'paper.nothing': unusable(
    'runs#done-on-paper',
    'No time of day is typed yet. One is needed: zero by the clock, or the first pour.',
  ),
  'paper.out-before-in': unusable(
    'runs#done-on-paper',
    '{name} cannot have been poured out at {at}: it went in at {before}. Look at the sheet again.',
  ),
  'paper.out-of-order': unusable(
    'runs#done-on-paper',
    '{name} at {at} would be before {other} at {before}, and the steps of a tank follow one another.',
  ),
  'paper.ahead': unusable(
    'runs#done-on-paper',
    '{at} on {day} has not come yet. Type the day of the first time on the sheet.',
  ),
  'paper.late': unusable(
    'runs#done-on-paper',
    '{name} at {at} is {by} later than the sheet leads to expect. Look again; say so if it is written so.',
  ),
  'paper.early': unusable(
    'runs#done-on-paper',
    '{name} at {at} is {by} earlier than the sheet leads to expect. Look again; say so if it is written so.',
  ),
  'paper.left-out': unusable('runs#done-on-paper', '{name} has a time and is said to be left out. Only one can be.'),
  'paper.not-a-box': unusable('runs#done-on-paper', '{name} has no box for this on the sheet.'),
  'paper.unknown-step': unusable('runs#done-on-paper', 'The list has no step {bath}: it counts from 0 to {last}.'),
  'paper.step-twice': unusable('runs#done-on-paper', '{name} is on the sheet once; here it is twice.'),
  'paper.reading-far': unusable(
    'runs#done-on-paper',
    '{temperature} where {expected} was expected: it counts once you say that the sheet has it so.',
  ),
  'paper.reading-outside': unusable(
    'runs#done-on-paper',
    'This developer cannot be followed at {temperature}; the reading is kept and does not count.',
  ),
  'paper.reading-late': unusable(
    'runs#done-on-paper',
    'At {at} the developer was out already; the reading is kept and does not count.',
  ),
  'paper.known': unusable(
    'runs#done-on-paper',
    'A screen wrote down {name} at {at}; that stands. Leave this box empty.',
  ),
} as const
