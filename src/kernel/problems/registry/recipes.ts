import { unusable } from './registered.js'

export const recipesProblems = {
  // Lists of baths
  'recipe.no-bath': unusable('runs#list-of-baths', 'A list of baths needs at least one bath; this one has none.'),
  'recipe.too-many-steps': unusable(
    'runs#list-of-baths',
    'A list of {count} steps cannot be followed at a sink; {most} is the most.',
  ),
  'recipe.bad-name': unusable(
    'runs#list-of-baths',
    '“{name}” is not a name for a step or a list; write 1 to {most} characters.',
  ),
  'recipe.long-reason': unusable(
    'runs#list-of-baths',
    'The reason for {name} has {count} characters; keep it to {most}, so that it fits beside the step.',
  ),
  'recipe.same-id': unusable('runs#list-of-baths', 'Two steps are called {id} inside the list. Give each its own.'),
  'recipe.bad-time': unusable(
    'runs#list-of-baths',
    '{time} cannot be the length of {name}; it lies between {from} and {to}.',
  ),
  'recipe.shorter-than-drain': unusable(
    'runs#list-of-baths',
    '{name} lasts {time}, but pouring it out alone takes {drain}. Make it longer, or let its clock end when draining starts.',
  ),
  'recipe.bad-clearing': unusable(
    'runs#list-of-baths',
    '{name} is timed by clearing: the multiple lies between {from} and {to}, and its longest time is not under its shortest.',
  ),
  'recipe.fixed-needs-seconds': unusable(
    'runs#list-of-baths',
    '{name} has one time at one temperature; give it fixed seconds, not a developing time.',
  ),
  'recipe.several-developing-times': unusable(
    'runs#list-of-baths',
    '{count} baths take their length from the developing time; only one can.',
  ),
  'recipe.bad-handling': unusable(
    'runs#list-of-baths',
    '{time} cannot be a part of the bath change into or out of {name}; each part takes {from} to {to}.',
  ),
  'recipe.bad-window': unusable(
    'runs#list-of-baths',
    '{from} to {to} is not a temperature window for {name}; the lower end comes first, between 0 and 60 °C.',
  ),
  'recipe.bad-turn': unusable(
    'runs#list-of-baths',
    'A turn of {name} has no length, or one over an hour. Give seconds or a count of inversions.',
  ),
  'recipe.turn-longer-than-interval': unusable(
    'runs#list-of-baths',
    '{name} is to be turned for {length} every {every}. The turn has to fit into its interval, which is 5 seconds or more.',
  ),
  'recipe.unreadable-turn': unusable(
    'runs#list-of-baths',
    '“{text}” is not a turn. Write seconds, as 5 s, or a count, as 4 times or 4 times at 2 s each.',
  ),
  'recipe.unreadable-moment': unusable(
    'runs#list-of-baths',
    '“{text}” is not a moment with a turn. Write one on each line, as 10:00 5 s.',
  ),
  'recipe.parted': unusable(
    'runs#list-of-baths',
    '{name} and the bath after it must not be parted, but {next} comes next. Put a bath there.',
  ),
  'recipe.act-without-bath': unusable(
    'runs#list-of-baths',
    '{name} happens inside a bath, but no bath stands before it.',
  ),
  'recipe.light-too-soon': unusable(
    'runs#list-of-baths',
    '{name} lets light in before the film has been fixed. Move it behind the fixer.',
  ),
} as const
