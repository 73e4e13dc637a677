/** How far a roll is, as its owner reads it: no more than that. */
export const rollsWords = {
  'roll.state': ({ state }: { state: RollStateWord }): string => STATES[state],
} as const

type RollStateWord = keyof typeof STATES

const STATES = {
  'taken-in': 'It has been taken in and waits for a tank.',
  loaded: 'It is in a tank.',
  developed: 'It has been developed.',
  hung: 'It is hanging up to dry.',
  sleeved: 'It is dry, cut and sleeved.',
  scanned: 'It has been scanned.',
  'handed-back': 'It has been handed back.',
  lost: 'It is lost. Please ask.',
  ruined: 'Something went wrong with it. Please ask.',
} as const
