import { unusable } from './registered.js'

export const negativesProblems = {
  // Densities, curves and film speed
  'curve.bad-value': unusable('negatives#densities', '{what} of {value} is outside {low} to {high}.'),
  'curve.too-few-steps': unusable(
    'negatives#strips',
    'A curve needs at least {fewest} steps with their densities; {count} were given.',
  ),
  'curve.too-many-steps': unusable('negatives#strips', '{count} steps were given; one strip has at most {most}.'),
  'curve.steps-out-of-order': unusable(
    'negatives#strips',
    'Step {step} has a log exposure of {second}, which is not more than the {first} before it. Steps go from the least light to the most.',
  ),
  'curve.falls': unusable(
    'negatives#strips',
    'Step {step} reads {second}, below the {first} of a step with less light by more than reading error explains. Read both again, or check the order of the steps.',
  ),
  'curve.starts-too-dense': unusable(
    'negatives#reach',
    '{what} needs a density of {wanted}, and the lightest step is {reached} already. Expose a strip with less light.',
  ),
  'curve.not-reached': unusable(
    'negatives#reach',
    '{what} needs a density of {wanted}, and this curve ends at {reached}. It is not defined for this strip; use another measure, or expose more.',
  ),
  'curve.beyond-exposure': unusable(
    'negatives#reach',
    '{what} needs the curve up to a log exposure of {wanted}, and its last step is at {reached}. It is not defined for this strip.',
  ),
  'curve.no-straight-part': unusable(
    'negatives#contrast',
    'No two points of the curve rise between {from} and {to}: there is no straight part to take a slope from.',
  ),
  'curve.tablet-mismatch': unusable(
    'negatives#strips',
    'The tablet has {tablet} steps and {strip} densities were read; each reading needs its own step.',
  ),
  'curve.bad-calibration': unusable(
    'negatives#without-densitometer',
    'The readings {first} and {second} stand for {firstTrue} and {secondTrue}: a higher reading must stand for a higher density. Read the known steps again.',
  ),
  'curve.outside-calibration': unusable(
    'negatives#without-densitometer',
    'A reading of {read} is outside what was calibrated, {low} to {high}. Read a known step near it first.',
  ),
  'speed.bad-value': unusable('negatives#speed', '{what} of {value} is outside {low} to {high}.'),
  'speed.relative-only': unusable(
    'negatives#speed',
    'The exposure of this strip is not known in lux-seconds, so it has no speed of its own, only one relative to the index it was exposed for.',
  ),
  'speed.off-triangle': unusable(
    'negatives#speed',
    'Over 1.30 of log exposure this strip gains {rise}; an ISO speed needs {low} to {high}. Develop it {remedy}, or use the Δ-X speed, named as such.',
  ),
  'speed.outside-list': unusable('negatives#speed', 'A speed of {speed} is outside the named speeds, {low} to {high}.'),
  'speed.not-met': unusable(
    'negatives#in-camera',
    'No frame of the series meets a density of {wanted} over base and fog: they run from {lowest} to {highest}. Add frames with {remedy} exposure.',
  ),
  // Contrast in time
  'contrast.bad-value': unusable('negatives#own-time', '{what} of {value} is outside {low} to {high}.'),
  'contrast.too-few-strips': unusable(
    'negatives#own-time',
    'A contrast–time curve needs {fewest} strips at different times; {count} were given.',
  ),
  'contrast.too-few-repeats': unusable(
    'negatives#own-time',
    'A scatter of your own needs {fewest} strips more than there are groups developed alike; these leave {count}. Until then 0.02 is assumed.',
  ),
  'contrast.not-a-law': unusable(
    'negatives#own-time',
    'The contrasts {first} at {firstTime} and {second} at {secondTime} do not follow one curve: the longer time must give more contrast, but less than twice as much. Develop the pair again.',
  ),
  'contrast.above-most': unusable(
    'negatives#own-time',
    'A contrast of {wanted} cannot be had: by these strips the developer reaches {most} at the very most. Choose less, or another developer.',
  ),
  'contrast.beyond-strips': unusable(
    'negatives#own-time',
    'A contrast of {wanted} is more than one N outside these strips, which run from {lowest} to {highest}. Develop a strip nearer to it.',
  ),
  'contrast.no-fit': unusable(
    'negatives#own-time',
    'No contrast–time curve fits these {count} strips ({reason}). Develop them over a wider span of times.',
  ),
  // Control strips
  'control.bad-value': unusable('negatives#control', '{what} of {value} is outside {low} to {high}.'),
  'control.no-step': unusable(
    'negatives#control',
    'No step of the strip is {wanted}; its densities run from {lowest} to {highest}. Expose the strip so that one is.',
  ),
  'control.too-few': unusable('negatives#control', '{what} needs at least {fewest} values; {count} were given.'),
  // Fits of one's own data
  'fit.bad-value': unusable('negatives#fits', '{what} of {value} is outside {low} to {high}.'),
  'fit.points': unusable(
    'negatives#fits',
    '{count} pairs were given; this curve needs at least {fewest} and takes at most {most}.',
  ),
  'fit.bad-start': unusable(
    'negatives#fits',
    'A start of {count} numbers was given for the curve “{curve}”, which has {wanted}. Give one number a parameter.',
  ),
  'fit.no-value-at-start': unusable(
    'negatives#fits',
    'At the start {start} the curve “{curve}” has no value for some of the pairs. Start elsewhere.',
  ),
} as const
