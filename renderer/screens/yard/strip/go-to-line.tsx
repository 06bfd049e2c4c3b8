// A field that a scanner types into, or a person: Enter goes to the line of the component or the part of the gang.
import { type ReactNode, useId, useState } from 'react';
import type { Refusal } from '../../../../core/answer.ts';
import { type Scannable, scanTarget, type ScanTarget } from './scan-target.ts';

export function GoToLine(props: {
  readonly ticket: Scannable;
  /** The part in which one counts at the moment. */
  readonly near: () => string | null;
  readonly onGo: (target: ScanTarget) => void;
}): ReactNode {
  const [text, setText] = useState('');
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const id = useId();
  const go = (): void => {
    const target = scanTarget(text, props.ticket, props.near());
    if (!target.ok) {
      setRefusal(target.error);
      return;
    }
    setText('');
    setRefusal(null);
    props.onGo(target.value);
  };
  return (
    <span className="go-to-line">
      <label htmlFor={id}>Go to</label>
      <input
        id={id}
        placeholder="type or scan a component or tag"
        autoComplete="off"
        spellCheck={false}
        value={text}
        aria-invalid={refusal !== null}
        aria-describedby={refusal === null ? undefined : `${id}-why`}
        onChange={(event) => {
          setText(event.target.value);
          setRefusal(null);
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          if (text.trim() !== '') go();
        }}
      />
      {refusal === null ? null : (
        <span id={`${id}-why`} className="field-error" role="alert">
          {refusal.message} {refusal.hint}
        </span>
      )}
    </span>
  );
}
