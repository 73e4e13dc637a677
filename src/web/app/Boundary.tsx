import { Component, type ReactNode } from 'react'
import { say } from '../../words/index.js'
import { Button, Page } from '../shared/ui/index.js'

/** Catches a fault of our own, so that the rest of the program stays usable. */
export class Boundary extends Component<{ children: ReactNode }, { fault: Error | null }> {
  override state: { fault: Error | null } = { fault: null }
  static getDerivedStateFromError(fault: Error) {
    return { fault }
  }
  override render() {
    if (this.state.fault === null) return this.props.children
    return (
      <Page title="This page stopped" lead={say('web.page-fault', {}, 'metric')}>
        <p className="small">{this.state.fault.message}</p>
        <Button look="go" onClick={() => window.location.reload()}>
          Load it again
        </Button>
      </Page>
    )
  }
}
