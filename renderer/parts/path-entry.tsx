// A path or name of a book, typed; for doors where no native dialog can ask.
import { type ReactNode, useId, useState } from 'react';

export function PathEntry(props: {
  readonly label: string;
  readonly begin: string;
  readonly action: string;
  readonly primary?: boolean;
  readonly busy: boolean;
  readonly onPath: (path: string) => void;
}): ReactNode {
  const [path, setPath] = useState(props.begin);
  const id = useId();
  return (
    <form
      className="path-entry"
      onSubmit={(event) => {
        event.preventDefault();
        props.onPath(path.trim());
      }}
    >
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      <div>
        <input id={id} value={path} spellCheck={false} onChange={(event) => setPath(event.target.value)} />
        <button
          type="submit"
          className={props.primary === true ? 'primary' : undefined}
          disabled={props.busy || path.trim() === ''}
        >
          {props.action}
        </button>
      </div>
    </form>
  );
}
