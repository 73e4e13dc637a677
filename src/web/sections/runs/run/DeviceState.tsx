import { say, type Writer } from '../../../../words/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { useScreenOffTrial } from '../engine/useScreenOffTrial.js'
import { type DeviceParts, useDeviceParts } from '../engine/useSounds.js'
import { sayOf } from '../names.js'

interface DeviceStateProps {
  readonly running: Running
  /** Before the run what it plays can be tried; during it that would be in the way. */
  readonly withTrials: boolean
}

/** What this device can do for a run, in words: the screen, the sound, the voice, and the way to the bench. */
export function DeviceState({ running, withTrials }: DeviceStateProps) {
  const writer = useWriter()
  const parts = useDeviceParts()
  return (
    <section className="device-state">
      <h2>{say('device.title', {}, writer)}</h2>
      <ul className="states">
        {sentences(running, parts, writer).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {withTrials && <Trials parts={parts} />}
    </section>
  )
}

function sentences({ written }: Running, { awake, sound, voice }: DeviceParts, writer: Writer): string[] {
  const server = written.away ? 'away' : window.isSecureContext ? 'kept' : 'here'
  return [
    sayOf(`device.awake.${awake}`, {}, writer),
    `${sayOf(`device.sound.${sound}`, {}, writer)} ${say(voice ? 'device.voice.on' : 'device.voice.off', {}, writer)}`,
    sayOf(`device.server.${server}`, {}, writer),
  ]
}

function Trials({ parts }: { parts: DeviceParts }) {
  const writer = useWriter()
  const { state, begin } = useScreenOffTrial()
  const told =
    typeof state === 'object'
      ? sayOf(`device.trial.${state.code}`, state, writer)
      : state === 'under-way'
        ? say('device.trial.under-way', {}, writer)
        : null
  return (
    <>
      <div className="row">
        <Button onClick={parts.tryIt}>{say('device.sound.try', {}, writer)}</Button>
        <Button onClick={begin}>{say('device.trial.begin', {}, writer)}</Button>
      </div>
      <p role="status" className="told-trial">
        {told !== null && <Words>{told}</Words>}
      </p>
    </>
  )
}
