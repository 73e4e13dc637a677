import type { Celsius, Seconds } from '../../kernel/index.js'
import { capital, counted, uncapital } from '../counted.js'
import type { Writer } from '../writer.js'

type Named = { name: string }

/** Less than this is nothing that a thermometer tells, °C. */
const TOLD = 0.05

const roomTakes = ({ by }: { by: number }, w: Writer): string =>
  Math.abs(by) < TOLD
    ? 'The room changes nothing on the way.'
    : `The room ${by < 0 ? 'takes' : 'gives'} ${w.difference(Math.abs(by))} on the way; that is counted.`

/** Sentences of the pages of runs: the list, the plan, before you pour, the tank under way. */
export const runPagesWords = {
  'runs.none': (_: object) => 'No run has been planned yet.',
  'runs.none.how': (_: object) =>
    'A run takes one tank from the first pour to the line. Choose a list of baths and a developing time; the plan shows every job at its second, and nothing is poured before you say so.',
  'runs.none.practice': (_: object) =>
    'The first one may well be a practice run with a spare roll or an empty tank: it uses nothing up and can go five or twenty times as fast.',
  'runs.here': (p: { open: number; ended: number }) =>
    p.open === 0
      ? `${capital(counted(p.ended, 'run'))} on record; none is open.`
      : `${capital(counted(p.open, 'run'))} open, ${p.ended} on record.`,
  'runs.row.planned': (_: object) => 'planned, not begun',
  'runs.row.running': (_: object) => 'under way',
  'runs.row.finished': (_: object) => 'done',
  'runs.row.abandoned': (_: object) => 'given up',
  'runs.row.developed': (p: { fraction: number; low: number; high: number }, w: Writer) =>
    `development ${w.percent(p.fraction)} of the plan (${w.percent(p.low)} to ${w.percent(p.high)})`,
  'runs.row.practice': (p: { speed: number }) => (p.speed === 1 ? 'practice' : `practice, ${p.speed} times as fast`),

  'plan.answer': (p: { tank: string; length: Seconds; hands: Seconds }, w: Writer) =>
    `Tank ${p.tank} is done ${w.time(p.length)} after the first pour; hands are busy for ${w.time(p.hands)} of it.`,
  'plan.done': (p: { tank: string; length: Seconds }, w: Writer) =>
    `Tank ${p.tank} is done ${w.time(p.length)} after the first pour.`,
  'plan.hands': (p: { hands: Seconds }, w: Writer) => `Hands are busy for ${w.time(p.hands)} in all.`,
  'plan.begins': (p: { tank: string; at: Seconds | number }, w: Writer) =>
    `Tank ${p.tank} begins at ${w.time(p.at)}: from then on hands are never needed at two tanks at once.`,
  'plan.begins.over': (p: { tank: string; at: Seconds | number; after: string }, w: Writer) =>
    `Tank ${p.tank} begins at ${w.time(p.at)}, when tank ${p.after} needs no hands any more: its bath changes would meet those of tank ${p.after}.`,
  'plan.develop': (p: { time: Seconds | number; temperature: Celsius }, w: Writer) =>
    `Develop ${w.time(p.time)} at ${w.temperature(p.temperature)}.`,
  'plan.needs': (_: object) => 'The plan appears here as soon as there is a developing time.',
  'plan.fixed': (_: object) =>
    'The developers of this list have fixed times. Their temperature is not traded for time.',
  'plan.no-times': (_: object) => 'No developing time is kept on this bench, so type one from the sheet.',
  'plan.earlier': (p: { film: string }) => `The last runs with ${p.film}`,
  'plan.earlier.none': (p: { film: string }) => `No run with ${p.film} is on record yet.`,
  'plan.practice': (_: object) =>
    'Practice: an empty tank or a spare roll. Nothing is used up, and the record says so.',

  'ready.tank': (p: { tank: string; load: string }) => `Tank ${p.tank} first: ${p.load}`,
  'ready.first': (_: object) => 'Before that',
  'ready.first.film': (_: object) => 'The film is in the tank and the lid is on.',
  'ready.first.baths': (p: { names: readonly string[] }) =>
    `Within reach, in this order: ${p.names.map((name, i) => (i === 0 ? name : uncapital(name))).join(', ')}.`,
  'ready.first.care': (_: object) =>
    'Gloves and eye protection on, the room aired, nothing to eat or drink near. The safety sheets of your products come first.',

  'ready.room': (p: { by: number }, w: Writer) => roomTakes(p, w),
  'ready.thermometer': (p: { name: string; by: number; band: number }, w: Writer) =>
    `${p.name} shows ${w.difference(Math.abs(p.by))} too ${p.by > 0 ? 'much' : 'little'}; that is counted. It may be ${w.difference(p.band)} out.`,
  'ready.taps': (p: { name: string; hot: string; cold: string; at: Celsius }, w: Writer) =>
    `${p.name}, for each litre: ${p.hot} at ${w.temperature(p.at)} and ${p.cold} from the tap.`,
  'ready.warm': (p: { by: number }, w: Writer) => `Developer is ${w.difference(p.by)} warm`,
  'ready.cold': (p: { by: number }, w: Writer) => `Developer is ${w.difference(p.by)} cold`,
  'ready.as-planned': (p: { temperature: Celsius }, w: Writer) => `Developer is at ${w.temperature(p.temperature)}`,
  'ready.reads': (p: { temperature: Celsius; planned: Celsius }, w: Writer) =>
    `It reads ${w.temperature(p.temperature)}; the plan says ${w.temperature(p.planned)}. Either way gives the same negatives:`,
  'ready.reads-planned': (_: object) => 'As the plan has it. Set what your thermometer shows if it differs.',
  'ready.pour-for': (p: { time: number; planned: number }, w: Writer) =>
    `for ${w.time(p.time)}, not ${w.time(p.planned)}`,
  'ready.pour-planned': (p: { planned: number }, w: Writer) => `for ${w.time(p.planned)}`,
  'ready.half-degree': (p: { seconds: number; degrees: number }, w: Writer) =>
    `${w.difference(p.degrees)} of error on the thermometer is ${w.span(p.seconds)}.`,
  'ready.hold-pour': (p: { temperature: Celsius }, w: Writer) => `Hold: begin at ${w.temperature(p.temperature)}`,
  'ready.hold-begin': (p: Named) => `Hold: begin with ${uncapital(p.name)}`,
  'ready.cool': (p: { toward: Celsius }, w: Writer) =>
    `Stand the graduate in water at ${w.temperature(p.toward)}, stir, and read again in 2 min.`,
  'ready.against': (p: { limit: number }, w: Writer) => `Against the developer; ${w.difference(p.limit)} is the limit`,
  'ready.bath': (p: { by: number; limit: number; said: number }, w: Writer) => {
    if (Math.abs(p.by) < 0.05) return 'alike'
    const apart = `${w.difference(Math.abs(p.by))} ${p.by < 0 ? 'cooler' : 'warmer'}`
    if (Math.abs(p.by) >= p.limit) return `${apart}, ${p.by < 0 ? 'too cold' : 'too warm'}`
    return Math.abs(p.by) >= p.said ? `${apart}, usable` : apart
  },
  'device.title': (_: object) => 'This device',
  'device.awake.kept': (_: object) => 'The screen stays on while this page is open.',
  'device.awake.missing': (_: object) =>
    'This browser cannot keep the screen on: set the device to stay on for half an hour, or print the bench sheet.',
  'device.awake.lost': (_: object) => 'The screen may go dark: touch the page once, and keep it in front.',
  'device.sound.audio-clock': (_: object) =>
    'Sound is on: three pips before a job, a signal 30 s and 10 s before a bath change.',
  'device.sound.track': (_: object) =>
    'Sound is on, as one track that plays on in the dark where the device allows it. Three pips come before a job, a signal 30 s and 10 s before a bath change.',
  'device.sound.nothing': (_: object) =>
    'Sound is off until you try it: a browser plays nothing before the first touch.',
  'device.voice.on': (_: object) => 'A voice names each job.',
  'device.voice.off': (_: object) => 'This device has no voice; the tones carry it alone.',
  'device.server.here': (_: object) =>
    'The bench answers; other screens can follow this run. Should it go away, do not load this page again: it could not come back, and the bench sheet would have to finish the run.',
  'device.server.away': (_: object) =>
    'The bench does not answer. The run goes on from this page. Do not load it again: it could not come back, and the bench sheet would have to finish the run.',
  'device.server.kept': (_: object) => 'The bench answers; other screens can follow this run.',
  'device.sound.try': (_: object) => 'Try the sound',
  'device.trial.begin': (_: object) => 'Try it with the screen off',
  'device.trial.under-way': (_: object) =>
    'Now turn the screen off, count ten pips, one each second, and turn it on again.',
  'device.trial.went-on': (p: { dark: number }, w: Writer) =>
    `The screen was off for ${w.span(p.dark)}, and the tones went on all the while. If you heard them, it may go dark during a run.`,
  'device.trial.stopped': (p: { dark: number; played: number }, w: Writer) =>
    `The screen was off for ${w.span(p.dark)}, and the tones stopped after ${w.span(p.played)}. Keep the screen on, or have the bench sheet beside you.`,
  'device.trial.not-dark': (_: object) => 'The screen was not off for ten seconds, so this says nothing.',
  'device.trial.silent': (_: object) => 'This device plays nothing, so the pour-outs stand by the clock alone.',

  'tank.time-left': (_: object) => 'time left',
  'tank.over': (_: object) => 'over time',
  'tank.goes-in': (_: object) => 'until it is in',
  'tank.late': (_: object) => 'late to go in',
  'tank.pour-out-at': (p: { at: string }) => `pour out ${p.at}`,
  'tank.done-at': (p: { at: string }) => `until ${p.at}`,
  'tank.developed': (p: { fraction: number }, w: Writer) => `${w.percent(p.fraction)} developed`,
  'tank.planned': (p: { temperature: Celsius }, w: Writer) => `planned ${w.temperature(p.temperature)}`,
  'tank.expected': (p: { temperature: Celsius }, w: Writer) => `expected ${w.temperature(p.temperature)}`,
  'tank.strip': (p: Named & { fraction: number }, w: Writer) =>
    `${p.name}: ${w.percent(p.fraction)} of the planned development is done.`,
  'tank.strip-plain': (p: Named) => `${p.name} and its turns.`,
  'tank.hold.poured-in': (p: Named) => `Hold: ${uncapital(p.name)} is in`,
  'tank.hold.poured-out': (_: object) => 'Hold: pouring out',
  'tank.hold.step-done': (p: Named) => `Hold: ${uncapital(p.name)} done`,
  'tank.other': (p: { tank: string }) => `Tank ${p.tank}`,
  'tank.other.in': (p: { tank: string; job: string }) => `Tank ${p.tank}: ${uncapital(p.job)} in`,
  'tank.other.now': (p: { tank: string; job: string }) => `Tank ${p.tank}: ${uncapital(p.job)} now`,
  'tank.due': (p: Named & { at: string }) => `${uncapital(p.name)}, due ${p.at}`,
  'tank.early': (p: { by: number }, w: Writer) => `${w.time(p.by)} early, so it will ask`,
  'tank.keep-holding': (_: object) => 'Keep holding …',
  'tank.ask-early': (p: { by: number }, w: Writer) => `This is ${w.time(p.by)} before its time`,
  'tank.ask-early.why': (_: object) =>
    'Pouring early leaves the film with less development than planned. Is it really so?',
  'tank.ask-early.other': (p: Named) =>
    `The film would have had less of ${uncapital(p.name)} than planned. Is it really so?`,
  'tank.done.poured-in': (p: Named) => `${p.name} in`,
  'tank.done.poured-out': (p: Named) => `${p.name} out`,
  'tank.done.step-done': (p: Named) => `${p.name} done`,
  'tank.done.skipped': (p: Named) => `${p.name} left out`,
  'tank.done.reading': (p: { temperature: Celsius }, w: Writer) => `Reading of ${w.temperature(p.temperature)}`,
  'tank.done.mishap': (p: { what: string }) => p.what,
  'tank.done.clearing': (p: { time: Seconds | number }, w: Writer) => `Clear after ${w.time(p.time)}`,
  'tank.done.noted': (p: { text: string }) => `Note “${p.text.length > 24 ? `${p.text.slice(0, 22)} …` : p.text}”`,
  'tank.why': (p: Named) => `${p.name}: why, and what spoils it`,
  'tank.note': (_: object) => 'Write a note',
  'tank.noted': (p: { text: string }) => `Noted: ${p.text.length > 60 ? `${p.text.slice(0, 58)} …` : p.text}`,
  'tank.clear': (_: object) => 'The film is clear',
  'tank.clear.means': (p: Named & { multiple: number }) =>
    `The milky look is gone. From its pour on, ${uncapital(p.name)} takes ${p.multiple === 2 ? 'twice' : `${p.multiple} times`} as long.`,
  'tank.clear.hold': (p: { time: Seconds | number }, w: Writer) => `Hold: clear after ${w.time(p.time)}`,
  'tank.undo': (p: { what: string }) => `Undo: ${uncapital(p.what)}`,
  'tank.taken-back': (p: { what: string }) => `Taken back: ${uncapital(p.what)}.`,
  'tank.unsent': (p: { count: number }) =>
    `Bench away, ${counted(p.count, 'entry', 'entries')} kept here. Do not reload.`,
  'tank.away': (_: object) => 'Bench away; the run goes on here. Do not reload.',
  'tank.refused': (p: { sentence: string }) => `The bench did not take an entry: ${p.sentence}`,
  'tank.sure-skip': (p: Named) => `Leave out ${uncapital(p.name)}`,
  'tank.sure-abandon': (p: { tank: string }) => `Give up tank ${p.tank}`,

  'job.turn-count': (p: { count: number }) => `Turn ${counted(p.count, 'time')}`,
  'job.turn-seconds': (p: { seconds: Seconds | number }, w: Writer) => `Turn for ${w.span(p.seconds)}`,
  'job.change': (p: Named) => `Change to ${uncapital(p.name)}`,
  'job.first-pour': (p: Named) => `Pour ${uncapital(p.name)}`,
  'job.drain': (_: object) => 'Pour out',
  'job.part.cap': (p: Named) => `Take up ${uncapital(p.name)}`,
  'job.part.pour': (p: Named) => `Pour ${uncapital(p.name)} in`,
  'job.part.tap': (_: object) => 'Knock bubbles loose',
  'job.check': (_: object) => 'Read thermometer',
  'job.step': (p: Named) => p.name,
  'job.in': (p: { job: string }) => `${p.job} in`,
  'job.now': (p: { job: string }) => `${p.job} now`,
  'job.at': (p: { at: number }, w: Writer) => `at ${w.time(p.at)}`,
  'job.still-for': (_: object) => 'still to do for',
  'job.waits': (_: object) => 'waits for your hold',

  // A voice says four words at most, the tank's included, however long the name of a bath is.
  'voice.fetch': (p: Named & { words: number }) =>
    `Fetch ${uncapital(p.name).trim().split(/\s+/u).slice(0, p.words).join(' ')}`,
  'voice.turn': (_: object) => 'Turn',
  'voice.check': (_: object) => 'Read thermometer',
  'voice.lid-off': (_: object) => 'Lid off',
  'voice.look': (_: object) => 'Check clearing',
  'voice.squeeze': (_: object) => 'Wipe film',
  'voice.re-expose': (_: object) => 'Expose again',
  'voice.hang-up': (_: object) => 'Hang up',
  'voice.pour-out': (_: object) => 'Pour out',
  'voice.pour-in': (_: object) => 'Pour in',
  'voice.tank': (p: { tank: string; job: string }) => `Tank ${p.tank}, ${uncapital(p.job)}`,

  'doubt.title': (_: object) => 'What time is it?',
  'doubt.why': (_: object) =>
    'This page was loaded again and the clock of this device does not fit what was kept. Look at the tank or at another clock, and say which is true.',
  'doubt.by-wall': (p: { at: string }) => `The clock is right: it is ${p.at}`,
  'doubt.continued': (p: { at: string }) => `The clock was moved: it is ${p.at}`,
  'doubt.means': (p: Named & { left: number | null }, w: Writer) =>
    p.left === null
      ? `${p.name} would be next.`
      : p.left >= 0
        ? `${p.name} would have ${w.time(p.left)} left.`
        : `${p.name} would be ${w.time(-p.left)} over its time.`,

  'load.title': (_: object) => 'Load the film',
  'load.inside': (_: object) =>
    'Inside the tank first: the centre column, and the empty reel on top when the tank takes more than you load.',
  'load.dark': (_: object) =>
    'No screen is a safelight. Before the film is open, lay this device face down in a drawer or leave it outside, and silence calls and watches.',
  'load.jam': (_: object) =>
    'Film jams: lay it into the tank, close the tank, dry your hands, breathe, and begin again. Nothing is lost while the tank is closed.',
  'load.wake': (_: object) =>
    'The page goes black and says nothing. Only a hold of three seconds brings it back; a voice counts, where there is one.',
  'load.voice.begin': (_: object) => 'The screen is dark now. Hold it for three seconds to bring it back.',

  'record.page.lead-none': (_: object) => 'Nothing has happened in this run yet.',
  'record.page.practice': (_: object) => 'This was practice; it says nothing about film.',
  'record.said': (p: { tank: string }) => `What was said of tank ${p.tank} is kept.`,
} as const
