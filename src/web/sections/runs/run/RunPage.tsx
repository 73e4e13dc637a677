import { lazy, useEffect, useState } from 'react'
import type { Score } from '../../../../score/index.js'
import { Asked, Heading } from '../../../shared/ui/index.js'
import { scoreOf } from '../engine/shapes.js'
import { type Opened, useOpened } from '../engine/useOpened.js'
import { useRunning } from '../engine/useRunning.js'
import { DoubtScreen } from './DoubtScreen.js'
import { OverScreen } from './OverScreen.js'
import { type ChosenTank, hasNotBegun, nextKey, shownTank } from './shownTank.js'
import { TankScreen } from './TankScreen.js'

/** Apart from what a running tank needs, so that this one stands sooner; fetched right behind it, for an undone start. */
const fetchReady = () => import('../ready/ReadyScreen.js')
const ReadyScreen = lazy(async () => ({ default: (await fetchReady()).ReadyScreen }))

/** One run: before the first pour, under way, or over. */
export function RunPage({ params }: { params: Record<string, string> }) {
  const opened = useOpened(params['id'] ?? '')
  // Where it cannot be fetched, the page that wants it says so.
  useEffect(() => void fetchReady().catch(() => undefined), [])
  return <Asked query={opened}>{(found) => <Scored key={found.run.id} opened={found} />}</Asked>
}

function Scored({ opened }: { opened: Opened }) {
  const score = scoreOf(opened.run)
  if (!score.ok)
    return (
      <>
        <Heading title="This plan cannot be followed" />
        <p className="note">{score.problem.sentence}</p>
      </>
    )
  return <Followed opened={opened} score={score.value} />
}

function Followed({ opened, score }: { opened: Opened; score: Score }) {
  const running = useRunning(opened, score)
  const [chosen, setChosen] = useState<ChosenTank | null>(null)
  const { following, written } = running
  useWarnedLeaving(written.away && following.tanks.some(({ phase }) => phase === 'running'))
  if (following.doubts[0] !== undefined) return <DoubtScreen running={running} doubt={following.doubts[0]} />
  const tank = shownTank(following, chosen)
  if (tank === null) return <OverScreen running={running} run={opened.run} />
  if (hasNotBegun(following)) return <ReadyScreen running={running} run={opened.run} tank={tank} />
  const choose = (name: string) => setChosen({ tank: name, next: nextKey(following) })
  return <TankScreen running={running} run={opened.run} tank={tank} choose={choose} />
}

/** A reload while the server is away cannot work on plain HTTP: the browser asks before it. */
function useWarnedLeaving(wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return
    const warn = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', warn)
    return () => window.removeEventListener('beforeunload', warn)
  }, [wanted])
}
