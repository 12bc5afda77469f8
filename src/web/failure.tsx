import { Component, type ReactNode } from 'react'
import { Sorry } from './sorry.tsx'

/** A fault in the page itself: say so and offer to begin again. The text is on this device and on the server. */
export class Failure extends Component<{ children: ReactNode }, { fault: Error | null }> {
  override state = { fault: null as Error | null }

  static getDerivedStateFromError(fault: Error) {
    return { fault }
  }

  override render() {
    const { fault } = this.state
    if (!fault) return this.props.children
    return (
      <Sorry
        title="This page has failed."
        cure={`The manuscript is kept on this device and nothing typed is lost. (${fault.message})`}
      >
        <button type="button" className="do" onClick={() => location.reload()}>
          Load the page again
        </button>
      </Sorry>
    )
  }
}
