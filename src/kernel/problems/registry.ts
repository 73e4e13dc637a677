/**
 * Every expected failure in one place: code, sentence, HTTP status, exit code, help anchor.
 *
 * A sentence says what is wrong, with the value, and what would be right. `{name}` is filled from the
 * problem's details. Exit codes: 64 the command was typed wrongly, 65 the data is not usable, 66 not found,
 * 69 something needed is not available, 73 it cannot be written, 75 try again later, 77 not allowed.
 * `docs/errors.md` is generated from this table.
 */
export interface Registered {
  readonly sentence: string
  readonly status: 400 | 401 | 403 | 404 | 409 | 413 | 415 | 421 | 422 | 429 | 500 | 503
  readonly exit: 64 | 65 | 66 | 69 | 70 | 73 | 75 | 77
  /** File below docs/guide and heading: `times#sheet-points`. */
  readonly help: string
}

const define = <const T extends Record<string, Registered>>(table: T): T => table

export const registry = define({
  // Quantities as people type them
  'quantity.empty': {
    sentence: 'Nothing is typed for {what}. Write it like {example}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.unreadable': {
    sentence: '“{text}” is not {what}. Write it like {example}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.too-long': {
    sentence: 'That is {length} characters; {what} has at most {most}. Write it like {example}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.digits': {
    sentence: '“{text}” holds digits of another script. Write {what} with the digits 0 to 9, like {example}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.impossible': {
    sentence: '“{text}” is not {what}: {reason}. Write it like {example}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.out-of-range': {
    sentence: '{text} is outside what {what} can be here: {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'quantities#reading',
  },
  'quantity.ambiguous': { sentence: '{question}', status: 422, exit: 65, help: 'quantities#asking' },

  // Developing times
  'times.no-points': {
    sentence:
      'A developing time needs at least one time with its temperature, as printed on the sheet. None was given.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.too-many-points': {
    sentence: '{count} times were given; one film in one developer has at most {most}.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.two-times-at-one-temperature': {
    sentence: 'At {temperature} there are two times, {first} and {second}. Keep the one that the sheet prints.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.slower-when-warmer': {
    sentence:
      '{second} at {warmer} is longer than {first} at {cooler}. An ordinary developer is faster when warmer; correct one of the two, or say that it is a single bath.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.impossible-temperature': {
    sentence: '{time} at {temperature} cannot be a developing time: a developer is between {low} and {high}.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.impossible-time': {
    sentence: '{time} at {temperature} cannot be a developing time: one lies between {low} and {high}.',
    status: 422,
    exit: 65,
    help: 'times#sheet-points',
  },
  'times.fixed-needs-one-point': {
    sentence: 'A colour developer or reversal first developer has one time at one temperature; {count} were given.',
    status: 422,
    exit: 65,
    help: 'times#fixed',
  },
  'times.bad-coefficient': {
    sentence:
      'A ten-degree coefficient of {coefficient} is outside {low} to {high}. Most developers lie between 1.5 and 4.',
    status: 422,
    exit: 65,
    help: 'times#law',
  },
  'times.bad-range': {
    sentence: 'The usable range {from} to {to} does not hold all the points of the sheet, or is the wrong way round.',
    status: 422,
    exit: 65,
    help: 'times#range',
  },
  'times.bad-window': {
    sentence:
      'The window {from} to {to} does not hold {temperature}, the temperature of this fixed time, or is the wrong way round.',
    status: 422,
    exit: 65,
    help: 'times#fixed',
  },
  'times.impossible-answer': {
    sentence:
      'At {temperature} this would take {time}; a time by hand is between {from} and {to}. Check the sheet, the factors and the temperature.',
    status: 422,
    exit: 65,
    help: 'times#range',
  },
  'times.outside-usable-range': {
    sentence:
      '{temperature} is outside {from} to {to}, the range this time can be used in. Bring the developer to a temperature inside it.',
    status: 422,
    exit: 65,
    help: 'times#range',
  },
  'times.single-bath-outside-sheet': {
    sentence:
      '{temperature} is outside the sheet of this single bath ({from} to {to}). In a single bath cold gives more development, not less, so nothing beyond its sheet can be worked out. Bring it inside.',
    status: 422,
    exit: 65,
    help: 'times#single-bath',
  },
  'times.bad-factor': {
    sentence: 'The factor {factor} for {name} is outside {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'times#factors',
  },
  'times.push-twice': {
    sentence:
      'The sheet already gives a time for this index; a push or pull factor on top of it would count twice. Use one of the two.',
    status: 422,
    exit: 65,
    help: 'times#push',
  },
  'times.table-empty': {
    sentence:
      'The pasted text holds no time. A line looks like “20 °C 9:30”, or a first line of temperatures and then a line of times for each index.',
    status: 422,
    exit: 65,
    help: 'times#paste',
  },
  'times.table-too-long': {
    sentence: 'The pasted text is {length} characters; at most {most} are read.',
    status: 413,
    exit: 65,
    help: 'times#paste',
  },

  // Dose
  'dose.too-few-readings': {
    sentence: 'A dose needs at least two readings, each with its moment; {count} were given.',
    status: 422,
    exit: 65,
    help: 'times#dose',
  },
  'dose.readings-out-of-order': {
    sentence: 'The reading at {second} comes after the one at {first} but is not later.',
    status: 422,
    exit: 65,
    help: 'times#dose',
  },
  'dose.never-reached': {
    sentence: 'Over this course of temperature the development asked for is not reached within {limit}.',
    status: 422,
    exit: 65,
    help: 'times#dose',
  },

  // Loads
  'loads.no-films': {
    sentence: 'A shared time needs at least one film with a time; {count} were given.',
    status: 422,
    exit: 65,
    help: 'times#mixed',
  },
  'loads.times-too-far-apart': {
    sentence:
      'The times of these films are too far apart for one tank: film {film} would depart by {departs}. Put it in a tank of its own.',
    status: 422,
    exit: 65,
    help: 'times#mixed',
  },
  'loads.impossible': {
    sentence: 'No arrangement meets all limits at once.',
    status: 422,
    exit: 65,
    help: 'times#mixed',
  },
  'loads.out-of-time': {
    sentence: 'No arrangement was found within {limit} s. Allow more time, or plan fewer rolls at once.',
    status: 503,
    exit: 75,
    help: 'times#mixed',
  },
  'loads.cancelled': {
    sentence: 'The search for an arrangement was cancelled.',
    status: 503,
    exit: 75,
    help: 'times#mixed',
  },

  // Thermometers
  'thermometer.method-out-of-scale': {
    sentence: '{method} needs a thermometer that reads {needed}; this one reads {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'thermometers#checking',
  },
  'thermometer.error-too-large': {
    sentence:
      'A reading of {read} for a true {true} is {error} off. Past {most} the thermometer is broken or one of the two was read wrongly; check again.',
    status: 422,
    exit: 65,
    help: 'thermometers#checking',
  },
  'thermometer.checks-contradict': {
    sentence:
      'Reading {lower} was a true {lowerTrue}, but the higher reading {higher} was a true {higherTrue}. A thermometer cannot fall while the bath warms; repeat one of the two checks.',
    status: 422,
    exit: 65,
    help: 'thermometers#checking',
  },
  'thermometer.bad-scale': {
    sentence:
      'A scale from {low} to {high} is not possible; the low end comes first and they are at least {shortest} apart.',
    status: 422,
    exit: 65,
    help: 'thermometers#scale',
  },
  'thermometer.outside-scale': {
    sentence: '{read} is outside the scale of {name}, {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'thermometers#scale',
  },
  'thermometer.class-set-too-small': {
    sentence: 'A class set compares at least two thermometers; {count} were given.',
    status: 422,
    exit: 65,
    help: 'thermometers#class-set',
  },
  'thermometer.check-withdrawn': {
    sentence: 'This check was withdrawn already and counts for nothing. Check the thermometer again instead.',
    status: 409,
    exit: 65,
    help: 'thermometers#checking',
  },
  'thermometer.scale-leaves-out': {
    sentence:
      'A scale from {low} to {high} leaves out {read}, which this thermometer read at a check. Correct the scale, or withdraw that check first.',
    status: 422,
    exit: 65,
    help: 'thermometers#scale',
  },
  'thermometer.same-twice': {
    sentence: '{name} is in this set twice.',
    status: 422,
    exit: 65,
    help: 'thermometers#class-set',
  },

  // Records
  'record.not-found': {
    sentence: 'There is no {what} with the id {id} on this bench.',
    status: 404,
    exit: 66,
    help: 'house#records',
  },
  'record.removed': {
    sentence: 'This {what} was removed; undo the removal first.',
    status: 409,
    exit: 65,
    help: 'house#records',
  },
  'record.changed-meanwhile': {
    sentence:
      'This {what} was changed meanwhile: it is at revision {current}, you saw {seen}. Look again before saving.',
    status: 409,
    exit: 75,
    help: 'house#records',
  },
  'record.name-taken': {
    sentence: 'There is already a {what} called {name} on this bench.',
    status: 409,
    exit: 65,
    help: 'house#records',
  },

  // The house: benches, devices, backup
  'house.demo-open': { sentence: 'The demo bench is already there.', status: 409, exit: 65, help: 'house#demo' },
  'house.demo-not-open': { sentence: 'There is no demo bench to remove.', status: 409, exit: 65, help: 'house#demo' },
  'house.zone-unknown': {
    sentence: '“{zone}” is not a time zone. Name it by continent and city, like Europe/Lisbon, or write UTC.',
    status: 422,
    exit: 65,
    help: 'house#settings',
  },
  'house.pairing-code-wrong': {
    sentence:
      'That code is not valid: a code works once and for ten minutes. Ask for a new one at the computer that runs the program.',
    status: 403,
    exit: 77,
    help: 'house#pairing',
  },
  'house.backup-unreadable': {
    sentence: 'This file is not a backup of this program, or it is damaged: {reason}.',
    status: 422,
    exit: 65,
    help: 'house#backup',
  },
  'house.backup-newer': {
    sentence: 'This backup was made by a newer version (data version {found}; this one knows {known}). Update first.',
    status: 422,
    exit: 65,
    help: 'house#backup',
  },
  'house.data-in-use': {
    sentence: 'The data file {file} is held by another running copy of this program. Use that one, or stop it first.',
    status: 503,
    exit: 75,
    help: 'house#one-process',
  },
  'house.data-newer': {
    sentence:
      'The data was written by a newer version (data version {found}; this one knows {known}). Update first; nothing was changed.',
    status: 503,
    exit: 69,
    help: 'house#backup',
  },
  'house.data-unreachable': {
    sentence: 'The database cannot be reached: {reason}.',
    status: 503,
    exit: 69,
    help: 'house#data',
  },
  'house.file-unreadable': {
    sentence: 'The file {file} cannot be read: {reason}.',
    status: 422,
    exit: 66,
    help: 'house#data',
  },
  'house.file-unwritable': {
    sentence: 'The file {file} cannot be written: {reason}.',
    status: 422,
    exit: 73,
    help: 'house#data',
  },

  // The HTTP interface and the command line
  'request.invalid': { sentence: '{reason}', status: 422, exit: 64, help: 'interface#requests' },
  'request.not-json': {
    sentence: 'The request body is not JSON: {reason}.',
    status: 400,
    exit: 65,
    help: 'interface#requests',
  },
  'request.media-type': {
    sentence: 'A body of type {type} is not read here; send application/json.',
    status: 415,
    exit: 65,
    help: 'interface#requests',
  },
  'request.too-large': {
    sentence: 'The request body is larger than {most}.',
    status: 413,
    exit: 65,
    help: 'interface#requests',
  },
  'request.no-such-route': {
    sentence: 'There is nothing at {path}.',
    status: 404,
    exit: 66,
    help: 'interface#requests',
  },
  'request.host': {
    sentence: 'This server does not answer to the name {host}. Use one of: {allowed}.',
    status: 421,
    exit: 77,
    help: 'interface#hosts',
  },
  'request.origin': {
    sentence: 'A page of {origin} may not change anything here.',
    status: 403,
    exit: 77,
    help: 'interface#hosts',
  },
  'request.who': {
    sentence:
      'This device is not paired with the bench. Open the address shown by the QR code on the computer that runs the program.',
    status: 401,
    exit: 77,
    help: 'house#pairing',
  },
  'request.not-allowed': {
    sentence: 'A {role} may not do this; it is for {allowed}.',
    status: 403,
    exit: 77,
    help: 'house#pairing',
  },
  'request.too-many': {
    sentence: 'Too many attempts. Wait {wait} and try again.',
    status: 429,
    exit: 75,
    help: 'house#pairing',
  },
  'request.key-reused': {
    sentence: 'The key {key} was already used for a different request. Make a new key for each write.',
    status: 409,
    exit: 65,
    help: 'interface#keys',
  },
  'server.bug': {
    sentence:
      'Something failed that should not have. It was logged under {reference}; nothing of this request was kept.',
    status: 500,
    exit: 70,
    help: 'interface#bugs',
  },
  'command.usage': { sentence: '{reason}', status: 400, exit: 64, help: 'commands#usage' },
  'environment.bad': {
    sentence: '{name} is “{value}”; it should be {right}.',
    status: 500,
    exit: 64,
    help: 'house#start',
  },
})

export type ProblemCode = keyof typeof registry
