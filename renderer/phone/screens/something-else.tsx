// A piece that the ticket does not expect: its code, and then it is counted as a line of its own.
import { type FormEvent, type ReactNode, useState } from 'react';
import { lineKey } from '../counting/shown.ts';
import { somethingElse } from '../counting/taps.ts';
import { changeDraft } from '../kept/entries.ts';
import type { Paper } from '../kept/kept.ts';

export function SomethingElse(props: {
  readonly paper: Paper;
  readonly group: string;
  readonly onAdded: (line: string) => void;
}): ReactNode {
  const { paper, group, onAdded } = props;
  const [code, setCode] = useState<string | null>(null);
  if (code === null)
    return (
      <button type="button" className="wide" onClick={() => setCode('')}>
        Something else came back …
      </button>
    );
  const add = async (): Promise<void> => {
    const component = code.trim().toUpperCase();
    await changeDraft(paper, somethingElse(group, component, 'ready', 1));
    setCode(null);
    onAdded(lineKey({ group, component, owner: null }));
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void add();
  };
  return (
    <form className="else-form" onSubmit={submit}>
      <label>
        Code of the component
        <input
          value={code}
          maxLength={40}
          autoCapitalize="characters"
          autoComplete="off"
          onChange={(event) => setCode(event.target.value)}
          required
        />
      </label>
      <div className="sheet-foot">
        <button type="button" onClick={() => setCode(null)}>
          Not now
        </button>
        <button type="submit" className="primary">
          One of it is here
        </button>
      </div>
    </form>
  );
}
