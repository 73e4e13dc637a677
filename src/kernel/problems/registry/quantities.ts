import { unusable } from './registered.js'

export const quantitiesProblems = {
  // Quantities as people type them
  'quantity.empty': unusable('quantities#reading', 'Nothing is typed for {what}. Write it like {example}.'),
  'quantity.unreadable': unusable('quantities#reading', '“{text}” is not {what}. Write it like {example}.'),
  'quantity.too-long': unusable(
    'quantities#reading',
    'That is {length} characters; {what} has at most {most}. Write it like {example}.',
  ),
  'quantity.digits': unusable(
    'quantities#reading',
    '“{text}” holds digits of another script. Write {what} with the digits 0 to 9, like {example}.',
  ),
  'quantity.impossible': unusable('quantities#reading', '“{text}” is not {what}: {reason}. Write it like {example}.'),
  'quantity.out-of-range': unusable(
    'quantities#reading',
    '{text} is outside what {what} can be here: {low} to {high}.',
  ),
  'quantity.ambiguous': unusable('quantities#asking', '{question}'),
} as const
