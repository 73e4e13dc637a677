import { useEffect, useRef, useState } from 'react'
import { type ActKind, type BathKind, newStep } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useTell, useUnits, useWriter } from '../../../shared/ui/index.js'
import { KIND_NAMES } from '../kinds.js'
import { draftOfStep, type ListDraft, type StepDraft } from './draft.js'

export type Direction = 'earlier' | 'later'
export const moveButton = (id: string, direction: Direction): string => `${direction}-${id}`

/** What can be done to the steps of a list as a whole; each act is told and can be taken back. */
export function useSteps({ steps }: ListDraft, change: (part: Partial<ListDraft>) => void) {
  const writer = useWriter()
  const units = useUnits()
  const tell = useTell()
  const focusAgain = useFocusAgain()
  /** The one whose fields are open. */
  const [open, setOpen] = useState<string | null>(null)
  // Taking something back works on the steps as they are then, so that what was typed since is not lost.
  const now = useRef(steps)
  now.current = steps
  const act = (done: Change, back: Change, sentence: string) => {
    change({ steps: done(steps) })
    const undo = async () => {
      change({ steps: back(now.current) })
      return say('list.put-back', {}, writer)
    }
    tell({ sentence, undo })
  }
  const move = (id: string, direction: Direction) => {
    const from = placeIn(steps, id)
    const to = from + (direction === 'earlier' ? -1 : 1)
    const step = steps[from]
    if (step === undefined || to < 0 || to >= steps.length) return
    const told = { name: step.name, place: to + 1, of: steps.length }
    act(movedTo(id, to), movedTo(id, from), say('list.moved', told, writer))
    focusAgain(moveButton(id, direction))
  }
  const takeOut = (id: string) => {
    const at = placeIn(steps, id)
    const step = steps[at]
    if (step !== undefined) act(without(id), (all) => all.toSpliced(at, 0, step), say('list.taken-out', step, writer))
  }
  /** Behind the step of this id; null puts it first. */
  const add = (kind: BathKind | ActKind, behind: string | null) => {
    const name = KIND_NAMES[kind]
    const step = draftOfStep(newStep(kind, freshId(kind, steps), name), units)
    const at = behind === null ? 0 : placeIn(steps, behind) + 1
    const told = { name, place: at + 1, of: steps.length + 1 }
    act((all) => all.toSpliced(at, 0, step), without(step.id), say('list.added', told, writer))
    setOpen(step.id)
  }
  const set = (id: string, part: Partial<StepDraft>) =>
    change({ steps: steps.map((step) => (step.id === id ? ({ ...step, ...part } as StepDraft) : step)) })
  return { open, setOpen, move, takeOut, add, set }
}

type Change = (steps: readonly StepDraft[]) => readonly StepDraft[]

const placeIn = (steps: readonly StepDraft[], id: string): number => steps.findIndex((step) => step.id === id)

const without =
  (id: string): Change =>
  (steps) =>
    steps.filter((step) => step.id !== id)

const movedTo =
  (id: string, place: number): Change =>
  (steps) => {
    const step = steps.find((one) => one.id === id)
    return step === undefined ? steps : without(id)(steps).toSpliced(place, 0, step)
  }

/** An id that no step of the list has: `wash`, `wash-2`. */
function freshId(kind: string, steps: readonly StepDraft[]): string {
  const taken = (id: string) => steps.some((step) => step.id === id)
  if (!taken(kind)) return kind
  let number = 2
  while (taken(`${kind}-${number}`)) number++
  return `${kind}-${number}`
}

/** A browser takes the focus from what is moved within the page; it is given back once the page stands. */
function useFocusAgain() {
  const [wanted, setWanted] = useState<{ id: string } | null>(null)
  useEffect(() => {
    if (wanted !== null) document.getElementById(wanted.id)?.focus()
  }, [wanted])
  return (id: string) => setWanted({ id })
}
