// The typed change: "14 +1d" and Enter. The key / brings a person here from anywhere on the screen. What cannot be
// read is said beside the field, and what was typed stays.
import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { isField } from '../undo.tsx';
import { useWindowKeys } from '../window-keys.ts';
import { type Known, type PlanChange, readChanges } from './change-text.ts';

export function ChangeField(props: {
  readonly label: string;
  readonly known: Known;
  readonly onChanges: (changes: readonly PlanChange[]) => void;
  /** The same text entered a second time. */
  readonly onAgain: () => void;
  readonly proposed: boolean;
  /** Whether what was taken leaves the field: where one change is added to others. */
  readonly clears?: boolean;
  /** What may be typed, as examples. */
  readonly examples: readonly string[];
}): ReactNode {
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<{
    readonly message: string;
    readonly choices: readonly string[];
  } | null>(null);
  const [sent, setSent] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const helpId = useId();

  useWindowKeys((event) => {
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || isField(event.target)) return;
    event.preventDefault();
    field.current?.focus();
    field.current?.select();
  });

  const send = (typed: string): void => {
    const read = readChanges(typed, props.known);
    setText(typed);
    if (read.kind === 'unclear') {
      setProblem(read);
      return;
    }
    setProblem(null);
    setSent(typed);
    if (read.kind !== 'changes') return;
    if (props.clears === true) setText('');
    props.onChanges(read.changes);
  };
  const keyed = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') {
      event.preventDefault();
      // The same change a second time means: yes, keep it.
      if (props.proposed && text === sent && text !== '') {
        props.onAgain();
        setText('');
        setSent('');
      } else send(text);
    } else if (event.key === 'Escape' && !props.proposed) {
      setText('');
      setProblem(null);
      field.current?.blur();
    }
  };

  return (
    <div className="move-field">
      <label>
        <span>{props.label}</span>
        <input
          ref={field}
          value={text}
          placeholder="14 +1d"
          autoComplete="off"
          spellCheck={false}
          aria-describedby={helpId}
          aria-invalid={problem !== null}
          aria-keyshortcuts="/"
          onChange={(event) => {
            setText(event.target.value);
            setProblem(null);
          }}
          onKeyDown={keyed}
        />
      </label>
      <span id={helpId} className={problem === null ? 'move-help' : 'move-help problem'} aria-live="polite">
        {problem === null ? (
          <>
            press <kbd>/</kbd>, type{' '}
            {props.examples.map((example, index) => (
              <span key={example}>
                {index === 0 ? '' : index === props.examples.length - 1 ? ' or ' : ', '}
                <i>{example}</i>
              </span>
            ))}
            , Enter
          </>
        ) : (
          <>
            {problem.message}{' '}
            {problem.choices.map((choice) => (
              <button key={choice} type="button" onClick={() => send(choice)}>
                {choice}
              </button>
            ))}
          </>
        )}
      </span>
    </div>
  );
}
