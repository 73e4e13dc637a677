import type { EventOf, RunEvent } from './definition.js'

/**
 * Which events stand: those that no standing undo names. An undo of an undo brings the event back; an undo that
 * names itself undoes nothing, and a circle of undos is opened at its least id. Needs no instants, so that clocks cannot change it.
 */
export function liveOf(events: readonly RunEvent[]): (event: RunEvent) => boolean {
  const undos = new Map<string, EventOf<'retracted'>[]>()
  for (const event of events) {
    if (event.kind === 'retracted') undos.set(event.of, [...(undos.get(event.of) ?? []), event])
  }
  const known = new Map<string, boolean>()
  const stands = (id: string, path: readonly string[]): boolean => {
    const answer = known.get(id)
    if (answer !== undefined) return answer
    const against = (undos.get(id) ?? []).filter((undo) => !path.includes(undo.id) && undo.id !== id)
    return !against.some((undo) => stands(undo.id, [...path, id]))
  }
  for (const id of events.map((event) => event.id).sort()) known.set(id, stands(id, []))
  return ({ id }) => known.get(id) ?? true
}
