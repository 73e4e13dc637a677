import type { FollowedJob, Laid, TankFollowing } from '../../../../score/index.js'
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

const firstBath = (laid: readonly Laid[]) => laid.find(({ step, skipped }) => step.step === 'bath' && !skipped)?.index

function turnWords({ agitation }: Laid, seconds: number, writer: Writer): string {
  const turn = agitation?.kind === 'turns' ? agitation.turn : null
  return turn?.by === 'inversions'
    ? say('job.turn-count', { count: turn.count }, writer)
    : say('job.turn-seconds', { seconds: Math.round(seconds) }, writer)
}
