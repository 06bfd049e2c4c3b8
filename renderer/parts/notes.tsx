// Lines of words that several screens need: a refusal with what may help, a wait, an empty screen, the
// cautions under what decides something.
import type { ReactNode } from 'react';
import { wordsOf } from '../client/refused.ts';
import { withSpokenInstants } from './spoken-instants.ts';

export function RefusalNote(props: { readonly error: unknown }): ReactNode {
  const { message, hint } = wordsOf(props.error);
  return (
    <div className="note note-stop" role="alert">
      <span className="note-word">Refused</span>
      <span>
        {withSpokenInstants(message)}
        {hint === undefined ? null : <span className="note-hint"> {withSpokenInstants(hint)}</span>}
      </span>
    </div>
  );
}

export function Waiting(props: { readonly what: string }): ReactNode {
  return <output className="waiting">{props.what}</output>;
}

export function Empty(props: { readonly title: string; readonly children?: ReactNode }): ReactNode {
  return (
    <div className="empty">
      <h2>{props.title}</h2>
      {props.children}
    </div>
  );
}

/** Stands under every screen that decides something. The wording is the same everywhere. */
export function CautionLine(props: { readonly about?: string }): ReactNode {
  return (
    <p className="caution-line">
      <span className="caution-word">Planning aid only</span>: not a design, a lifting plan, a permit or an
      inspection. {props.about ?? 'Strip times are forecasts; a named person clears each strip.'} The
      maker&rsquo;s instructions, local codes and licensed practice come first.
    </p>
  );
}
