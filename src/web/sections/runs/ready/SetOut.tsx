import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { ButtonLink, useWriter, Words } from '../../../shared/ui/index.js'

/** What has to be so before the first pour: film in, baths in a row, hands and room ready. */
export function SetOut({ run, tank }: { run: Run; tank: TankFollowing }) {
  const writer = useWriter()
  const baths = tank.plan.tank.recipe.steps.filter(({ step }) => step === 'bath')
  const names = baths.map(({ name }) => name)
  return (
    <section>
      <h2>{say('ready.first', {}, writer)}</h2>
      <ul className="set-out">
        <li>
          <Words>{say('ready.first.film', {}, writer)}</Words>
        </li>
        <li>
          <Words>{say('ready.first.baths', { names }, writer)}</Words>
        </li>
        <li>
          <Words>{say('ready.first.care', {}, writer)}</Words>
        </li>
      </ul>
      <ButtonLink href={`/runs/${run.id}/load`}>Load the film</ButtonLink>
    </section>
  )
}
