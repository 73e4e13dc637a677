import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'

/** What the step at hand is for, what to mind, and what would spoil the film: for someone who does it the first time. */
export function WhyStep({ tank }: { tank: TankFollowing }) {
  const writer = useWriter()
  const step = tank.plan.tank.recipe.steps[tank.awaited?.index ?? -1]
  if (step === undefined) return null
  const sentences = [
    step.reason,
    ...step.cautions.map((caution) => sayOf(`caution.${caution}`, {}, writer)),
    sayOf(`ruins.${step.kind}`, {}, writer),
  ]
  return (
    <section className="why-step">
      <h2>{say('tank.why', { name: step.name }, writer)}</h2>
      {sentences.map((sentence) => (
        <p key={sentence}>
          <Words>{sentence}</Words>
        </p>
      ))}
    </section>
  )
}
