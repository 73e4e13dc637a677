import { unusable } from './registered.js'

export const datesProblems = {
  // Days and parts of days as people type them
  'date.year-missing': unusable('quantities#dates', '“{text}” leaves the year out. Write {what} with it: {text} 2025.'),
  'date.year-out-of-range': unusable(
    'quantities#dates',
    '“{text}” lies outside the years from {low} to {high}. Write the year with its four digits.',
  ),
  'date.not-yet': unusable('quantities#dates', '“{text}” has not come yet: today is {today}. Correct {what}.'),
} as const
