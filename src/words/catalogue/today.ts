/** The next sensible step, as one sentence with its reason: first the thing to do, then why. */
export const todayWords = {
  'today.first-time': (_: object) => 'Put in one developing time.',
  'today.first-time.why': (_: object) =>
    'The time printed on your developer’s sheet, and its temperature. From then on the bench says what it becomes at the temperature you have.',
  'today.first-time.do': (_: object) => 'Add a developing time',
  'today.first-thermometer': (_: object) => 'Tell the bench about your thermometer.',
  'today.first-thermometer.why': (_: object) =>
    'Half a degree of error moves a time by about five per cent; an error that is known costs nothing.',
  'today.first-thermometer.do': (_: object) => 'Add a thermometer',
  'today.check-thermometer': (p: { name: string }) => `Check ${p.name}.`,
  'today.check-thermometer.why': (_: object) =>
    'It has never been compared with anything. A minute in one beaker with a trusted thermometer is enough.',
  'today.check-thermometer.do': (_: object) => 'Check it',
  'today.widen-times': (p: { film: string }) => `Give ${p.film} a second time from its sheet.`,
  'today.widen-times.why': (_: object) =>
    'With one time the answer to temperature is an assumption; with two it is the sheet’s own.',
  'today.widen-times.do': (_: object) => 'Add the second time',
  'today.ask-a-time': (p: { film: string }) => `Read the developer, then ask for the time of ${p.film}.`,
  'today.ask-a-time.why': (_: object) => 'Times and thermometers are in place.',
  'today.ask-a-time.do': (_: object) => 'Ask for a time',
} as const
