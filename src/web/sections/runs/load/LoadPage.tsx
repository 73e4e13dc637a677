import { useState } from 'react'
import { say } from '../../../../words/index.js'
import { deviceVoice } from '../../../shared/platform/index.js'
import { Button, ButtonLink, Page, useWriter } from '../../../shared/ui/index.js'
import { Blackout } from './Blackout.js'

/** What to do while film is open, and the black page for it. */
export function LoadPage({ params }: { params: Record<string, string> }) {
  const writer = useWriter()
  const [dark, setDark] = useState(false)
  if (dark) return <Blackout onWake={() => setDark(false)} />
  const begin = () => {
    deviceVoice.say(say('load.voice.begin', {}, writer))
    setDark(true)
  }
  return (
    <Page title={say('load.title', {}, writer)}>
      <div className="teach">
        <ol className="steps">
          <li>{say('load.inside', {}, writer)}</li>
          <li>{say('load.dark', {}, writer)}</li>
          <li>{say('load.jam', {}, writer)}</li>
        </ol>
        <p>{say('load.wake', {}, writer)}</p>
        <div className="row">
          <Button look="go" onClick={begin}>
            Go dark
          </Button>
          <ButtonLink href={`/runs/${params['id'] ?? ''}`}>Back to the run</ButtonLink>
        </div>
      </div>
    </Page>
  )
}
