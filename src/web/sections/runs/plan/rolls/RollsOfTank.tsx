import './rolls.css'
import type { Recipe } from '../../../../../score/index.js'
import { say } from '../../../../../words/index.js'
import { Button, Select, TextField, useWriter, Words } from '../../../../shared/ui/index.js'
import { FindRolls } from './FindRolls.js'
import {
  type ChosenRoll,
  chosenOf,
  isMixed,
  type LoadDraft,
  stopRemarks,
  stopsOf,
  typedWant,
  wantsReason,
} from './load.js'
import { type Mixed, nameOf } from './mixed.js'

interface RollsOfTankProps {
  readonly load: LoadDraft
  readonly onLoad: (part: Partial<LoadDraft>) => void
  readonly recipe: Recipe
  readonly reels: number
  readonly mixed: Mixed | null
}

/** The rolls that go into one tank: found, put onto reels, and stopped where they must not go in. */
export function RollsOfTank({ load, onLoad, recipe, reels, mixed }: RollsOfTankProps) {
  const { rolls } = load
  const change = (id: string, part: Partial<ChosenRoll>) =>
    onLoad({ rolls: rolls.map((roll) => (roll.id === id ? { ...roll, ...part } : roll)) })
  return (
    <fieldset className="rolls-of-tank">
      <legend className="unseen">Rolls in this tank</legend>
      <FindRolls
        taken={rolls.map(({ id }) => id)}
        onRoll={(roll) => onLoad({ rolls: [...rolls, chosenOf(roll, rolls.length + 1)] })}
      />
      {rolls.length > 0 && (
        <ul className="rows chosen-rolls">
          {rolls.map((roll) => (
            <Chosen
              key={roll.id}
              roll={roll}
              reels={Math.max(reels, rolls.length)}
              wantsTime={wantsTime(roll, mixed)}
              onRoll={(part) => change(roll.id, part)}
              onAway={() => onLoad({ rolls: rolls.filter(({ id }) => id !== roll.id) })}
            />
          ))}
        </ul>
      )}
      <Stops load={load} onLoad={onLoad} recipe={recipe} />
      {isMixed(load) && <OneTime load={load} onLoad={onLoad} mixed={mixed} />}
    </fieldset>
  )
}

const wantsTime = (roll: ChosenRoll, mixed: Mixed | null): boolean =>
  mixed !== null && (roll.wants !== '' || mixed.films.some((film) => film.roll.id === roll.id && film.wants === null))

interface ChosenProps {
  readonly roll: ChosenRoll
  readonly reels: number
  readonly wantsTime: boolean
  readonly onRoll: (part: Partial<ChosenRoll>) => void
  readonly onAway: () => void
}

function Chosen({ roll, reels, wantsTime, onRoll, onAway }: ChosenProps) {
  const writer = useWriter()
  const places = Array.from({ length: reels }, (_, i) => [`${i + 1}`, `reel ${i + 1}`] as const)
  const unread = roll.wants.trim() !== '' && typedWant(roll) === null
  return (
    <li>
      <div className="chosen-head">
        <p>
          <strong>{nameOf(roll)}</strong>
          {roll.whose !== null && <span className="quiet"> of {roll.whose}</span>}
        </p>
        <Button aria-label={`Leave ${roll.number} out`} onClick={onAway}>
          Leave it out
        </Button>
      </div>
      <div className="form-pair">
        <Select
          label={`Reel of ${roll.number}`}
          value={`${roll.reel}`}
          options={places}
          onValue={(reel) => onRoll({ reel: Number(reel) })}
        />
        {wantsTime && (
          <TextField
            label={`${roll.number} alone wants`}
            hint={say('plan.rolls.wants', {}, writer)}
            value={roll.wants}
            onText={(wants) => onRoll({ wants })}
            trouble={unread ? say('plan.rolls.wants', {}, writer) : null}
          />
        )}
      </div>
    </li>
  )
}

type PartProps = Pick<RollsOfTankProps, 'load' | 'onLoad'>

/** What stands against the rolls, and what the person has to say before they may go in. */
function Stops({ load, onLoad, recipe }: PartProps & { recipe: Recipe }) {
  const writer = useWriter()
  const confirm = (remark: LoadDraft['confirmed'][number], yes: boolean) =>
    onLoad({ confirmed: yes ? [...load.confirmed, remark] : load.confirmed.filter((one) => one !== remark) })
  return (
    <>
      <div role="status" className="stops">
        {stopsOf(load, recipe.process).map((sentence) => (
          <p key={sentence} className="note">
            <Words>{sentence}</Words>
          </p>
        ))}
      </div>
      {wantsReason(load, recipe.process) && (
        <TextField
          label="Why it goes through this list all the same"
          value={load.because}
          onText={(because) => onLoad({ because })}
          maxLength={4000}
        />
      )}
      {stopRemarks(load).map((remark) => (
        <label key={remark} className="row check">
          <input
            type="checkbox"
            checked={load.confirmed.includes(remark)}
            onChange={(event) => confirm(remark, event.target.checked)}
          />
          <Words>{say(`plan.rolls.confirm.${remark}`, {}, writer)}</Words>
        </label>
      ))}
    </>
  )
}

/** One time for films that want different ones, with what each departs. */
function OneTime({ load, onLoad, mixed }: PartProps & { mixed: Mixed | null }) {
  const writer = useWriter()
  const shared = mixed?.shared ?? null
  return (
    <div className="one-time">
      <label className="row check">
        <input type="checkbox" checked={load.shared} onChange={(event) => onLoad({ shared: event.target.checked })} />
        <Words>One time for all of them</Words>
      </label>
      <div role="status">
        {shared === null && <p className="small">{say('plan.mixed.missing', {}, writer)}</p>}
        {shared?.ok === false && (
          <p className="note">
            <Words>{shared.problem.sentence}</Words>
          </p>
        )}
        {shared?.ok && load.shared && (
          <ul className="told small">
            {mixed?.films.map(({ roll, wants }, i) => (
              <li key={roll.id}>
                <Words>
                  {say(
                    'run.departs',
                    {
                      film: nameOf(roll),
                      wants: wants as number,
                      departs: shared.value.departures[i] as number,
                    },
                    writer,
                  )}
                </Words>
              </li>
            ))}
          </ul>
        )}
      </div>
    </div>
  )
}
