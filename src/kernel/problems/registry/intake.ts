import { unusable } from './registered.js'

const taking = (sentence: string) => unusable('rolls#taking-in', sentence)

export const intakeProblems = {
  // Rolls as they are written down when they are handed over
  'intake.format-unknown': taking(
    '“{text}” is no format that is taken in here. Write 135-36, 120, 220, 127, 110, 4×5, 5×7, 8×10, 11×14, 9×12 cm or 13×18 cm.',
  ),
  'intake.frames-out-of-range': taking('“{text}” has {frames} frames; a length of 135 has {low} to {high}.'),
  'intake.sheets-out-of-range': taking('“{text}” is {count} sheets; one entry holds 1 to {most}.'),
  'intake.index-unusable': taking(
    '“{text}” is not an exposure index. Write a whole number from {low} to {high}, such as 400.',
  ),
  'intake.index-or-year': taking('“{text}” can be an index or a year. Write EI {text} or exposed {text}.'),
  'intake.wanted-unknown': taking(
    '“{text}” does not say how to develop. Write normal, as 800, push 1, pull 1/3 or contrast 0.6.',
  ),
  'intake.stops-need-index': taking(
    '“{text}” counts from the index it was exposed at, which is missing. Write that too, such as EI 400.',
  ),
  'intake.contrast-out-of-range': taking('“{text}” is no contrast of a negative. Write one from {low} to {high}.'),
  'intake.process-unknown': taking('“{text}” is no chemistry. Write black-and-white, colour negative or colour slide.'),
  'intake.remark-unknown': taking(
    '“{text}” is not a remark. Write found, expired, infrared, carbon backing or chromogenic; anything else is a note.',
  ),
  'intake.count-unusable': taking('“{text}” is no number of {what}. Write a whole number from {low} to {high}.'),
  'intake.cell-unknown': taking(
    '“{text}” is not understood. Write a format (120), an index (EI 400), what is wanted (push 1), when it was exposed (summer 2024), whose it is (of Ida), or put “note” before it.',
  ),
  'intake.cell-beyond': taking('“{text}” stands beyond the last column. Give it a column, or put it in quotes.'),
  'intake.column-unknown': taking(
    'No column is called “{name}”. Call it film, format, index, wanted, exposed, expired, whose, process, remarks, due or note, or leave it out.',
  ),
  'intake.said-twice': taking('This line says {what} twice. Leave one of them out.'),
  'intake.missing': taking('{what} is missing. Write it like {example}.'),
  'intake.name-too-long': taking('The name has {length} characters and may have {most}. Shorten it.'),
  'intake.sounds-colour': taking(
    '“{film}” sounds like colour film. Say which chemistry it is for: colour negative, colour slide or black-and-white.',
  ),
  'intake.too-many': taking('One list takes in {most} rolls, and with this line it has {count}. Part it in two.'),
  'intake.count-mismatch': taking(
    '{counted} rolls of {person} were counted and {listed} are listed. Nothing is taken in: count again, and look which line is missing or too many.',
  ),
} as const
