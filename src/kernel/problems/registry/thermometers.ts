import { registered, unusable } from './registered.js'

export const thermometersProblems = {
  // Thermometers
  'thermometer.method-out-of-scale': unusable(
    'thermometers#checking',
    '{method} needs a thermometer that reads {needed}; this one reads {low} to {high}.',
  ),
  'thermometer.error-too-large': unusable(
    'thermometers#checking',
    'A reading of {read} for a true {true} is {error} off. Past {most} the thermometer is broken or one of the two was read wrongly; check again.',
  ),
  'thermometer.checks-contradict': unusable(
    'thermometers#checking',
    'Reading {lower} was a true {lowerTrue}, but the higher reading {higher} was a true {higherTrue}. A thermometer cannot fall while the bath warms; repeat one of the two checks.',
  ),
  'thermometer.bad-scale': unusable(
    'thermometers#scale',
    'A scale from {low} to {high} is not possible; the low end comes first and they are at least {shortest} apart.',
  ),
  'thermometer.outside-scale': unusable(
    'thermometers#scale',
    '{read} is outside the scale of {name}, {low} to {high}.',
  ),
  'thermometer.class-set-too-small': unusable(
    'thermometers#class-set',
    'A class set compares at least two thermometers; {count} were given.',
  ),
  'thermometer.check-withdrawn': registered(
    409,
    65,
    'thermometers#checking',
    'This check was withdrawn already and counts for nothing. Check the thermometer again instead.',
  ),
  'thermometer.scale-leaves-out': unusable(
    'thermometers#scale',
    'A scale from {low} to {high} leaves out {read}, which this thermometer read at a check. Correct the scale, or withdraw that check first.',
  ),
  'thermometer.same-twice': unusable('thermometers#class-set', '{name} is in this set twice.'),
} as const
