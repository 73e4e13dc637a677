/** The cards for when something goes wrong: what to do this second, what it means, what becomes of the score. */
export const mishapWords = {
  'mishap.fixer-first': (_: object) => 'Fixer went in first',
  'mishap.fixer-first.do-1': (_: object) => 'Pour it out now, back into its own bottle; keep the lid on.',
  'mishap.fixer-first.do-2': (_: object) => 'Fill with water, turn ten times, pour out; three times over.',
  'mishap.fixer-first.do-3': (_: object) => 'Then pour the developer, press as usual, and throw it away afterwards.',
  'mishap.fixer-first.means': (_: object) =>
    'Fixer takes away what developer needs. After seconds a thin picture is left; after minutes there is none.',
  'mishap.fixer-first.becomes': (_: object) => 'The developer’s time starts again with the next pour.',

  'mishap.developer-short': (_: object) => 'Developer does not cover the film',
  'mishap.developer-short.do-1': (_: object) =>
    'Top up with the same developer at the same temperature, if it is ready.',
  'mishap.developer-short.do-2': (_: object) => 'If not, keep turning the tank slowly and without a stop, to the end.',
  'mishap.developer-short.do-3': (_: object) => 'Do not add water.',
  'mishap.developer-short.means': (_: object) =>
    'The upper edge was wet for part of the time only: a lighter strip along the film is likely.',
  'mishap.developer-short.becomes': (_: object) => 'Turns become one long turn until the pour-out; the time stays.',

  'mishap.wrong-dilution': (_: object) => 'Developer has the wrong dilution',
  'mishap.wrong-dilution.do-1': (_: object) => 'Leave it in; look up the time for the dilution that is in the tank.',
  'mishap.wrong-dilution.do-2': (_: object) => 'Type that time here. Without one, end at the planned time.',
  'mishap.wrong-dilution.means': (_: object) =>
    'Stronger is faster and denser, weaker slower and thinner, and not in proportion: only a sheet or a test knows how much.',
  'mishap.wrong-dilution.becomes': (_: object) => 'The pour-out moves to the time that you type.',

  'mishap.lid-came-off': (_: object) => 'The lid came off',
  'mishap.lid-came-off.do-1': (_: object) => 'Lid on at once; lamp out if you can reach it.',
  'mishap.lid-came-off.do-2': (_: object) => 'Pour back what ran out and go on to the second.',
  'mishap.lid-came-off.do-3': (_: object) => 'Note how long it was open.',
  'mishap.lid-came-off.means': (_: object) =>
    'The outer turns of the reel are fogged; the inner ones often are not. The roll is worth finishing.',
  'mishap.lid-came-off.safe.do-1': (_: object) => 'Nothing is lost; go on.',
  'mishap.lid-came-off.safe.do-2': (_: object) => 'Lid on again if the bath would splash.',
  'mishap.lid-came-off.safe.means': (_: object) =>
    'In the fixer the film hardly sees light any more; after two minutes of it none harms.',

  'mishap.tank-leaks': (_: object) => 'The tank leaks',
  'mishap.tank-leaks.do-1': (_: object) =>
    'Stand it in a tray. Do not turn it over; twist it on the spot at each turn.',
  'mishap.tank-leaks.do-2': (_: object) => 'Top up with the same bath so that the film stays covered.',
  'mishap.tank-leaks.do-3': (_: object) => 'Gloves on; wipe up fixer and bleach with much water.',
  'mishap.tank-leaks.means': (_: object) =>
    'As long as film is covered nothing is lost. What leaks past a lid lets no light in.',

  'mishap.stop-skipped': (_: object) => 'Fixer went in without the stop',
  'mishap.stop-skipped.do-1': (_: object) => 'Leave the fixer in and turn it for half a minute without a stop.',
  'mishap.stop-skipped.do-2': (_: object) => 'Test the fixer with a scrap of film before its next use.',
  'mishap.stop-skipped.means': (_: object) =>
    'Development went on for some seconds more, and the fixer took up alkali; stains are rare when it is turned at once.',
  'mishap.stop-skipped.becomes': (_: object) =>
    'The stop is left out, and the film stays in the fixer half a minute longer.',

  'mishap.power-or-phone-dead': (_: object) => 'Power or phone is dead',
  'mishap.power-or-phone-dead.do-1': (_: object) =>
    'Go by any clock: the pour-out stands on the bench sheet as a time of day.',
  'mishap.power-or-phone-dead.do-2': (_: object) => 'No clock at all: count seconds aloud to the pour-out, and pour.',
  'mishap.power-or-phone-dead.do-3': (_: object) => 'Write down each pour; type it in later.',
  'mishap.power-or-phone-dead.means': (_: object) =>
    'Chemistry does not wait for the phone. Ten seconds of eight minutes are two per cent; nobody sees them.',
  'mishap.power-or-phone-dead.safe.do-1': (_: object) =>
    'Take your time: leave the film in this bath until you can see a clock.',
  'mishap.power-or-phone-dead.safe.do-2': (_: object) => 'Not over half an hour in fixer.',
  'mishap.power-or-phone-dead.safe.means': (_: object) => 'From the fixer on, minutes more do no harm.',
} as const
