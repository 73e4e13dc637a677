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

  // Densities, curves and film speed
  'curve.bad-value': {
    sentence: '{what} of {value} is outside {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'negatives#densities',
  },
  'curve.too-few-steps': {
    sentence: 'A curve needs at least {fewest} steps with their densities; {count} were given.',
    status: 422,
    exit: 65,
    help: 'negatives#strips',
  },
  'curve.too-many-steps': {
    sentence: '{count} steps were given; one strip has at most {most}.',
    status: 422,
    exit: 65,
    help: 'negatives#strips',
  },
  'curve.steps-out-of-order': {
    sentence:
      'Step {step} has a log exposure of {second}, which is not more than the {first} before it. Steps go from the least light to the most.',
    status: 422,
    exit: 65,
    help: 'negatives#strips',
  },
  'curve.falls': {
    sentence:
      'Step {step} reads {second}, below the {first} of a step with less light by more than reading error explains. Read both again, or check the order of the steps.',
    status: 422,
    exit: 65,
    help: 'negatives#strips',
  },
  'curve.starts-too-dense': {
    sentence:
      '{what} needs a density of {wanted}, and the lightest step is {reached} already. Expose a strip with less light.',
    status: 422,
    exit: 65,
    help: 'negatives#reach',
  },
  'curve.not-reached': {
    sentence:
      '{what} needs a density of {wanted}, and this curve ends at {reached}. It is not defined for this strip; use another measure, or expose more.',
    status: 422,
    exit: 65,
    help: 'negatives#reach',
  },
  'curve.beyond-exposure': {
    sentence:
      '{what} needs the curve up to a log exposure of {wanted}, and its last step is at {reached}. It is not defined for this strip.',
    status: 422,
    exit: 65,
    help: 'negatives#reach',
  },
  'curve.no-straight-part': {
    sentence:
      'No two points of the curve rise between {from} and {to}: there is no straight part to take a slope from.',
    status: 422,
    exit: 65,
    help: 'negatives#contrast',
  },
  'curve.tablet-mismatch': {
    sentence: 'The tablet has {tablet} steps and {strip} densities were read; each reading needs its own step.',
    status: 422,
    exit: 65,
    help: 'negatives#strips',
  },
  'speed.bad-value': {
    sentence: '{what} of {value} is outside {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'negatives#speed',
  },
  'speed.relative-only': {
    sentence:
      'The exposure of this strip is not known in lux-seconds, so it has no speed of its own, only one relative to the index it was exposed for.',
    status: 422,
    exit: 65,
    help: 'negatives#speed',
  },
  'speed.outside-list': {
    sentence: 'A speed of {speed} is outside the named speeds, {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'negatives#speed',
  },
  'speed.not-met': {
    sentence:
      'No frame of the series meets a density of {wanted} over base and fog: they run from {lowest} to {highest}. Add frames with {remedy} exposure.',
    status: 422,
    exit: 65,
    help: 'negatives#in-camera',
  },

  // Contrast in time
  'contrast.bad-value': {
    sentence: '{what} of {value} is outside {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },
  'contrast.too-few-strips': {
    sentence: 'A contrast\u2013time curve needs {fewest} strips at different times; {count} were given.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },
  'contrast.not-a-law': {
    sentence:
      'The contrasts {first} at {firstTime} and {second} at {secondTime} do not follow one curve: the longer time must give more contrast, but less than twice as much. Develop the pair again.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },
  'contrast.above-most': {
    sentence:
      'A contrast of {wanted} cannot be had: by these strips the developer reaches {most} at the very most. Choose less, or another developer.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },
  'contrast.beyond-strips': {
    sentence:
      'A contrast of {wanted} is more than one N outside these strips, which run from {lowest} to {highest}. Develop a strip nearer to it.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },
  'contrast.no-fit': {
    sentence:
      'No contrast\u2013time curve fits these {count} strips ({reason}). Develop them over a wider span of times.',
    status: 422,
    exit: 65,
    help: 'negatives#own-time',
  },

  // Control strips
  'control.bad-value': {
    sentence: '{what} of {value} is outside {low} to {high}.',
    status: 422,
    exit: 65,
    help: 'negatives#control',
  },
  'control.too-few': {
    sentence: '{what} needs at least {fewest} values; {count} were given.',
    status: 422,
    exit: 65,
    help: 'negatives#control',
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
    sentence: 'A body of type {type} is not read here; send {wanted}.',
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

  // Lists of baths
  'recipe.no-bath': {
    sentence: 'A list of baths needs at least one bath; this one has none.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.too-many-steps': {
    sentence: 'A list of {count} steps cannot be followed at a sink; {most} is the most.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-name': {
    sentence: '“{name}” is not a name for a step or a list; write 1 to {most} characters.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.long-reason': {
    sentence: 'The reason for {name} has {count} characters; keep it to {most}, so that it fits beside the step.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.same-id': {
    sentence: 'Two steps are called {id} inside the list. Give each its own.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-time': {
    sentence: '{time} cannot be the length of {name}; it lies between {from} and {to}.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.shorter-than-drain': {
    sentence:
      '{name} lasts {time}, but pouring it out alone takes {drain}. Make it longer, or let its clock end when draining starts.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-clearing': {
    sentence:
      '{name} is timed by clearing: the multiple lies between {from} and {to}, and its longest time is not under its shortest.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.fixed-needs-seconds': {
    sentence: '{name} has one time at one temperature; give it fixed seconds, not a developing time.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.several-developing-times': {
    sentence: '{count} baths take their length from the developing time; only one can.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-handling': {
    sentence: '{time} cannot be a part of the bath change into or out of {name}; each part takes {from} to {to}.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-window': {
    sentence: '{from} to {to} is not a temperature window for {name}; the lower end comes first, between 0 and 60 °C.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.bad-turn': {
    sentence: 'A turn of {name} has no length, or one over an hour. Give seconds or a count of inversions.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.turn-longer-than-interval': {
    sentence:
      '{name} is to be turned for {length} every {every}. The turn has to fit into its interval, which is 5 seconds or more.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.parted': {
    sentence: '{name} and the bath after it must not be parted, but {next} comes next. Put a bath there.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.act-without-bath': {
    sentence: '{name} happens inside a bath, but no bath stands before it.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },
  'recipe.light-too-soon': {
    sentence: '{name} lets light in before the film has been fixed. Move it behind the fixer.',
    status: 422,
    exit: 65,
    help: 'runs#list-of-baths',
  },

  // The score
  'score.no-tank': {
    sentence: 'A score needs at least one tank; none was given.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.same-tank': {
    sentence: 'Two tanks are called {tank}. Give each its own letter.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.no-developing-time': {
    sentence: '{name} needs its developing time: choose a reference time with a temperature, or type your own.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.fixed-time': {
    sentence:
      '{name} has one time at one temperature, {time}; it is never moved. Bring the bath to its temperature instead.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.no-developer': {
    sentence: 'This list has no bath that takes a developing time, but one was given.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.wrong-kind': {
    sentence: 'The reference time is for {given}, but the list has {wanted}. Choose a list that fits.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.bad-own-time': {
    sentence: '{time} cannot be a developing time; it lies between {from} and {to}.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.bad-temperature': {
    sentence: '{temperature} cannot be the temperature of {name}; it lies between 0 and 60 °C.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.unknown-step': { sentence: 'No step of the list is called {id}.', status: 422, exit: 65, help: 'runs#plan' },
  'score.bad-room': {
    sentence:
      'A room of {temperature} that pulls the tank over {tau} makes no sense; the time constant is 5 minutes to 24 hours.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.bath-too-far': {
    sentence:
      '{name} at {temperature} is {by} from {other} at {otherTemperature}. From {limit} gelatin can wrinkle; bring them closer, or say that you take the risk.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.chain-too-long': {
    sentence:
      'From {first} to {last} the film passes through {by} in small steps. More than {limit} in all can wrinkle gelatin; bring the baths closer, or say that you take the risk.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
  'score.reading-outside': {
    sentence:
      '{temperature} is outside what this developer can be followed at, {from} to {to}. Read again; the pour-out stays as it is.',
    status: 422,
    exit: 65,
    help: 'runs#plan',
  },
})

export type ProblemCode = keyof typeof registry
