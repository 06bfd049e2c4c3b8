// A panel system that the book does not have yet begins with its code and its name.
import { type KeyboardEvent, type ReactNode, useState } from 'react';

export function NewSystem(props: {
  readonly taken: readonly string[];
  readonly onBegin: (code: string, name: string) => void;
}): ReactNode {
  const [open, setOpen] = useState(false);
  const [code, setCode] = useState('');
  const [name, setName] = useState('');
  const [why, setWhy] = useState<string | null>(null);
  if (!open)
    return (
      <button type="button" className="quiet new-system-open" onClick={() => setOpen(true)}>
        New panel system …
      </button>
    );
  const begin = (): void => {
    const [plain, words] = [code.trim(), name.trim()];
    if (plain === '' || words === '') setWhy('A system needs a code and a name.');
    else if (props.taken.includes(plain)) setWhy(`There is a system ${plain} already.`);
    else {
      props.onBegin(plain, words);
      setOpen(false);
      setCode('');
      setName('');
      setWhy(null);
    }
  };
  const pressed = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    setOpen(false);
  };
  return (
    <form
      className="new-system"
      aria-label="New panel system"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <label className="field">
        <span className="field-label">Code</span>
        <input
          // The form was asked for just now: it begins here.
          // oxlint-disable-next-line jsx-a11y/no-autofocus
          autoFocus
          maxLength={40}
          value={code}
          onChange={(event) => setCode(event.target.value)}
          onKeyDown={pressed}
        />
      </label>
      <label className="field">
        <span className="field-label">Name</span>
        <input
          maxLength={120}
          value={name}
          onChange={(event) => setName(event.target.value)}
          onKeyDown={pressed}
        />
      </label>
      {why === null ? null : (
        <p className="field-error" role="alert">
          {why}
        </p>
      )}
      <span className="new-system-foot">
        <button type="submit">Begin</button>
        <button type="button" className="quiet" onClick={() => setOpen(false)}>
          Not now
        </button>
      </span>
    </form>
  );
}
