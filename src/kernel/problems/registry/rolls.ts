import { registered, unusable } from './registered.js'

export const rollsProblems = {
  // Rolls and their numbers
  'roll.pattern-unusable': unusable(
    'rolls#numbers',
    '“{pattern}” cannot number rolls. It needs {n} once, or {n4} for four digits, and may have {year} or {yy}, letters, digits, dots and dashes.',
  ),
  'roll.number-not-reserved': unusable(
    'rolls#numbers',
    'The number {n} is not in the block that is reserved for this device. Take one of its own, or let the bench give one.',
  ),
  'roll.number-taken': registered(
    409,
    65,
    'rolls#numbers',
    'There is a roll {number} already. Let the bench give the next number.',
  ),
  'roll.number-unknown': registered(
    404,
    66,
    'rolls#numbers',
    'There is no roll {number} on this bench. Read its sticker again.',
  ),
  'roll.frames-of-135-only': unusable(
    'rolls#taking-in',
    'Only a length of 135 is said by its frames; {format} was given {frames}.',
  ),
  'roll.sheets-of-sheets-only': unusable(
    'rolls#taking-in',
    '{format} is a roll, so it is taken in one by one; {sheets} sheets were given.',
  ),
  'roll.push-to-own-index': unusable(
    'rolls#taking-in',
    'Developing as {index} is no push or pull: it was exposed at {index}. Say normal, or another index.',
  ),
  'roll.chromogenic-is-colour': unusable(
    'rolls#wrong-process',
    'Chromogenic film goes through colour negative chemistry, also where it is black-and-white. Say colour negative.',
  ),
  'roll.lines-wrong': unusable(
    'rolls#taking-in',
    'Nothing was taken in. Of the lines {count} cannot be right; the first is {first} Put them right and take all in again.',
  ),
  'roll.ended': registered(
    409,
    65,
    'rolls#way',
    'Roll {number} is {state}; nothing more happens to it. Take that step back first.',
  ),
  'roll.reason-missing': unusable(
    'rolls#way',
    'Roll {number} cannot be {state} without a reason. Write what happened.',
  ),
  'roll.not-forwards': registered(
    409,
    65,
    'rolls#way',
    'Roll {number} is {now} already, so it cannot become {state}. Take the last step back if it was a mistake.',
  ),
  'roll.step-before-last': unusable(
    'rolls#way',
    'Roll {number} took its last step at {last}; this one cannot be earlier.',
  ),
  'roll.step-in-future': unusable('rolls#way', '{at} has not come yet. Say when it happened.'),
  'roll.went-on': registered(
    409,
    65,
    'rolls#way',
    'Roll {number} has gone on since; this change stays. Correct the roll itself.',
  ),
  'roll.not-in-run': unusable('rolls#way', 'Roll {number} is in no tank of this run. Plan the run with it.'),
  'roll.nothing-to-undo': registered(409, 65, 'rolls#way', 'Nothing has been corrected on roll {number}.'),
  // Orders
  'order.has-rolls': registered(
    409,
    65,
    'rolls#orders',
    'This order has {count} rolls; it goes when they belong to another.',
  ),
  'order.nothing-here': registered(409, 65, 'rolls#orders', 'No roll of {person} is here to be handed back.'),
  'order.count-mismatch': registered(
    409,
    65,
    'rolls#orders',
    '{counted} rolls were counted and {expected} should be here. Nothing is handed back: count again, and look for the stickers.',
  ),
  'order.not-all-taken-in': registered(
    409,
    65,
    'rolls#orders',
    '{counted} rolls were counted when they were handed over and {taken} are taken in. Take in what is missing, or correct the count; then there is a slip.',
  ),
  'order.no-stickers': registered(
    404,
    66,
    'rolls#numbers',
    'Stickers are printed for rolls: name an order that has some, or the rolls.',
  ),
  'order.not-developed': registered(409, 65, 'rolls#orders', 'Roll {number} is only {state}: the order is not done.'),
  'order.counted-before': registered(409, 65, 'rolls#orders', 'This order was counted out before.'),
  'order.link-dead': registered(
    404,
    66,
    'rolls#orders',
    'This link shows nothing: it is unknown, withdrawn or out of date. Ask where you left your film.',
  ),
  // Films
  'film.contrast-needs-strips': unusable(
    'rolls#films',
    'A tolerance in contrast needs a law of contrast in time: add strips of {name}, or say it in per cent.',
  ),
  // The register as a whole
  'register.unreadable': unusable(
    'rolls#export-and-import',
    'This register cannot be taken in. Look at {where}: {reason}. Nothing was taken in.',
  ),
  'register.number-taken': registered(
    409,
    65,
    'rolls#export-and-import',
    'Another roll here has the number {number}. Nothing was taken in: take the register in on a bench of its own.',
  ),
  // Tanks, reels, graduates
  'vessel.said-twice': unusable('rolls#kit', '{name} says twice how much covers the same number of reels.'),
  'vessel.marks-beyond': unusable(
    'rolls#kit',
    'Marks every {marks} mL are of no use on something that holds {holds} mL.',
  ),
} as const
