/** What spoils the film at a step, for someone who does it for the first time. By the kind of bath or act. */
const DEVELOPING =
  'Spoiled by light in the tank, by a drop of fixer, and by a time or a temperature other than the plan’s.'
const REVERSING = 'Spoiled when it is cut short or taken out of turn; what it has taken away does not come back.'

export const ruinsWords = {
  'ruins.pre-wet': (_: object) => 'Pour all of it out, or it thins the developer.',
  'ruins.developer': (_: object) => DEVELOPING,
  'ruins.single-bath': (_: object) => DEVELOPING,
  'ruins.bath-a': (_: object) => DEVELOPING,
  'ruins.bath-b': (_: object) => 'Spoiled by a rinse before it: it works on what the film carries over.',
  'ruins.first-developer': (_: object) => DEVELOPING,
  'ruins.colour-developer': (_: object) => DEVELOPING,
  'ruins.second-developer': (_: object) => DEVELOPING,
  'ruins.stop': (_: object) =>
    'Left out, the developer goes on working and wears the fixer. Keep the lid on. Much colder or warmer than the bath before, it can wrinkle the gelatin.',
  'ruins.rinse': (_: object) => 'Cut short, one bath is carried into the next.',
  'ruins.reversal': (_: object) => REVERSING,
  'ruins.pre-bleach': (_: object) => REVERSING,
  'ruins.bleach': (_: object) => REVERSING,
  'ruins.clear': (_: object) => REVERSING,
  'ruins.fix': (_: object) =>
    'Spoiled by light before the film has been two minutes in it. Too short leaves silver that browns the film in time.',
  'ruins.wash': (_: object) =>
    'Too short leaves fixer that fades the picture over years. Water much colder or warmer can wrinkle the gelatin.',
  'ruins.wash-aid': (_: object) => 'Left out, the short wash that follows is too short.',
  'ruins.wetting': (_: object) => 'Shaken, it foams; foam and drops dry into marks.',
  'ruins.lid-off': (_: object) => 'Opened before its time, light spoils all that is not fixed yet.',
  'ruins.look': (_: object) => 'A fingertip leaves its mark in wet gelatin.',
  'ruins.squeeze': (_: object) => 'A dry or gritty wiper scratches along the whole roll; if in doubt, let it run off.',
  'ruins.re-expose': (_: object) => 'Water on a hot lamp breaks it; light from one side only leaves a shadow.',
  'ruins.hang-up': (_: object) => 'Dust sticks to wet film for good. Hang it where nobody walks, a weight below.',
} as const
