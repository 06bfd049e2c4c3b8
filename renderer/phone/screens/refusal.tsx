// Why something was not taken, with what may help, and moments as people say them.
import type { ReactNode } from 'react';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import type { KeptRefusal } from '../kept/kept.ts';

export function Refusal(props: {
  readonly refusal: KeptRefusal;
  /** Said aloud when it appears. */
  readonly isNew?: boolean;
}): ReactNode {
  const { message, hint } = props.refusal;
  return (
    <p className="refusal" role={props.isNew === true ? 'alert' : undefined}>
      <strong>{withSpokenInstants(message)}</strong> {withSpokenInstants(hint ?? '')}
    </p>
  );
}
