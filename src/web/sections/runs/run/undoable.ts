import type { Placed, TankFollowing } from '../../../../score/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { Running } from '../engine/useRunning.js'
import { sayOf, stepName } from '../names.js'

/** The newest entry about a tank that can be taken back, with its words; the beginning cannot. */
export function newestOf({ state }: Running, tank: TankFollowing, writer: Writer): { id: string; what: string } | null {
  const entries = state.events.flatMap((placed) => {
    const what = placed.stands && placed.event.tank === tank.tank ? whatOf(placed, tank, writer) : null
    return what === null ? [] : [{ id: placed.event.id, what }]
  })
  return entries.at(-1) ?? null
}

function whatOf({ event }: Placed, { plan: { tank } }: TankFollowing, writer: Writer): string | null {
  const name = event.bath === null ? '' : stepName(tank.recipe, event.bath)
  switch (event.kind) {
    case 'noted':
      return say('tank.done.noted', event, writer)
    case 'poured-in':
    case 'poured-out':
    case 'skipped':
      return sayOf(`tank.done.${event.kind}`, { name }, writer)
    case 'step-done':
      return event.clearing
        ? say('tank.done.clearing', { time: event.clearing }, writer)
        : sayOf(`tank.done.${event.kind}`, { name }, writer)
    case 'reading':
      return say('tank.done.reading', event, writer)
    case 'mishap':
      return say('tank.done.mishap', { what: sayOf(`mishap.${event.mishap}`, {}, writer) }, writer)
    default:
      return null
  }
}
