import type { FollowedJob, JobPart, Laid, TankFollowing } from '../../../../score/index.js'
import { say, type Writer } from '../../../../words/index.js'

/** A job in a few words. */
export function jobWords({ plan: { laid } }: TankFollowing, { job }: FollowedJob, writer: Writer): string {
  const own = laid[job.index]
  if (own === undefined) return ''
  const { name } = own.step
  switch (job.kind) {
    case 'turn':
      return turnWords(own, job.end - job.start, writer)
    case 'change':
      return firstBath(laid) === job.index
        ? say('job.first-pour', { name }, writer)
        : say('job.change', { name }, writer)
    case 'drain':
      return say('job.drain', {}, writer)
    case 'check':
      return say('job.check', {}, writer)
    default:
      return say('job.step', { name }, writer)
  }
}

/** What hands are at within a job; a job without parts is one thing throughout. */
export function partAt({ job }: FollowedJob, second: number): JobPart | null {
  return job.parts.find(({ end }) => second < end) ?? null
}

/** A part of a bath change in a few words: one thing to do, not the whole chain. */
export function partWords(
  { plan: { laid } }: TankFollowing,
  { job }: FollowedJob,
  part: JobPart,
  writer: Writer,
): string {
  const own = laid[job.index]
  if (own === undefined) return ''
  const { name } = own.step
  switch (part.part) {
    case 'drain':
      return say('job.drain', {}, writer)
    case 'cap':
      return say('job.part.cap', { name }, writer)
    case 'pour':
      return say('job.part.pour', { name }, writer)
    case 'tap':
      return say('job.part.tap', {}, writer)
    case 'turns':
      return openingWords(own, part.end - part.start, writer)
  }
}

function openingWords({ agitation }: Laid, seconds: number, writer: Writer): string {
  const opening = agitation !== null && 'opening' in agitation ? agitation.opening : null
  return opening?.by === 'inversions'
    ? say('job.turn-count', { count: opening.count }, writer)
    : say('job.turn-seconds', { seconds: Math.round(seconds) }, writer)
}

const firstBath = (laid: readonly Laid[]) => laid.find(({ step, skipped }) => step.step === 'bath' && !skipped)?.index

function turnWords({ agitation }: Laid, seconds: number, writer: Writer): string {
  const turn = agitation?.kind === 'turns' ? agitation.turn : null
  return turn?.by === 'inversions'
    ? say('job.turn-count', { count: turn.count }, writer)
    : say('job.turn-seconds', { seconds: Math.round(seconds) }, writer)
}
