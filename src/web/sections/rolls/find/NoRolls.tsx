import { say } from '../../../../words/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { ButtonLink, LookAtDemo, useWriter } from '../../../shared/ui/index.js'

/** Before there is a roll: how one comes in, and where a look at a full bench can be had. */
export function NoRolls() {
  const writer = useWriter()
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('rolls.none', {}, writer)}</strong> {say('rolls.none.how', {}, writer)}
      </p>
      <p>{say('rolls.none.many', {}, writer)}</p>
      <p className="row">
        <ButtonLink href="/rolls/several">Take in several</ButtonLink>
        <Link href="/rolls?state=all">Look among all rolls</Link>
      </p>
      <LookAtDemo words={say('times.none.look', {}, writer)} />
    </div>
  )
}
