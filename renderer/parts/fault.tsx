// A bug in one screen must not blank the window: the shell stays, the screen says what happened, and nothing
// acknowledged is lost, since it is in the book.
import { Component, type ReactNode } from 'react';
import { RefusalNote } from './notes.tsx';

interface FaultProps {
  /** The address: going elsewhere tries again. */
  readonly place: string;
  readonly children: ReactNode;
}

interface FaultState {
  readonly error: unknown;
  readonly place: string;
}

export class Fault extends Component<FaultProps, FaultState> {
  override state: FaultState = { error: null, place: this.props.place };

  static getDerivedStateFromError(error: unknown): Partial<FaultState> {
    return { error };
  }

  static getDerivedStateFromProps(props: FaultProps, state: FaultState): Partial<FaultState> | null {
    return props.place === state.place ? null : { error: null, place: props.place };
  }

  override render(): ReactNode {
    if (this.state.error === null) return this.props.children;
    return (
      <div className="empty">
        <h2>This screen met a fault of the app</h2>
        <p>
          What was acknowledged is in the book. Maybe another screen, or starting again, goes on from here.
        </p>
        <RefusalNote error={this.state.error} />
      </div>
    );
  }
}
