// Going away from a design that was changed and not saved: every way out asks first.
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { holdAddress } from '../../../client/address.ts';
import { Confirm } from './confirm.tsx';

export interface Leaving {
  /** Goes where it was asked to; null while nobody asks. */
  readonly goOn: (() => void) | null;
  readonly stay: () => void;
  /** What there was is kept now: no more questions. */
  readonly letGo: () => void;
}

export function useLeaving(changed: boolean): Leaving {
  const [asked, setAsked] = useState<{ readonly goOn: () => void } | null>(null);
  const release = useRef<() => void>(() => undefined);
  useEffect(() => {
    if (!changed) return undefined;
    const held = holdAddress((goOn) => setAsked({ goOn }));
    // A window that is closed by hand; the desktop would not ask but stay open.
    const closing = (event: BeforeUnloadEvent): void => event.preventDefault();
    const inBrowser = window.regang === undefined;
    if (inBrowser) addEventListener('beforeunload', closing);
    release.current = () => {
      held();
      removeEventListener('beforeunload', closing);
    };
    return release.current;
  }, [changed]);
  return {
    goOn: asked?.goOn ?? null,
    stay: () => setAsked(null),
    letGo: () => release.current(),
  };
}

export function LeaveQuestion(props: { readonly leaving: Leaving; readonly name: string }): ReactNode {
  const { goOn, stay } = props.leaving;
  if (goOn === null) return null;
  return (
    <Confirm
      title="Leave without saving?"
      words={<p>{props.name} was changed and is not saved. Leaving throws the changes away.</p>}
      action="Leave without saving"
      stay="Stay"
      onAction={goOn}
      onStay={stay}
    />
  );
}
