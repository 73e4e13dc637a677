import { unusable } from './registered.js'

export const mixingProblems = {
  // Warm and cold
  'thermal.bad-value': unusable('mixing#warm-and-cold', '{what} of {value} is outside {low} to {high}.'),
  'thermal.nothing-to-mix': unusable('mixing#warm-and-cold', 'There is nothing to mix: every part has a mass of 0 g.'),
  'thermal.hot-not-hotter': unusable(
    'mixing#warm-and-cold',
    'The hot water at {hot} is hardly warmer than the cold at {cold}, if at all. Swap them, or read both again.',
  ),
  'thermal.never-there': unusable(
    'mixing#standing',
    'From {from} in surroundings of {around} it does not come to {wanted}.',
  ),
  'thermal.does-not-approach': unusable(
    'mixing#standing',
    'These readings do not come nearer to {around}. Readings of one standing vessel, on one side of its surroundings, give its time constant.',
  ),
  'thermal.colder-than-taps': unusable(
    'mixing#warm-and-cold',
    '{wanted} cannot be had: these waters give {coolest} to {warmest}. Cool the cold water with ice outside its jug, or let it stand where it is cold.',
  ),
  'thermal.warmer-than-taps': unusable(
    'mixing#warm-and-cold',
    '{wanted} cannot be had: these waters give {coolest} to {warmest}. Heat the hot water further.',
  ),
  'thermal.pour-out-of-reach': unusable(
    'mixing#warm-and-cold',
    'To come to {wanted} it would have to be poured at {pour}, which is frozen or above {most}. Bring the tank nearer first: stand it in water of the wanted temperature.',
  ),
  // Dilution
  'dilution.bad-value': unusable('mixing#ratios', '{what} of {value} is outside {low} to {high}.'),
  'dilution.chain-of-two-parts': unusable(
    'mixing#ratios',
    'Dilutions one after the other are of two parts each; which concentrate would be thinned is not clear with more.',
  ),
  'dilution.more-than-total': unusable(
    'mixing#ratios',
    '{amount} mL cannot go into {volume} mL: the amount must be above 0 and less than the volume.',
  ),
  'dilution.strong-is-weak': unusable(
    'mixing#percent',
    'A blend needs a stronger and a weaker solution; {strong} % is not stronger than {weak} %.',
  ),
  'dilution.out-of-reach': unusable(
    'mixing#percent',
    '{wanted} % cannot be had from {strong} % and {weak} %: it must lie between them.',
  ),
  'dilution.stronger-than-stock': unusable(
    'mixing#ratios',
    'The working bath is thinned {thinned} times in all and the stock {factor} times already: it cannot be made from this stock.',
  ),
  'dilution.stocks-mismatch': unusable(
    'mixing#ratios',
    '{stocks} stocks were given for {parts} parts. Give one at least, in the order of the ratio, and no more than it has parts.',
  ),
} as const
