import { say } from '../../../../words/index.js'
import { hasVoice, useAwake } from '../../../shared/platform/index.js'
import { Button, useWriter } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { useSoundTrial } from '../engine/useSounds.js'

/** What this device can do during the run, said before it begins. */
export function States({ running }: { running: Running }) {
  const writer = useWriter()
  const awake = useAwake(true)
  const { on, tryIt } = useSoundTrial()
  return (
    <section>
      <h2>This device</h2>
      <ul className="states">
        <li>{say(`ready.awake.${awake}`, {}, writer)}</li>
        <li>
          {say(on ? 'ready.sound.on' : 'ready.sound.off', {}, writer)}{' '}
          {say(hasVoice() ? 'ready.voice.on' : 'ready.voice.off', {}, writer)}
        </li>
        <li>{say(running.written.away ? 'ready.server.away' : 'ready.server.here', {}, writer)}</li>
      </ul>
      <Button onClick={tryIt}>Try the sound</Button>
    </section>
  )
}
