import type { Celsius, Seconds } from '../../kernel/index.js'
import { capital, counted, uncapital } from '../counted.js'
import type { Writer } from '../writer.js'

/** A window no wider than this is written as its middle and what it may be out, degrees Celsius. */
const NARROW_WINDOW = 1

type Named = { name: string }

/** Words of the bench sheet: a run by a wall clock and a pencil. */
export const benchSheetWords = {
  'sheet.title': (p: { title: string }) => `Bench sheet: ${p.title}`,
  'sheet.tank': (p: { tank: string; load: string }) => (p.load === '' ? `Tank ${p.tank}` : `Tank ${p.tank}: ${p.load}`),
  'sheet.of-tank': (p: { tank: string; text: string }) => `Tank ${p.tank}: ${p.text}`,
  'sheet.list': (p: Named & { volume: string | null }) =>
    p.volume === null ? `${p.name}.` : `${p.name}; ${p.volume} of each bath.`,
  'sheet.lead': (p: Named & { time: Seconds | number }, w: Writer) => `${p.name} ${w.time(p.time)}`,
  'sheet.lead-at': (p: Named & { time: Seconds | number; temperature: string }, w: Writer) =>
    `${p.name} ${w.time(p.time)} at ${p.temperature}`,
  'sheet.length': (p: { length: Seconds | number; hands: Seconds | number }, w: Writer) =>
    `${w.time(p.length)} from the first pour to the line; hands are busy for ${w.time(p.hands)} of it.`,
  'sheet.zero': (_: object) => 'Zero by the clock',
  'sheet.how': (_: object) =>
    'Zero is the first drop of the first bath; take a full minute. Add each moment to it and pencil the time of day into the box under it before you begin; the box beside is for when it was done.',
  'sheet.late': (_: object) =>
    'Should a pour slip, the bath keeps its length: move every later moment by what was lost.',
  'sheet.column.bath': (_: object) => 'Bath',
  'sheet.column.time': (_: object) => 'Time',
  'sheet.column.planned': (_: object) => 'Should read',
  'sheet.column.measured': (_: object) => 'Reads',
  'sheet.column.goes': (_: object) => 'Afterwards',
  'sheet.fills': (p: Named & { count: number }) => `${p.name}, ${counted(p.count, 'fill')}`,
  'sheet.window': (p: { from: Celsius; to: Celsius }, w: Writer) => {
    const [low, degrees] = w.temperature(p.from).split('\u202f')
    if (p.to - p.from > NARROW_WINDOW) return `${low} to ${w.temperature(p.to)}`
    const [middle] = w.temperature(((p.from + p.to) / 2) as Celsius).split('\u202f')
    const half = ((p.to - p.from) / 2) * (w.units === 'us' ? 1.8 : 1)
    return `${middle} ± ${Number(half.toFixed(w.units === 'us' ? 1 : 2))}\u202f${degrees}`
  },
  'sheet.as-developer': (_: object) => 'as the developer',
  'sheet.alike': (_: object) => 'all alike',
  'sheet.goes.bottle': (_: object) => 'own bottle',
  'sheet.goes.away': (_: object) => 'drain',
  'sheet.goes.waste-jug': (_: object) => 'waste jug',
  'sheet.jobs': (_: object) => 'To do',
  'sheet.clock': (_: object) => 'By clock',
  'sheet.done': (_: object) => 'Done at',
  'sheet.care': (p: { cautions: readonly string[] }) => `Take care. ${p.cautions.join(' ')}`,
  'sheet.warnings': (_: object) => 'Take care',
  'sheet.note': (_: object) => 'Beside the plan',

  'sheet.job.in': (p: Named) => `${p.name} in`,
  'sheet.job.out': (p: Named) => `${p.name} out`,
  'sheet.job.change': (p: Named & { before: string }) => `${p.before} out, ${uncapital(p.name)} in`,
  'sheet.job.refill': (p: Named) => `${p.name}: change the water`,
  'sheet.job.check': (p: Named) => `Read the thermometer in ${uncapital(p.name)}`,
  'sheet.do.out.bottle': (_: object) => 'Out, into its own bottle.',
  'sheet.do.out.away': (_: object) => 'Out, down the drain.',
  'sheet.do.out.waste-jug': (_: object) => 'Out, into the waste jug.',
  'sheet.do.pour': (p: { from: number; to: number }, w: Writer) =>
    `In from ${w.time(p.from)}, full by ${w.time(p.to)}.`,
  'sheet.do.refills': (p: { count: number }) =>
    `${capital(counted(p.count, 'time'))}: pour out at the moment, down the drain, fill again, and turn as it says below.`,
  'sheet.do.tap': (_: object) => 'Knock the bubbles off.',
  'sheet.do.turn-seconds': (p: { seconds: Seconds | number }, w: Writer) => `Turn for ${w.span(p.seconds)}.`,
  'sheet.do.turn-count': (p: { count: number }) => `Turn over ${counted(p.count, 'time')}.`,
  'sheet.do.keep-turning': (_: object) => 'Turn without a stop.',
  'sheet.do.machine': (_: object) => 'The machine turns it.',
  'sheet.degrees': (_: object, w: Writer) => (w.units === 'us' ? '°F' : '°C'),
  'sheet.why.check': (_: object) =>
    'How fast a developer works depends on its warmth; as long as it is in, its end can still be moved.',
  'sheet.why.drain': (_: object) => 'The last drops take their time; let it run until nothing comes.',
  'sheet.do.still': (_: object) => 'Then leave it still.',
  'sheet.do.check': (_: object) => 'Write down what it reads. Warmer than planned: pour out sooner; colder: later.',
  'sheet.do.lid-off': (_: object) => 'Take the lid off. The bath stays in and its clock goes on.',
  'sheet.do.look': (p: { multiple: number }) =>
    `Lift the reel at its core. Still milky: put it back and look again every half minute. Write down how long clearing took; the film stays in ${p.multiple === 2 ? 'twice' : `${p.multiple} times`} as long, counted from full.`,
  'sheet.do.squeeze': (_: object) => 'Take the film off the reel by its edges and let the water run to one corner.',
  'sheet.do.re-expose': (_: object) => 'Take the reel out, light it, and put it back.',
  'sheet.do.hang-up': (_: object) => 'Clip it up where nobody passes, a clip as weight below.',
  'sheet.turns.seconds': (p: { seconds: Seconds | number }, w: Writer) => `turn for ${w.span(p.seconds)} at`,
  'sheet.turns.count': (p: { count: number }) => `turn over ${counted(p.count, 'time')} at`,
  'sheet.turns': (p: { texts: readonly string[] }) => p.texts.join('; '),
  'sheet.turns.of': (p: Named & { text: string }) => `${p.name}: ${p.text}`,
  'sheet.turns.of-tank': (p: Named & { tank: string; text: string }) =>
    `Tank ${p.tank}, ${uncapital(p.name)}: ${p.text}`,
  'sheet.turns.on': (p: { from: number; until: number }, w: Writer) =>
    `from ${w.time(p.from)} turn on without a stop, until ${w.time(p.until)}.`,
  'sheet.otherwise': (p: Named) =>
    `${p.name} reads otherwise when it goes in? Pour it out at the moment under its reading, and move everything after by as much.`,
  'sheet.otherwise.room': (p: Named) =>
    `${p.name} reads otherwise when it goes in? Pour it out at the moment under its reading, in which the room’s pull is reckoned with, and move everything after by as much.`,
  'sheet.clearing': (_: object) => 'Clear in',
  'sheet.wrong': (_: object) => 'When something goes wrong',
  'sheet.notes': (_: object) => 'Notes',
  'sheet.foot': (p: { today: string }) => `Printed ${p.today}`,
  'sheet.page': (p: { page: number; pages: number }) => `page ${p.page} of ${p.pages}`,
  'sheet.mishap.restart': (_: object) =>
    'Then pour the developer, count its whole time from there, and throw it away afterwards.',
  'sheet.mishap.other-time': (_: object) => 'Pour out after that time; without one, at the planned moment.',
} as const

/** Words of the record of a run. */
export const runRecordWords = {
  'record.title': (p: { title: string }) => `Run: ${p.title}`,
  'record.lead': (p: { fraction: number }, w: Writer) => `${w.percent(p.fraction)} of the planned development`,
  'record.lead-list': (p: Named) => p.name,
  'record.band': (p: { low: number; high: number; byTheClock: boolean }, w: Writer) =>
    `Between ${w.percent(p.low)} and ${w.percent(p.high)}, by what the thermometer may be out${p.byTheClock ? ' and the times leave open' : ''}.`,
  'record.fixed': (_: object) => 'Its developer has a fixed time; development is not reckoned.',
  'record.begun': (p: { day: string; at: string; zone: string }) => `${p.day}, first pour at ${p.at} (${p.zone}).`,
  'record.not-begun': (_: object) => 'Nothing has been poured yet.',
  'record.going-on': (_: object) => 'This run is not finished: what is to come stands as it is expected.',
  'record.column.step': (_: object) => 'Step',
  'record.column.in': (_: object) => 'In at',
  'record.column.out': (_: object) => 'Out at',
  'record.column.lasted': (_: object) => 'Lasted',
  'record.column.planned': (_: object) => 'Planned',
  'record.column.off': (_: object) => 'Off by',
  'record.reckoned': (p: { at: string }) => `(${p.at})`,
  'record.reckoned-why': (_: object) => 'In brackets: nobody confirmed it; it is reckoned from what was confirmed.',
  'record.left-out': (_: object) => 'left out',
  'record.off': (p: { by: number }, w: Writer) =>
    Math.round(p.by) === 0 ? '0' : `${p.by > 0 ? '+' : '\u2212'}${w.span(Math.abs(p.by))}`,
  'record.deviations': (_: object) => 'Against the plan',
  'record.no-deviations': (_: object) => 'Everything went as planned.',
  'record.mishap': (p: { what: string; at: string }) => `${p.what}, at ${p.at}.`,
  'record.readings': (_: object) => 'Readings',
  'record.reading': (p: { at: string; temperature: Celsius; expected: Celsius }, w: Writer) =>
    `${p.at}: ${w.temperature(p.temperature)} where ${w.temperature(p.expected)} was expected.`,
  'record.verdict': (_: object) => 'The negatives',
  'record.no-verdict': (_: object) => 'Not looked at yet. Once dry: thin, right or dense, and any marks.',
  'record.noted-then': (_: object) => 'Written down',
  'record.noted': (p: { at: string; text: string }) => `${p.at}: ${p.text}`,
} as const
