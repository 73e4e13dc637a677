import type { ThermometerRecord } from '../../../../wire/index.js'
import { say, type Writer } from '../../../../words/index.js'
import { ButtonLink, Select, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import type { Corrected } from './reckon.js'
import type { useQuestion } from './useQuestion.js'

interface ReadWithProps {
  readonly thermometers: readonly ThermometerRecord[]
  readonly question: ReturnType<typeof useQuestion>
  readonly corrected: Corrected | null
}

/** With which thermometer it was read, what that does, and one further factor on the time. */
export function ReadWith({ thermometers, question, corrected }: ReadWithProps) {
  const writer = useWriter()
  const { factor, factorText, setFactorText } = question
  return (
    <>
      {thermometers.length === 0 ? (
        <p className="small">
          {say('web.no-thermometer', {}, writer)}{' '}
          <ButtonLink look="bare" href="/shelf/thermometers/new">
            Add a thermometer
          </ButtonLink>
        </p>
      ) : (
        <Select
          label="Read with"
          value={question.thermometerId}
          options={[['', 'no thermometer named'], ...thermometers.map(({ id, name }) => [id, name] as const)]}
          onValue={question.setThermometer}
        />
      )}
      {corrected && <Correction corrected={corrected} writer={writer} />}
      <TextField
        label="A further factor"
        hint={say('web.factor-hint', {}, writer)}
        value={factorText}
        onText={setFactorText}
        inputMode="decimal"
        trouble={factor?.kind === 'refused' ? factor.problem.sentence : null}
      />
    </>
  )
}

/** The reading put right, and what it would have done to the time taken at its word. */
function Correction({ corrected, writer }: { corrected: Corrected; writer: Writer }) {
  return (
    <p className="correction" role="note">
      <Words>{correctionSentences(corrected, writer).join(' ')}</Words>
    </p>
  )
}

function correctionSentences({ thermometer, reading, effect }: Corrected, writer: Writer): string[] {
  const { name } = thermometer
  if (reading.basis === 'unchecked') return [say('thermometer.unchecked', { name, error: reading.band }, writer)]
  if (Math.abs(reading.correction) < 0.05) return [say('thermometer.true', { name }, writer)]
  const said = [say('thermometer.corrected', { name, read: reading.read, corrected: reading.true }, writer)]
  if (reading.basis === 'beyond') said.push(say('thermometer.held-beyond', {}, writer))
  if (effect === null) return said
  const params = { uncorrected: effect.byReading, corrected: effect.byTruth, fraction: -effect.missingPart }
  said.push(
    Math.abs(effect.missing) < 0.5
      ? say('thermometer.no-effect', {}, writer)
      : say('thermometer.effect', params, writer),
  )
  return said
}
