// A moment typed in words, as "10 Mar 16:00". What cannot be read says why beside the field and stays there.
import { type ReactNode, useId, useState } from 'react';
import type { Refusal } from '../../../core/answer.ts';
import { useJobClock, useTimeWords } from '../../parts/job-time.ts';
import { readWhen } from '../../parts/when-text.ts';

export function WhenField(props: {
  readonly label: string;
  readonly placeholder: string;
  readonly value: string | null;
  readonly onChange: (instant: string | null) => void;
}): ReactNode {
  const clock = useJobClock();
  const words = useTimeWords();
  const id = useId();
  const [text, setText] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const shown = text ?? (props.value === null ? '' : words.full(props.value));
  const take = (): void => {
    if (text === null) return;
    if (text.trim() === '') {
      props.onChange(null);
    } else {
      if (clock === null) return;
      const read = readWhen(text, props.value ?? clock.planFrom, clock.timeZone);
      if (!read.ok) {
        setRefusal(read.error);
        return;
      }
      props.onChange(read.value);
    }
    setText(null);
    setRefusal(null);
  };
  return (
    <span className="when-field">
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        value={shown}
        placeholder={props.placeholder}
        aria-invalid={refusal !== null}
        aria-describedby={refusal === null ? undefined : `${id}-why`}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') {
            setText(null);
            setRefusal(null);
          }
        }}
      />
      {props.value === null ? null : (
        <button type="button" className="quiet" onClick={() => props.onChange(null)}>
          Now
        </button>
      )}
      {refusal === null ? null : (
        <span id={`${id}-why`} className="field-error" role="alert">
          {refusal.message} {refusal.hint}
        </span>
      )}
    </span>
  );
}
