import { instantText } from '../../kernel/index.js'
import type { BenchView, TodayView } from '../../wire/index.js'
import { dryingOf } from '../rolls/drying.js'
import type { Rooms } from '../store.js'
import type { TimeRecord } from '../times/port.js'

type Step = TodayView['step']
const RECENT = 5

const step = (code: Step['code'], subject: string | null = null, id: string | null = null): Step => ({
  code,
  subject,
  subject_id: id,
})

/** One sensible next step, in the order in which a bench comes to work: a time, a thermometer, a check, a second time. */
async function nextStep(rooms: Rooms, times: readonly TimeRecord[]): Promise<Step> {
  if (times.length === 0) return step('first-time')
  const thermometers = await rooms.kit.all()
  if (thermometers.length === 0) return step('first-thermometer')
  const checked = new Set((await rooms.kit.checks()).filter((check) => !check.withdrawn).map((c) => c.thermometerId))
  const unchecked = thermometers.find((thermometer) => !checked.has(thermometer.id))
  if (unchecked) return step('check-thermometer', unchecked.name, unchecked.id)
  const single = times.find((time) => time.kind === 'ordinary' && time.points.length === 1 && time.coefficient === null)
  if (single) return step('widen-times', single.film, single.id)
  const newest = newestFirst(times)[0] as TimeRecord
  return step('ask-a-time', newest.film, newest.id)
}

const newestFirst = (times: readonly TimeRecord[]): TimeRecord[] => [...times].sort((a, b) => b.savedAt - a.savedAt)

/** What is here and what to do next. */
export async function today(rooms: Rooms, bench: BenchView): Promise<TodayView> {
  const times = await rooms.times.all()
  return {
    bench,
    step: await nextStep(rooms, times),
    counts: {
      times: times.length,
      films: new Set(times.map((time) => time.film.toLowerCase())).size,
      thermometers: (await rooms.kit.all()).length,
    },
    recent: newestFirst(times)
      .slice(0, RECENT)
      .map((time) => ({
        id: time.id,
        film: time.film,
        developer: time.developer,
        saved_at: instantText(time.savedAt),
      })),
    drying: await dryingOf(rooms),
  }
}
