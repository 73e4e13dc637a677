import { say } from '../../words/index.js'
import { ButtonLink, Page } from '../shared/ui/index.js'

/** For a device that the bench does not know. */
export function NotPaired() {
  return (
    <main id="page" className="pane alone">
      <Page title="This device is not paired yet" lead={say('web.not-paired', {}, 'metric')}>
        <ol className="steps">
          <li>On the computer that runs the bench, open House.</li>
          <li>Choose “Pair a phone”. A code is drawn there; it works once and for ten minutes.</li>
          <li>Point this device’s camera at it, and open the address it shows.</li>
        </ol>
        <p>
          <ButtonLink href="/pair">Type the code instead</ButtonLink>
        </p>
      </Page>
    </main>
  )
}

export function NowhereHere({ path }: { path: string }) {
  return (
    <Page title="Nothing is here" lead={say('web.nowhere', { path: path.slice(0, 80) }, 'metric')}>
      <p className="row">
        <ButtonLink href="/">Go to Today</ButtonLink>
        <ButtonLink href="/times">Go to Times</ButtonLink>
      </p>
    </Page>
  )
}
