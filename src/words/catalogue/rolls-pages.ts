import { writePartialDay } from '../../kernel/index.js'
import { capital, counted } from '../counted.js'

/** What is asked of a roll, with the index it was exposed at. */
type Asked = {
  readonly exposed_at: number | null
  readonly wanted:
    | { readonly as: 'normal' }
    | { readonly as: 'index'; readonly index: number }
    | { readonly as: 'contrast'; readonly contrast: number }
}
type About = Asked & {
  readonly cut: string
  readonly process: keyof typeof CHEMISTRY
  readonly exposed: string | null
  readonly expired_since: string | null
  readonly remarks: readonly (keyof typeof REMARKS)[]
}
type State = keyof typeof STATES

/** Sentences of the pages of rolls and orders. */
export const rollsPagesWords = {
  'rolls.state-word': (p: { state: State }) => STATES[p.state],
  'rolls.chemistry': (p: { process: keyof typeof CHEMISTRY }) => CHEMISTRY[p.process],
  'rolls.remark': (p: { remark: keyof typeof REMARKS }) => REMARKS[p.remark],
  'rolls.wanted': (p: Asked) => wantedWords(p),
  'rolls.about': (p: About) =>
    [
      p.cut,
      ...(p.process === 'black-and-white' ? [] : [CHEMISTRY[p.process]]),
      ...exposedWords(p),
      ...(p.wanted.as === 'normal' ? [] : [wantedWords(p)]),
      ...p.remarks.filter((remark) => remark !== 'expired' || p.expired_since === null).map((one) => REMARKS[one]),
      ...(p.expired_since === null ? [] : [`expired since ${writePartialDay(p.expired_since)}`]),
    ].join(', '),
  'rolls.of': (p: { whose: string | null }) => (p.whose === null ? 'own film' : `of ${p.whose}`),
  'rolls.due': (p: { due: string }) => `due ${writePartialDay(p.due)}`,

  'rolls.here': (p: { found: number; shown: number }) =>
    p.found === p.shown ? `${capital(counted(p.found, 'roll'))}.` : `${p.shown} of ${p.found} rolls, newest first.`,
  'rolls.none': (_: object) => 'No roll is on the bench.',
  'rolls.none.how': (_: object) =>
    'Take in the first one: the film, how it is cut, whose it is. It gets a number and keeps it, from here until it is sleeved or handed back.',
  'rolls.none.many': (_: object) =>
    'Somebody puts a bag of film on the table? Take in several at once: a line for each roll, typed or pasted.',
  'rolls.none-found': (_: object) => 'No roll is as you look for it. Leave a word out, or look among all of them.',
  'rolls.unread-look': (p: { text: string }) => `“${p.text}” is left out of the search until it can be read.`,
  'rolls.view-kept': (p: { name: string }) => `The view ${p.name} is kept for everybody at this bench.`,
  'rolls.view-gone': (p: { name: string }) => `The view ${p.name} is gone.`,
  'rolls.view-back': (p: { name: string }) => `The view ${p.name} is back.`,
  'rolls.view-unnamed': (_: object) => 'The view has no name yet. Write one like “waiting for Tuesday”.',

  'rolls.chosen': (p: { count: number }) => `${capital(counted(p.count, 'roll'))} chosen`,
  'rolls.moved': (p: { count: number; number: string; state: State }) =>
    `${p.count === 1 ? `Roll ${p.number}` : capital(counted(p.count, 'roll'))}: ${STATES[p.state]}.`,
  'rolls.changed': (p: { count: number; number: string }) =>
    `${p.count === 1 ? `Roll ${p.number} is` : `${capital(counted(p.count, 'roll'))} are`} changed.`,
  'rolls.taken-back': (p: { count: number; number: string }) =>
    p.count === 1 ? `Roll ${p.number} is as it was before.` : `${capital(counted(p.count, 'roll'))} are as before.`,
  'rolls.reason-hint': (p: { state: State }) =>
    `What happened, so that whoever asks can be told why it is ${STATES[p.state]}.`,
  'rolls.ended': (p: { state: State }) => `It is ${STATES[p.state]}; nothing more happens to it.`,

  'rolls.form.lead': (_: object) =>
    'Only the film and its format have to be known. Everything else can be added later.',
  'rolls.form.exposed-hint': (_: object) => 'As far as you know: 2019, summer 2024, 3 May 2025.',
  'rolls.form.wanted-hint': (_: object) => 'Empty is as usual. Else: push 1, as 800, pull 1/3, contrast 0.6.',
  'rolls.form.order': (p: { person: string; listed: number; counted: number }) =>
    `${p.person}: ${counted(p.listed, 'roll')} of ${p.counted} taken in so far.`,
  'rolls.form.person-missing': (_: object) => 'Whose film it is, is missing. Write a name like Ida.',
  'rolls.form.count-missing': (p: { person: string }) =>
    `How many rolls ${p.person} handed over is missing. Count them, and write a whole number from 1 to 500.`,
  'rolls.taken-in': (p: { numbers: readonly string[] }) =>
    p.numbers.length === 1
      ? `Roll ${p.numbers[0]} is taken in. Write its number on the cassette.`
      : `${capital(counted(p.numbers.length, 'roll'))} taken in: ${p.numbers[0]} to ${p.numbers.at(-1)}.`,
  'rolls.corrected': (p: { number: string }) => `Roll ${p.number} is corrected; the old words stay on record.`,

  'rolls.many.lead': (_: object) =>
    'A line for each roll, or a table with a first line of column names. Every line is read back before anything is taken in.',
  'rolls.many.nothing': (_: object) => 'Nothing is typed yet.',
  'rolls.many.heading': (p: { whose: string | null }) =>
    p.whose === null ? 'own film from here on' : `film of ${p.whose} from here on`,
  'rolls.many.times': (p: { count: number; film: string }) => (p.count === 1 ? p.film : `${p.count} × ${p.film}`),
  'rolls.many.keep': (p: { count: number }) => `Take in ${counted(p.count, 'roll')}`,
  'rolls.many.wants': (p: { count: number }) =>
    `${capital(counted(p.count, 'line'))} cannot be read yet. Correct ${p.count === 1 ? 'it' : 'them'} in the text; nothing is taken in before.`,
  'rolls.many.counted': (p: { person: string; listed: number }) =>
    `${counted(p.listed, 'roll')} of ${p.person} ${p.listed === 1 ? 'is' : 'are'} listed. Count what lies on the table.`,

  'roll.event': (p: { state: State; hook: string; reason: string }) =>
    [STATES[p.state], ...(p.hook === '' ? [] : [`on ${p.hook}`]), ...(p.reason === '' ? [] : [p.reason])].join(', '),
  'roll.event-back': (_: object) => 'taken back',
  'roll.correction': (p: { changes: readonly string[] }) =>
    p.changes.length === 0 ? 'kept again without a change' : `corrected: ${p.changes.join('; ')}`,
  'roll.code': (p: { number: string }) => `Roll ${p.number}`,
  'roll.twin': (p: { twin: number }) =>
    `Twin check ${p.twin}: one sticker on the roll, the other on what it goes into.`,

  'orders.none': (_: object) => 'No order is on the bench.',
  'orders.none.how': (_: object) =>
    'An order begins when somebody hands film over: take the rolls in, say whose they are, and count them. The count is checked again when they go back.',
  'orders.row': (p: { here: number; counted_in: number; counted_out: number | null; due: string | null }) =>
    p.counted_out !== null
      ? `${counted(p.counted_out, 'roll')} handed back`
      : [
          `${counted(p.counted_in, 'roll')} counted in, ${p.here} here`,
          ...(p.due === null ? [] : [`due ${writePartialDay(p.due)}`]),
        ].join(', '),
  'order.lead': (p: { rolls: number; here: number; counted_out: number | null; due: string | null }) =>
    p.counted_out === null
      ? `${capital(counted(p.here, 'roll'))} of ${p.rolls} ${p.here === 1 ? 'is' : 'are'} here${p.due === null ? '' : `, due ${writePartialDay(p.due)}`}.`
      : `${capital(counted(p.counted_out, 'roll'))} counted out and handed back.`,
  'order.count-off': (p: { counted_in: number; listed: number }) =>
    p.listed < p.counted_in
      ? `${capital(counted(p.counted_in, 'roll'))} were counted in and ${p.listed} ${p.listed === 1 ? 'is' : 'are'} listed: take in the other ${p.counted_in - p.listed === 1 ? 'one' : p.counted_in - p.listed}, or correct the count.`
      : `${capital(counted(p.counted_in, 'roll'))} ${p.counted_in === 1 ? 'was' : 'were'} counted in and ${p.listed} are listed. Look which one belongs to somebody else, or correct the count.`,
  'order.handed-back': (p: { person: string; count: number }) =>
    `${capital(counted(p.count, 'roll'))} of ${p.person} handed back.`,
  'order.count-unread': (p: { text: string }) =>
    p.text === ''
      ? 'The count is missing. Count the rolls on the table, and write how many.'
      : `“${p.text}” is no count. Write a whole number from 0 to 500.`,
  'order.kept': (p: { person: string }) => `The order of ${p.person} is corrected.`,
  'order.link.lead': (_: object) =>
    'Whoever has the link reads how far the rolls are, in words, and nothing else. It is shown once; withdraw it whenever you like.',
  'order.link': (p: { until: string; revoked: boolean }) => (p.revoked ? 'withdrawn' : `shows until ${p.until}`),
  'order.link.revoked': (_: object) => 'The link is withdrawn; it shows nothing any more.',
} as const

const STATES = {
  'taken-in': 'waiting',
  loaded: 'in a tank',
  developed: 'developed',
  hung: 'hanging',
  sleeved: 'sleeved',
  scanned: 'scanned',
  'handed-back': 'handed back',
  lost: 'lost',
  ruined: 'ruined',
} as const

const CHEMISTRY = {
  'black-and-white': 'black-and-white',
  'colour-negative': 'colour negative',
  'colour-reversal': 'colour slide',
} as const

const REMARKS = {
  found: 'found film',
  expired: 'expired',
  infrared: 'infrared',
  'carbon-backing': 'carbon backing',
  chromogenic: 'chromogenic',
} as const

/** `exposed at 400 in summer 2024`, as far as it is known. */
function exposedWords({ exposed_at, exposed }: About): string[] {
  if (exposed_at === null && exposed === null) return []
  const at = exposed_at === null ? '' : ` at ${exposed_at}`
  const when = exposed === null ? '' : ` ${exposed.length === 10 ? 'on' : 'in'} ${writePartialDay(exposed)}`
  return [`exposed${at}${when}`]
}

function wantedWords({ exposed_at, wanted }: Asked): string {
  if (wanted.as === 'normal') return 'developed as usual'
  if (wanted.as === 'contrast') return `developed to a contrast of ${wanted.contrast}`
  if (exposed_at === null) return `developed as ${wanted.index}`
  return `developed as ${wanted.index}, a ${wanted.index > exposed_at ? 'push' : 'pull'}`
}
