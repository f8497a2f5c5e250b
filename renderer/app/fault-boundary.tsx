import { Component, type ReactNode } from 'react'
import { Button } from '../ui/button.tsx'
import { Notice } from '../ui/notice.tsx'

type Props = Readonly<{ children: ReactNode }>
type State = Readonly<{ hasFault: boolean }>

/** Keeps a fault in one room from taking the others with it. */
export class FaultBoundary extends Component<Props, State> {
  override state: State = { hasFault: false }

  static getDerivedStateFromError(): State {
    return { hasFault: true }
  }

  override render(): ReactNode {
    if (!this.state.hasFault) return this.props.children
    return (
      <div className="room">
        <h1 className="unseen">This room has stopped</h1>
        <Notice
          kind="refusal"
          title="This room has stopped because of a mistake in the studio."
          actions={
            <Button onClick={() => this.setState({ hasFault: false })}>Open the room again</Button>
          }
        >
          What was saved before is safe. The other rooms still work.
        </Notice>
      </div>
    )
  }
}
