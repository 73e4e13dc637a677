import { registered, unusable } from './registered.js'

export const timesProblems = {
  // Developing times
  'times.no-points': unusable(
    'times#sheet-points',
    'A developing time needs at least one time with its temperature, as printed on the sheet. None was given.',
  ),
  'times.too-many-points': unusable(
    'times#sheet-points',
    '{count} times were given; one film in one developer has at most {most}.',
  ),
  'times.two-times-at-one-temperature': unusable(
    'times#sheet-points',
    'At {temperature} there are two times, {first} and {second}. Keep the one that the sheet prints.',
  ),
  'times.slower-when-warmer': unusable(
    'times#sheet-points',
    '{second} at {warmer} is longer than {first} at {cooler}. An ordinary developer is faster when warmer; correct one of the two, or say that it is a single bath.',
  ),
  'times.impossible-temperature': unusable(
    'times#sheet-points',
    '{time} at {temperature} cannot be a developing time: a developer is between {low} and {high}.',
  ),
  'times.impossible-time': unusable(
    'times#sheet-points',
    '{time} at {temperature} cannot be a developing time: one lies between {low} and {high}.',
  ),
  'times.fixed-needs-one-point': unusable(
    'times#fixed',
    'A colour developer or reversal first developer has one time at one temperature; {count} were given.',
  ),
  'times.bad-coefficient': unusable(
    'times#law',
    'A ten-degree coefficient of {coefficient} is outside {low} to {high}. Most developers lie between 1.5 and 4.',
  ),
  'times.bad-range': unusable(
    'times#range',
    'The usable range {from} to {to} does not hold all the points of the sheet, or is the wrong way round.',
  ),
  'times.bad-window': unusable(
    'times#fixed',
    'The window {from} to {to} does not hold {temperature}, the temperature of this fixed time, or is the wrong way round.',
  ),
  'times.impossible-answer': unusable(
    'times#range',
    'At {temperature} this would take {time}; a time by hand is between {from} and {to}. Check the sheet, the factors and the temperature.',
  ),
  'times.outside-usable-range': unusable(
    'times#range',
    '{temperature} is outside {from} to {to}, the range this time can be used in. Bring the developer to a temperature inside it.',
  ),
  'times.single-bath-outside-sheet': unusable(
    'times#single-bath',
    '{temperature} is outside the sheet of this single bath ({from} to {to}). In a single bath cold gives more development, not less, so nothing beyond its sheet can be worked out. Bring it inside.',
  ),
  'times.bad-factor': unusable('times#factors', 'The factor {factor} for {name} is outside {low} to {high}.'),
  'times.push-twice': unusable(
    'times#push',
    'This time is already the one for index {index}: a factor for push or pull would count it twice. Leave the factor out, or start from the time of another index.',
  ),
  'times.two-pushes': unusable('times#push', '{count} factors for push or pull were given; a time takes one.'),
  'times.no-practised-push': unusable(
    'times#push',
    'From index {from} to {to} is {stops} stops. Practice knows one or two up and one down; take the sheet’s own time for {to}, or a factor of your own.',
  ),
  'times.bad-use': unusable('times#factors', 'Use {use} of a bath is outside 1 to {most}, in whole uses; 1 is fresh.'),
  'times.table-empty': unusable(
    'times#paste',
    'The pasted text holds no time. A line looks like “20 °C 9:30”, or a first line of temperatures and then a line of times for each index.',
  ),
  'times.table-too-long': registered(
    413,
    65,
    'times#paste',
    'The pasted text is {length} characters; at most {most} are read.',
  ),
  // Dose
  'dose.too-few-readings': unusable(
    'times#dose',
    'A dose needs at least two readings, each with its moment; {count} were given.',
  ),
  'dose.readings-out-of-order': unusable(
    'times#dose',
    'The reading at {second} comes after the one at {first} but is not later.',
  ),
  'dose.never-reached': unusable(
    'times#dose',
    'Over this course of temperature the development asked for is not reached within {limit}.',
  ),
} as const
