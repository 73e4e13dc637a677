import {
  grams,
  millilitres,
  seconds,
  type UnitSystem,
  writeDuration,
  writeMass,
  writeVolume,
} from '../../../kernel/index.js'
import { say } from '../../../words/index.js'
import { useBench, useWrite, type VesselRecord, type VesselStatementInput } from '../../shared/api/index.js'
import { correctVessel, useRemoval, useVessels, useWayBack } from '../../shared/desk/index.js'
import { Asked, Button, ButtonLink, Page, Trouble, useDraft, useUnits, useWriter } from '../../shared/ui/index.js'
import { keptVessel } from './keptVessel.js'
import { EMPTY_VESSEL, type VesselDraft } from './readVessel.js'
import { VesselForm } from './VesselForm.js'

/** One thing of the kit: what is said of it, corrected in place. */
export function VesselPage({ params }: { params: Record<string, string> }) {
  const vessels = useVessels()
  const bench = useBench()
  const writer = useWriter()
  return (
    <Asked query={bench}>
      {() => (
        <Asked query={vessels}>
          {(all) => {
            const one = all.find(({ id }) => id === params['id'])
            if (one !== undefined) return <Vessel key={`${one.id} ${one.revision}`} one={one} />
            return (
              <Page title="Not in the kit" lead={say('shelf.not-here', {}, writer)}>
                <ButtonLink href="/shelf/kit">Look at the kit</ButtonLink>
              </Page>
            )
          }}
        </Asked>
      )}
    </Asked>
  )
}

function Vessel({ one }: { one: VesselRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const { name } = one.statement
  const { draft, change, clear } = useDraft(`vessel-${one.id}-${one.revision}`, draftOf(one, units))
  const correct = useWrite(
    (statement: VesselStatementInput) => correctVessel(one.id, { seen_revision: one.revision, statement }),
    'vessels',
  )
  const { changed } = useWayBack(keptVessel(one))
  const { removeIt, waits } = useRemoval(keptVessel(one))
  const kept = (answer: VesselRecord) => {
    clear()
    changed(say('times.form.corrected', { name: answer.statement.name }, writer), answer.revision)
  }
  const wet = one.statement.kind === 'reel' && one.statement.wet_at !== null
  const turn = () => {
    if (one.statement.kind !== 'reel') return
    correct.mutate({ ...one.statement, wet_at: wet ? null : new Date().toISOString() }, { onSuccess: kept })
  }
  return (
    <Page
      title={name}
      actions={
        <>
          <ButtonLink href="/shelf/kit">The whole kit</ButtonLink>
          {one.statement.kind === 'reel' && <Button onClick={turn}>{wet ? 'It is dry now' : 'It is wet now'}</Button>}
          <Button waits={waits} onClick={removeIt}>
            Remove it
          </Button>
        </>
      }
    >
      {wet && <p className="note">{say('kit.wet', {}, writer)}</p>}
      <VesselForm
        draft={draft}
        change={change}
        keepWords="Keep the correction"
        waits={correct.isPending}
        onKeep={(statement) => correct.mutate(statement, { onSuccess: kept })}
      >
        {correct.isError && <Trouble fault={correct.error} />}
      </VesselForm>
    </Page>
  )
}

function draftOf({ statement }: VesselRecord, units: UnitSystem): VesselDraft {
  const { kind, name, note } = statement
  const common = { ...EMPTY_VESSEL, kind, name, note }
  const ml = (value: number) => writeVolume(millilitres(value), units)
  if (statement.kind === 'tank') {
    const { material, moved, holds, warmth_g: warmth, time_constant_s: constant } = statement
    return {
      ...common,
      material,
      moved,
      holds: holds.map(({ format, reels, covers_ml }) => `${format}, ${reels}, ${ml(covers_ml)}`).join('\n'),
      warmth: warmth === null ? '' : writeMass(grams(warmth), units),
      constant: constant === null ? '' : writeDuration(seconds(constant)),
    }
  }
  if (statement.kind === 'reel') {
    const { material, formats, wet_at: wetAt } = statement
    return { ...common, material, formats: formats.join(', '), wetAt: wetAt ?? '' }
  }
  return { ...common, volume: ml(statement.holds_ml), marks: ml(statement.marked_every_ml) }
}
