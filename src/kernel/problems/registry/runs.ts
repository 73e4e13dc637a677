import { registered, unusable } from './registered.js'

export const runsProblems = {
  // Lists of baths on the shelf, and runs
  'recipe.comes-with-program': registered(
    409,
    65,
    'runs#list-of-baths',
    '{name} came with the program and stays as it is. Copy it, and change the copy.',
  ),
  'run.practice-with-rolls': unusable('runs#rolls', 'Practice is done without film: leave the rolls out of this plan.'),
  'run.no-such-reel': unusable('runs#rolls', 'There is no reel {reel}: the plan has {reels}.'),
  'run.reel-empty': unusable('runs#rolls', 'A reel needs a film by its name, or a roll of the register.'),
  'run.roll-twice': unusable('runs#rolls', 'Roll {number} is in this plan twice. One roll goes onto one reel.'),
  'run.roll-past': registered(
    409,
    65,
    'runs#rolls',
    'Roll {number} is {state} already, so it cannot go into a tank. Choose one that waits.',
  ),
  'run.roll-planned': registered(
    409,
    65,
    'runs#rolls',
    'Roll {number} is in another plan that has not ended. Give that one up first, or choose another roll.',
  ),
  'run.no-such-bath': unusable(
    'shelf#use',
    'Step {step} of the list is no bath that comes from a bottle, or it has its bottle already.',
  ),
  'run.bath-volume': unusable(
    'shelf#use',
    'Nothing says how much of {bath} is poured. Give the volume of the tank, or of this bath.',
  ),
  'run.not-a-tank': unusable('rolls#kit', '{name} is a {kind} and not a tank. Choose a tank of the kit.'),
  'run.unknown-tank': unusable('runs#events', 'This run has no tank {tank}; it has {tanks}.'),
  'run.unknown-step': unusable('runs#events', 'Tank {tank} has no step {bath}: its list counts from 0 to {last}.'),
  'run.step-missing': unusable('runs#events', '“{kind}” is about one step of the list; none was named.'),
  'run.not-a-bath': unusable('runs#events', '{name} is not a bath, so nothing is poured: “{kind}” does not fit it.'),
  'run.event-elsewhere': registered(
    409,
    65,
    'runs#events',
    'The event {id} belongs to another run. An event is written down once, with an id of its own.',
  ),
  'run.event-differs': registered(
    409,
    65,
    'runs#events',
    'The event {id} is known already and says something else. What was written down is never changed; write a new event.',
  ),
  'run.over': registered(409, 65, 'runs#events', 'This run is over; there is nothing left to give up.'),
  'run.clock-in-doubt': registered(
    409,
    65,
    'runs#clock',
    'The time on a device of this run is in doubt. Settle it on that device, then print the record.',
  ),
} as const
