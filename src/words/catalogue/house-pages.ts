/** Sentences of the pages about the bench itself and about pairing. */
export const housePagesWords = {
  'house.lead': (_: object) =>
    'The bench itself: how it writes figures, who may work at it, and how nothing of it gets lost.',
  'house.name-missing': (_: object) => 'The bench needs a name, such as Kitchen sink.',
  'house.zone-wrong': (p: { zone: string }) =>
    `“${p.zone}” is not a time zone. Write it like Europe/Oslo or America/Chicago.`,
  'house.zone-hint': (p: { here: string }) => `Days and hours are shown by it. This device is in ${p.here}.`,
  'house.settings-kept': (_: object) => 'The settings are kept.',
  'house.phones': (_: object) => 'A paired phone works at this bench from the sink. Nobody else on the network can.',
  'house.pairing-how': (_: object) => 'Point the phone’s camera at it. The code works once and for ten minutes.',
  'house.paired': (p: { day: string }) => `paired on ${p.day}`,
  'house.device-gone': (p: { name: string }) => `${p.name} is no longer paired.`,
  'house.device-ends': (_: object) => 'It can do nothing here from then on. To come back it needs a new code.',
  'house.backup': (_: object) =>
    'Everything kept here as one file of plain lines. Put one away whenever you would miss a week’s work.',
  'house.restore-asks': (p: { file: string }) =>
    `Everything on this computer’s benches gives way to what is in “${p.file}”. That cannot be undone; save a backup of today first.`,
  'house.restored': (p: { rows: number }) => `The backup is in place: ${p.rows} rows.`,
  'house.demo': (_: object) => 'A small invented bench to look at and try things on. Your own stays as it is.',
  'house.demo-open': (_: object) => 'The demo bench is open. Removing it brings your own bench back, as you left it.',
  'house.interface': (_: object) => 'Everything on these pages can be done through the interface too.',
  'pair.lead': (_: object) => 'From then on it works at the bench like the computer itself.',
  'pair.name-hint': (_: object) => 'So that you know it again in the list, such as Anna’s phone.',
  'pair.done': (p: { name: string }) => `${p.name} is paired with the bench.`,
} as const
