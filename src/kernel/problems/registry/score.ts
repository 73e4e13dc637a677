import { unusable } from './registered.js'

export const scoreProblems = {
  // The score
  'score.no-tank': unusable('runs#plan', 'A score needs at least one tank; none was given.'),
  'score.same-tank': unusable('runs#plan', 'Two tanks are called {tank}. Give each its own letter.'),
  'score.no-developing-time': unusable(
    'runs#plan',
    '{name} needs its developing time: choose a reference time with a temperature, or type your own.',
  ),
  'score.fixed-time': unusable(
    'runs#plan',
    '{name} has one time at one temperature, {time}; it is never moved. Bring the bath to its temperature instead.',
  ),
  'score.no-developer': unusable('runs#plan', 'This list has no bath that takes a developing time, but one was given.'),
  'score.wrong-kind': unusable(
    'runs#plan',
    'The reference time is for {given}, but the list has {wanted}. Choose a list that fits.',
  ),
  'score.bad-own-time': unusable('runs#plan', '{time} cannot be a developing time; it lies between {from} and {to}.'),
  'score.bad-temperature': unusable(
    'runs#plan',
    '{temperature} cannot be the temperature of {name}; it lies between 0 and 60 °C.',
  ),
  'score.unknown-step': unusable('runs#plan', 'No step of the list is called {id}.'),
  'score.bad-room': unusable(
    'runs#plan',
    'A room of {temperature} that pulls the tank over {tau} makes no sense; the time constant is 5 minutes to 24 hours.',
  ),
  'score.bath-too-far': unusable(
    'runs#plan',
    '{name} at {temperature} is {by} from {other} at {otherTemperature}. From {limit} gelatin can wrinkle; bring them closer, or say that you take the risk.',
  ),
  'score.chain-too-long': unusable(
    'runs#plan',
    'From {first} to {last} the film passes through {by} in small steps. More than {limit} in all can wrinkle gelatin; bring the baths closer, or say that you take the risk.',
  ),
  'score.reading-outside': unusable(
    'runs#plan',
    '{temperature} is outside what this developer can be followed at, {from} to {to}. Read again; the pour-out stays as it is.',
  ),
} as const
