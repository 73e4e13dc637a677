import { writeDuration, writeTemperature, writeVolume } from '../../../../kernel/index.js'
import type { Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { ThermometerRecord, TimeRecord } from '../../../shared/api/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { Link } from '../../../shared/navigation/index.js'
import {
  Choices,
  QuantityField,
  Select,
  TextArea,
  TextField,
  useUnits,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { measuredBaths } from '../names.js'
import type { PlanDraft } from './draft.js'
import { onReels, type PlanReading, takesTime } from './readPlan.js'
import type { LoadDraft } from './rolls/load.js'
import { RollsOfTank } from './rolls/RollsOfTank.js'
import { TimeOfRolls } from './rolls/TimeOfRolls.js'
import { WhichTank } from './rolls/WhichTank.js'
import { ReadWith, RoomAndTank } from './Warmth.js'

export interface PlanFieldsProps {
  readonly draft: PlanDraft
  readonly change: (part: Partial<PlanDraft>) => void
  readonly reading: PlanReading
  readonly tried: boolean
  readonly recipes: readonly Recipe[]
  readonly recipe: Recipe
  readonly times: readonly TimeRecord[]
  /** The kept time that was chosen. */
  readonly time: TimeRecord | null
  readonly thermometers: readonly ThermometerRecord[]
  /** The one that was chosen. */
  readonly thermometer: ThermometerRecord | null
}

/** The plan with another load; it has at least the reels that its rolls are on. */
const loaded = ({ load, reels }: PlanDraft, part: Partial<LoadDraft>): Partial<PlanDraft> => {
  const next = { ...load, ...part }
  const most = Math.max(0, ...next.rolls.map(({ reel }) => reel))
  return { load: next, ...(most > Number(reels) ? { reels: `${most}` } : {}) }
}

export function PlanFields(props: PlanFieldsProps) {
  const { draft, change, reading, tried, recipes, recipe } = props
  const units = useUnits()
  const reels = onReels(draft, props.time)
  const trouble = (field: string) => (tried ? reading.troubles[field] : null)
  return (
    <>
      <Select
        label="List of baths"
        hint={recipe.about}
        value={recipe.id}
        options={recipes.map(({ id, name }) => [id, name] as const)}
        onValue={(chosen) => change({ recipe: chosen })}
      />
      <Link href={`/runs/lists/${recipe.id}`}>Look at this list</Link>
      <Developing {...props} />
      <ReadWith {...props} />
      <RollsOfTank
        load={draft.load}
        onLoad={(part) => change(loaded(draft, part))}
        recipe={recipe}
        reels={Number(draft.reels) || 1}
        mixed={reading.mixed}
      />
      <TimeOfRolls load={draft.load} times={props.times} time={props.time} onTime={(from) => change({ from })} />
      {draft.load.rolls.length === 0 && (
        <TextField
          label="What is on the reels"
          value={reels.film}
          onText={(film) => change({ film })}
          maxLength={120}
          trouble={trouble('film')}
        />
      )}
      <WhichTank vessel={draft.load.vessel} onTank={(vessel) => change({ load: { ...draft.load, vessel } })} />
      <div className="form-pair">
        {draft.load.rolls.length === 0 && (
          <>
            <TextField
              label="Exposure index"
              hint="What the meter was set to, such as 400; for the record."
              value={reels.index}
              onText={(index) => change({ index })}
              inputMode="numeric"
              trouble={reading.troubles['index']}
            />
            <TextField
              label="Label"
              hint="Such as: roll 12."
              value={draft.label}
              onText={(label) => change({ label })}
              maxLength={120}
            />
          </>
        )}
        <TextField
          label="Tank"
          hint="Short; a voice says it."
          value={draft.tank}
          onText={(tank) => change({ tank })}
          maxLength={12}
          trouble={trouble('tank')}
        />
        <TextField
          label="Reels"
          value={draft.reels}
          onText={(reels) => change({ reels })}
          inputMode="numeric"
          trouble={reading.troubles['reels']}
        />
        <QuantityField
          label="Volume of each bath"
          hint="What covers the reels, such as 500 ml; with it the room’s pull is reckoned."
          text={draft.volume}
          onText={(volume) => change({ volume })}
          reading={reading.volume}
          write={(value) => writeVolume(value, units)}
        />
      </div>
      <Temperatures {...props} />
      <RoomAndTank {...props} />
      <Choices
        legend="Is it practice?"
        value={draft.practice}
        options={[
          ['no', 'No, with film that counts'],
          ['1', 'Practice at the true speed'],
          ['5', 'Practice, five times as fast'],
          ['20', 'Practice, twenty times as fast'],
        ]}
        onValue={(practice) => change({ practice })}
      />
      <TextArea
        label="Note"
        className="words"
        rows={2}
        value={draft.note}
        onText={(note) => change({ note })}
        maxLength={4000}
      />
    </>
  )
}

/** Where the developing time comes from: a kept one at a temperature, or a typed one. */
function Developing({ draft, change, reading, recipe, times, time, tried }: PlanFieldsProps) {
  const units = useUnits()
  const writer = useWriter()
  if (!takesTime(recipe)) return <p className="quiet">{say('plan.fixed', {}, writer)}</p>
  const own = time === null
  return (
    <>
      {times.length === 0 ? (
        <p className="quiet">{say('plan.no-times', {}, writer)}</p>
      ) : (
        <Select
          label="Developing time"
          value={time?.id ?? 'own'}
          options={[...times.map((time) => [time.id, nameOf(time)] as const), ['own', 'One that I type'] as const]}
          onValue={(from) => change({ from })}
        />
      )}
      <div className="form-pair">
        {own && (
          <QuantityField
            label="Develop for"
            hint="Such as 9:30."
            text={draft.time}
            onText={(typed) => change({ time: typed })}
            reading={reading.time}
            write={(value) => writeDuration(value)}
            strict={tried}
          />
        )}
        <QuantityField
          label="Developer at"
          hint={own ? 'As the sheet has it for this time.' : 'Empty: as the sheet has it.'}
          text={draft.temperature}
          onText={(temperature) => change({ temperature })}
          reading={reading.temperature}
          write={(value) => writeTemperature(value, units)}
        />
      </div>
    </>
  )
}

/** What the other baths measure; each one that is left empty is not judged. */
function Temperatures({ draft, change, reading, recipe }: PlanFieldsProps) {
  const units = useUnits()
  const judged = reading.score?.ok === false && reading.score.problem.code.startsWith('score.')
  return (
    <details open={draft.override || judged}>
      <summary>Temperatures of the other baths</summary>
      <div className="form-pair">
        {measuredBaths(recipe).map(({ id, name }) => (
          <QuantityField
            key={id}
            label={name}
            text={draft.temperatures[id] ?? ''}
            onText={(text) => change({ temperatures: { ...draft.temperatures, [id]: text } })}
            reading={reading.temperatures[id] ?? null}
            write={(value) => writeTemperature(value, units)}
          />
        ))}
      </div>
      <label className="row check">
        <input
          type="checkbox"
          checked={draft.override}
          onChange={(event) => change({ override: event.target.checked })}
        />
        <Words>I take the risk of baths that are too far apart</Words>
      </label>
    </details>
  )
}
