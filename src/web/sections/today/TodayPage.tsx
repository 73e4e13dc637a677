import './today.css'
import type { TodayView } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { useToday } from '../../shared/api/index.js'
import { Asked, Heading, useWriter, Words } from '../../shared/ui/index.js'
import { BareBench } from './BareBench.js'
import { Drying } from './Drying.js'
import { NextStep } from './NextStep.js'
import { Recent } from './Recent.js'

export function TodayPage() {
  const today = useToday()
  return (
    <div className="today">
      <header className="today-head">
        <Heading title="Today" />
        {today.data && <DayAndHour view={today.data} />}
      </header>
      <Asked query={today}>{(view) => <Bench view={view} />}</Asked>
    </div>
  )
}

const isBare = ({ counts }: TodayView) => counts.times === 0 && counts.thermometers === 0

function Bench({ view }: { view: TodayView }) {
  const writer = useWriter()
  const bare = isBare(view)
  return (
    <>
      <section className="step" aria-label="The next step">
        <p className="quiet">
          <Words>{bare ? say('today.bare', {}, writer) : say('today.here', view.counts, writer)}</Words>
        </p>
        <NextStep step={view.step} />
      </section>
      <Drying drying={view.drying} zone={view.bench.zone} />
      {bare ? <BareBench /> : <Recent recent={view.recent} zone={view.bench.zone} />}
    </>
  )
}

function DayAndHour({ view }: { view: TodayView }) {
  if (isBare(view)) return <p className="quiet">first day</p>
  const now = new Date()
  const text = now.toLocaleString('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: 'numeric',
    minute: '2-digit',
    timeZone: view.bench.zone,
  })
  return (
    <time className="quiet" dateTime={now.toISOString()}>
      {text}
    </time>
  )
}
