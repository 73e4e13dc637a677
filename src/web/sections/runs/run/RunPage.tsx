import { useEffect } from 'react'
import type { Score } from '../../../../score/index.js'
import { Asked, Heading } from '../../../shared/ui/index.js'
import { scoreOf } from '../engine/shapes.js'
import { type Opened, useOpened } from '../engine/useOpened.js'
import { useRunning } from '../engine/useRunning.js'
import { ReadyScreen } from '../ready/ReadyScreen.js'
import { DoubtScreen } from './DoubtScreen.js'
import { OverScreen } from './OverScreen.js'
import { TankScreen } from './TankScreen.js'

/** One run: before the first pour, under way, or over. */
export function RunPage({ params }: { params: Record<string, string> }) {
  const opened = useOpened(params['id'] ?? '')
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
  const { following, written } = running
  useWarnedLeaving(written.away && following.tanks.some(({ phase }) => phase === 'running'))
  if (following.doubts[0] !== undefined) return <DoubtScreen running={running} doubt={following.doubts[0]} />
  const open = following.tanks.filter(({ phase }) => phase !== 'done' && phase !== 'abandoned')
  const tank = open.find(({ tank: name }) => name === following.next?.tank) ?? open[0]
  if (tank === undefined) return <OverScreen running={running} run={opened.run} />
  if (following.tanks.every(({ phase }) => phase === 'not-started'))
    return <ReadyScreen running={running} run={opened.run} tank={tank} />
  return <TankScreen running={running} run={opened.run} tank={tank} />
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
