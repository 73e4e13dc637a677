import { registered, unusable } from './registered.js'

export const houseProblems = {
  // Records
  'record.not-found': registered(404, 66, 'house#records', 'There is no {what} with the id {id} on this bench.'),
  'record.removed': registered(409, 65, 'house#records', 'This {what} was removed; undo the removal first.'),
  'record.changed-meanwhile': registered(
    409,
    75,
    'house#records',
    'This {what} was changed meanwhile: it is at revision {current}, you saw {seen}. Look again before saving.',
  ),
  'record.name-taken': registered(409, 65, 'house#records', 'There is already a {what} called {name} on this bench.'),
  // The house: benches, devices, backup
  'house.demo-not-open': registered(409, 65, 'house#demo', 'There is no demo bench to remove.'),
  'house.zone-unknown': unusable(
    'house#settings',
    '“{zone}” is not a time zone. Name it by continent and city, like Europe/Lisbon, or write UTC.',
  ),
  'house.pairing-code-wrong': registered(
    403,
    77,
    'house#pairing',
    'That code is not valid: a code works once and for ten minutes. Ask for a new one at the computer that runs the program.',
  ),
  'house.backup-unreadable': unusable(
    'house#backup',
    'This file is not a backup of this program, or it is damaged: {reason}.',
  ),
  'house.backup-newer': unusable(
    'house#backup',
    'This backup was made by a newer version (data version {found}; this one knows {known}). Update first.',
  ),
  'house.data-in-use': registered(
    503,
    75,
    'house#one-process',
    'The data file {file} is held by another running copy of this program. Use that one, or stop it first.',
  ),
  'house.data-newer': registered(
    503,
    69,
    'house#backup',
    'The data was written by a newer version (data version {found}; this one knows {known}). Update first; nothing was changed.',
  ),
  'house.data-unreachable': registered(503, 69, 'house#data', 'The database cannot be reached: {reason}.'),
  'house.file-unreadable': registered(422, 66, 'house#data', 'The file {file} cannot be read: {reason}.'),
  'house.file-unwritable': registered(422, 73, 'house#data', 'The file {file} cannot be written: {reason}.'),
} as const
